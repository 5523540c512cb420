package markup

import (
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/sheet"
	"barkwright/core/units"
)

// fold is the frame of a table in a fold of its own.
func fold(t answer.Table) string {
	return `<details class="sheet" data-fold="` + t.Key + `"` + opened(t) + `><summary>` + draw.Escape(t.Title) +
		`</summary><p class="help">` + draw.Escape(t.Note) +
		`</p><div class="scroll" role="region" aria-label="` + draw.Escape(t.Title) +
		`"></div></details>`
}

func opened(t answer.Table) string {
	if t.Open {
		return " open"
	}
	return ""
}

// scrolled begins the box that a table too wide for the page is scrolled in.
func scrolled(t answer.Table) string {
	return `<div class="scroll" tabindex="0" role="region" aria-label="` + draw.Escape(t.Title) + `">`
}

// Table is a table's HTML.
func Table(t answer.Table, s units.System) string {
	var b strings.Builder
	if err := sheet.HTMLTable(&b, t, s); err != nil {
		panic("markup: a strings.Builder does not fail")
	}
	return b.String()
}

// Titled is a table under its title and note; empty where it has no rows.
func Titled(t answer.Table, s units.System) string {
	if len(t.Rows) == 0 {
		return ""
	}
	return `<h3>` + draw.Escape(t.Title) + `</h3><p class="help">` + draw.Escape(t.Note) + `</p>` + scrolled(t) +
		Table(t, s) + "</div>"
}

// Cell is what a cell of a table shows, and its value in SI where it is a number.
type Cell struct {
	Text, Value string
	Number      bool
}

// Cells are those of a table row by row, in the order of Table.
func Cells(t answer.Table, s units.System) []Cell {
	var cells []Cell
	for _, r := range t.Rows {
		for i, c := range r.Cells {
			cell := Cell{Text: t.Columns[i].Format(c, s), Number: c.Text == ""}
			if cell.Number {
				cell.Value = strconv.FormatFloat(c.Value, 'g', 9, 64)
			}
			cells = append(cells, cell)
		}
	}
	return cells
}

// Shape is the same for two tables where only what the cells show is different: one
// can then be brought to the other cell by cell.
func Shape(t answer.Table) string {
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
