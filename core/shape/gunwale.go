package shape

import (
	"math"

	"barkwright/core/geom"
)

// Gunwale is the inner top edge of the inwale, metres: the plan and the sheer over
// the half length Half, from amidships to the gunwale's end.
type Gunwale struct {
	Half float64
	// HalfBeam amidships, and the numbers of its plan.
	HalfBeam float64
	Plan     Rise
	Fine     float64
	// Depth amidships, End the height at the gunwale's end, and the sheer between.
	Depth, End float64
	Sweep      Rise
	// PlanBy and SheerBy correct the two where a tape read otherwise.
	PlanBy, SheerBy Corrections
}

// Breadth is the half-breadth inside the gunwales at x, 0 beyond their ends.
func (g *Gunwale) Breadth(x float64) float64 {
	t := math.Abs(x) / g.Half
	taper := g.Plan.Taper(t, g.Fine)
	if g.PlanBy.Count == 0 || t >= 1 {
		return g.HalfBeam * taper
	}
	return max(0, (g.HalfBeam-g.PlanBy.Of(0))*taper+g.PlanBy.At(t))
}

// Sheer is the height of the top of the inwale at x, within the gunwales.
func (g *Gunwale) Sheer(x float64) float64 {
	t := math.Abs(x) / g.Half
	if g.SheerBy.Count == 0 {
		return g.Depth + (g.End-g.Depth)*g.Sweep.At(t)
	}
	depth, end := g.swept()
	return depth + (end-depth)*g.Sweep.At(t) + g.SheerBy.At(t)
}

// BreadthBend returns the slope of Breadth at x, 0 or more, and its second derivative, per
// metre.
func (g *Gunwale) BreadthBend(x float64) (slope, second float64) {
	t := x / g.Half
	_, first, bend := g.Plan.TaperBend(t, g.Fine)
	half := g.HalfBeam - g.PlanBy.Of(0)
	by, byBend := g.PlanBy.Bend(t)
	return (half*first + by) / g.Half, (half*bend + byBend) / (g.Half * g.Half)
}

// SheerBend returns the slope of Sheer at x, 0 or more, and its second derivative, per metre.
func (g *Gunwale) SheerBend(x float64) (slope, second float64) {
	t := x / g.Half
	depth, end := g.swept()
	_, first, bend := g.Sweep.Bend(t)
	by, byBend := g.SheerBy.Bend(t)
	return ((end-depth)*first + by) / g.Half, ((end-depth)*bend + byBend) / (g.Half * g.Half)
}

// EndSlope is the slope of the sheer at the gunwale's end.
func (g *Gunwale) EndSlope() float64 {
	depth, end := g.swept()
	return (end - depth) * g.Sweep.Slope(1) / g.Half
}

// swept are the heights between which the sheer sweeps, without the corrections.
func (g *Gunwale) swept() (depth, end float64) {
	return g.Depth - g.SheerBy.Of(0), g.End - g.SheerBy.Of(1)
}

// knots is the number of knots along the gunwale: its length is then good to a
// tenth of a millimetre in ten metres, by doubling it.
const knots = 120

func (g *Gunwale) at(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: g.Breadth(x), Z: g.Sheer(x)} }

// Path is the curve by x from amidships to the gunwale's end, with what a tape along
// it reads.
func (g Gunwale) Path() geom.Path3 {
	return geom.NewPath3(g.at, 0, g.Half, knots)
}

// inboardKnots is the number of knots along the piece next to the gunwale's end.
const inboardKnots = 12

// Inboard is the station of a mark a length s along the gunwale from its end, 0 where
// the gunwale is no longer than that. It measures the last piece alone and so takes a
// fraction of Path's time.
func (g *Gunwale) Inboard(s float64) float64 {
	from := max(0, g.Half-s)
	// The length along the gunwale is no less than that along x.
	end := geom.NewPath3(g.at, from, g.Half, inboardKnots)
	if over := end.Length() - s; over > 0 {
		return end.ParameterAt(over)
	}
	return from
}
