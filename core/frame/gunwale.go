package frame

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Gunwales are the long timbers. Lengths are of one timber from end to end, with
// nothing for trimming.
type Gunwales struct {
	Run                  float64 // from the middle to one end
	Inwale, Outwale, Cap float64
	// Bends are checked where each is tightest. OutwaleEnd is the outwale past the
	// gunwale's end, where it follows the bark's top edge to the stem head.
	InwalePlan, InwaleSheer, OutwalePlan, OutwaleSheer, OutwaleEnd GunwaleBend
	// The cap lies on both and is bent whole: no source tells of caps that are split. In plan
	// it is bent across its width, and tightest where the radius is least to its width there.
	CapPlan, CapSheer, CapEnd GunwaleBend
}

// GunwaleBend is one timber bent in one plane.
type GunwaleBend struct {
	X float64 // where it is tightest
	wood.Bend
	// Layers is how many layers the timber is split into there, and Mend the least
	// number that would be within guide; 0 where none is enough.
	Layers, Mend int
}

// Radius over thickness of the tightest gunwales of a published boat whose measurements
// this project rebuilds, reckoned as here: in plan, and of the outwale in four layers
// past the gunwale's end. Adney and Chapelle 1964, fig. 81; core/refit's tests hold
// the boat to them.
const (
	PublishedInPlan  = 25
	PublishedPastEnd = 17
)

// planLeftOut is the last of the gunwale that its plan's bend leaves out: there
// the ends are drawn together and tied, 2 in. Common practice, no published source.
const planLeftOut = 2 * units.Inch

// edgePieces is in how many pieces the outwale is measured on either side of the gunwale's end.
const edgePieces = 20

func newGunwales(h *hull.Hull) Gunwales {
	d := &h.Design
	g := Gunwales{Run: h.Gunwale.Length()}
	g.Inwale = 2 * g.Run
	// The outwale lies outside the bark, whose top edge is longer than the inwale's inner one.
	edge := geom.Length3(h.EdgePoint, 0, h.GunwaleX, edgePieces)
	endX, endR := h.GunwaleX, straight
	if h.HeadX-h.GunwaleX > 4*planStep {
		endX, endR = tightest(differences(h.TopEdge), h.GunwaleX+2*planStep, h.HeadX-2*planStep)
		edge += geom.Length3(h.EdgePoint, h.GunwaleX, h.HeadX, edgePieces)
	}
	g.Outwale = 2 * edge
	g.Cap = g.Outwale
	planEnd := h.StationAt(g.Run - planLeftOut)
	planX, planR := tightest(h.PlanBend, 0, planEnd-2*planStep)
	// Only the ends are split, from the end thwarts out, and only across the sheer:
	// whole timber and layers each have their own tightest place.
	split := h.StationAt(endThwartRun(h))
	wholeX, wholeR := tightest(h.SheerBend, 0, split)
	layerX, layerR := tightest(h.SheerBend, split, h.GunwaleX-2*planStep)
	inPlan := func(t float64) GunwaleBend { return bendGunwale(h, planX, planR, t, 1) }
	inSheer := func(t float64) GunwaleBend {
		whole, layers := bendGunwale(h, wholeX, wholeR, t, 1), bendGunwale(h, layerX, layerR, t, d.GunwaleEndSplits)
		if whole.Ratio < layers.Ratio {
			return whole
		}
		return layers
	}
	g.OutwaleEnd = bendGunwale(h, endX, endR, d.OutwaleDepth, d.GunwaleEndSplits)
	g.InwalePlan, g.OutwalePlan = inPlan(d.InwaleThickness), inPlan(d.OutwaleThickness)
	g.InwaleSheer, g.OutwaleSheer = inSheer(d.InwaleDepth), inSheer(d.OutwaleDepth)
	g.CapPlan = capInPlan(h, g.Cap/2, planEnd-2*planStep)
	capX, capR := wholeX, wholeR
	if layerR < wholeR {
		capX, capR = layerX, layerR
	}
	g.CapSheer, g.CapEnd = bendGunwale(h, capX, capR, d.CapThickness, 1), bendGunwale(h, endX, endR, d.CapThickness, 1)
	return g
}

// capInPlan bends the cap, half as long as given, across its width, as far as a station.
func capInPlan(h *hull.Hull, half, end float64) GunwaleBend {
	x, _ := geom.Least(func(x float64) float64 { return -curvature(h.PlanBend, x) * capWidth(h, half, x) }, 0, end, 80)
	return bendGunwale(h, x, min(1/curvature(h.PlanBend, x), straight), capWidth(h, half, x), 1)
}

// capWidth is how wide the cap is at a station: it narrows evenly from amidships to its end, which
// lies so far along it.
func capWidth(h *hull.Hull, half, x float64) float64 {
	return h.Design.CapWidth * (1 - (1-capEndShare)*h.RunTo(x)/half)
}

func bendGunwale(h *hull.Hull, x, radius, thickness float64, layers int) GunwaleBend {
	whole := wood.FromMiddle(radius, thickness, h.Design.GunwaleStock)
	n, _ := wood.SplitsNeeded(whole)
	return GunwaleBend{X: x, Bend: whole.Innermost(layers), Layers: layers, Mend: n}
}

// tightest finds the smallest radius on [from, to] of a curve by x, given its slope and
// its second derivative, per metre.
func tightest(bend func(x float64) (slope, second float64), from, to float64) (x, radius float64) {
	x, least := geom.Least(func(x float64) float64 { return -curvature(bend, x) }, from, to, 80)
	if -least <= 1/straight {
		return x, straight
	}
	return x, -1 / least
}

// curvature is that of a curve at x, per metre.
func curvature(bend func(x float64) (slope, second float64), x float64) float64 {
	slope, second := bend(x)
	grade := 1 + slope*slope
	return math.Abs(second) / (grade * math.Sqrt(grade))
}

// differences bends a curve that has no derivatives of its own by its values planStep apart.
func differences(f func(float64) float64) func(x float64) (slope, second float64) {
	const h = planStep
	return func(x float64) (slope, second float64) {
		before, at, after := f(x-h), f(x), f(x+h)
		slope = (8*(after-before) - (f(x+2*h) - f(x-2*h))) / (12 * h)
		return slope, (after - 2*at + before) / (h * h)
	}
}
