// Package lines makes lists to work from, one line at a time, out of a canoe's tables as
// the stages say: what is made, its size, what that is measured from, and what else is to
// be known. Each line has a key under which the log keeps that it is done.
package lines

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// List is a list of a canoe with its lines in the order of the work.
type List struct {
	stage.Bench
	Lines []Line
}

// Line is one line of a list.
type Line struct {
	// Key names the line in the log, in the same way in every list of a table.
	Key  string
	What string
	// Figure is the size as text, Value the same in SI units and Kind of what kind it is.
	Figure string
	Value  float64
	Kind   units.Kind
	From   string
	// Also is what else is to be known, Alike before it where pieces have one line.
	Also []string
	// Alike says how many pieces the line is of and where they are, or is empty for one.
	Alike string
	// Reading is what a tape reads here, without its value, where the list is of a kind
	// that a record knows.
	Reading *record.Datum
}

// Taped tells whether the figure is a length that a tape reads.
func (l Line) Taped() bool {
	k := l.Kind
	return k == units.Length || k == units.SmallLength || k == units.Thickness || k == units.Offset
}

// Lists are a stage's lists of a canoe, those without a line left out.
func Lists(c core.Canoe, st *stage.Stage, s units.System) []List {
	var all []List
	for _, b := range st.Bench {
		if l := Make(c, b, s); len(l.Lines) > 0 {
			all = append(all, l)
		}
	}
	return all
}

// Make is one list of a canoe. A row that shows none of the list's figures is no line.
func Make(c core.Canoe, b stage.Bench, s units.System) List {
	l := List{Bench: b}
	t, ok := answer.MakeTable(c, b.Table)
	if !ok {
		return l
	}
	keys := rowKeys(t)
	for _, r := range inOrder(t, b.Order) {
		row := row{&t, t.Rows[r].Cells, s}
		f, at, ok := row.figure(b.Figures)
		if !ok {
			continue
		}
		cell := row.cells[at]
		line := Line{Key: keys[r], What: answer.AtStart(row.words(b.What)), Figure: t.Columns[at].Format(cell, s),
			Value: t.Columns[at].Rounded(cell, s), Kind: t.Columns[at].Kind, From: f.From}
		if cell.Text != "" {
			line.Kind = units.Words
		}
		count, where := pieces(b, row.middle(b.Middle))
		if !b.Apart && len(where) > 0 {
			line.Alike, line.Also = count, append(line.Also, count)
		}
		for _, also := range b.Also {
			line.Also = append(line.Also, row.also(also, f.Column)...)
		}
		line.Reading = reading(b, row)
		if !b.Apart || len(where) == 0 {
			l.Lines = append(l.Lines, line)
			continue
		}
		for _, w := range where {
			piece := line
			piece.Key, piece.What = line.Key+"/"+strings.ReplaceAll(w, ", ", "/"), line.What+", "+w
			l.Lines = append(l.Lines, piece)
		}
	}
	return l
}

// Keys are the keys of what a table's rows stand for, one by one: those of its lines where
// a stage lists it at the bench, or else of its rows.
func Keys(c core.Canoe, table string) []string {
	for _, st := range stage.All() {
		for _, b := range st.Bench {
			if b.Table == table {
				var keys []string
				for _, l := range Make(c, b, units.Metric).Lines {
					keys = append(keys, l.Key)
				}
				return keys
			}
		}
	}
	t, _ := answer.MakeTable(c, table)
	return rowKeys(t)
}

// longestKey is the most letters of a row's key, which files bound at 80.
const longestKey = 60

// rowKeys names rows by the part that each stands for, or by their first words; alike ones
// are counted.
func rowKeys(t answer.Table) []string {
	seen := map[string]int{}
	keys := make([]string, len(t.Rows))
	for i, r := range t.Rows {
		key := r.Part
		for _, cell := range r.Cells {
			if key == "" && cell.Text != answer.Dash {
				key = cell.Text
			}
		}
		if key == "" {
			key = "row"
		}
		if runes := []rune(key); len(runes) > longestKey {
			key = string(runes[:longestKey])
		}
		if seen[key]++; seen[key] > 1 {
			key += "#" + strconv.Itoa(seen[key])
		}
		keys[i] = key
	}
	return keys
}

// pieces are how many pieces a row stands for, in words, and where each of them is.
func pieces(b stage.Bench, amidships bool) (count string, where []string) {
	switch {
	case b.Pieces == stage.TwoEnds && !amidships:
		return "2 alike: forward and aft", []string{"forward", "aft"}
	case b.Pieces == stage.FourQuarters && !amidships:
		return "4 places alike: both sides, forward and aft",
			[]string{"port, forward", "starboard, forward", "port, aft", "starboard, aft"}
	case b.Pieces == stage.FourQuarters:
		return "2 alike: port and starboard", []string{"port", "starboard"}
	}
	return "", nil
}

// reading is what a tape reads at a row: at a thwart by its number, else at its station.
func reading(b stage.Bench, r row) *record.Datum {
	k, ok := record.LookupKind(b.Reads)
	if !ok {
		return nil
	}
	d := record.Datum{Kind: k}
	if at := r.column("thwart"); at >= 0 {
		d.Number = int(r.cells[at].Value)
	} else if at := r.column("station"); at >= 0 {
		d.At.Distance = r.cells[at].Value
	}
	return &d
}
