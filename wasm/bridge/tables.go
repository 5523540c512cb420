//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// fold is one table in its fold.
type fold struct {
	*standing
	key    string
	at     js.Value // the details element
	scroll js.Value
	shape  string // columns and parts of the rows last written
	cells  []cell
}

// cell is one cell of a table: its text and its value.
type cell struct {
	text  slot
	value mark
}

func (p *page) findFolds() {
	each(p.document, "[data-fold]", func(at js.Value) {
		p.folds = append(p.folds, &fold{standing: p.places.standing(at), key: data(at, "fold"), at: at,
			scroll: at.Call("querySelector", ".scroll")})
	})
}

// showTables brings the tables that are unfolded and in sight up to date. Others are once
// they come into sight.
func (p *page) showTables() {
	for _, f := range p.folds {
		if f.shows && f.at.Get("open").Bool() {
			p.showTable(f)
		}
	}
}

// unfoldForPaper writes the tables in sight that are folded, which a print of the page shows.
func (p *page) unfoldForPaper() {
	for _, f := range p.folds {
		if f.shows {
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
	if shape := markup.Shape(t); shape != f.shape {
		p.writeTable(f, t)
		f.shape = shape
		return
	}
	for i, c := range markup.Cells(t, p.work.System) {
		f.cells[i].text.set(c.Text)
		if c.Number {
			f.cells[i].value.put(c.Value)
		}
	}
}

func (p *page) writeTable(f *fold, t answer.Table) {
	held := ""
	if row := f.scroll.Call("querySelector", "tr:focus"); !row.IsNull() {
		held = data(row, "part")
	}
	f.scroll.Set("innerHTML", markup.Table(t, p.work.System))
	f.cells = f.cells[:0]
	each(f.scroll, "tbody th, tbody td", func(at js.Value) {
		f.cells = append(f.cells, cell{text: slotAt(at), value: markOf(at, "value")})
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
	at := 0
	for !rows.Index(at).Equal(row) {
		at++
	}
	to, ok := work.RowByKey(e.Get("key").String(), at, rows.Length())
	if !ok {
		return
	}
	e.Call("preventDefault")
	row.Call("removeAttribute", "tabindex")
	next := rows.Index(to)
	next.Set("tabIndex", 0)
	next.Call("focus")
}
