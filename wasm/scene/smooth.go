package scene

import (
	"math"

	"barkwright/core/geom"
)

// A bend of cornerFrom or more between two straight pieces is a corner of what is drawn, and
// one under plainUnder needs no more points. Radians.
const (
	cornerFrom = 35 * math.Pi / 180
	plainUnder = 1.5 * math.Pi / 180
)

// Smooth returns a line with more points between its own, on a curve through all of them.
// Corners stay: there the curve begins anew.
func Smooth(line []geom.Vec2) []geom.Vec2 {
	n := len(line)
	if n < 3 {
		return line
	}
	bends := make([]float64, n)
	for i := 1; i < n-1; i++ {
		a, b := line[i].Sub(line[i-1]), line[i+1].Sub(line[i])
		if a.Len() > 0 && b.Len() > 0 {
			bends[i] = math.Abs(math.Atan2(a.Cross(b), a.Dot(b)))
		}
	}
	// A curve through three points and on takes its direction at each from its neighbours.
	direction := func(i, from, to int) geom.Vec2 {
		if i == 0 || i == n-1 || bends[i] >= cornerFrom {
			return line[to].Sub(line[from])
		}
		a, b := line[i].Sub(line[i-1]), line[i+1].Sub(line[i])
		la, lb := a.Len(), b.Len()
		if la == 0 || lb == 0 {
			return line[to].Sub(line[from])
		}
		// That of the circle through the three points, at the length of this piece.
		return a.Scale(lb / la).Add(b.Scale(la / lb)).Scale(line[to].Sub(line[from]).Len() / (la + lb))
	}
	out := make([]geom.Vec2, 0, 2*n)
	for i := range n - 1 {
		out = append(out, line[i])
		curved := func(k int) bool { return bends[k] > plainUnder && bends[k] < cornerFrom }
		if !curved(i) && !curved(i+1) {
			continue
		}
		u, v := direction(i, i, i+1), direction(i+1, i, i+1)
		const pieces = 4
		for k := 1; k < pieces; k++ {
			t := float64(k) / pieces
			h := t * t * (3 - 2*t)
			q := line[i].Lerp(line[i+1], h).Add(u.Scale(t * (1 - t) * (1 - t))).Add(v.Scale(-t * t * (1 - t)))
			out = append(out, q)
		}
	}
	return append(out, line[n-1])
}
