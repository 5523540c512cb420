package geom

import (
	"cmp"
	"slices"
)

// Convex returns the corners of the least convex polygon that holds all of points, which it sorts: around it
// counterclockwise, from the leftmost. None lies on a straight side. It is a point or two where all lie on one or
// on a line. Method: A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions, Information
// Processing Letters 9 (1979), 216.
func Convex(points []Vec2) []Vec2 {
	slices.SortFunc(points, func(a, b Vec2) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
	points = slices.Compact(points)
	if len(points) < 3 {
		return points
	}
	out := make([]Vec2, 0, len(points)+1)
	chain := func(p Vec2, from int) {
		for len(out) > from && out[len(out)-1].Sub(out[len(out)-2]).Cross(p.Sub(out[len(out)-1])) <= 0 {
			out = out[:len(out)-1]
		}
		out = append(out, p)
	}
	for _, p := range points {
		chain(p, 1)
	}
	lower := len(out)
	for _, p := range slices.Backward(points[:len(points)-1]) {
		chain(p, lower)
	}
	return out[:len(out)-1]
}
