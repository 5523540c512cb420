package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/record"
	"barkwright/core/refit"
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
func MeasuredTable(rows []refit.Row, s units.System) Table {
	t := Table{
		Key: "measured", Title: "Measured and as the boat stands",
		Note: "The boat's column follows as you go on changing it. A measurement that disagrees keeps its part in " +
			"the fit: the last column is what the others make of it.",
	}
	aside := func(r *refit.Row) bool { return r.State == refit.SetAside }
	return fill(t, refs(rows),
		text("what", "Measurement", func(r *refit.Row) string { return r.Datum.Named(s) }),
		col("value", "Measured", units.Length, func(r *refit.Row) Cell { return measured(r.Kind, r.Value) }),
		col("model", "The boat", units.Length, func(r *refit.Row) Cell {
			return when(!aside(r), measured(r.Kind,
				r.Model))
		}),
		col("difference", "Difference", units.Offset, func(r *refit.Row) Cell {
			return when(!aside(r), measured(r.Kind, between(r.ValueKind(), r.Value, r.Model, s)))
		}),
		col("tolerance", "Tolerance", units.SmallLength, func(r *refit.Row) Cell {
			return measured(r.Kind,
				r.Within())
		}),
		text("state", "State", stateOf),
		col("others", "What the others predict", units.Length, func(r *refit.Row) Cell {
			return when(r.Disagrees || r.Unfollowed, measured(r.Kind, r.Others))
		}),
		text("note", "Note", noteOf),
	)
}

func stateOf(r *refit.Row) string {
	switch {
	case r.Disagrees:
		return r.State.String() + ", disagrees"
	case r.Unfollowed:
		return r.State.String() + ", outside what this shape can follow"
	}
	return r.State.String()
}

func noteOf(r *refit.Row) string {
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
	return Dash
}

// HeldTable lists the parameters that the record does not tell, with their rules.
func HeldTable(held []refit.Held, s units.System) Table {
	type followed struct {
		design.Param
		refit.Held
	}
	var rows []followed
	for _, h := range held {
		if p, ok := design.Lookup(h.Key); ok {
			rows = append(rows, followed{p, h})
		}
	}
	return fill(Table{Key: "held", Title: "Not measured: filled in by a rule"}, refs(rows),
		text("what", "Dimension", func(f *followed) string { return f.Label }),
		text("value", "Value", func(f *followed) string { return f.Format(f.Value, s) }),
		text("rule", "Rule", func(f *followed) string { return f.Rule(s) }),
		text("source", "Source", func(f *followed) string { return f.Cited }),
	)
}

// PredictedTable is what the fit is worth: each measurement left out and predicted.
func PredictedTable(all []refit.Prediction, s units.System) Table {
	t := Table{
		Key: "predicted", Title: "Each measurement left out and predicted from the rest",
		Note: "How well the fit does on this record. On seven boats measured off published drawings, " +
			"themselves good to 0.5 in (13 mm), a cap top height " +
			"left out between known ones came back within about 0.2 in (5 mm, root mean square), the end thwart's within " +
			"0.6 in (15 mm), one beyond the last known within 1 in (25 mm), and a thwart's length within 1.4 in (36 mm).",
	}
	return fill(t, refs(all),
		text("what", "Left out", func(p *refit.Prediction) string { return p.Datum.Named(s) }),
		col("value", "Measured", units.Length, func(p *refit.Prediction) Cell { return measured(p.Kind, p.Value) }),
		col("predicted", "Predicted", units.Length, func(p *refit.Prediction) Cell {
			return measured(p.Kind,
				p.Predicted)
		}),
		col("error", "Off by", units.Offset, func(p *refit.Prediction) Cell {
			return measured(p.Kind, between(p.ValueKind(), p.Value, p.Predicted, s))
		}),
	)
}

// MovedTable lists the dimensions that tape readings moved, and where they changed a
// curve.
func MovedTable(r refit.Rebuilt, s units.System) Table {
	t := Table{Key: "moved", Title: "What the readings moved"}
	if len(r.Corrected) > 0 {
		t.Note = "A width or a height changes the boat where it was read and has died out at the next thwart. It " +
			"is kept with the boat as a correction."
	}
	type change struct{ what, before, after string }
	var changes []change
	for _, c := range r.Corrected {
		changes = append(changes, change{c.Named(s), units.Length.Format(c.Was, s), units.Length.Format(c.Is, s)})
	}
	for _, m := range r.Moved {
		if p, ok := design.Lookup(m.Key); ok {
			changes = append(changes, change{p.Label, p.Format(m.Before, s), p.Format(m.After, s)})
		}
	}
	return fill(t, refs(changes),
		text("what", "Dimension", func(c *change) string { return c.what }),
		text("before", "Was", func(c *change) string { return c.before }),
		text("after", "Is", func(c *change) string { return c.after }),
	)
}

// RibsMoved lists the ribs that are cut to another length than they were, and those
// that only one of the two boats has.
func RibsMoved(before, after core.Canoe, s units.System) Table {
	t := Table{Key: "ribsmoved", Title: "Ribs that change"}
	last := 0
	for _, c := range []core.Canoe{before, after} {
		last = max(last, c.Frame.Ribs[len(c.Frame.Ribs)-1].Number)
	}
	var all []movedRib
	for n := range last + 1 {
		r := movedRib{number: n}
		r.was, r.had = ribOf(before, n)
		r.is, r.has = ribOf(after, n)
		r.by = between(units.Length, r.was.Length, r.is.Length, s)
		if r.had != r.has || r.had && r.by != 0 {
			all = append(all, r)
		}
	}
	return fill(t, refs(all),
		col("rib", "Rib", units.Count, func(r *movedRib) Cell { return whole(r.number) }),
		col("before", "Was cut", units.Length, func(r *movedRib) Cell {
			return num(r.was.Length).saying(wordIf(!r.had,
				"none"))
		}),
		col("after", "Cut now", units.Length, func(r *movedRib) Cell {
			return num(r.is.Length).saying(wordIf(!r.has,
				"none"))
		}),
		col("change", "Change", units.Offset, func(r *movedRib) Cell { return when(r.had && r.has, num(r.by)) }),
		col("run", "Along the gunwale", units.Length, func(r *movedRib) Cell {
			if r.has {
				return num(r.is.Run)
			}
			return num(r.was.Run)
		}),
	).parts(func(i int) string { return wordIf(all[i].has, RibPart(all[i].number)) })
}

// movedRib is a rib of one number as it was and as it is, where the boat had and has it.
type movedRib struct {
	number   int
	was, is  frame.Rib
	had, has bool
	by       float64
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
