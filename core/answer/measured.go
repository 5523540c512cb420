package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/record"
	"barkwright/core/units"
)

// measured is a value of a datum: a length, or a count as words.
func measured(k record.Kind, v float64) Cell {
	if k.Counted() {
		return words(strconv.FormatFloat(v, 'f', -1, 64))
	}
	return num(v)
}

// between is the difference of two values as they show.
func between(k units.Kind, from, to float64, s units.System) float64 {
	return k.Shown(to, s) - k.Shown(from, s)
}

// MeasuredTable stands a boat beside what was measured.
func MeasuredTable(rows []record.Row, s units.System) Table {
	t := Table{
		Key: "measured", Title: "Measured and as the boat stands",
		Note: "The boat's column follows as you go on changing it. A measurement that disagrees keeps its part in the fit: the last column is what the others make of it.",
		Columns: []Column{{"what", "Measurement", units.Count}, {"value", "Measured", units.Length}, {"model", "The boat", units.Length}, {"difference", "Difference", units.Offset},
			{"tolerance", "Tolerance", units.SmallLength}, {"state", "State", units.Count}, {"others", "The others say", units.Length}, {"note", "Note", units.Count}},
	}
	for _, r := range rows {
		cells := []Cell{words(r.Datum.Named(s)), measured(r.Kind, r.Value), words("–"), words("–"), measured(r.Kind, r.Within()), words(r.State.String()), words("–"), words(noteOf(r))}
		if r.State != record.SetAside {
			cells[2], cells[3] = measured(r.Kind, r.Model), measured(r.Kind, between(r.ValueKind(), r.Value, r.Model, s))
		}
		switch {
		case r.Disagrees:
			cells[5], cells[6] = words(r.State.String()+", disagrees"), measured(r.Kind, r.Others)
		case r.Unfollowed:
			cells[5], cells[6] = words(r.State.String()+", outside what this shape can follow"), measured(r.Kind, r.Others)
		}
		t.Rows = append(t.Rows, Row{Cells: cells})
	}
	return t
}

func noteOf(r record.Row) string {
	kept := "kept as recorded"
	if !r.Kept() {
		kept = "to be kept, but is not"
	}
	switch {
	case r.Locked && r.Note != "":
		return kept + "; " + r.Note
	case r.Locked:
		return kept
	case r.Note != "":
		return r.Note
	}
	return "–"
}

// HeldTable lists what the record says nothing of and the rule that gave it.
func HeldTable(held []record.Held, s units.System) Table {
	t := Table{
		Key: "held", Title: "Not in the record, held by a rule",
		Columns: []Column{{"what", "Dimension", units.Count}, {"value", "Value", units.Count}, {"rule", "Rule", units.Count}, {"source", "Source", units.Count}},
	}
	for _, h := range held {
		if p, ok := design.Lookup(h.Key); ok {
			t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Label), words(p.Format(h.Value, s)), words(h.Rule(s)), words(h.Source)}})
		}
	}
	return t
}

// PredictedTable is what the fit is worth: each measurement left out and predicted.
func PredictedTable(all []record.Prediction, s units.System) Table {
	t := Table{
		Key: "predicted", Title: "Each measurement left out and predicted from the rest",
		Note:    "What the fit is worth on this record. On the seven published boats it was tried with, a rail height left out between known ones came back within about 0.2 in (root mean square), the end thwart's within 0.6, one beyond the last known within 1, and a thwart's length within 1.4.",
		Columns: []Column{{"what", "Left out", units.Count}, {"value", "Measured", units.Length}, {"predicted", "Predicted", units.Length}, {"error", "Off by", units.Offset}},
	}
	for _, p := range all {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Datum.Named(s)), measured(p.Kind, p.Value), measured(p.Kind, p.Predicted), measured(p.Kind, between(p.ValueKind(), p.Value, p.Predicted, s))}})
	}
	return t
}

// MovedTable lists the dimensions that tape readings moved, and where they changed a
// curve.
func MovedTable(r record.Rebuilt, s units.System) Table {
	t := Table{
		Key: "moved", Title: "What the readings moved",
		Columns: []Column{{"what", "Dimension", units.Count}, {"before", "Was", units.Count}, {"after", "Is", units.Count}},
	}
	if len(r.Corrected) > 0 {
		t.Note = "A width or a height changes the boat where it was read and has died out at the next thwart. It is kept with the boat as a correction."
	}
	for _, c := range r.Corrected {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(c.Named(s)), words(units.Length.Format(c.Was, s)), words(units.Length.Format(c.Is, s))}})
	}
	for _, m := range r.Moved {
		if p, ok := design.Lookup(m.Key); ok {
			t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Label), words(p.Format(m.Before, s)), words(p.Format(m.After, s))}})
		}
	}
	return t
}

// RibsMoved lists the ribs that are cut to another length than they were, and those
// that only one of the two boats has.
func RibsMoved(before, after core.Canoe, s units.System) Table {
	t := Table{
		Key: "ribsmoved", Title: "Ribs that change",
		Columns: []Column{{"rib", "Rib", units.Count}, {"before", "Was cut", units.Length}, {"after", "Cut now", units.Length}, {"change", "Change", units.Offset}, {"run", "Along the gunwale", units.Length}},
	}
	last := 0
	for _, c := range []core.Canoe{before, after} {
		last = max(last, c.Frame.Ribs[len(c.Frame.Ribs)-1].Number)
	}
	for n := range last + 1 {
		was, had := ribOf(before, n)
		is, has := ribOf(after, n)
		r := Row{Part: RibPart(n)}
		switch {
		case had && has && between(units.Length, was.Length, is.Length, s) != 0:
			r.Cells = []Cell{whole(n), num(was.Length), num(is.Length), num(between(units.Length, was.Length, is.Length, s)), num(is.Run)}
		case had && !has:
			r.Part = ""
			r.Cells = []Cell{whole(n), num(was.Length), words("none"), words("–"), num(was.Run)}
		case has && !had:
			r.Cells = []Cell{whole(n), words("none"), num(is.Length), words("–"), num(is.Run)}
		default:
			continue
		}
		t.Rows = append(t.Rows, r)
	}
	return t
}

// ribOf is the rib of a number, and whether the boat has it.
func ribOf(c core.Canoe, number int) (frame.Rib, bool) {
	for _, r := range c.Frame.Ribs {
		if r.Number == number {
			return r, true
		}
	}
	return frame.Rib{}, false
}
