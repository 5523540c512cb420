package hull

import (
	"math"

	"barkwright/core/geom"
)

// Section is the port half of the bark's outer face across the boat: along the
// bottom from A on the centre line, round a bend whose corner is C, and straight
// up the side to P at the top edge. Points are (y, z), metres; past the heel the
// plane leans and the second coordinate runs up the leaning plane.
type Section struct {
	A, C, P geom.Vec2
	Bend    geom.Conic
	// run[i] is the length along the bend to parameter i/bendPanels.
	run [bendPanels + 1]float64
}

// bendPanels is how many pieces the bend's length is summed over: each by
// five-point Gauss, good to 1e-9 of the length at the hardest weight allowed.
const bendPanels = 16

// bendSettled is a step along the bend after which no further is taken, m: its
// square over the least radius of a bark's bend is under a nanometre.
const bendSettled = 1e-6

// bulgeLegShare sets how much of the side the round bend of a bulging boat takes
// at a bilge of 0; a choice of this project.
const bulgeLegShare = 1.35

// outline is what a section is shaped from: corner breadth c, the bottom's and the
// top edge's heights, the top's half-breadth, and how far out along the gunwale it
// stands (0 amidships, 1 at the gunwale's end and beyond).
type outline struct{ corner, bottom, top, half, along float64 }

// section shapes one section. Where both legs or the corner have no length the
// bend is a straight line.
func (h *Hull) section(o outline) Section {
	s := Section{
		A: geom.Vec2{X: 0, Y: o.bottom},
		C: geom.Vec2{X: o.corner, Y: o.bottom},
		P: geom.Vec2{X: o.half, Y: o.top},
	}
	up := s.P.Sub(s.C)
	bottom, side := s.C.Sub(s.A).Len(), up.Len()
	s.Bend.C = s.C
	if h.Design.Bulges() {
		leg := geom.SoftMin(bottom, (bulgeLegShare-h.Design.Bilge)*side)
		s.Bend.A = geom.Vec2{X: o.corner - leg, Y: o.bottom}
		s.Bend.B = s.C.Add(up.Unit().Scale(leg))
		s.Bend.W = math.Cos(s.Bend.Turning() / 2)
	} else {
		s.Bend.A = s.A
		s.Bend.B = s.C.Add(up.Unit().Scale(geom.SoftMin(side, 1.5*bottom)))
		shoulder := h.Design.Bilge + (0.5-h.Design.Bilge)*geom.SmoothStep(o.along)
		s.Bend.W = shoulder / (1 - shoulder)
	}
	s.measure()
	return s
}

// measure fills the table of the bend's length.
func (s *Section) measure() {
	for i := range bendPanels {
		lo, hi := float64(i)/bendPanels, float64(i+1)/bendPanels
		s.run[i+1] = s.run[i] + geom.Integrate(s.Bend.Speed, lo, hi, 1)
	}
}

// Section returns the section at x, as far as the heel; beyond it, see Column.
func (h *Hull) Section(x float64) Section {
	x = math.Abs(x)
	half := h.SkinHalfBreadth(x)
	return h.section(outline{
		corner: h.turn0 * half / h.SkinHalfBreadth(0),
		bottom: h.Bottom(x), top: h.TopEdge(x), half: half, along: x / h.GunwaleX,
	})
}

func (s Section) flat() float64 { return s.Bend.A.Sub(s.A).Len() }
func (s Section) side() float64 { return s.P.Sub(s.Bend.B).Len() }

// HalfGirth is the length from the centre line to the top edge along the bark's
// outer face.
func (s Section) HalfGirth() float64 { return s.flat() + s.run[bendPanels] + s.side() }

// Turning is the angle from the bottom to the side, radians; 0 where the section
// is folded, with no corner to turn.
func (s Section) Turning() float64 { return s.Bend.Turning() }

// At returns the point a length g along the section from the centre line.
func (s Section) At(g float64) geom.Vec2 { return s.at(g) }

