package record

import (
	"fmt"
	"strings"

	"barkwright/core/units"
)

// toleranceBegins is where a tolerance begins in a cell, valueUnit the unit that a value ends in.
var (
	toleranceBegins = lazily(`\s*(?:±|\+/-|\+-)`)
	valueUnit       = lazily(`(?i)(?:^|[^a-z])(mm|cm|m|in|inch|inches|"|″)$`)
)

// partTolerance gives a tolerance that stands in the cell of its value a cell of its own.
func partTolerance(cells []string) []string {
	at := toleranceBegins().FindStringIndex(cells[0])
	if at == nil || at[0] == 0 {
		return cells
	}
	return append([]string{cells[0][:at[0]], strings.TrimSpace(cells[0][at[0]:])}, cells[1:]...)
}

// beside is the label that reads bare numbers beside a value: in the unit of the name, or else in the value's own.
func (l label) beside(value string) label {
	if unit := valueUnit().FindStringSubmatch(value); l.unit == "" && unit != nil {
		l.unit = " " + unit[1]
	}
	return l
}

// remark reads the cells after the value: a tolerance, how it was taken, whether it
// is to be kept, and what else stands there as the note.
func (d *Datum) remark(l label, cells []string, s units.System) {
	var notes []string
	for _, cell := range cells {
		bare := cell
		for _, mark := range []string{"±", "+/-", "+-"} {
			bare = strings.TrimPrefix(bare, mark)
		}
		if v, _, err := d.ToleranceKind().Parse(l.withUnit(bare), s); bare != cell && err == nil && v > 0 {
			d.Tolerance = v
			continue
		}
		switch word := strings.ToLower(cell); {
		case word == "":
			continue
		case word == "lettered" && !d.Counted():
			d.Tolerance = usual[lettered]
		case word == "scaled" && !d.Counted():
			d.Tolerance = usual[scaled]
		case word == "locked", word == "keep":
			d.Locked = true
			continue
		}
		notes = append(notes, cell)
	}
	d.Note = ShortNote(strings.Join(notes, "; "))
}

const longestNote = 200 // letters

// ShortNote is a note as far as it is kept.
func ShortNote(text string) string {
	if r := []rune(text); len(r) > longestNote {
		return string(r[:longestNote])
	}
	return text
}

// finish gives each row its thwart, or its place at the headboard, once the whole
// table is known.
func (t *table) finish() []Datum {
	outer, beyond := 0, 0
	var headboard *Place
	for _, r := range t.rows {
		if r.thwart != endThwart && r.Kind != Bay {
			outer = max(outer, r.thwart)
		}
		// An outermost thwart with a position of its own is one more.
		if r.thwart == endThwart && r.Kind == ThwartPosition {
			beyond = 1
		}
		if r.Kind == HeadboardPosition {
			headboard = &Place{From: r.At.From, Distance: r.Value, Side: r.At.Side}
		}
	}
	var data []Datum
	for _, r := range t.rows {
		d := r.Datum
		switch {
		case r.headboard && headboard == nil:
			t.refuseRow(r.row, r.text, "Where the headboard stands is not given: add a row for its position.")
			continue
		case r.headboard:
			height := d.At.Height
			d.At = *headboard
			d.At.Height = height
		case r.label.thwart == endThwart:
			d.Number = max(1, outer+beyond)
		case r.Kind == Bay || r.Kind == ThwartPosition || d.Placed():
			d.Number = max(d.Number, r.label.thwart)
		}
		if d.Number == 0 && (d.Kind == Bay || d.Kind == ThwartPosition) {
			t.refuseRow(r.row, r.text, "Say which thwart: first, second, end.")
			continue
		}
		if len(data) == MostData {
			t.refuseRow(r.row, r.text, fmt.Sprintf("A record holds at most %d measurements: this row and those under it are "+
				"left out.", MostData))
			break
		}
		data = append(data, d)
	}
	return data
}
