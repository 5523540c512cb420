//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// measureRow is one measurement's row on the page.
type measureRow struct {
	work.Entry
	was    record.Datum // as the notebook has it
	li     js.Value
	fields [work.Fields]js.Value
	says   slot
}

// fieldNames stand over the fields, in the order of work.Field.
var fieldNames = [work.Fields]string{"Measurement", "Where", "Value", "Tolerance", "Keep", "Note"}

// add appends a row to the page.
func (m *measures) add(e work.Entry) {
	var b strings.Builder
	b.WriteString(`<li>`)
	for f := range work.Fields {
		b.WriteString(`<label><span>` + fieldNames[f] + `</span>`)
		data := ` data-field="` + strconv.Itoa(int(f)) + `"`
		switch f {
		case work.What:
			b.WriteString(`<select` + data + `>`)
			for _, k := range work.KindsOf(m.of) {
				b.WriteString(`<option value="` + k.ID() + `">` + k.String() + `</option>`)
			}
			b.WriteString(`</select>`)
		case work.Locked:
			b.WriteString(`<input type="checkbox" value="yes"` + data + `>`)
		default:
			b.WriteString(`<input type="text" spellcheck="false" autocomplete="off"` + data + `>`)
		}
		b.WriteString(`</label>`)
	}
	b.WriteString(`<button type="button">✕</button><p class="fault"></p></li>`)
	m.list.Call("insertAdjacentHTML", "beforeend", b.String())
	r := &measureRow{Entry: e, li: m.list.Get("lastElementChild")}
	each(r.li, "[data-field]", func(at js.Value) {
		f, _ := strconv.Atoi(at.Get("dataset").Get("field").String())
		r.fields[f] = at
	})
	r.says.at = r.li.Call("querySelector", ".fault")
	m.rows = append(m.rows, r)
}

// dress shows what a row holds, but for what was typed and cannot be read.
func (m *measures) dress(r *measureRow, i int, s units.System) {
	name := "Measurement " + strconv.Itoa(i+1)
	r.li.Set("ariaLabel", name)
	id := m.list.Get("id").String() + "-" + strconv.Itoa(i+1)
	r.says.at.Set("id", id)
	r.li.Call("querySelector", "button").Set("ariaLabel", "Strike out measurement "+strconv.Itoa(i+1))
	for f, in := range r.fields {
		f := work.Field(f)
		in.Call("setAttribute", "aria-describedby", id)
		in.Call("setAttribute", "aria-invalid", r.Bad[f] != "")
		switch {
		case f == work.Locked:
			in.Set("checked", r.Datum.Locked)
		case r.Bad[f] == "":
			in.Set("value", r.Text(f, s))
		}
	}
	r.fields[work.Where].Set("disabled", !r.Sided())
}

// say writes under each row why a field of it cannot be read, and what more is said
// of it.
func (m *measures) say(more map[int]string) {
	for i, r := range m.rows {
		var texts []string
		for _, bad := range r.Bad {
			if bad != "" {
				texts = append(texts, bad)
			}
		}
		if text := more[i]; text != "" {
			texts = append(texts, text)
		}
		r.says.set(strings.Join(texts, " "))
	}
}
