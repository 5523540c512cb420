package answer

import "barkwright/core/units"

// column is a column together with what it shows of each thing that has a row.
type column[T any] struct {
	Column
	// cell is nil in a column that numbers the rows, beginning with from.
	cell func(T) Cell
	from int
}

// col is a column of numbers of one kind, in which words may stand for a number.
func col[T any](key, label string, k units.Kind, cell func(T) Cell) column[T] {
	return column[T]{Column: Column{Key: key, Label: label, Kind: k}, cell: cell}
}

// text is a column of words; where a thing has none it shows a dash.
func text[T any](key, label string, words func(T) string) column[T] {
	return col(key, label, units.Words, func(of T) Cell {
		if w := words(of); w != "" {
			return Cell{Text: w}
		}
		return dash
	})
}

// ordinal is a column that numbers the rows.
func ordinal[T any](key, label string, from int) column[T] {
	return column[T]{Column: Column{Key: key, Label: label, Kind: units.Count}, from: from}
}

// lofted shows a column as tables of offsets do.
func (c column[T]) lofted() column[T] {
	c.Lofted = true
	return c
}

// screenOnly keeps a column off paper.
func (c column[T]) screenOnly() column[T] {
	c.ScreenOnly = true
	return c
}

// fill is a table with its columns and a row for each thing.
func fill[T any](t Table, things []T, columns ...column[T]) Table {
	for _, c := range columns {
		t.Columns = append(t.Columns, c.Column)
	}
	for n, thing := range things {
		r := Row{Cells: make([]Cell, len(columns))}
		for i, c := range columns {
			if c.cell == nil {
				r.Cells[i] = whole(c.from + n)
			} else {
				r.Cells[i] = c.cell(thing)
			}
		}
		t.Rows = append(t.Rows, r)
	}
	return t
}

// refs points at things, for fill: all pointers share one copy of its code in the program,
// where every other type has its own.
func refs[T any](things []T) []*T {
	out := make([]*T, len(things))
	for i := range things {
		out[i] = &things[i]
	}
	return out
}

// parts names the pieces of the picture that the rows stand for.
func (t Table) parts(name func(row int) string) Table {
	for i := range t.Rows {
		t.Rows[i].Part = name(i)
	}
	return t
}

// orNone is the table, or one row that says so where it has none.
func (t Table) orNone(says string) Table {
	if len(t.Rows) == 0 {
		t.Rows = []Row{{Cells: dashes(says, len(t.Columns))}}
	}
	return t
}

// Dash stands where there is nothing to show.
const Dash = "–"

var dash = words(Dash)

// dashes returns n cells: the first holds a text, the others a dash.
func dashes(first string, n int) []Cell {
	out := make([]Cell, n)
	for i := range out {
		out[i] = dash
	}
	out[0] = words(first)
	return out
}

// when is a cell where there is one, and a dash where there is not.
func when(there bool, c Cell) Cell {
	if !there {
		return dash
	}
	return c
}

// saying is a cell with words in place of its number where there are any.
func (c Cell) saying(w string) Cell {
	if w != "" {
		c.Text = w
	}
	return c
}

// num returns a cell with a number. NaN and infinities are named in words.
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
