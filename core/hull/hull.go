package hull

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/shape"
)

// Hull is the shape of a finished boat. It holds no more than the design and
// what would be costly to work out at every question; it does not change.
type Hull struct {
	Design design.Design
	// GunwaleX, HeelX and HeadX are the places of the gunwale's end, the heel of
	// the stem and the stem head along x, metres from amidships.
	GunwaleX, HeelX, HeadX float64
	End                    End
	// Gunwale is the inner top edge of the inwale by x from amidships to its end.
	Gunwale geom.Path3
	// Edge is the bark's top edge by x from the heel's station to the stem head.
	Edge geom.Path3
	// TurnReached tells whether the turn line gives the greatest breadth asked;
	// always true where none is.
	TurnReached bool

	turn0, footPace float64
	plan            shape.Gunwale
	frameRise       shape.Rise
}

// New shapes the hull of a design whose numbers are in range. Faults tells
// whether the result can be built.
func New(d design.Design) Hull {
	h := Profile(d)
	h.Gunwale = h.plan.Path()
	h.Edge = geom.NewPath3(h.edgePoint, h.HeelX, h.HeadX, 60)
	h.footPace = h.newFootPace()
	if d.Bulges() {
		h.solveTurn()
	}
	return h
}

func (h *Hull) edgePoint(x float64) geom.Vec3 {
	return geom.Vec3{X: x, Y: h.SkinHalfBreadth(x), Z: h.TopEdge(x)}
}

// TurnWidth is the breadth of the turn line amidships: the design's, or what its
// greatest breadth asks for.
func (h *Hull) TurnWidth() float64 { return 2 * h.turn0 }

// Turn is the half-breadth of the turn line at x.
func (h *Hull) Turn(x float64) float64 {
	return h.turn0 * h.SkinHalfBreadth(x) / h.SkinHalfBreadth(0)
}

// solveTurn sets the turn line so that the bark amidships is as broad as asked.
func (h *Hull) solveTurn() {
	half := h.Design.GreatestBeam / 2
	short := func(c float64) float64 {
		trial := *h
		trial.turn0 = c
		return trial.Section(0).Breadth() - half
	}
	h.turn0, h.TurnReached = geom.Bisect(short, h.SkinHalfBreadth(0)/2, 2*half, 1e-9)
}

// RunTo is the length along the gunwale from its middle to the station x.
func (h *Hull) RunTo(x float64) float64 { return h.Gunwale.RunTo(math.Abs(x)) }

// StationAt is the x of the place a length s along the gunwale from its middle.
func (h *Hull) StationAt(s float64) float64 { return h.Gunwale.ParameterAt(s) }
