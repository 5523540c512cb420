package units

import "math"

// Shown is v, in the SI unit of its kind, as Format rounds it, or v where that cannot
// be written.
func (k Kind) Shown(v float64, s System) float64 {
	u := k.in(s)
	if !Shows(v) {
		return v
	}
	if den := u.denominator(s); den > 0 {
		return float64(steps(v, den)) * Inch / float64(den)
	}
	x := v/u.si + u.zero
	rounded := roundedNumber(math.Abs(x), u.placesOf(x))
	return (math.Copysign(rounded, x) - u.zero) * u.si
}

// Difference returns the difference of two values as Format shows them, with its sign:
// +1/2" or −13 mm. It returns "" where they show alike or one of them cannot be written.
func (k Kind) Difference(from, to float64, s System) string {
	if !Shows(from) || !Shows(to) {
		return ""
	}
	diff := k.Shown(to, s) - k.Shown(from, s)
	text := k.Amount(diff, s)
	switch {
	case text == k.Amount(0, s):
		return ""
	case diff < 0:
		return "−" + text
	}
	return "+" + text
}

// Amount is the size of a difference as text, without its sign. It has no zero of its own: ten
// degrees more are not 50 °F.
func (k Kind) Amount(diff float64, s System) string {
	u := k.in(s)
	u.zero = 0
	return u.text(math.Abs(diff), s, "", u.markAfter())
}

// ShownStep is the step that Format shows a value in, in the kind's SI unit.
func (k Kind) ShownStep(v float64, s System) float64 {
	u := k.in(s)
	if den := u.denominator(s); den > 0 {
		return Inch / float64(den)
	}
	return u.si * math.Pow10(-u.placesOf(v/u.si+u.zero))
}

// RoughStep is the step that Rough shows a value in, in the kind's SI unit.
func (k Kind) RoughStep(v float64, s System) float64 {
	return max(k.ShownStep(v, s), k.roughStep(v, s))
}

// RoughUpStep is RoughStep for values rounded upward.
func (k Kind) RoughUpStep(v float64, s System) float64 {
	return max(k.ShownStep(v, s), k.roughUpStep(v, s))
}
