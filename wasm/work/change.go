package work

import (
	"barkwright/core/answer"
	"barkwright/core/known"
	"barkwright/core/units"
)

// Change is how a number moved since the control in hand was taken up, with its
// sign: the difference of what is shown then and now, at both ends of a range. It is
// empty where that did not move, or is still being worked out.
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

// orNone says of an end of a range that it stayed.
func orNone(difference string) string {
	if difference == "" {
		return "0"
	}
	return difference
}
