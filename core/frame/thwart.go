package frame

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// ThwartWidth is the fore-and-aft width at a thwart's shoulders. Adney and
// Chapelle 1964, pp. 38-40: 3 in for all five of the example.
const ThwartWidth = 3 * units.Inch

// tenonWidth is that of the tenons through the inwales. Same pages: mortises
// 1/4 x 2 in.
const tenonWidth = 2 * units.Inch

// Thwart is one thwart; all but the middle one stand both fore and aft.
type Thwart struct {
	Run, X float64
	// Shoulder is the clear length between the inner faces of the gunwales and
	// EndToEnd that with the tenons through both inwales, on the centre line;
	// Longest is along the tenons' edge nearer amidships.
	Shoulder, EndToEnd, Longest float64
	// PlanAngle is the angle of the gunwale to the boat's length, in plan, and
	// Flare that of the side from upright, outward positive: the shoulders are cut
	// to both. Radians.
	PlanAngle, Flare float64
	// Height is of the top of the inwale over the bottom amidships.
	Height float64
}

func newThwarts(h *hull.Hull) []Thwart {
	d := &h.Design
	all := make([]Thwart, d.OuterThwarts()+1)
	for i := range all {
		run := 0.0
		if i > 0 {
			run = d.ThwartAt[i-1] * h.Gunwale.Length()
		}
		x := h.StationAt(run)
		section := h.Column(h.ColumnAtEdge(x)).Section
		// From the corner, not from the end of the bend: the side is straight along both,
		// and a bend may take it up to the top edge but for rounding.
		side := section.P.Sub(section.C)
		t := Thwart{Run: run, X: x, Shoulder: 2 * h.HalfBeam(x), Height: h.Sheer(x)}
		t.PlanAngle = math.Abs(math.Atan(planSlope(h, x)))
		t.Flare = math.Atan2(side.X, side.Y)
		t.EndToEnd = t.Shoulder + 2*d.InwaleThickness/math.Cos(t.PlanAngle)
		t.Longest = t.EndToEnd + tenonWidth*math.Tan(t.PlanAngle)
		all[i] = t
	}
	return all
}

// planStep is the step of the differences along the gunwale's plan and sheer,
// metres: wide against rounding, narrow against any bend of wood.
const planStep = 1e-3

func planSlope(h *hull.Hull, x float64) float64 {
	return geom.Slope(h.HalfBeam, min(x, h.GunwaleX-2*planStep), planStep)
}
