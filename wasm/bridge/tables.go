//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/sheet"
)

// fold is one table in its fold.
type fold struct {
	key    string
	at     js.Value // the details element
	scroll js.Value
	shape  string // columns and parts of the rows last written
	cells  []cell
}

// cell is one cell of a table: its text and its value.
type cell struct {
	text  slot
	value data
}

func (p *page) findFolds() {
	each(p.document, "[data-fold]", func(at js.Value) {
		p.folds = append(p.folds, &fold{key: at.Get("dataset").Get("fold").String(), at: at, scroll: at.Call("querySelector", ".scroll")})
	})
}

// showTables brings the tables that are open, or those that are not, up to date.
func (p *page) showTables(open bool) {
	for _, f := range p.folds {
		if f.at.Get("open").Bool() == open {
			p.showTable(f)
		}
	}
}

// showTable writes a table's cells, or the whole of it where its rows are others.
func (p *page) showTable(f *fold) {
	t, ok := answer.MakeTable(p.work.Canoe(), f.key)
	if !ok {
		return
	}
	if shape := shapeOf(t); shape != f.shape {
		p.writeTable(f, t)
		f.shape = shape
		return
	}
	i := 0
	for _, r := range t.Rows {
		for j, c := range r.Cells {
			f.cells[i].text.set(t.Columns[j].Format(c, p.work.System))
			if c.Text == "" {
				f.cells[i].value.put(valueText(c.Value))
			}
			i++
		}
	}
}

func valueText(v float64) string { return strconv.FormatFloat(v, 'g', 9, 64) }

// shapeOf is what must be the same for a table to be written cell by cell.
func shapeOf(t answer.Table) string {
	var b strings.Builder
	for _, c := range t.Columns {
		b.WriteString(c.Key + " ")
	}
	for _, r := range t.Rows {
		b.WriteString("|" + r.Part)
		for _, c := range r.Cells {
			if c.Text == "" {
				b.WriteByte('#')
			} else {
				b.WriteByte('.')
			}
		}
	}
	return b.String()
}

func (p *page) writeTable(f *fold, t answer.Table) {
	var b strings.Builder
	if err := sheet.HTMLTable(&b, t, p.work.System); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	held := ""
	if row := f.scroll.Call("querySelector", "tr:focus"); !row.IsNull() {
		held = row.Get("dataset").Get("part").String()
	}
	f.scroll.Set("innerHTML", b.String())
	f.cells = f.cells[:0]
	each(f.scroll, "tbody th, tbody td", func(at js.Value) {
		f.cells = append(f.cells, cell{text: slot{at: at}, value: dataOf(at, "value")})
	})
	f.stop(held)
	p.markRows()
}

// partRow finds the rows that stand for a part of the picture.
const partRow = "tbody tr[data-part]"

// stop makes a table one stop of the Tab key: its first row, from where the arrows
// go on, or where no row stands for a part the box that scrolls it. held is the part
// whose row had the focus before the table was written anew, or "".
func (f *fold) stop(held string) {
	rows := f.scroll.Call("querySelectorAll", partRow)
	if rows.Length() == 0 {
		f.scroll.Set("tabIndex", 0)
		return
	}
	f.scroll.Call("removeAttribute", "tabindex")
	row := rows.Index(0)
	each(f.scroll, partRow+`[data-part="`+held+`"]`, func(same js.Value) { row = same })
	row.Set("tabIndex", 0)
	if held != "" {
		row.Call("focus")
	}
}

// rowKey moves the focus from row to row, and with it the table's stop; the row it
// comes to marks its part.
func (p *page) rowKey(e js.Value) {
	row := e.Get("target")
	if !row.Call("matches", partRow).Bool() {
		return
	}
	rows := row.Call("closest", "table").Call("querySelectorAll", partRow)
	last, at := rows.Length()-1, 0
	for !rows.Index(at).Equal(row) {
		at++
	}
	to, ok := map[string]int{"ArrowDown": at + 1, "ArrowUp": at - 1, "Home": 0, "End": last}[e.Get("key").String()]
	if !ok {
		return
	}
	e.Call("preventDefault")
	row.Call("removeAttribute", "tabindex")
	next := rows.Index(max(0, min(to, last)))
	next.Set("tabIndex", 0)
	next.Call("focus")
}
