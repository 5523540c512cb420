package shape

import "barkwright/core/geom"

// straightShare is how many points a polygon has along its straight parts, by their
// length, against a bend that turns evenly. The straight parts of leaning columns are
// cut across and come out slightly bent, so that it is not 0. A choice of this project,
// by trial.
const straightShare = 0.4

// Polygon lays the outline's section into out, from the centre line to the top edge, its
// points closer together where it bends: a polygon through few of them then holds nearly
// its area. How they are spaced needs no more than one look at each piece of the bend.
func (o Outline) Polygon(out []geom.Vec2) {
	var s Section
	s.open(&o)
	for i := range bendPanels {
		s.run[i+1] = s.run[i] + s.Bend.Speed((float64(i)+0.5)/bendPanels)/bendPanels
	}
	s.polygon(out)
}

func (s *Section) polygon(out []geom.Vec2) {
	flat, bend, side := straightShare*s.flat(), s.run[bendPanels], straightShare*s.side()
	// Along the bend half by its length, half by its parameter, which runs slowest
	// where it bends most.
	each := bend / bendPanels
	total := flat + 2*bend + side
	last := len(out) - 1
	k, from, to := 0, flat, flat+s.run[1]+each
	for i := range last {
		m := total * float64(i) / float64(last)
		switch {
		case m < flat:
			out[i] = s.A.Lerp(s.Bend.A, m/flat)
		case m < flat+2*bend:
			for k+1 < bendPanels && to <= m {
				k++
				from, to = to, flat+s.run[k+1]+each*float64(k+1)
			}
			out[i] = s.Bend.At((float64(k) + (m-from)/(to-from)) / bendPanels)
		case side > 0:
			out[i] = s.Bend.B.Lerp(s.P, (m-flat-2*bend)/side)
		default:
			out[i] = s.P
		}
	}
	out[last] = s.P
}
