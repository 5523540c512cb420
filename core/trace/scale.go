package trace

import "math"

// Size is a length that is lettered on a picture, between two of its points.
type Size struct {
	A, B Point
	// Length and the spread that it is known with, metres.
	Length, Spread float64
}

// Scale is how a view's two axes are scaled.
type Scale struct {
	// Along and Up in metres for each unit of the plane: a pixel, where it was not set square.
	Along, Up float64
	// Misses are by how much each lettered size comes out other than lettered, metres.
	Misses []float64
	// Chi is the root mean square of the misses in their own spreads, 1 where they disagree
	// as much as they may. 0 for a single size.
	Chi float64
}

// across is a size as the scale takes it: its run along and up in units of the plane, its
// length and its spread, metres.
type across struct{ run, rise, length, spread float64 }

// scaleTurns bounds the search. It halves no step and needs about four.
const scaleTurns = 12

// weigh finds the scale that the sizes agree on best, by least squares of their misses in
// their own spreads. uneven is the spread of the share by which one axis may be scaled other
// than the other, and lean what that share is taken to be: sizes of both axes outweigh it,
// and where all lie along one, the other follows.
func weigh(sizes []across, uneven, lean float64) Scale {
	top, bottom := 0.0, 0.0
	for _, s := range sizes {
		top += math.Hypot(s.run, s.rise) * s.length / (s.spread * s.spread)
		bottom += (s.run*s.run + s.rise*s.rise) / (s.spread * s.spread)
	}
	// The logarithms of the scales: no step makes one negative.
	p := math.Log(top / bottom)
	q := p
	for range scaleTurns {
		w := 1 / (uneven * uneven)
		pp, pq, qq := w, -w, w
		gap := (p - q - lean) * w
		gp, gq := gap, -gap
		for _, s := range sizes {
			x, y := math.Exp(p)*s.run, math.Exp(q)*s.rise
			l := math.Hypot(x, y)
			dp, dq, miss := x*x/(l*s.spread), y*y/(l*s.spread), (l-s.length)/s.spread
			pp, pq, qq = pp+dp*dp, pq+dp*dq, qq+dq*dq
			gp, gq = gp+dp*miss, gq+dq*miss
		}
		det := pp*qq - pq*pq
		p, q = p-(qq*gp-pq*gq)/det, q-(pp*gq-pq*gp)/det
	}
	found := Scale{Along: math.Exp(p), Up: math.Exp(q)}
	sum := 0.0
	for _, s := range sizes {
		miss := math.Hypot(found.Along*s.run, found.Up*s.rise) - s.length
		found.Misses = append(found.Misses, miss)
		sum += miss * miss / (s.spread * s.spread)
	}
	if n := len(sizes); n > 1 {
		found.Chi = math.Sqrt(sum / float64(n-1))
	}
	return found
}
