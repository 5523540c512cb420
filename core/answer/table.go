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

// Rounding is how a number in a table is rounded.
type Rounding int

const (
	// Exact is to the tape's own step.
	Exact Rounding = iota
	// Rough is an estimate's.
	Rough
	// RoughUp is that of an estimate of which too little spoils the work.
	RoughUp
)

// Cell is a number of its column's kind, or words where Text is set.
type Cell struct {
	Value    float64
	Text     string
	Rounding Rounding
}

// Format is the cell as shown.
func (c Column) Format(cell Cell, s units.System) string {
	if cell.Text != "" {
		return cell.Text
	}
	return c.Kind.Format(c.Rounded(cell, s), s)
}

// Rounded is a number's value, no finer than it is good for.
func (c Column) Rounded(cell Cell, s units.System) float64 {
	switch cell.Rounding {
	case Rough:
		return c.Kind.RoughValue(cell.Value, s)
	case RoughUp:
		return c.Kind.RoughUpValue(cell.Value, s)
	}
	return cell.Value
}

// num is a cell with a number; one that is none is named.
func num(v float64) Cell { return rounded(v, Exact) }

// about is num of an estimate, and atLeast of one of which too little spoils the work.
func about(v float64) Cell   { return rounded(v, Rough) }
func atLeast(v float64) Cell { return rounded(v, RoughUp) }

func rounded(v float64, r Rounding) Cell {
	if !units.Shows(v) {
		return words(units.NotWorkedOut)
	}
	return Cell{Value: v, Rounding: r}
}

func whole(n int) Cell    { return Cell{Value: float64(n)} }
func words(s string) Cell { return Cell{Text: s} }
func yes(b bool, s string) Cell {
	if b {
		return Cell{Text: s}
	}
	return Cell{Text: "–"}
}
