package desk

import (
	"strconv"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/bench"
	"barkwright/wasm/keep"
	"barkwright/wasm/markup"
	"barkwright/wasm/tracing"
	"barkwright/wasm/work"
)

// Desk is the boats of the page and what was last asked of them.
type Desk struct {
	Shelf *work.Shelf
	// Dates is how days are written; it is set before Open.
	Dates tally.Dates

	keeper *keep.Keeper
	shown  *work.Work // the boat that the page shows
	// addressed is the line in the address, unreadable tells that what stands there
	// cannot be read.
	addressed  string
	unreadable bool
	clearing   bool // to forget what was taken off has been asked for once

	// taking is the boat being taken in hand, good the one shown as it last stood, opened
	// tells that the first one did, and faults counts those that came without an event.
	taking string
	good   work.Snapshot
	opened bool
	faults int

	taught  taught
	bench   bench.Bench
	paper   paper
	plan    wanted
	mending *mending
	record  recorded
	tracing tracing.Tracing
}

// New is the desk of what a browser keeps; it has no shelf before Open.
func New(k *keep.Keeper) *Desk { return &Desk{keeper: k, tracing: tracing.New()} }

// Open puts on the shelf what the browser kept and takes the first boat in hand: that of
// the address, where boat is its name in the history, or else the one that was.
func (d *Desk) Open(line, boat string) Reply {
	d.Shelf = work.NewShelf(d.keeper, work.UnitsOf(d.keeper.Units()))
	d.Shelf.Dates = d.Dates
	var r Reply
	if d.keeper.Refuses() || d.Shelf.TakeOver() != nil {
		r = d.notKept()
	}
	read, said := d.readAddress(line, boat, true)
	if !read {
		d.Shelf.Open()
	}
	d.resumeLesson()
	d.addressed = d.Shelf.Line()
	return r.and(said).and(d.unread())
}

// Show is the boat in hand, which the page shows from now on.
func (d *Desk) Show() *work.Work {
	d.shown = d.Shelf.InHand()
	return d.shown
}

// SetSystem changes the units that everything is shown in, and keeps them.
func (d *Desk) SetSystem(s units.System) {
	d.Shelf.SetSystem(s)
	d.keeper.SetUnits(work.UnitsID(s))
}

// Place is where on the page the user was last.
func (d *Desk) Place() work.Place { return work.PlaceOf(d.keeper.Place()) }

// SetPlace remembers where the user is now.
func (d *Desk) SetPlace(at work.Place) { d.keeper.SetPlace(string(at)) }

// Met keeps whether the user has closed what the page says first.
func (d *Desk) Met(met bool) { d.keeper.SetMet(met) }

// Letters reports whether keys of one letter do something: WCAG 2.2, 2.1.4, asks that they
// can be turned off.
func (d *Desk) Letters() bool { return d.keeper.Letters() }

// SetLetters turns keys of one letter on or off.
func (d *Desk) SetLetters(on bool) { d.keeper.SetLetters(on) }

// Starting lists the boats to start from, all of them invented, with their lengths, as HTML.
func Starting(s units.System) string {
	return markup.Option("", "Start from…") + startingBoats("", s)
}

// startingBoats are the choices of them, their values after a prefix.
func startingBoats(prefix string, s units.System) string {
	list := markup.Option(prefix+"-1", design.Default().Name)
	for i, d := range design.Starting() {
		list += markup.Option(prefix+strconv.Itoa(i), d.Name+", "+units.Run.Format(d.Length, s))
	}
	return list
}

// Start puts one of those beside the others.
func (d *Desk) Start(i int) Reply {
	d.Shelf.Add(starting(i))
	return Reply{TookUp: true}
}

// Take takes a boat of the shelf in hand.
func (d *Desk) Take(i int) Reply {
	return d.take(d.Shelf.IDAt(i), func() error { return d.Shelf.Take(i) })
}

// take takes a boat in hand; one that cannot be read is named.
func (d *Desk) take(id string, take func() error) Reply {
	d.taking = id
	err := take()
	d.taking = ""
	r := Reply{TookUp: true}
	if err != nil {
		r = r.and(d.unread())
	}
	return r
}

// Do answers the buttons over the form.
func (d *Desk) Do(what string) Reply {
	w, said := d.Shelf.InHand(), ""
	switch what {
	case "undo":
		w.Undo()
	case "redo":
		w.Redo()
	case "reset":
		said = w.ResetAll()
	default:
		return Reply{}
	}
	return Reply{Changed: true, Says: []Said{{"did", said}}}
}

// unread says at the top what is kept and cannot be opened, and offers it.
func (d *Desk) unread() (r Reply) {
	for _, u := range d.keeper.Unread() {
		n := Notice{u.Key, "“" + u.Name + "” is kept and was not opened. " + u.Why,
			[]Button{{"Save it as a file", func() Reply {
				return Reply{Save: &File{jsonName(u.Name), json, d.keeper.Text(u.Key)}}
			}}}}
		if u.Stops {
			n.Buttons = append(n.Buttons, Button{"Try it again", func() Reply {
				d.Shelf.Retry(u.Key)
				return Reply{Unsay: []string{u.Key}, Shelf: true}
			}})
		} else {
			n.Text += " It stays as it is."
		}
		r.Notices = append(r.Notices, n)
	}
	return r
}

// counted is a number of things in words that a list of them is called by.
func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// notebook is that of the boat shown.
func (d *Desk) notebook() *record.Notebook { return d.shown.Notebook }
