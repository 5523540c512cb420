package work

import (
	"math"

	"barkwright/core/answer"
	"barkwright/core/units"
)

// Change is how a number moved since the control in hand was taken up, with its
// sign; empty where it did not, or is still being worked out.
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
	if before.Kind.Format(before.Value, s) == now.Kind.Format(now.Value, s) {
		return ""
	}
	diff := now.Value - before.Value
	text, sign := now.Kind.Format(math.Abs(diff), s), "+"
	switch {
	case text == now.Kind.Format(0, s):
		// Under half a step, though the two round to different ones.
		return ""
	case diff < 0:
		sign = "−"
	}
	return sign + text
}
