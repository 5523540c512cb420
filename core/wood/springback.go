package wood

import "math"

// Springback is how far one strip opens when it is let out of its form, as an
// estimate with its range: the ratio of the radius it ends with to the form's.
// Low is 1: a strip dried in the form may keep all its bend. High is the strip
// let go cold at once, with no time in the form at all.
type Springback struct {
	Low, High     float64
	Kept          float64 // least share of the form's curvature that is kept: 1/High
	FullyStraight bool    // at the far end of the range it springs straight: Kept and High are 0
}

// StripSpringback is the relation for a single elastic-plastic strip of
// rectangular section, with x = yieldStrain R/t. It keeps the share 1 - 3x + 4x^3 of
// its curvature, zero from x = 1/2 on (textbook sheet bending, from memory, high).
// A lashed stem is so many single strips; the far smaller springback of a glued
// stack is not to be used for it.
func StripSpringback(yieldStrain, ratio float64) Springback {
	x := yieldStrain * ratio
	if !(x < 0.5) {
		return Springback{Low: 1, FullyStraight: true}
	}
	kept := 1 - 3*x + 4*math.Pow(x, 3)
	return Springback{Low: 1, High: 1 / kept, Kept: kept}
}

// Springback estimates the range for a lamination bent in the stock it was
// checked with. For a bend that WillNotFit it is the zero value.
func (b Bend) Springback(s Stock) Springback {
	if b.WillNotFit {
		return Springback{}
	}
	return StripSpringback(s.strength().YieldStrain(), b.Ratio)
}
