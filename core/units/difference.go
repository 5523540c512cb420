package units

import "math"

// Shown is v, in the SI unit of its kind, as Format rounds it, or v where that cannot
// be written.
func (k Kind) Shown(v float64, s System) float64 {
	u := k.in(s)
	if !Shows(v) {
		return v
	}
	if u.style == feetInches || u.style == inchesOnly {
		den := s.denominator()
		return float64(steps(v, den)) * Inch / float64(den)
	}
	if u.style == thirtySeconds {
		if n := v / Inch * thirties; math.Abs(n-math.Round(n)) <= nearlyThirty {
			return math.Round(n) * Inch / thirties
		}
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
	u := k.in(s)
	// A difference has no zero of its own: ten degrees more are not 50 °F.
	u.zero = 0
	diff := k.Shown(to, s) - k.Shown(from, s)
	text := u.text(math.Abs(diff), s, "", u.markAfter())
	switch {
	case text == u.text(0, s, "", u.markAfter()):
		return ""
	case diff < 0:
		return "−" + text
	}
	return "+" + text
}

// ShownStep is the step that Format shows a value in, in the kind's SI unit.
func (k Kind) ShownStep(v float64, s System) float64 {
	u := k.in(s)
	if u.style == feetInches || u.style == inchesOnly {
		return s.Step()
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
