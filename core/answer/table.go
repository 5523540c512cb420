package answer

import "barkwright/core/units"

// Table is rows of numbers, as builders read them at the bench.
type Table struct {
	Key, Title, Note string
	Group            Group
	Columns          []Column
	Rows             []Row
}

// Column is one column; all its numbers are of one kind.
type Column struct {
	Key, Label string
	Kind       units.Kind
}

// Row is one row. Part names the piece of the picture it stands for, or is empty.
type Row struct {
	Part  string
	Cells []Cell
}

// Cell is a number of its column's kind, or words where Text is set.
type Cell struct {
	Value float64
	Text  string
}

// Format is the cell as shown.
func (c Column) Format(cell Cell, s units.System) string {
	if cell.Text != "" {
		return cell.Text
	}
	return c.Kind.Format(cell.Value, s)
}

// num is a cell with a number; one that is none is named.
func num(v float64) Cell {
	if !units.Shows(v) {
		return words(units.NotWorkedOut)
	}
	return Cell{Value: v}
}

func whole(n int) Cell    { return Cell{Value: float64(n)} }
func words(s string) Cell { return Cell{Text: s} }
func yes(b bool, s string) Cell {
	if b {
		return Cell{Text: s}
	}
	return Cell{Text: "–"}
}
