package shape

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
	// run[i] is the length along the bend to parameter i/panels.
	run    [bendPanels + 1]float64
	panels int
}

// bendPanels is how many pieces the length of a hard bend is summed over, by five-point
// Gauss: good to 1e-8 of the length at the hardest weight allowed, 17/3.
const bendPanels = 16

// panels is how many do for a bend's weight, as well: half as many up to gentle, and six
// for one that turns about as evenly as an arc or a parabola.
func panels(bend *geom.Conic) int {
	const gentle, evenFrom, evenTo = 3.0, 0.6, 1.7
	switch {
	case bend.W > gentle:
		return bendPanels
	case bend.W < evenFrom || bend.W > evenTo:
		return bendPanels / 2
	}
	return 6
}

// bendSettled is a step along the bend after which no further is taken, m: its
// square over the least radius of a bark's bend is under a nanometre.
const bendSettled = 1e-6

// bendFound is how near a place on the bend needs no step at all, m.
const bendFound = 1e-13

// New shapes the section of an outline. Where both legs or the corner have no
// length the bend is a straight line.
func New(o Outline) (s Section) {
	s.Shape(&o)
	return s
}

// Shape is New into a zero section: one of a boat's many columns is not copied so.
func (s *Section) Shape(o *Outline) {
	s.open(o)
	s.measure()
}

// measure fills the table of the bend's length.
func (s *Section) measure() {
	s.panels = panels(&s.Bend)
	n := float64(s.panels)
	for i := range s.panels {
		s.run[i+1] = s.run[i] + s.Bend.Run(float64(i)/n, float64(i+1)/n)
	}
}

func (s *Section) flat() float64 { return s.Bend.A.Sub(s.A).Len() }
func (s *Section) side() float64 { return s.P.Sub(s.Bend.B).Len() }

// HalfGirth is the length from the centre line to the top edge along the bark's
// outer face.
func (s Section) HalfGirth() float64 { return s.flat() + s.run[s.panels] + s.side() }

// Turning is the angle from the bottom to the side, radians; 0 where the section
// is folded, with no corner to turn.
func (s Section) Turning() float64 { return s.Bend.Turning() }

// At returns the point a length g along the section from the centre line.
func (s *Section) At(g float64) geom.Vec2 { return s.at(g) }

func (s *Section) at(g float64) geom.Vec2 {
	flat, bend := s.flat(), s.run[s.panels]
	switch {
	case g <= flat && flat > 0:
		return s.A.Lerp(s.Bend.A, max(0, g)/flat)
	case g >= flat+bend:
		if side := s.side(); g < flat+bend+side {
			return s.Bend.B.Lerp(s.P, (g-flat-bend)/side)
		}
		return s.P
	}
	return s.Bend.At(s.bendParameter(g - flat))
}

// bendParameter finds where the bend is a length g from its start.
func (s *Section) bendParameter(g float64) float64 {
	i := 0
	n := float64(s.panels)
	for i < s.panels-1 && s.run[i+1] < g {
		i++
	}
	lo, hi := float64(i)/n, float64(i+1)/n
	t := lo
	if length := s.run[i+1] - s.run[i]; length > 0 {
		t += (g - s.run[i]) / length / n
	}
	for range 3 {
		speed := s.Bend.Speed(t)
		gap := g - s.run[i] - s.Bend.Run(lo, t)
		// Where the bend stands still at an end, rounding alone must not be stepped by.
		if speed == 0 || math.Abs(gap) < bendFound {
			break
		}
		switch t += gap / speed; {
		case t < lo:
			t = lo
		case t > hi:
			t = hi
		}
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

// TightestRadius is the smallest radius of the bend at the bark's outer face, and
// how far along the section from the centre line it is. +Inf where the section is
// folded or straight.
func (s *Section) TightestRadius() (radius, at float64) {
	if s.Turning() == 0 {
		return math.Inf(1), 0
	}
	t, bend := s.Bend.Tightest(2 * bendPanels)
	if bend == 0 {
		return math.Inf(1), 0
	}
	n := float64(s.panels)
	i := min(int(t*n), s.panels-1)
	run := s.run[i] + s.Bend.Run(float64(i)/n, t)
	return 1 / bend, s.flat() + run
}

// HalfBreadthAt is the half-breadth at a height, between the bottom's and the top
// edge's.
func (s Section) HalfBreadthAt(height float64) float64 {
	if height >= s.Bend.B.Y {
		if s.P.Y <= s.Bend.B.Y {
			return s.P.X
		}
		return s.Bend.B.Lerp(s.P, min(1, (height-s.Bend.B.Y)/(s.P.Y-s.Bend.B.Y))).X
	}
	t, _ := geom.Zero(func(t float64) float64 { return s.Bend.At(t).Y - height }, 0, 1, cornerSolved)
	return s.Bend.At(t).X
}

// Breadth is the greatest half-breadth of the section.
func (s Section) Breadth() float64 { return s.breadth() }

// breadth is where the bend stops going out, from the zero of its derivative, or the
// top edge.
func (s *Section) breadth() float64 {
	q := &s.Bend
	// The derivative of y is (1-t)^2 out + t(1-t) over + t^2 back, and more.
	out, over, back := q.W*(q.C.X-q.A.X), q.B.X-q.A.X, q.W*(q.B.X-q.C.X)
	if back >= 0 {
		return max(q.B.X, s.P.X)
	}
	u := (over + math.Sqrt(max(0, over*over-4*out*back))) / (-2 * back)
	return max(q.At(u/(1+u)).X, s.P.X)
}
