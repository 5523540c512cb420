//go:build js

package bridge

import (
	"syscall/js"

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
	p.later(keepDelay, func() {
		p.keeping = false
		p.save()
	})
}

// save keeps the boats where the browser allows it, and says which; where the page is
// served the boat in hand stands in its address too.
func (p *page) save() {
	p.reply(p.desk.Kept())
	p.showInAddress()
}

func (p *page) showInAddress() {
	if line, id, anew, write := p.desk.InAddress(); write {
		js.Global().Call("showInAddress", line, id, anew)
	}
}

// address is the line in the page's address and the name of its boat in the history.
func address() (line, boat string) {
	return js.Global().Call("lineInAddress").String(), js.Global().Call("boatOfAddress").String()
}

// listenKept answers other pages' writing, an edited address, and the page's leaving.
func (p *page) listenKept() {
	p.on(js.Global(), "storage", func(e js.Value) {
		switch key := e.Get("key"); key.Type() {
		case js.TypeString:
			p.reply(p.desk.Heard(key.String()))
		case js.TypeNull: // all of them; of the tab's own store no other page clears any
			p.reply(p.desk.Cleared())
		}
	})
	p.on(js.Global(), "hashchange", func(js.Value) {
		p.reply(p.desk.Address(address()))
		p.showInAddress()
	})
	leave := func(js.Value) {
		p.reply(p.desk.Leave(p.started))
		if p.started {
			p.showInAddress()
		}
	}
	p.on(js.Global(), "pagehide", leave)
	p.on(p.document, "visibilitychange", func(e js.Value) {
		if p.document.Get("visibilityState").String() == "hidden" {
			leave(e)
		}
	})
}

// showTyped puts back into the fields what stood half typed in them.
func (p *page) showTyped() {
	for field, text := range p.work.Typed {
		if c, ok := p.controls[field]; ok && !c.typed.IsNull() {
			c.typed.Set("value", text)
			c.unread = true
			_, _, err := p.read(c.param, text)
			c.fault.set(work.WhyHalf(err))
		}
	}
	p.eachSide(func(i int, s work.Side, side *sheetSide) {
		if text, ok := p.work.Typed[work.SheetKey(i, s)]; ok {
			side.input.Set("value", text)
			side.unread = true
			_, _, err := p.work.ReadSheet(i, s, text)
			side.fault.set(work.WhyHalf(err))
		}
	})
	p.halfSeason()
	p.id("record-text").Set("value", p.work.Typed["record-text"])
	p.showHalfNotes()
	if name, ok := p.work.Typed["record-name"]; ok {
		p.work.SetTyped("record-name", "")
		p.work.SetRecord(name, p.work.Measurements(work.Recorded))
	}
}
