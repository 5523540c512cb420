package desk

import (
	"barkwright/core/design"
	"barkwright/wasm/work"
)

// The notices' names, and where it is said what is kept.
const (
	keptSays       = "kept"
	noticeNotKept  = "not kept"
	noticeSplit    = "split"
	noticeElse     = "elsewhere"
	noticeAddress  = "address"
	noticeMoved    = "moved"
	noticeFault    = "fault"
	noticeCleared  = "cleared"
	underDesigns   = "under Designs and files"
	saveItAsAFile  = "Save it as a file"
	saveAllAsAFile = "Save all as a file"
)

// keptWords hold in every browser that was tried: Firefox keeps a file's apart,
// Chromium's share one store among all pages opened from disk.
const keptWords = "Kept in this browser as it is entered. Opened from disk, this page's boats may be read by any other page opened " +
	"from disk in the same browser: Chrome, Edge and their like share one store among them. Save a file to move a boat to another place."

// Kept keeps the boats where the browser allows it, and says whether it does.
func (d *Desk) Kept() Reply {
	was := d.Shelf.ID()
	kept := d.Shelf.Keep()
	if kept.Split {
		d.followLesson(was, d.Shelf.ID())
	}
	r := Reply{Unsay: []string{noticeNotKept}, Says: []Said{{keptSays, keptWords}}, Shelf: true}
	if kept.Err != nil || d.keeper.Refuses() {
		r = d.notKept()
		r.Shelf = true
	}
	if kept.Split {
		r.Unsay = append(r.Unsay, noticeElse)
		r.Notices = append(r.Notices, Notice{Name: noticeSplit,
			Text: "“" + d.Shelf.InHand().Entered.Name + "” was changed in another window too. Both versions are kept: " +
				"yours goes on here, the other stands beside it " + underDesigns + "."})
	}
	return r
}

func (d *Desk) notKept() Reply {
	return Reply{
		Says: []Said{{keptSays, "The browser keeps nothing for this page now. Save a file to keep what is here."}},
		Notices: []Notice{{noticeNotKept,
			"Nothing more is kept: the browser refuses it. What is changed from now on is lost when this " +
				"page is closed. Save it as a file.", []Button{{saveAllAsAFile, d.saveAll}}}},
	}
}

// Heard brings the shelf to what another page has kept under a key.
func (d *Desk) Heard(key string) Reply {
	r := Reply{Shelf: true}
	switch d.Shelf.Heard(key) {
	case work.ChangedInHand:
		r.Notices = []Notice{{noticeElse,
			"This boat has been changed in another window. It is shown here as it was: change it here, " +
				"and both versions are kept.", []Button{{"Show it as it is there", d.takeTheirs}}}}
	case work.SplitFromInHand:
		r.Notices = []Notice{{Name: noticeSplit,
			Text: "Another window has changed “" + d.Shelf.InHand().Entered.Name + "” as it was before. Its version is " +
				"kept beside this one, " + underDesigns + "; this one goes on here."}}
	}
	return r.and(d.unread())
}

// Cleared keeps again what is on this page, since another page has cleared the store: all pages opened
// from disk share one in some browsers.
func (d *Desk) Cleared() Reply {
	gone := d.Shelf.Cleared()
	d.keeper.SetUnits(work.UnitsID(d.shown.System))
	r := d.Kept()
	text := "Another page has cleared what this browser keeps for this page. What is open here is kept again."
	if gone > 0 {
		text += " Gone, unless they were saved as a file: " + counted(gone, "boat", "boats") +
			" not opened since this page was."
	}
	r.Notices = append(r.Notices, Notice{noticeCleared, text, []Button{{saveAllAsAFile, d.saveAll}}})
	return r
}

func (d *Desk) takeTheirs() Reply {
	r := Reply{TookUp: true, KeepNothing: true}
	if d.Shelf.TakeTheirs() != nil {
		r = r.and(d.unread())
	}
	return r
}

// TookUp is what is said of a boat that has come in hand.
func (d *Desk) TookUp() Reply {
	r := say("did", "")
	if !d.Shelf.Elsewhere() {
		r.Unsay = []string{noticeElse}
	}
	return r
}

// Moved tells of numbers that moved since the boat in hand was written.
func (d *Desk) Moved() (r Reply) {
	if text := d.Shelf.InHand().SayMoved(); text != "" {
		r.Notices = []Notice{{Name: noticeMoved, Text: text}}
	}
	return r
}

// InAddress is the boat in hand as the address is to have it: its line, its name, and
// whether what stands there is left in the history, to be gone back to, for being what
// cannot be read. It is false where nothing is to be written.
func (d *Desk) InAddress() (line, id string, anew, write bool) {
	line, err := design.Line(d.Shelf.InHand().Entered)
	if err != nil || line == d.addressed {
		return "", "", false, false
	}
	anew = d.unreadable
	d.addressed, d.unreadable = line, false
	return line, d.Shelf.ID(), anew, true
}

// Address takes in hand the boat of an address that was edited or gone back to, where
// boat is its name in the history. A step back that stays with the boat in hand was one from
// place to place: it leaves the boat as it is, and the address is to be written anew.
func (d *Desk) Address(line, boat string) Reply {
	if boat != "" && boat == d.Shelf.ID() {
		d.addressed = line
		return Reply{}
	}
	read, r := d.readAddress(line, boat, false)
	r.TookUp = read
	return r
}

// readAddress takes in hand the boat of the address and tells whether it did: one that
// is kept as it stands there with all that is kept beside it, any other beside those. An
// address gone back to is that of a boat of this page as it was; at the start the boat is
// as it was kept last.
func (d *Desk) readAddress(line, boat string, atStart bool) (bool, Reply) {
	if line == "" || line == d.addressed {
		d.unreadable = false
		return false, Reply{}
	}
	read, moved, err := design.ReadLine(line)
	why := ""
	if err != nil {
		why = err.Error()
	} else if d.keeper.LineStops(line) {
		why = "Its boat stopped this page when it was last opened."
	}
	if d.unreadable = why != ""; d.unreadable {
		// It stays until the boat is another.
		d.addressed = d.Shelf.Line()
		return false, Reply{Notices: []Notice{{noticeAddress,
			"The address of this page holds a boat that was not opened. " + why +
				" It can be gone back to.", []Button{{saveItAsAFile, func() Reply {
				return Reply{Save: &File{"address.txt", "text/plain", line}}
			}}}}}}
	}
	d.addressed = line
	if boat != "" && d.Shelf.TakeID(boat) {
		if !atStart && d.Shelf.Line() != line {
			was := d.Shelf.InHand().Entered
			read.Notes, read.OnHand = was.Notes, was.OnHand
			d.Shelf.InHand().Replace(read)
		}
		return true, Reply{}
	}
	if atStart {
		d.keeper.Begin(line)
	}
	d.Shelf.TakeLine(line, read)
	d.Shelf.InHand().Moved = moved
	return true, Reply{}
}

// Leave keeps everything, since the page is about to be left, and forgets the mark of a
// boat being opened. Before the page has started what stopped it stays as it was kept
// when that was noted.
func (d *Desk) Leave(started bool) (r Reply) {
	if started {
		r = d.Kept()
	}
	d.keeper.Done()
	return r
}
