package shape

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// cornerSolved is how near the corner is found, m.
const cornerSolved = 1e-12

// mostLean bounds how far a side may lean in where a corner is looked for.
const mostLean = 75 * units.Degree

// At is the outline with its corner at a half-breadth.
func (o Outline) At(corner float64) Outline {
	o.Corner = corner
	return o
}

// WithHalfGirth returns the outline whose section has that half girth, looking for
// the corner between the centre line and most. Girth rises with the corner, so at most
// one corner fits. Where none does it returns the nearer end and false.
func (o Outline) WithHalfGirth(girth, most float64) (Outline, bool) {
	c, ok := geom.Zero(func(c float64) float64 {
		return New(o.At(c)).HalfGirth() - girth
	}, 0, most, cornerSolved)
	return o.At(c), ok
}

// WithBreadth returns the outline whose section stands out to that half-breadth,
// more than the top edge's. Where the side would have to lean in too far it returns
// the outline that does so most and false.
func (o Outline) WithBreadth(half float64) (Outline, bool) {
	lo, hi := o.Half, o.MostCorner()
	if half <= lo {
		return o.At(lo), half == lo
	}
	c, ok := geom.Zero(func(c float64) float64 {
		s := o.At(c).open()
		return s.breadth() - half
	}, lo, min(hi, lo+8*half), cornerSolved)
	return o.At(c), ok
}

// MostCorner is the corner of the outline whose side leans in as far as is looked at.
func (o Outline) MostCorner() float64 { return o.Half + (o.Top-o.Bottom)*math.Tan(mostLean) }
