package bark

import (
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// StumpHeight is how far up the trunk a sheet is cut from, 3 ft. A choice of this
// project, the one that its tree table was worked out with.
const StumpHeight = 3 * units.Foot

// Standing is a tree that gives a sheet, as it is taped while it stands.
type Standing struct {
	Sheet Sheet
	// At is how far up the trunk the sheet's full width is wanted, and AtGirth the
	// girth there, the allowance included, m.
	At, AtGirth float64
	// Girth is by tape at breast height, rounded up to TreeStep, and Low and High
	// what it is on trees that taper slowly and quickly, m.
	Girth, Low, High float64
	Diameter         float64 // at breast height, rounded up to TreeStep, m
}

// NewStanding is the tree for a sheet by the design's rule and allowance.
func NewStanding(s Sheet, d design.Design) Standing {
	t := Standing{Sheet: s, At: StumpHeight + s.Length/2, AtGirth: s.Width + d.TreeAllowance}
	if d.TreeRule == design.WideAllAlong {
		t.At = StumpHeight + s.Length
	}
	typical, low, high := wood.BirchTaper(t.At)
	t.Girth, t.Low, t.High = upToStep(t.AtGirth/typical), upToStep(t.AtGirth/high), upToStep(t.AtGirth/low)
	t.Diameter = upToStep(wood.TreeDiameter(t.AtGirth / typical))
	return t
}

// TreeStep is what a tree's girth and diameter are rounded up to.
const TreeStep = units.Inch / 2

func upToStep(v float64) float64 { return geom.Ceil(v/TreeStep) * TreeStep }
