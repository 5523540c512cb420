package scene

import (
	"barkwright/core/draw"
)

import "barkwright/core/geom"

// Plate is a drawing's own axes in the picture: Origin is where (0, 0) stands,
// Scale is CSS pixels a metre, the second coordinate upward.
type Plate struct {
	Origin draw.Point
	Scale  float64
}

func (a Plate) At(u, w float64) draw.Point {
	return draw.Point{X: a.Origin.X + u*a.Scale, Y: a.Origin.Y - w*a.Scale}
}

// Place puts points of a plate's axes in the picture.
func (a Plate) Place(points []geom.Vec2) []draw.Point {
	out := make([]draw.Point, len(points))
	for i, q := range points {
		out[i] = a.At(q.X, q.Y)
	}
	return out
}
