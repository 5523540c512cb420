package frame

import (
	"barkwright/core/design"
	"barkwright/core/units"
)

// Joinery is how the gunwales and thwarts are worked where they meet, after the building
// example of Adney and Chapelle 1964, pp. 38-53: its own sizes where a joint has one,
// and in proportion to the timber where the timber is this boat's.
type Joinery struct {
	// Bevel is how wide the lower outer corner of the inwale is taken off, at 45 degrees,
	// for the ribs' tips; measured along either face.
	Bevel float64
	// EndThickness and EndDepth are the inwale's at ArrowLength short of its end, from
	// where it is cut to half an arrowhead.
	EndThickness, EndDepth, ArrowLength float64
	// CapEnd is the cap's width at its ends.
	CapEnd float64
	// Mortise and Tenon: height of both, and their length along the gunwale.
	TenonThick, TenonWide float64
	// ShoulderThick is a thwart's thickness at its shoulder.
	ShoulderThick float64
	// HoleInboard is how far from the shoulder the lashing holes stand, HolesMiddle how
	// many at an end of the middle thwart, HolesOther of the others.
	HoleInboard             float64
	HolesMiddle, HolesOther int
	// PegStock is the thickness of the pegs' stock.
	PegStock float64
	// HeadOver bounds how far the stem head stands over the outwale, OutwalePast how far
	// the outwale stands past the stem.
	HeadOver, OutwalePast [2]float64
}

// The example's inwale is 1 1/2 in square; almost 1/2 in of a corner is taken off, and 3
// in from the end it is 3/4 by 1 to 1 1/4 in. Its cap is 2 in wide, 1 at the ends.
const (
	bevelShare        = 1.0 / 3
	endThicknessShare = 0.75 / 1.5
	endDepthShare     = 1.125 / 1.5
	capEndShare       = 1.0 / 2
	arrowLength       = 3 * units.Inch
)

// NewJoinery is the joinery of a design.
func NewJoinery(d design.Design) Joinery {
	return Joinery{
		Bevel:        bevelShare * d.InwaleThickness,
		EndThickness: endThicknessShare * d.InwaleThickness, EndDepth: endDepthShare * d.InwaleDepth,
		ArrowLength: arrowLength,
		CapEnd:      capEndShare * d.CapWidth,
		TenonThick:  0.25 * units.Inch, TenonWide: tenonWidth,
		ShoulderThick: 5.0 / 16 * units.Inch,
		HoleInboard:   1.5 * units.Inch, HolesMiddle: 3, HolesOther: 1,
		PegStock: 0.25 * units.Inch,
		HeadOver: [2]float64{0.5 * units.Inch, 1 * units.Inch}, OutwalePast: [2]float64{0.25 * units.Inch, 0.5 * units.Inch},
	}
}
