package units

import (
	"math"
	"strconv"
)

// fraction is a length as a tape shows it: feet, inches and a reduced fraction
// of an inch.
type fraction struct {
	feet, inches, over, under int64
	showFeet                  bool
}

const (
	nanometres     = 1e9
	nanometresInch = 25_400_000
	inchesInFoot   = 12
)

// steps returns how many 1/den inches are nearest to a length in metres, halves
// away from zero. 1/8 and 1/16 inch are whole even numbers of nanometres and 1/64 a
// whole odd one, which no length halves, so all of it is exact once the length is in
// nanometres.
func steps(metres float64, den int64) int64 {
	nm := int64(math.Round(metres * nanometres))
	step := nanometresInch / den
	if nm < 0 {
		return -((-nm + step/2) / step)
	}
	return (nm + step/2) / step
}

// splitInches splits n >= 0 steps of 1/den inch, carried through and reduced.
func splitInches(n, den int64, feet bool) fraction {
	f := fraction{inches: n / den, over: n % den, under: den}
	for f.over > 0 && f.over%2 == 0 {
		f.over, f.under = f.over/2, f.under/2
	}
	if feet {
		f.feet, f.inches = f.inches/inchesInFoot, f.inches%inchesInFoot
		f.showFeet = f.feet > 0
	}
	return f
}

// marked returns 15' 3 1/2", 9 1/2", 1/2" or 0".
func (f fraction) marked() string {
	text := f.inchText(f.showFeet) + `"`
	if f.showFeet {
		return whole(f.feet) + "' " + text
	}
	return text
}

// Eighths is a length in feet, inches and eighths of an inch with hyphens between, as tables of
// offsets have it: 1-6-3 is 1 foot 6 and three eighths inches. Less than nothing has a minus.
func Eighths(metres float64) string {
	if !Shows(metres) {
		return NotWorkedOut
	}
	n, sign := steps(metres, 8), ""
	if n < 0 {
		n, sign = -n, "−"
	}
	const inFoot = 8 * inchesInFoot
	return sign + whole(n/inFoot) + "-" + whole(n%inFoot/8) + "-" + whole(n%8)
}

// worded returns 15 ft 3 1/2 in, as the echo of an entry says it.
func (f fraction) worded() string {
	text := f.inchText(f.showFeet) + " in"
	if f.showFeet {
		return whole(f.feet) + " ft " + text
	}
	return text
}

func (f fraction) inchText(keepZero bool) string {
	switch {
	case f.over == 0:
		return whole(f.inches)
	case f.inches == 0 && !keepZero:
		return whole(f.over) + "/" + whole(f.under)
	}
	return whole(f.inches) + " " + whole(f.over) + "/" + whole(f.under)
}

func (f fraction) spoken() string {
	inches := f.spokenInches()
	if !f.showFeet {
		return inches
	}
	feet := whole(f.feet) + " feet"
	if f.feet == 1 {
		feet = "1 foot"
	}
	if f.inches == 0 && f.over == 0 {
		return feet
	}
	return feet + " " + inches
}

func (f fraction) spokenInches() string {
	switch {
	case f.over == 0 && f.inches == 1:
		return "1 inch"
	case f.over == 0:
		return whole(f.inches) + " inches"
	case f.inches == 0 && f.under == 2:
		return "half an inch"
	case f.inches == 0:
		return f.spokenPart() + " of an inch"
	}
	return whole(f.inches) + " and " + f.spokenPart() + " inches"
}

// spokenPart returns a half, three quarters, five sixteenths.
func (f fraction) spokenPart() string {
	parts := map[int64]string{2: "half", 4: "quarter", 8: "eighth", 16: "sixteenth", 32: "thirty-second",
		64: "sixty-fourth"}
	part := parts[f.under]
	if f.over > 1 {
		return spokenOdd(f.over) + " " + part + "s"
	}
	if f.under == 8 {
		return "an " + part
	}
	return "a " + part
}

// spokenOdd returns an odd number under 64 in words.
func spokenOdd(n int64) string {
	odd := map[int64]string{1: "one", 3: "three", 5: "five", 7: "seven", 9: "nine", 11: "eleven", 13: "thirteen",
		15: "fifteen", 17: "seventeen", 19: "nineteen"}
	tens := map[int64]string{2: "twenty", 3: "thirty", 4: "forty", 5: "fifty", 6: "sixty"}
	if n < 20 {
		return odd[n]
	}
	return tens[n/10] + "-" + odd[n%10]
}

func whole(n int64) string { return strconv.FormatInt(n, 10) }