func (s *Section) at(g float64) geom.Vec2 {
	flat, bend := s.flat(), s.run[bendPanels]
	switch {
	case g <= flat && flat > 0:
		return s.A.Lerp(s.Bend.A, math.Max(0, g)/flat)
	case g >= flat+bend:
		if side := s.side(); side > 0 {
			return s.Bend.B.Lerp(s.P, math.Min(1, (g-flat-bend)/side))
		}
		return s.P
	}
	return s.Bend.At(s.bendParameter(g - flat))
}

// bendParameter finds where the bend is a length g from its start.
func (s *Section) bendParameter(g float64) float64 {
	i := 0
	for i < bendPanels-1 && s.run[i+1] < g {
		i++
	}
	t := (float64(i) + (g-s.run[i])/math.Max(s.run[i+1]-s.run[i], 1e-300)) / bendPanels
	lo, hi := float64(i)/bendPanels, float64(i+1)/bendPanels
	for range 3 {
		speed := s.Bend.Speed(t)
		if speed == 0 {
			break
		}
		gap := g - s.run[i] - geom.Integrate(s.Bend.Speed, lo, t, 1)
		t = math.Max(lo, math.Min(hi, t+gap/speed))
		// The next step would be of the order of this one's square.
		if math.Abs(gap) < bendSettled {
			break
		}
	}
	return t
}

// Sample returns n+1 points at equal lengths along the section.
func (s Section) Sample(n int) []geom.Vec2 {
	out := make([]geom.Vec2, n+1)
	girth := s.HalfGirth()
	for i := range out {
		out[i] = s.at(girth * float64(i) / float64(n))
	}
	return out
}

// straightShare is how many points a polygon has along its straight parts, by their
// length, against a bend that turns evenly. The straight parts of leaning columns are
// cut across and come out slightly bent, so that it is not 0. A choice of this project,
// by trial.
const straightShare = 0.4

// Polygon returns n+1 points from the centre line to the top edge, closer together
// where the section bends: a polygon through few of them then holds nearly its area.
func (s *Section) Polygon(n int) []geom.Vec2 {
	flat, bend, side := straightShare*s.flat(), s.run[bendPanels], straightShare*s.side()
	// Along the bend half by its length, half by its parameter, which runs slowest
	// where it bends most.
	total := flat + 2*bend + side
	out := make([]geom.Vec2, n+1)
	k := 0
	for i := range out {
		m := total * float64(i) / float64(n)
		switch {
		case i == n:
			out[i] = s.P
		case m < flat:
			out[i] = s.A.Lerp(s.Bend.A, m/flat)
		case m >= flat+2*bend:
			if side == 0 {
				out[i] = s.P
				continue
			}
			out[i] = s.Bend.B.Lerp(s.P, (m-flat-2*bend)/side)
		default:
			measure := func(k int) float64 { return flat + s.run[k] + bend*float64(k)/bendPanels }
			for k+1 < bendPanels && measure(k+1) <= m {
				k++
			}
			from := measure(k)
			out[i] = s.Bend.At((float64(k) + (m-from)/(measure(k+1)-from)) / bendPanels)
		}
	}
	return out
}

// TightestRadius is the smallest radius of the bend at the bark's outer face, and
// how far along the section from the centre line it is. +Inf where the section is
// folded or straight.
func (s Section) TightestRadius() (radius, at float64) {
	if s.Turning() == 0 {
		return math.Inf(1), 0
	}
	t, least := geom.Least(func(t float64) float64 { return -math.Abs(s.Bend.Curvature(t)) }, 0, 1, 2*bendPanels)
	if least == 0 {
		return math.Inf(1), 0
	}
	i := min(int(t*bendPanels), bendPanels-1)
	run := s.run[i] + geom.Integrate(s.Bend.Speed, float64(i)/bendPanels, t, 1)
	return -1 / least, s.flat() + run
}

// Breadth is the greatest half-breadth of the section.
func (s Section) Breadth() float64 {
	_, least := geom.Least(func(t float64) float64 { return -s.Bend.At(t).X }, 0, 1, 2*bendPanels)
	return math.Max(-least, s.P.X)
}
