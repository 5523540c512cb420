package geom_test

import (
	"math"

	"barkwright/core/geom"
)

// crossingShare is how far two edges must pass each other to count as crossing, as a
// share of their lengths. The closed banks of a slit in a surface that is flat by itself
// touch, and rounding must not make them cross.
const crossingShare = 1e-6

// selfCrossing returns a place where a closed line crosses itself, and whether
// there is one. Banks that only touch do not cross.
func selfCrossing(line []geom.Vec2) (geom.Vec2, bool) {
	n := len(line)
	for i := range n {
		a, b := line[i], line[(i+1)%n]
		for j := i + 2; j < n; j++ {
			if (j+1)%n == i {
				continue
			}
			if at, ok := crossing(a, b, line[j], line[(j+1)%n]); ok {
				return at, true
			}
		}
	}
	return geom.Vec2{}, false
}

// crossing returns where the segments ab and cd pass through each other.
func crossing(a, b, c, d geom.Vec2) (geom.Vec2, bool) {
	if max(a.X, b.X) < min(c.X, d.X) || max(c.X, d.X) < min(a.X, b.X) ||
		max(a.Y, b.Y) < min(c.Y, d.Y) || max(c.Y, d.Y) < min(a.Y, b.Y) {
		return geom.Vec2{}, false
	}
	u, v := b.Sub(a), d.Sub(c)
	scale := crossingShare * u.Len() * v.Len()
	turn := u.Cross(v)
	if math.Abs(turn) <= scale {
		return geom.Vec2{}, false
	}
	t := c.Sub(a).Cross(v) / turn
	s := c.Sub(a).Cross(u) / turn
	const e = crossingShare
	if t <= e || t >= 1-e || s <= e || s >= 1-e {
		return geom.Vec2{}, false
	}
	return a.Lerp(b, t), true
}
