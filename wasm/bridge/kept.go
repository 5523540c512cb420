//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

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
		if key := e.Get("key"); key.Type() == js.TypeString {
			p.reply(p.desk.Heard(key.String()))
		}
	})
	p.on(js.Global(), "hashchange", func(js.Value) { p.reply(p.desk.Address(address())) })
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
