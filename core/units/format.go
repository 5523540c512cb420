package units

import (
	"math"
)

const noSuchKind = "units: no such kind"

// NotWorkedOut stands in place of a value that is not finite or beyond 9e9. No result
// comes to that: the random tests hold every one of them to it.
const NotWorkedOut = "not worked out"

// largestShown bounds what can be shown, in SI units: nine digits before the
// point leave nine for nanometres inside an int64.
const largestShown = 9e9

// Format returns v, in the SI unit of its kind, as text with its unit:
// 15' 3 1/2" or 4661 mm, 12.4 ft², 185 lb. A negative value carries a true
// minus sign.
func (k Kind) Format(v float64, s System) string {
	u := k.in(s)
	return u.text(v, s, "−", u.markAfter())
}

// Rough is Format for an estimate, no finer than it is good for.
func (k Kind) Rough(v float64, s System) string { return k.Format(k.RoughValue(v, s), s) }

// RoughUp is Rough where too little spoils the work: rounded up.
func (k Kind) RoughUp(v float64, s System) string { return k.Format(k.RoughUpValue(v, s), s) }

// RoughValue is an estimate rounded to what it is good for, in the kind's SI unit:
// lengths to a quarter inch or 5 mm, runs to a foot or half a metre and of a hundred feet
// or 30 m to ten feet or 5 m, masses to a tenth of a pound or kilogram, of two to a half,
// of ten to whole ones and of two hundred to ten, angles to a degree, areas of ten square
// feet or a square metre to a foot or a tenth, strains to a tenth of a percent, shares to
// a percent and forces to a tenth of a pound or a newton.
func (k Kind) RoughValue(v float64, s System) float64 { return to(v, k.roughStep(v, s), math.Round) }

// RoughUpValue is RoughValue upward, lengths to a half inch or 10 mm.
func (k Kind) RoughUpValue(v float64, s System) float64 { return to(v, k.roughUpStep(v, s), math.Ceil) }

func (k Kind) roughUpStep(v float64, s System) float64 {
	if k != Length && k != SmallLength {
		return k.roughStep(v, s)
	}
	if s == Metric {
		return 10 * Millimetre
	}
	return Inch / 2
}

// to rounds v to a step; one of zero leaves it. What is on a step but for its last bits
// is on it.
func to(v, step float64, round func(float64) float64) float64 {
	const slack = 1e-9
	if step == 0 {
		return v
	}
	if n := math.Round(v / step); math.Abs(v/step-n) < slack {
		return n * step
	}
	return round(v/step) * step
}

// roughStep is the step that an estimate is rounded to; zero for a kind that is shown no
// finer than that anyway.
func (k Kind) roughStep(v float64, s System) float64 {
	metric, size := s == Metric, math.Abs(v)
	pick := func(imperial, other float64) float64 {
		if metric {
			return other
		}
		return imperial
	}
	switch k {
	case Length, Offset, SmallLength:
		return pick(Inch/4, 5*Millimetre)
	case Run:
		if size >= pick(100*Foot, 30) {
			return pick(10*Foot, 5)
		}
		return pick(Foot, 0.5)
	case Mass:
		unit := k.in(s).si
		switch {
		case size >= 200*unit:
			return 10 * unit
		case size >= 10*unit:
			return unit
		case size >= 2*unit:
			return unit / 2
		}
		return unit / 10
	case Force:
		return k.in(s).si / 10
	case Angle:
		return Degree
	case Area:
		if size >= pick(10*SquareFoot, 1) {
			return pick(SquareFoot, 0.1)
		}
	case Strain:
		return 0.001
	case Percent:
		return 0.01
	}
	return 0
}

// Rounding says in what lengths are shown and how they are rounded.
func (s System) Rounding() string {
	in := "feet and inches"
	if s == Metric {
		in = "millimetres"
	}
	return in + ", rounded to " + Length.worded(s.Step(), s) + ", estimates to " + Length.worded(Length.roughStep(0, s), s)
}

