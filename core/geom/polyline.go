package geom

import (
	"math"
	"slices"
)

// Polyline is a path of straight pieces; Run holds the length from its start to
// each point.
type Polyline struct {
	Points []Vec2
	Run    []float64
}

// NewPolyline measures the path through points. It keeps the slice.
func NewPolyline(points []Vec2) Polyline {
	run := make([]float64, len(points))
	for i := 1; i < len(points); i++ {
		run[i] = run[i-1] + points[i].Sub(points[i-1]).Len()
	}
	return Polyline{points, run}
}

// Length returns the length of the whole path.
func (p Polyline) Length() float64 {
	if len(p.Run) == 0 {
		return 0
	}
	return p.Run[len(p.Run)-1]
}

// At returns the point a length s along the path, held at its ends.
func (p Polyline) At(s float64) Vec2 {
	n := len(p.Points)
	if s <= 0 || n == 1 {
		return p.Points[0]
	}
	if s >= p.Run[n-1] {
		return p.Points[n-1]
	}
	i := p.piece(s)
	return p.Points[i].Lerp(p.Points[i+1], (s-p.Run[i])/(p.Run[i+1]-p.Run[i]))
}

// Heading returns the unit direction of the piece a length s along the path.
func (p Polyline) Heading(s float64) Vec2 {
	i := p.piece(s)
	return p.Points[i+1].Sub(p.Points[i]).Unit()
}

// piece finds i with Run[i] <= s < Run[i+1].
func (p Polyline) piece(s float64) int {
	lo, hi := 0, len(p.Run)-1
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; p.Run[mid] <= s {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

// Turning returns the sum of the angles turned at the path's inner points,
// positive to the left, in radians.
func (p Polyline) Turning() float64 {
	sum := 0.0
	for i := 1; i+1 < len(p.Points); i++ {
		a, b := p.Points[i].Sub(p.Points[i-1]), p.Points[i+1].Sub(p.Points[i])
		sum += math.Atan2(a.Cross(b), a.Dot(b))
	}
	return sum
}

// Reversed returns the points of a path from its end to its start.
func Reversed(points []Vec2) []Vec2 {
	points = slices.Clone(points)
	slices.Reverse(points)
	return points
}

// Offset returns the points of a path moved to its left by a distance, its ends
// included. Each moves square to the chord between its neighbours: exact where the path
// is straight or turns evenly. At a corner the two paths come nearer to each other.
func Offset(points []Vec2, by float64) []Vec2 {
	out := make([]Vec2, len(points))
	for i, p := range points {
		before, after := points[max(0, i-1)], points[min(len(points)-1, i+1)]
		out[i] = p.Add(after.Sub(before).Unit().Left().Scale(by))
	}
	return out
}

// SignedArea is the area inside a closed outline, whose first point is not repeated: positive where
// it runs from the x axis toward the y axis.
func SignedArea(outline []Vec2) float64 {
	sum := 0.0
	for i, q := range outline {
		sum += q.Cross(outline[(i+1)%len(outline)]) / 2
	}
	return sum
}
