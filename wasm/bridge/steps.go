//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// steps are the places where the page shows what is done: a box and a line a step, and at
// each stage its notes and its turns on the stick.
type steps struct {
	boxes  map[string]js.Value
	stands map[string]*slot
	texts  map[string]*slot
}

func (p *page) findSteps() {
	p.steps = steps{map[string]js.Value{}, map[string]*slot{}, map[string]*slot{}}
	each(p.document, "[data-tick]", func(e js.Value) { p.steps.boxes[data(e, "tick")] = e })
	each(p.document, "[data-stands]", func(e js.Value) {
		at := slotAt(e)
		p.steps.stands[data(e, "stands")] = &at
	})
	each(p.document, "[data-said]", func(e js.Value) {
		at := slotAt(e)
		p.steps.texts[data(e, "said")] = &at
	})
	p.on(p.id("tables"), "change", func(e js.Value) {
		if key := data(e.Get("target"), "tick"); key != "" {
			p.work.Tick(key, "", today(), e.Get("target").Get("checked").Bool())
			p.entered()
		}
	})
	p.on(p.id("tables"), "input", func(e js.Value) {
		if key := data(e.Get("target"), "note"); key != "" {
			p.work.SetTyped(work.NoteKey(key), e.Get("target").Get("value").String())
			p.saveSoon()
		}
	})
	p.on(p.id("tables"), "keydown", func(e js.Value) {
		if key := data(e.Get("target"), "note"); key != "" && e.Get("key").String() == "Enter" {
			p.jot(key)
		}
	})
}

// entered shows and keeps what was ticked or noted.
func (p *page) entered() {
	p.showSteps()
	p.showControls()
	p.saveSoon()
	if p.showsPlan() {
		p.restSoon()
	}
}

// jot adds the note that stands typed at a stage.
func (p *page) jot(key string) {
	field := p.document.Call("querySelector", `[data-note="`+key+`"]`)
	p.work.Note(key, today(), field.Get("value").String())
	field.Set("value", "")
	p.work.SetTyped(work.NoteKey(key), "")
	p.entered()
}

// showHalfNotes puts back into the fields of notes what stood half typed in them.
func (p *page) showHalfNotes() {
	each(p.document, "[data-note]", func(field js.Value) {
		if text := p.work.Typed[work.NoteKey(data(field, "note"))]; text != field.Get("value").String() {
			field.Set("value", text)
			opened(field)
		}
	})
}

// readTape goes to a new reading of a kind, to be typed.
func (p *page) readTape(id string) {
	p.goInto(opened(p.id("built-list")), p.id("built-list"))
	p.addMeasure(p.readings)
	if rows := p.readings.rows; len(rows) > 0 {
		row := rows[len(rows)-1]
		row.fields[work.What].Set("value", id)
		p.measureEntered(p.readings, len(rows)-1, work.What)
	}
}

// opened opens every fold around an element and returns the element.
func opened(element js.Value) js.Value {
	for at := element.Call("closest", "details"); !at.IsNull(); at = at.Get("parentElement").Call("closest", "details") {
		at.Set("open", true)
	}
	return element
}

// showSteps writes what is done, on the stick too.
func (p *page) showSteps() {
	for _, k := range stage.Keys() {
		steps := p.work.Steps(k)
		for _, s := range steps {
			if box, ok := p.steps.boxes[s.Key]; ok && box.Get("checked").Bool() != s.Done {
				box.Set("checked", s.Done)
			}
			if at := p.steps.texts[s.Key]; at != nil {
				at.set(s.Text)
			}
			if at := p.steps.stands[s.Key]; at != nil {
				at.set(s.Says)
			}
		}
		each(p.document, `[data-progress="`+string(k)+`"]`, func(e js.Value) {
			done := work.Done(steps)
			setText(e, work.Counted(done, len(steps)))
			e.Get("dataset").Set("turns", 4*done/len(steps))
		})
		each(p.document, `[data-noted="`+string(k)+`"]`, func(e js.Value) { setHTML(e, markup.Noted(p.work.Noted(k), p.work.Dates)) })
	}
	p.showRepairs()
	p.showBench()
}
