package frame

import (
	"math"

	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Stem is the stem-piece of one end; the boat has two.
type Stem struct {
	// Curve is the length along the outer face from heel to head, Blank what to
	// split out: the curve, the solid heel inboard of it and what is trimmed.
	Curve, Blank float64
	// Lamination is the thickness of one, and Laminations the bend of each at the
	// tightest place of the curve, from the outermost in.
	Lamination  float64
	Laminations []wood.Bend
	// Within is the least splitting that is within guide, where any is, and Limit
	// the least that is not too tight.
	Within, Limit     wood.Splits
	WithinOK, LimitOK bool
	Springback        wood.Springback
	Moments           wood.Moments
	// TightestAt is the share of the curve's parameter where it is tightest.
	TightestAt float64
}

// StemTrim is left to trim at the head and the heel, 2 in. Estimate.
const StemTrim = 2 * units.Inch

// Innermost is the lamination with the tightest bend.
func (s Stem) Innermost() wood.Bend { return s.Laminations[len(s.Laminations)-1] }

func newStem(h hull.Hull) Stem {
	d := h.Design
	s := Stem{Curve: h.End.Path.Length(), TightestAt: h.End.TightestAt}
	s.Blank = s.Curve + d.StemSolid + StemTrim
	piece := wood.StemBend{
		Depth:       d.StemDepth,
		OuterRadius: math.Min(h.End.TightestRadius, straight) - d.BarkThickness,
		Stock:       d.StemStock,
	}
	s.Lamination = d.StemDepth / float64(d.StemLaminations)
	s.Laminations = piece.Laminations(d.StemLaminations)
	s.Within, s.WithinOK = wood.LeastSplits(piece, wood.WithinGuide)
	s.Limit, s.LimitOK = wood.LeastSplits(piece, wood.NearLimit)
	innermost := s.Innermost()
	s.Springback = innermost.Springback(d.StemStock)
	if !innermost.WillNotFit {
		s.Moments = wood.MomentToBend(wood.Effort{Width: d.StemWidth, Depth: d.StemDepth, Radius: innermost.Radius, Laminations: d.StemLaminations, Stock: d.StemStock})
	}
	return s
}
