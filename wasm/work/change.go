package work

import (
	"barkwright/core/answer"
	"barkwright/core/known"
	"barkwright/core/units"
)

// Change returns the difference between a number as shown now and as shown when the
// control in hand was taken up, with its sign. A range has one at either end. It is
// empty where nothing moved or the number is still being worked out.
func Change(before, now answer.Number, s units.System) string {
	if now.NotYet() || before.NotYet() {
		return ""
	}
	if now.Word != "" || before.Word != "" {
		if now.Text(s) != before.Text(s) {
			return "was " + before.Text(s)
		}
		return ""
	}
	difference := now.Kind.Difference
	if now.Basis == known.Estimate {
		difference = now.Kind.RoughDifference
	}
	if now.Low == now.High && before.Low == before.High {
		return difference(before.Value, now.Value, s)
	}
	low, high := difference(before.Low, now.Low, s), difference(before.High, now.High, s)
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
