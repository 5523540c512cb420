package draw

import "math"

// Polygon is a regular polygon of n corners about a place, the first of them to the right
// of it turned clockwise by an angle, rad. It is not closed by a last point.
func Polygon(at Point, radius float64, n int, turned float64) []Point {
	out := make([]Point, n)
	for i := range out {
		sin, cos := math.Sincos(turned + 2*math.Pi*float64(i)/float64(n))
		out[i] = Point{X: at.X + radius*cos, Y: at.Y + radius*sin}
	}
	return out
}
