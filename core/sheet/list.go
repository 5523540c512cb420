package sheet

import (
	"slices"

	"barkwright/core/answer"
	"barkwright/core/units"
)

// arrangement puts a table in another order, by the table's key.
type arrangement map[string]func(answer.Table) answer.Table

// tables writes the tables that are on the sheet, each with the columns it has on paper.
func (s *page) tables(arrange arrangement) {
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(s.Canoe, key)
		if !t.OnPaper || t.Home != s.Key {
			continue
		}
		t = t.Paper()
		if in := arrange[t.Key]; in != nil {
			t = in(t)
		}
		s.table(t)
	}
}

// first is a table with some of its columns, by key, before the others.
func first(t answer.Table, keys ...string) answer.Table {
	var order []int
	for _, key := range keys {
		order = append(order, slices.IndexFunc(t.Columns, func(c answer.Column) bool { return c.Key == key }))
	}
	for i := range t.Columns {
		if !slices.Contains(order, i) {
			order = append(order, i)
		}
	}
	return t.Pick(order)
}

func (s *page) table(t answer.Table) {
	// A short table stays on one page; a long one repeats its head.
	const short = 14
	class := "long"
	if len(t.Rows) <= short {
		class = "short"
	}
	s.raw(`<div class="` + class + `"><table class="list"><caption>`)
	s.text(t.Title)
	s.raw("</caption><thead><tr>")
	for _, c := range t.Columns {
		s.raw(`<th scope="col">`)
		s.text(c.Label)
		s.raw("</th>")
	}
	for _, label := range t.Blanks {
		s.raw(`<th scope="col">`)
		s.text(label)
		s.raw("</th>")
	}
	s.raw("</tr></thead><tbody>")
	for _, r := range t.Rows {
		s.raw("<tr>")
		for i, cell := range r.Cells {
			s.cell(t.Columns[i], cell, i == 0)
		}
		for range t.Blanks {
			s.raw(`<td class="blank"></td>`)
		}
		s.raw("</tr>")
	}
	s.raw("</tbody></table>")
	if t.Note != "" {
		s.element("p", t.Note)
	}
	s.raw("</div>")
}

func (s *page) cell(c answer.Column, cell answer.Cell, first bool) {
	// Words shorter than this are set like numbers.
	const wordy = 5
	tag, class := "td", ""
	if first {
		tag = "th"
	} else if len(cell.Text) >= wordy {
		class = ` class="words"`
	}
	s.raw("<" + tag + class + ">")
	s.text(c.Format(cell, s.System))
	s.raw("</" + tag + ">")
}

// tally writes what is needed and a box to tick for each, in tens; where they are
// many a box stands for several.
func (s *page) tally(what, needed string, count int) {
	const most = 100
	each := 1
	for _, n := range []int{2, 5, 10, 20, 50} {
		if count > most*each {
			each = n
		}
	}
	boxes := (count + each - 1) / each
	s.raw(`<div class="tally"><p><b>`)
	s.text(what)
	s.raw("</b> <span>")
	s.text(needed)
	if each > 1 {
		s.text(", " + units.Count.Format(float64(each), s.System) + " to a box")
	}
	s.raw("</span></p>")
	for from := 0; from < boxes; from += 10 {
		s.raw(`<span class="ten">`)
		for range min(10, boxes-from) {
			s.raw(`<span class="tick"></span>`)
		}
		s.raw("</span>")
	}
	s.raw("</div>")
}
