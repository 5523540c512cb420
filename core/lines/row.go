package lines

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// row is a row of a table with its columns.
type row struct {
	t     *answer.Table
	cells []answer.Cell
	s     units.System
}

// column is a column's place, -1 for one that the table has not.
func (r row) column(key string) int {
	return slices.IndexFunc(r.t.Columns, func(c answer.Column) bool { return c.Key == key })
}

// text is the cell of a column as shown, empty where there is nothing to show.
func (r row) text(at int) string {
	if at < 0 || r.cells[at].Text == answer.Dash {
		return ""
	}
	return r.t.Columns[at].Format(r.cells[at], r.s)
}

// figure is the first figure that the row has, and its column's place.
func (r row) figure(figures []stage.Figure) (stage.Figure, int, bool) {
	for _, f := range figures {
		if at := r.column(f.Column); r.text(at) != "" {
			return f, at, true
		}
	}
	return stage.Figure{}, 0, false
}

// middle tells whether the row stands amidships, where the column is zero.
func (r row) middle(key string) bool {
	at := r.column(key)
	return at >= 0 && r.cells[at].Text == "" && r.cells[at].Value == 0
}

// words are a template with the row's cells in it; empty where one of them is.
func (r row) words(template string) string {
	out := template
	for {
		from := strings.IndexByte(out, '{')
		if from < 0 {
			return out
		}
		to := from + strings.IndexByte(out[from:], '}')
		cell := r.text(r.column(out[from+1 : to]))
		if cell == "" {
			return ""
		}
		out = out[:from] + cell + out[to+1:]
	}
}

// also are the facts that an entry of stage.Bench's Also gives, but not the figure again.
func (r row) also(what, figure string) []string {
	if strings.ContainsAny(what, " {") {
		if said := r.words(what); said != "" {
			return []string{said}
		}
		return nil
	}
	prefix, many := strings.CutSuffix(what, "*")
	var facts []string
	for at, c := range r.t.Columns {
		if c.Key != figure && (c.Key == what || many && strings.HasPrefix(c.Key, prefix)) {
			if said := r.text(at); said != "" {
				facts = append(facts, c.Label+": "+said)
			}
		}
	}
	return facts
}

// inOrder are the places of a table's rows by the leading number in a column, or as they
// stand where the column is "".
func inOrder(t answer.Table, column string) []int {
	rows := make([]int, len(t.Rows))
	for i := range rows {
		rows[i] = i
	}
	at := row{t: &t}.column(column)
	if at < 0 {
		return rows
	}
	lead := func(r int) int {
		number, _, _ := strings.Cut(t.Rows[r].Cells[at].Text, " ")
		n, _ := strconv.Atoi(number)
		return n
	}
	slices.SortStableFunc(rows, func(a, b int) int { return cmp.Compare(lead(a), lead(b)) })
	return rows
}
