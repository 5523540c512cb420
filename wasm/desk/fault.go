package desk

import "barkwright/core/file"

// mostFaults is how many that came without an event are gone on from: more are not of
// one boat.
const mostFaults = 3

// Meet goes on after a fault of the program: with the boat shown as it last stood on the
// whole page, or where it never did with another, and offers what was there. It is false
// where the boat is not to be shown again.
func (d *Desk) Meet(inEvent bool) (Reply, bool) {
	met := d.shown.Boat()
	if !inEvent {
		d.faults++
	}
	switch {
	case d.taking != "":
		d.Shelf.SetAside(d.taking)
		d.taking = ""
	case d.good.Of(d.shown) && d.faults <= 1:
		d.good.Restore()
	default:
		d.Shelf.SetAside(d.Shelf.ID())
		d.Shelf.Open()
	}
	r := Reply{Notices: []Notice{{noticeFault,
		"The program met a fault of its own. The boat stands as it last did without it; nothing " +
			"else is changed.", []Button{{"Save what was entered as a file", func() Reply {
			return boats(file.File{Boats: []file.Boat{met}}, jsonName(met.Design.Name), "")
		}}}}}}
	return r.and(d.unread()).and(d.DropAwaited()), d.faults <= mostFaults
}

// NotStarted is what the page says where it does not start at all.
const NotStarted = "The program did not start: it met a fault of its own."

// MeetAtStart sets what was being opened aside and tells whether the page is to be
// opened again without it.
func (d *Desk) MeetAtStart() bool { return d.keeper.Stopped() && !d.keeper.Refuses() }

// Stood notes that the boat shown went through everything on the page but for what
// takes long.
func (d *Desk) Stood() {
	d.good = d.shown.Snapshot()
	if !d.opened {
		d.opened = true
		d.keeper.Done()
	}
}
