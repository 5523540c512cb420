package scene

import (
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Quarters are the four quarters of the boat: the signs of x and y.
var Quarters = [4][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}}

// InQuarter puts points of the forward port quarter in one of the four, out from
// the centre line by out where they are a panel's.
func (a Plate) InQuarter(q [2]float64, out float64, points []geom.Vec2) []draw.Point {
	placed := make([]draw.Point, len(points))
	for i, v := range points {
		placed[i] = a.At(q[0]*v.X, q[1]*(v.Y+out))
	}
	return placed
}

// OnAxis is how near to a centre line a point lies that is joined to its mirror
// image, m.
const OnAxis = 1e-9

// SlitAt tells whether a piece is slit at the top of row r in a column.
func SlitAt(piece *bark.Piece, col, r int) bool {
	return piece.Vertex(col, r+1, geom.Before) != piece.Vertex(col, r+1, geom.After)
}
