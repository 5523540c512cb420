//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/desk"
	"barkwright/wasm/work"
)

// measures is a list of measurements on the page, a row for each and, while one is
// begun, a row more.
type measures struct {
	of   work.List
	list js.Value
	rows []*measureRow
	// boat, notebook and system are whose rows these are; the first of them, stand,
	// are in the notebook, one more may be begun.
	boat     *work.Work
	notebook *record.Notebook
	system   units.System
	stand    int
}

// listenMeasures answers one of the lists.
func (p *page) listenMeasures(of work.List, id string) *measures {
	m := &measures{of: of, list: p.id(id)}
	p.on(m.list, "input", func(e js.Value) {
		if r, i, _ := m.at(e.Get("target")); r != nil {
			p.noteRow(m, i)
		}
	})
	p.on(m.list, "change", func(e js.Value) {
		if r, i, f := m.at(e.Get("target")); r != nil {
			p.measureEntered(m, r, i, f)
		}
	})
	p.on(m.list, "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		if r, i, _ := m.at(b); r != nil {
			p.strikeOut(m, i)
		}
	})
	// The Enter that asks for a row would go on to open the list that the focus goes to,
	// where the browser is slow enough for the focus to come between the two.
	asked := false
	p.on(m.list, "keypress", func(e js.Value) {
		if asked && e.Get("key").String() == "Enter" {
			e.Call("preventDefault")
		}
	})
	p.on(m.list, "keydown", func(e js.Value) {
		r, i, f := m.at(e.Get("target"))
		asked = r != nil && e.Get("key").String() == "Enter" && f != work.What
		if !asked {
			return
		}
		e.Call("preventDefault")
		p.measureEntered(m, r, i, f)
		if i == len(m.rows)-1 && r.Whole() {
			p.addMeasure(m)
		}
	})
	return m
}

// at is the row an element stands in, its place, and the field it is.
func (m *measures) at(target js.Value) (*measureRow, int, work.Field) {
	li := target.Call("closest", "li")
	for i, r := range m.rows {
		if r.li.Equal(li) {
			f, _ := strconv.Atoi(target.Get("dataset").Get("field").String())
			return r, i, work.Field(f)
		}
	}
	return nil, 0, 0
}

// measureEntered reads a field; a row that is whole goes into the notebook.
func (p *page) measureEntered(m *measures, r *measureRow, i int, f work.Field) {
	in := r.fields[f]
	text := in.Get("value").String()
	if f == work.Locked && !in.Get("checked").Bool() {
		text = ""
	}
	r.Enter(f, text, p.work.System)
	if r.Whole() {
		p.work.PutMeasurement(m.of, i, r.Datum)
		r.was, m.notebook, m.stand = r.Datum, p.work.Notebook, len(p.work.Measurements(m.of))
		p.noted()
	}
	m.dress(r, i, p.work.System)
	p.noteRow(m, i)
	p.showSaid()
	if r.Bad[f] != "" {
		p.speakWrong(fieldNames[f], r.Bad[f])
	}
}

// noted follows a change of the notebook.
func (p *page) noted() {
	p.refresh()
	p.save()
}

func (p *page) addMeasure(m *measures) {
	list := p.work.Measurements(m.of)
	if len(list) == record.MostData {
		p.reply(desk.Full())
		return
	}
	if len(m.rows) == len(list) {
		m.add(work.NextEntry(m.of, list))
		m.dress(m.rows[len(list)], len(list), p.work.System)
	}
	// Not at once: the key that asked for the row would go on to open its list.
	first := m.rows[len(m.rows)-1].fields[work.What]
	var focus js.Func
	focus = p.callback(func([]js.Value) {
		focus.Release()
		first.Call("focus")
	})
	js.Global().Call("setTimeout", focus)
}

// strikeOut takes row i off and moves the focus to what is left.
func (p *page) strikeOut(m *measures, i int) {
	m.rows[i].li.Call("remove")
	m.rows = append(m.rows[:i:i], m.rows[i+1:]...)
	p.work.DropMeasurement(m.of, i)
	m.notebook, m.stand = p.work.Notebook, len(p.work.Measurements(m.of))
	for k, r := range m.rows {
		m.dress(r, k, p.work.System)
	}
	p.noteRows(m)
	p.noted()
	p.showSaid()
	if len(m.rows) > 0 {
		m.rows[min(i, len(m.rows)-1)].fields[work.What].Call("focus")
	} else {
		m.list.Get("nextElementSibling").Call("querySelector", "button").Call("focus")
	}
}

// showMeasures brings a list to the notebook in hand. A row that is being entered
// stays as it is where the notebook has no other in its place.
func (p *page) showMeasures(m *measures) {
	if m.boat == p.work && m.notebook == p.work.Notebook && m.system == p.work.System {
		return
	}
	list := p.work.Measurements(m.of)
	another := m.boat != p.work
	if another {
		m.cut(0)
	}
	if m.stand != len(list) {
		m.cut(min(m.stand, len(list)))
	}
	for i, d := range list {
		if i == len(m.rows) {
			m.add(work.OfDatum(d))
		}
		if r := m.rows[i]; r.was != d {
			r.Entry, r.was = work.OfDatum(d), d
		}
	}
	m.boat, m.notebook, m.system, m.stand = p.work, p.work.Notebook, p.work.System, len(list)
	if another {
		p.halfRows(m)
	}
	for i, r := range m.rows {
		m.dress(r, i, m.system)
	}
}

// cut takes off the rows from place n on.
func (m *measures) cut(n int) {
	for _, r := range m.rows[n:] {
		r.li.Call("remove")
	}
	m.rows = m.rows[:n]
	m.stand = min(m.stand, n)
}
