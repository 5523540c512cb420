package answer

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// Shown is a value of the number, such as Value or Low, as Text rounds it, in the kind's
// SI unit.
func (n Number) Shown(v float64, s units.System) float64 {
	switch {
	case n.Up:
		v = n.Kind.RoughUpValue(v, s)
	case n.Basis == known.Estimate:
		v = n.Kind.RoughValue(v, s)
	}
	return n.Kind.Shown(v, s)
}

// Step is the step that Text shows the number in, in the kind's SI unit.
func (n Number) Step(s units.System) float64 {
	switch {
	case n.Up:
		return n.Kind.RoughUpStep(n.Value, s)
	case n.Basis == known.Estimate:
		return n.Kind.RoughStep(n.Value, s)
	}
	return n.Kind.ShownStep(n.Value, s)
}

// Change is the difference of two states of a number as shown, with its sign: 6 1/2 and
// 8 1/2 differ by 2. A range has one at either end; where a word stands for either, it is
// the word before. It is empty where both show alike or one is still being worked out.
func Change(before, now Number, s units.System) string {
	if now.NotYet() || before.NotYet() {
		return ""
	}
	if now.Word != "" || before.Word != "" {
		if now.Text(s) != before.Text(s) {
			return "was " + before.Text(s)
		}
		return ""
	}
	difference := func(from, to float64) string {
		return now.Kind.Difference(before.Shown(from, s), now.Shown(to, s), s)
	}
	if now.Low == now.High && before.Low == before.High {
		return difference(before.Value, now.Value)
	}
	low, high := difference(before.Low, now.Low), difference(before.High, now.High)
	if low == high {
		return low
	}
	return orNone(low) + " to " + orNone(high)
}

// orNone returns words for an end of a range that did not move.
func orNone(difference string) string {
	if difference == "" {
		return "0"
	}
	return difference
}
