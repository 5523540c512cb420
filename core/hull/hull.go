package hull

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/shape"
)

// Hull is the shape of a finished boat. It holds no more than the design and
// what would be costly to work out at every question. It is passed by pointer
// and does not change once made.
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
	// TurnReached tells whether a section goes round as the design asks.
	TurnReached bool

	plan      shape.Gunwale
	frameRise shape.Rise
	footPace  float64
	// foremost is the place of the column on the profile's foremost point.
	foremost float64
	// endSlope is the slope of the sheer at the gunwale's end.
	endSlope float64
	// turn0 is the corner's half-breadth amidships, as a share of the top edge's.
	turn0 float64
	// out is how far the corner stands outside the bark's top edge amidships, 0 where it
	// does not, bulge how far the bark does, and bulgeTo the station to which that is
	// carried.
	out, bulge, bulgeTo float64
}

// New shapes the hull of a design whose numbers are in range. Faults tells
// whether the result can be built.
func New(d design.Design) *Hull {
	h := Profile(d)
	h.Gunwale = h.plan.Path()
	h.Edge = h.newEdge()
	h.footPace = h.newFootPace()
	h.foremost = h.foremostColumn()
	h.turn()
	return h
}

// Resectioned is the hull of a design changed in its sections alone: its plan, sheer and
// ends are the same.
func (h *Hull) Resectioned(change func(*design.Design)) *Hull {
	other := *h
	change(&other.Design)
	other.out, other.bulge, other.bulgeTo = 0, 0, 0
	other.turn()
	return &other
}

const (
	// edgeKnots is the number of knots along the top edge past the heel.
	edgeKnots = 60
	// edgeCorner is how far the gunwale's end stands from both ends of the edge at
	// least to be a corner of it, as a share of its run.
	edgeCorner = 0.01
)

// newEdge is the top edge from the heel's station to the stem head. It has a corner at
// the gunwale's end, where the gunwales meet.
func (h *Hull) newEdge() geom.Path3 {
	if clear := edgeCorner * (h.HeadX - h.HeelX); h.GunwaleX < h.HeelX+clear || h.GunwaleX > h.HeadX-clear {
		return geom.NewPath3(h.EdgePoint, h.HeelX, h.HeadX, edgeKnots)
	}
	return geom.NewPath3(h.EdgePoint, h.HeelX, h.GunwaleX, edgeKnots/2).
		Then(geom.NewPath3(h.EdgePoint, h.GunwaleX, h.HeadX, edgeKnots/2))
}

// EdgePoint is the bark's top edge at x from amidships forward, at its outer face.
func (h *Hull) EdgePoint(x float64) geom.Vec3 {
	return geom.Vec3{X: x, Y: h.SkinHalfBreadth(x), Z: h.TopEdge(x)}
}

// TurnWidth is the breadth of the turn line amidships: the design's, or what its
// greatest breadth asks for.
func (h *Hull) TurnWidth() float64 { return 2 * h.Turn(0) }

// turn finds the turn line amidships and what the bark bulges there.
func (h *Hull) turn() {
	var o shape.Outline
	o, h.TurnReached = h.Design.MidsectionByNumbers()
	h.turn0 = o.Corner / h.SkinHalfBreadth(0)
	if o.Corner > o.Half {
		h.out = o.Corner - o.Half
		h.bulge = shape.New(o).Breadth() - o.Half
		h.bulgeTo = h.StationAt(h.Design.EndThwart() * h.Gunwale.Length())
	}
}

// Bulge is how far the bark stands out beyond its top edge amidships, 0 where the
// sides lean out.
func (h *Hull) Bulge() float64 { return h.bulge }

// turnOut is how far outside the bark's top edge the corner stands at x, where it stands
// outside: in inches as amidships as far as the end thwarts, which keeps what the bark
// stands out beyond the gunwale within a quarter inch of that amidships, and from there
// eased to zero at the stem head by a quarter of a cosine. That bulging bark is
// carried full length: Adney and Chapelle 1964, p. 59; the easing is a choice of this
// project, with no kink at the end thwarts.
func (h *Hull) turnOut(x float64) float64 {
	u := max(0, min(1, (x-h.bulgeTo)/(h.HeadX-h.bulgeTo)))
	return h.out * math.Cos(math.Pi/2*u)
}

// Turn is the half-breadth of the turn line at x, as far as the heel.
func (h *Hull) Turn(x float64) float64 { return h.outline(math.Abs(x)).Corner }

// RunTo is the length along the gunwale from its middle to the station x.
func (h *Hull) RunTo(x float64) float64 { return h.Gunwale.RunTo(math.Abs(x)) }

// HeadboardX is the station of the headboard's mark along the gunwale: the design's, by
// the gunwale's own table.
func (h *Hull) HeadboardX() float64 { return h.StationAt(h.Gunwale.Length() - h.Design.Headboard) }

// StationAt is the x of the place a length s along the gunwale from its middle.
func (h *Hull) StationAt(s float64) float64 { return h.Gunwale.ParameterAt(s) }
