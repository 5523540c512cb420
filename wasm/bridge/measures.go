//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// measures is a list of measurements on the page.
type measures struct {
	*work.Rows
	list js.Value
	rows []*measureRow
}

// measureRow is one measurement's row on the page.
type measureRow struct {
	li     js.Value
	fields [work.Fields]js.Value
	says   slot
}

// listenMeasures answers one of the lists.
func (p *page) listenMeasures(of work.List, id string) *measures {
	m := &measures{Rows: work.NewRows(of, id), list: p.id(id)}
	p.on(m.list, "input", func(e js.Value) {
		if i, _, ok := m.at(e.Get("target")); ok {
			p.noteRow(m, i)
		}
	})
	p.on(m.list, "change", func(e js.Value) {
		if i, f, ok := m.at(e.Get("target")); ok {
			p.measureEntered(m, i, f)
		}
	})
	p.on(m.list, "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		if i, _, ok := m.at(b); ok {
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
		i, f, ok := m.at(e.Get("target"))
		asked = ok && e.Get("key").String() == "Enter" && f != work.What
		if !asked {
			return
		}
		e.Call("preventDefault")
		if whole := p.measureEntered(m, i, f); whole && i == len(m.rows)-1 {
			p.addMeasure(m)
		}
	})
	return m
}

// at is the place of the row an element stands in, and the field it is.
func (m *measures) at(target js.Value) (int, work.Field, bool) {
	li := target.Call("closest", "li")
	for i, r := range m.rows {
		if r.li.Equal(li) {
			f, _ := whole(data(target, "field"))
			return i, work.Field(f), true
		}
	}
	return 0, 0, false
}

// text is what stands in a field of a row; Locked has "yes" or nothing.
func (r *measureRow) text(f work.Field) string {
	if f == work.Locked && !r.fields[f].Get("checked").Bool() {
		return ""
	}
	return r.fields[f].Get("value").String()
}

// measureEntered reads a field; a row that is whole goes into the notebook.
func (p *page) measureEntered(m *measures, i int, f work.Field) (whole bool) {
	if whole = m.Enter(p.work, i, f, m.rows[i].text(f)); whole {
		p.noted()
	}
	p.dress(m, i)
	p.noteRow(m, i)
	p.showSaid()
	if bad := m.Entries[i].Bad[f]; bad != "" {
		p.speakWrong(f.String(), bad)
	}
	return whole
}

// noteRow remembers what stands half typed in a row.
func (p *page) noteRow(m *measures, i int) {
	var texts [work.Fields]string
	for f := range work.Fields {
		texts[f] = m.rows[i].text(f)
	}
	m.Note(p.work, i, texts)
	p.saveSoon()
}

// noted follows a change of the notebook.
func (p *page) noted() {
	p.refresh()
	p.save()
}

func (p *page) addMeasure(m *measures) {
	if !m.Add(p.work) {
		p.reply(desk.Full())
		return
	}
	p.dressRows(m)
	// Not at once: the key that asked for the row would go on to open its list.
	p.later(0, func() { m.rows[len(m.rows)-1].fields[work.What].Call("focus") })
}

// strikeOut takes row i off and moves the focus to what is left.
func (p *page) strikeOut(m *measures, i int) {
	m.rows[i].li.Call("remove")
	m.rows = append(m.rows[:i:i], m.rows[i+1:]...)
	m.Drop(p.work, i)
	p.dressRows(m)
	for k := range m.rows {
		p.noteRow(m, k)
	}
	p.noted()
	p.showSaid()
	if len(m.rows) > 0 {
		m.rows[min(i, len(m.rows)-1)].fields[work.What].Call("focus")
	} else {
		m.list.Get("nextElementSibling").Call("querySelector", "button").Call("focus")
	}
}

// dressRows brings the rows on the page to those of the list.
func (p *page) dressRows(m *measures) {
	for len(m.rows) > len(m.Entries) {
		last := len(m.rows) - 1
		m.rows[last].li.Call("remove")
		m.rows = m.rows[:last]
	}
	for len(m.rows) < len(m.Entries) {
		m.list.Call("insertAdjacentHTML", "beforeend", markup.MeasureRow(m.Of))
		r := &measureRow{li: m.list.Get("lastElementChild")}
		each(r.li, "[data-field]", func(at js.Value) {
			f, _ := whole(data(at, "field"))
			r.fields[f] = at
		})
		r.says.at = r.li.Call("querySelector", ".fault")
		m.rows = append(m.rows, r)
	}
	for i := range m.rows {
		p.dress(m, i)
	}
}

// dress shows what a row holds.
func (p *page) dress(m *measures, i int) {
	r, row, n := m.rows[i], m.Entries[i], strconv.Itoa(i+1)
	id := m.list.Get("id").String() + "-" + n
	r.says.at.Set("id", id)
	r.li.Set("ariaLabel", row.Name(i))
	r.li.Call("querySelector", "button").Set("ariaLabel", row.StrikeOut(i))
	for f, in := range r.fields {
		f := work.Field(f)
		in.Call("setAttribute", "aria-describedby", id)
		in.Call("setAttribute", "aria-invalid", row.Bad[f] != "")
		if f == work.Locked {
			in.Set("checked", row.Datum.Locked)
		} else {
			in.Set("value", row.Shows(f, p.work.System))
		}
	}
	r.fields[work.Where].Set("disabled", !row.Sided())
}

// showMeasures brings a list to the notebook in hand.
func (p *page) showMeasures(m *measures) {
	if m.Show(p.work) {
		p.dressRows(m)
	}
}

// say writes under each row why a field of it cannot be read, and what more is said
// of it.
func (m *measures) say(more map[int]string) {
	for i, r := range m.rows {
		r.says.set(m.Entries[i].Says(more[i]))
	}
}
