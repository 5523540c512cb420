package shape

import "barkwright/core/geom"

// straightShare is how many points a polygon has along its straight parts, by their
// length, against a bend that turns evenly. The straight parts of leaning columns are
// cut across and come out slightly bent, so that it is not 0. A choice of this project,
// by trial.
const straightShare = 0.4

// Polygon is the outline's section as n+1 points, closer together where it bends. How
// they are spaced needs no more than one look at each piece of the bend.
func (o Outline) Polygon(n int) []geom.Vec2 {
	s := o.open()
	s.panels = bendPanels
	for i := range bendPanels {
		s.run[i+1] = s.run[i] + s.Bend.Speed((float64(i)+0.5)/bendPanels)/bendPanels
	}
	return s.polygon(n)
}

// polygon returns n+1 points from the centre line to the top edge, closer together
// where the section bends: a polygon through few of them then holds nearly its area.
func (s *Section) polygon(n int) []geom.Vec2 {
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
