package shape

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// Outline is what a section is shaped from.
type Outline struct {
	// Corner is the half-breadth where the tangents of bottom and side meet.
	Corner float64
	// Bottom and Top are the heights of the bottom and of the top edge, Half the
	// half-breadth at the top edge.
	Bottom, Top, Half float64
	// Along is how far out along the gunwale the section stands: 0 amidships, 1 at
	// the gunwale's end and beyond.
	Along float64
	// Bilge is the share of the bend's shoulder amidships: more presses it into the
	// corner.
	Bilge float64
}

const (
	// sideShare is how much of the side, in lengths of the bottom, the bend takes at
	// most where the side leans out. A choice of this project.
	sideShare = 1.5
	// endBilge is the shoulder at the gunwale's end and beyond: a parabola.
	endBilge = 0.5
	// roundLeg sets how much of a side that leans in the round bend takes at a bilge
	// of 0. A choice of this project.
	roundLeg = 1.35
)

// roundLean is the lean of the side inward, as a tangent, from which on the bend is
// a circular arc; bark folded up round the gunwales themselves leans in by about 21.7
// degrees. A choice of this project: the passage is long enough that the girth still
// rises with the corner in the deepest boat with the hardest bilge.
var roundLean = math.Tan(25 * units.Degree)

// open is a section without the length of its bend.
func (o Outline) open() (s Section) {
	s.open(&o)
	return s
}

// open shapes a zero section without the length of its bend.
//
// Where the side leans out, the bend takes all of the bottom and has the shoulder
// that the bilge asks for, eased toward the ends. Where the side leans in, bark
// that stands free of any fold goes round evenly: on equal legs, in an arc of a
// circle. From the one to the other the bend passes with the lean, so that neither
// along the boat nor under a slider one takes over from the other with a step. The
// legs pass as their inverses and the weight as its logarithm: a long leg with a small
// weight would cut the corner more than either form does.
func (s *Section) open(o *Outline) {
	s.A = geom.Vec2{X: 0, Y: o.Bottom}
	s.C = geom.Vec2{X: o.Corner, Y: o.Bottom}
	s.P = geom.Vec2{X: o.Half, Y: o.Top}
	up := s.P.Sub(s.C)
	bottom, side := o.Corner, up.Len()
	along, upward := bottom, geom.SoftMin(side, sideShare*bottom)
	shoulder := o.Bilge + (endBilge-o.Bilge)*geom.SmoothStep(o.Along)
	weight := shoulder / (1 - shoulder)
	if rounded := o.rounded(); rounded > 0 {
		leg := geom.SoftMin(bottom, (roundLeg-o.Bilge)*side)
		// The cosine of half the turning, from the turning's own.
		arc := math.Sqrt(max(0, (1-(o.Corner-o.Half)/side)/2))
		along = 1 / ((1-rounded)/along + rounded/leg)
		upward = 1 / ((1-rounded)/upward + rounded/leg)
		weight *= math.Pow(arc/weight, rounded)
	}
	s.Bend = geom.Conic{A: geom.Vec2{X: o.Corner - along, Y: o.Bottom}, C: s.C, W: weight}
	s.Bend.B = s.C.Add(up.Unit().Scale(upward))
}

// rounded is the share of the round bend in the section's: 0 where the side leans
// out.
func (o *Outline) rounded() float64 {
	if o.Corner <= o.Half || o.Top <= o.Bottom {
		return 0
	}
	return geom.SmoothStep((o.Corner - o.Half) / (o.Top - o.Bottom) / roundLean)
}
