package answer

import (
	"slices"

	"barkwright/core/stage"
	"barkwright/core/units"
)

// Table is rows of numbers, as builders read them at the bench.
type Table struct {
	Key, Title, Note string
	Home             stage.Key
	// Open tells that the page shows it unfolded at first.
	Open bool
	// OnPaper tells that its home's build sheet shows it, with Blanks as the headings of
	// columns to be written in.
	OnPaper bool
	Blanks  []string
	Columns []Column
	Rows    []Row
}

// Column is one column; all its numbers are of one kind, or it is units.Words.
type Column struct {
	Key, Label string
	Kind       units.Kind
	// Lofted shows feet, inches and eighths as tables of offsets do.
	Lofted bool
	// ScreenOnly tells that paper has no room for it.
	ScreenOnly bool
}

// Row is one row. Part names the piece of the picture it stands for, or is empty.
type Row struct {
	Part  string
	Cells []Cell
}

// Pick is the table with some of its columns, by their places.
func (t Table) Pick(columns []int) Table {
	out := t
	out.Columns, out.Rows = nil, make([]Row, len(t.Rows))
	for i, r := range t.Rows {
		out.Rows[i].Part = r.Part
	}
	for _, column := range columns {
		out.Columns = append(out.Columns, t.Columns[column])
		for i, r := range t.Rows {
			out.Rows[i].Cells = append(out.Rows[i].Cells, r.Cells[column])
		}
	}
	return out
}

// Paper is the table with the columns that paper has room for, and without the rows of which
// only the others tell anything.
func (t Table) Paper() Table {
	var columns, others []int
	for i, c := range t.Columns {
		if c.ScreenOnly {
			others = append(others, i)
		} else {
			columns = append(columns, i)
		}
	}
	tells := func(r Row, columns []int) bool {
		return slices.ContainsFunc(columns, func(i int) bool { return i > 0 && r.Cells[i].Text != dash.Text })
	}
	t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), func(r Row) bool { return tells(r, others) && !tells(r, columns) })
	return t.Pick(columns)
}

// Rounding is how a number in a table or a working is rounded.
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
	if c.Lofted && s != units.Metric {
		return units.Eighths(cell.Value)
	}
	return c.Kind.Format(c.Rounded(cell, s), s)
}

// Rounded is a number's value, no finer than it is good for.
func (c Column) Rounded(cell Cell, s units.System) float64 {
	return cell.Rounding.of(c.Kind, cell.Value, s)
}

// of is a value no finer than it is good for.
func (r Rounding) of(k units.Kind, v float64, s units.System) float64 {
	switch r {
	case Rough:
		return k.RoughValue(v, s)
	case RoughUp:
		return k.RoughUpValue(v, s)
	}
	return v
}
