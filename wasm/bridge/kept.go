//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// keepDelay is how long after a change it is kept, ms: a slider held down is kept so
// often, and its steps wait for no writing.
const keepDelay = 300

// saveSoon keeps what changed after a moment, the control still in hand or not.
func (p *page) saveSoon() {
	if p.keeping {
		return
	}
	p.keeping = true
	if p.keepFunc.IsUndefined() {
		p.keepFunc = p.callback(func([]js.Value) {
			p.keeping = false
			p.save()
		})
	}
	js.Global().Call("setTimeout", p.keepFunc, keepDelay)
}

// save keeps the boats where the browser allows it, and says which; where the page is
// served the boat in hand stands in its address too.
func (p *page) save() {
	kept := p.shelf.Keep()
	if kept.Err != nil || p.keeper.Refuses() {
		p.sayNotKept()
	} else {
		p.unsay("not kept")
		setText(p.id("kept"), keptWords)
	}
	if kept.Split {
		p.unsay("elsewhere")
		p.notice("split", "This boat was changed in another window too. Both versions are kept: yours goes on here, the other stands beside it under Designs and files.")
	}
	p.showShelf()
	p.showInAddress()
}

// keptWords hold in every browser that was tried: Firefox keeps a file's apart,
// Chromium's share one store among all pages opened from disk.
const keptWords = "Kept in this browser as it is entered. Opened from disk, this page's boats may be read by any other page opened from disk in the same browser: " +
	"Chrome, Edge and their like share one store among them. Save a file to move a boat to another place."

const notKeptWords = "Nothing more is kept: the browser refuses it. What is changed from now on is lost when this page is closed. Save it as a file."

func (p *page) sayNotKept() {
	setText(p.id("kept"), "The browser keeps nothing for this page now. Save a file to keep what is here.")
	p.notice("not kept", notKeptWords, action{"Save all as a file", p.saveAll})
}

// showInAddress writes the boat in hand into the address. What stands there and cannot
// be read stays in the history, to be gone back to.
func (p *page) showInAddress() {
	line, err := design.Line(p.work.Entered)
	if err != nil || line == p.addressed {
		return
	}
	js.Global().Call("showInAddress", line, p.shelf.ID(), p.unreadable)
	p.addressed, p.unreadable = line, false
}

// readAddress takes in hand the boat of the address and tells whether it did: one that
// is kept as it stands there with all that is kept beside it, any other beside those. An
// address gone back to is that of a boat of this page as it was; at the start the boat is
// as it was kept last.
func (p *page) readAddress(atStart bool) bool {
	line := js.Global().Call("lineInAddress").String()
	if line == "" || line == p.addressed {
		p.unreadable = false
		return false
	}
	d, moved, err := design.ReadLine(line)
	why := ""
	if err != nil {
		why = err.Error()
	} else if p.keeper.LineStops(line) {
		why = "Its boat stopped this page when it was last opened."
	}
	if p.unreadable = why != ""; p.unreadable {
		// It stays until the boat is another.
		p.addressed = p.shelf.Line()
		p.notice("address", "The address of this page holds a boat that was not opened. "+why+" It can be gone back to.",
			action{"Save it as a file", func() { p.download("address.txt", "text/plain", line) }})
		return false
	}
	p.addressed = line
	if id := js.Global().Call("boatOfAddress").String(); id != "" && p.shelf.TakeID(id) {
		if !atStart && p.shelf.Line() != line {
			was := p.shelf.InHand().Entered
			d.Notes, d.OnHand = was.Notes, was.OnHand
			p.shelf.InHand().Replace(d)
		}
		return true
	}
	if atStart {
		p.keeper.Begin(line)
	}
	p.shelf.TakeLine(line, d)
	p.shelf.InHand().Moved = moved
	return true
}

