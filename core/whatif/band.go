package whatif

import (
	"strings"

	"barkwright/core/answer"
)

// Band is a part of the range over which the check that judges a result says the same.
type Band struct {
	// Left and Right bound it as it is drawn, half-way to the next value tried.
	Left, Right float64
	// First and Last are the values of the control in it that were tried.
	First, Last float64
	State       answer.State
	Word        string
}

// bands are those of a check, in the order of the control's values; none where no check judges.
func (w *Sweep) bands(check string) []Band {
	var out []Band
	joined := false
	for i, s := range w.Samples {
		c, ok := checked(s, check)
		if !ok {
			joined = false
			continue
		}
		left, right := w.between(i-1), w.between(i)
		if n := len(out) - 1; joined && out[n].Word == c.Word && out[n].State == c.State {
			out[n].Right, out[n].Last = right, s.At
			continue
		}
		out = append(out, Band{left, right, s.At, s.At, c.State, c.Word})
		joined = true
	}
	return out
}

// between is half-way from a sample to the next. At either end of what is tried, and of what
// can be built, it is that end.
func (w *Sweep) between(i int) float64 {
	switch {
	case i < 0:
		return w.Samples[0].At
	case i == len(w.Samples)-1 || w.Samples[i+1].Fault != nil:
		return w.Samples[i].At
	case w.Samples[i].Fault != nil:
		return w.Samples[i+1].At
	}
	return (w.Samples[i].At + w.Samples[i+1].At) / 2
}

// checked is what a check says of a sample; false where the boat cannot be built or nothing is
// checked by that key.
func checked(s Sample, check string) (answer.Warning, bool) {
	for _, c := range s.Checks {
		if c.Key == check {
			return c, true
		}
	}
	return answer.Warning{}, false
}

// checkOf is the key of the check that judges a result.
func checkOf(key string) string {
	home, rest, _ := strings.Cut(key, ".")
	switch {
	case home == "afloat" && strings.HasPrefix(rest, "gm"):
		return "afloat.steady"
	case home == "afloat":
		return "afloat.state"
	case home == "gunwale":
		return "gunwales.verdict"
	}
	return home + ".verdict"
}