// FormatASCII is Format in plain ASCII, for tables of comma-separated values.
func (k Kind) FormatASCII(v float64, s System) string {
	u := k.in(s)
	mark := u.ascii
	if mark == "" {
		mark = u.markAfter()
	}
	return u.text(v, s, "-", mark)
}

// Spoken returns v as a screen reader should say it: 15 feet 3 and a half inches.
func (k Kind) Spoken(v float64, s System) string {
	u := k.in(s)
	if !Shows(v) {
		return NotWorkedOut
	}
	if sign, f, ok := u.split(v, s); ok {
		if sign {
			return "minus " + f.spoken()
		}
		return f.spoken()
	}
	sign, digits := u.digits(v)
	word := u.many
	if digits == "1" {
		word = u.one
	}
	if word != "" {
		digits += " " + word
	}
	if sign {
		return "minus " + digits
	}
	return digits
}

// Unit returns the unit a number typed without one is read in, "" where the
// kind has none. For lengths shown in feet and inches that is the inch.
func (k Kind) Unit(s System) string { return k.in(s).name }

// One is one of Unit, in the kind's SI unit: a difference of it, where the unit has a zero of its own.
func (k Kind) One(s System) float64 { return k.in(s).si }

// SI names the unit that numbers of a kind are kept in, in ASCII; "" for a plain number
// and for words.
func (k Kind) SI() string {
	if k == Words {
		return ""
	}
	k.in(Metric) // a kind that does not exist panics
	return kinds[k].si
}

func (u unit) markAfter() string {
	if u.mark != "" || u.name == "" {
		return u.mark
	}
	return " " + u.name
}

func (u unit) text(v float64, s System, minus, mark string) string {
	if !Shows(v) {
		return NotWorkedOut
	}
	var body string
	negative, f, ok := u.split(v, s)
	if ok {
		body = f.marked()
	} else {
		negative, body = u.digits(v)
		body += mark
	}
	if negative {
		return minus + body
	}
	return body
}

// split returns v as a tape shows it; false where the unit is shown in decimals.
func (u unit) split(v float64, s System) (negative bool, f fraction, ok bool) {
	den := u.denominator(s)
	if den == 0 {
		return false, fraction{}, false
	}
	n := steps(v, den)
	if n < 0 {
		negative, n = true, -n
	}
	return negative, splitInches(n, den, u.style == feetInches), true
}

// denominator is that of the fractions of an inch that the unit is shown in; zero where
// it is shown in decimals.
func (u unit) denominator(s System) int64 {
	switch u.style {
	case feetInches, inchesOnly:
		return s.denominator()
	case sixtyFourths:
		return 64
	}
	return 0
}

// digits returns the size of v in its unit as decimal digits, no zeros at the
// end, and whether what is shown is below zero.
func (u unit) digits(v float64) (negative bool, text string) {
	x := v/u.si + u.zero
	text = roundedText(math.Abs(x), u.placesOf(x))
	return x < 0 && text != "0", text
}

// placesOf is how many decimals of x, in the unit, are shown.
func (u unit) placesOf(x float64) int {
	places := u.places
	if u.style == figures {
		for size := math.Abs(x); size >= 1 && places > 0; size /= 10 {
			places--
		}
	}
	return places
}

// roundedText writes x >= 0 to the given decimals, halves up, without zeros at
// the end.
func roundedText(x float64, places int) string {
	return Trimmed(roundedNumber(x, places), places)
}

// roundedNumber rounds x >= 0 to the given decimals, halves up.
func roundedNumber(x float64, places int) float64 {
	// A value meant as a half may stand a last bit below it: six digits beyond
	// the last printed one are settled first.
	const guard = 1e6
	scale := math.Pow10(places)
	return math.Round(math.Round(x*scale*guard)/guard) / scale
}

// Shows tells whether v can be written as a number.
func Shows(v float64) bool { return math.Abs(v) <= largestShown }
