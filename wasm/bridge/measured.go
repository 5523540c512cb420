//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/desk"
	"barkwright/wasm/work"
)

// listenMeasured answers the record of a measured boat and the tape's readings.
func (p *page) listenMeasured() {
	p.recorded = p.listenMeasures(work.Recorded, "record-list")
	p.readings = p.listenMeasures(work.AsBuilt, "built-list")
	p.on(p.id("record-name"), "change", func(js.Value) {
		p.work.SetTyped("record-name", "")
		p.work.SetRecord(p.text("record-name"), p.work.Measurements(work.Recorded))
		p.noted()
	})
	p.on(p.id("record-boat"), "change", func(e js.Value) {
		if which, ok := number(e.Get("target")); ok {
			p.reply(p.desk.ReadBoat(p.text("record-text"), which))
		}
	})
	for _, id := range []string{"record-name", "record-text"} {
		p.on(p.id(id), "input", func(js.Value) {
			p.work.SetTyped(id, p.text(id))
			p.saveSoon()
		})
	}
}

// record answers the buttons of the record and the readings.
func (p *page) record(what string) {
	switch what {
	case "add":
		p.addMeasure(p.recorded)
	case "add-reading":
		p.addMeasure(p.readings)
	case "each":
		p.predictNext(p.desk.Predict())
	default:
		p.reply(p.desk.Record(what, p.text("record-text")))
		p.saveSoon()
	}
}

// predictNext makes one prediction after another, each in a turn of the page.
func (p *page) predictNext(all *desk.Predictor) {
	p.later(0, func() {
		r, more := all.Next()
		p.reply(r)
		if more {
			p.predictNext(all)
		}
	})
}

// showRecord stands the boat in hand beside its record, as it changes, in the table
// and over the picture, and shows what is in the notebook.
func (p *page) showRecord() {
	p.showMeasures(p.recorded)
	p.showMeasures(p.readings)
	p.showSaid()
	corrections := p.work.Corrections()
	p.say("corrected", corrections)
	p.hide("uncorrect", corrections == "")
	slots, another := p.desk.RecordSlots()
	p.fillAll(slots)
	if another {
		p.id("record-name").Set("value", p.work.Notebook.Record.Name)
	}
	if another || len(p.work.Measurements(work.Recorded)) > 0 {
		p.view.Measured = p.work.Measured()
		p.draw()
	}
}

// showSaid writes what is wrong with the measurements at their rows, and what the
// record says of the boat's ends under them.
func (p *page) showSaid() {
	rows, said, notes := p.desk.Said()
	p.recorded.say(rows)
	p.readings.say(nil)
	p.say("record-said", said)
	p.fill("record-notes", notes)
}