// listenKept answers other pages' writing, an edited address, and the page's leaving.
func (p *page) listenKept() {
	p.on(js.Global(), "storage", func(e js.Value) {
		if key := e.Get("key"); key.Type() == js.TypeString {
			p.heard(key.String())
		}
	})
	p.on(js.Global(), "hashchange", func(js.Value) {
		if p.readAddress(false) {
			p.tookUp()
		}
	})
	leave := func(js.Value) {
		// What stopped the start stays as it was kept when that was noted.
		if p.started {
			p.save()
		}
		p.keeper.Done()
	}
	p.on(js.Global(), "pagehide", leave)
	p.on(p.document, "visibilitychange", func(e js.Value) {
		if p.document.Get("visibilityState").String() == "hidden" {
			leave(e)
		}
	})
}

// heard brings the page to what another page has kept.
func (p *page) heard(key string) {
	switch p.shelf.Heard(key) {
	case work.ChangedInHand:
		p.notice("elsewhere", "This boat has been changed in another window. It is shown here as it was: change it here, and both versions are kept.",
			action{"Show it as it is there", func() {
				if err := p.shelf.TakeTheirs(); err != nil {
					p.nameUnread()
				}
				p.shelved()
			}})
	case work.SplitFromInHand:
		p.notice("split", "Another window has changed this boat as it was before. Its version is kept beside this one, under Designs and files; "+
			"this one goes on here.")
	}
	p.nameUnread()
	p.showShelf()
}

// showTyped puts back into the fields what stood half typed in them.
func (p *page) showTyped() {
	for field, text := range p.work.Typed {
		if c, ok := p.controls[field]; ok && !c.typed.IsNull() {
			c.typed.Set("value", text)
			c.unread = true
			c.fault.set(p.whyHalf(p.read(c.param, text)))
		}
	}
	for _, row := range p.sheets {
		for _, side := range row.sides {
			if text, ok := p.work.Typed[side.key]; ok {
				side.input.Set("value", text)
				side.unread = true
				side.fault.set(p.whyHalf(units.Length.Parse(text, p.work.System)))
			}
		}
	}
	p.id("record-text").Set("value", p.work.Typed["record-text"])
	if name, ok := p.work.Typed["record-name"]; ok {
		p.work.SetTyped("record-name", "")
		p.work.SetRecord(name, p.work.Measurements(work.Recorded))
	}
}

// halfTyped says of what can be read and was never left that it counts for nothing yet.
const halfTyped = "Typed, and not taken yet: press Enter in the field to take it."

func (p *page) whyHalf(_ float64, _ string, err error) string {
	if err != nil {
		return err.Error()
	}
	return halfTyped
}

// halfRow is the name of a field of a measurement's row among what is half typed.
func (m *measures) halfRow(i int, f work.Field) string {
	return m.list.Get("id").String() + "." + strconv.Itoa(i) + "." + strconv.Itoa(int(f))
}

// noteRow remembers what stands half typed in a row, and forgets it once the row says
// nothing else than the notebook.
func (p *page) noteRow(m *measures, i int) {
	r := m.rows[i]
	begun := i >= m.stand
	for f, in := range r.fields {
		f := work.Field(f)
		text := in.Get("value").String()
		if f == work.Locked {
			text = map[bool]string{true: "yes"}[in.Get("checked").Bool()]
		}
		if !begun && text == r.Text(f, p.work.System) {
			text = ""
		}
		p.work.SetTyped(m.halfRow(i, f), text)
	}
	p.saveSoon()
}

// noteRows does so for every row of a list, where rows have moved.
func (p *page) noteRows(m *measures) {
	for f := range work.Fields {
		p.work.SetTyped(m.halfRow(len(m.rows), f), "")
	}
	for i := range m.rows {
		p.noteRow(m, i)
	}
}

// halfRows puts back what stood half typed in the rows of a list.
func (p *page) halfRows(m *measures) {
	for i := 0; i <= len(m.rows); i++ {
		for f := range work.Fields {
			text, ok := p.work.Typed[m.halfRow(i, f)]
			if !ok {
				continue
			}
			if i == len(m.rows) {
				m.add(work.NextEntry(m.of, p.work.Measurements(m.of)))
			}
			r := m.rows[i]
			if r.Enter(f, text, p.work.System); f == work.Value && r.Bad[f] == "" {
				r.Bad[f] = halfTyped
			}
			if r.Bad[f] != "" {
				r.fields[f].Set("value", text)
			}
		}
	}
}
