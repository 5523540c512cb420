package weigh

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/units"
)

// pieces are the tables whose rows are single pieces of a boat, with the column that each is
// cut or set by.
var pieces = []struct{ table, column string }{
	{"frame", "out"}, {"gores", "width"}, {"posts", "length"}, {"thwarts", "ends"}, {"ribs", "length"},
}

// Pieces are the pieces of one table that differ.
type Pieces struct {
	Key, Title string
	Rows       []Piece
}

// Piece is one of them. Where only one of the boats has it, the other text is empty, and so is
// Change.
type Piece struct{ Part, Name, Held, Now, Change string }

// PieceByPiece compares the rows of tables by what they stand for.
func PieceByPiece(held, now core.Canoe, s units.System) []Pieces {
	var out []Pieces
	for _, of := range pieces {
		was, _ := answer.MakeTable(held, of.table)
		is, _ := answer.MakeTable(now, of.table)
		column := -1
		for i, c := range is.Columns {
			if c.Key == of.column {
				column = i
			}
		}
		if p := (Pieces{of.table, is.Title, piecesOf(was, is, column, s)}); len(p.Rows) > 0 {
			out = append(out, p)
		}
	}
	return out
}

// piecesOf are the rows of a table that differ in a column.
func piecesOf(was, is answer.Table, column int, s units.System) []Piece {
	var out []Piece
	before := map[string]answer.Row{}
	for _, r := range was.Rows {
		before[r.Part] = r
	}
	there := map[string]bool{}
	c := is.Columns[column]
	kind := byKind[c.Kind]
	for _, r := range is.Rows {
		if r.Part == "" {
			continue
		}
		there[r.Part] = true
		if r.Cells[column].Text != "" {
			continue // not worked out yet
		}
		p := Piece{Part: r.Part, Name: named(is, r, s), Now: c.Format(r.Cells[column], s)}
		if b, ok := before[r.Part]; ok {
			x, y := b.Cells[column], r.Cells[column]
			p.Held = c.Format(x, s)
			if x.Text == "" && y.Text == "" {
				p.Change = worded(c.Kind, c.Rounded(x, s), c.Rounded(y, s), kind, s)
			}
			if p.Held == p.Now {
				continue
			}
		}
		out = append(out, p)
	}
	for _, r := range was.Rows {
		if r.Part != "" && !there[r.Part] {
			out = append(out, Piece{Part: r.Part, Name: named(was, r, s), Held: c.Format(r.Cells[column], s)})
		}
	}
	return out
}

// named is what a row is called: its first cell, with the column's word where that is a number.
func named(t answer.Table, r answer.Row, s units.System) string {
	first := t.Columns[0].Format(r.Cells[0], s)
	if math.Abs(r.Cells[0].Value) > 0 || r.Cells[0].Text == "" {
		return t.Columns[0].Label + " " + first
	}
	return first
}
