package design

import (
	"math"

	"barkwright/core/shape"
	"barkwright/core/units"
)

// Corrections are those of each curve: the half-breadth inside the gunwales, the
// height of the sheer and the half girth of the bark.
type Corrections struct{ Plan, Sheer, Girth shape.Corrections }

// MostCorrection is how far a correction may move a curve, m: past it a boat has another
// shape, and its numbers are to be changed. A choice of this project.
const MostCorrection = 3 * units.Inch

// CorrectionsKey is what faults of them are kept by.
const CorrectionsKey = "corrections"

// CorrectedCurve is one of the curves with its corrections.
type CorrectedCurve struct {
	// Name is the curve's in files and messages.
	Name string
	// Read is what a tape reads of the curve, which moves by Times the correction.
	Read  string
	Times float64
	List  *shape.Corrections

	code  string // in a line of text
	toEnd bool   // the gunwale's end itself may be corrected
}

// Curves lists the curves.
func (c *Corrections) Curves() []CorrectedCurve {
	return []CorrectedCurve{
		{Name: "plan", Read: "width", Times: 2, List: &c.Plan, code: "Qp"},
		{Name: "sheer", Read: "sheer", Times: 1, List: &c.Sheer, code: "Qs", toEnd: true},
		{Name: "girth", Read: "half girth", Times: 1, List: &c.Girth, code: "Qg"},
	}
}

// None tells whether there are no corrections.
func (c Corrections) None() bool { return c == Corrections{} }

// scaled returns those of a boat k times the size.
func (c Corrections) scaled(k float64) Corrections {
	return Corrections{c.Plan.Scaled(k), c.Sheer.Scaled(k), c.Girth.Scaled(k)}
}

// correctionFaults names corrections that are not valid, or that close the gunwales.
func correctionFaults(d Design) []Fault {
	for _, curve := range d.Corrected.Curves() {
		if n := curve.List.Count; n < 0 || n > shape.MostCorrections {
			return []Fault{NewFault(CorrectionsKey,
				"The "+curve.Name+" holds %s corrections; %s are kept. Take the corrections off.",
				Shown{units.Count, max(0, float64(n))}, Shown{units.Count, shape.MostCorrections})}
		}
		for _, c := range curve.List.List() {
			placed := c.At >= 0 && c.At <= 1 && (c.From < c.At || c.At == 0) && c.From >= 0 &&
				(c.To > c.At || c.At == 1) &&
				c.To <= 1
			if !placed || c.At == 1 && !curve.toEnd {
				return []Fault{NewFault(CorrectionsKey,
					"A correction of the "+curve.Name+" is not inside the gunwales. Take the corrections off.")}
			}
			if !(math.Abs(c.By) <= MostCorrection+Rounding) {
				return []Fault{NewFault(CorrectionsKey,
					"A correction of the "+curve.Name+" is more than %s: change the boat's numbers and take the corrections off.",
					Small(MostCorrection))}
			}
		}
	}
	g := d.Gunwale()
	for _, c := range d.Corrected.Plan.List() {
		if d.HalfGunwale() > 0 && g.Breadth(c.At*g.Half) <= 0 {
			return []Fault{NewFault(CorrectionsKey,
				"The gunwales as corrected close %s from amidships. Take the corrections off.", Long(c.At*g.Half))}
		}
	}
	return nil
}
