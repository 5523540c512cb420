package scene

import (
	"barkwright/core/draw"
)

import "barkwright/core/geom"

// Plate maps a drawing's own axes into the picture. Origin is where (0, 0) stands and
// Scale is in CSS pixels per metre. The second coordinate points up.
type Plate struct {
	Origin draw.Point
	Scale  float64
}

// At returns where the point (u, w) of the drawing stands in the picture.
func (a Plate) At(u, w float64) draw.Point {
	return draw.Point{X: a.Origin.X + u*a.Scale, Y: a.Origin.Y - w*a.Scale}
}

// Place returns where points of the drawing stand in the picture.
func (a Plate) Place(points []geom.Vec2) []draw.Point {
	out := make([]draw.Point, len(points))
	for i, q := range points {
		out[i] = a.At(q.X, q.Y)
	}
	return out
}
