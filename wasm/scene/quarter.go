package scene

import (
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Quarters lists the four quarters of the boat as the signs of x and y.
var Quarters = [4][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}}

// InQuarter maps points of the forward port quarter into the quarter q. Points of a
// panel are moved out from the centre line by out.
func (a Plate) InQuarter(q [2]float64, out float64, points []geom.Vec2) []draw.Point {
	placed := make([]draw.Point, len(points))
	for i, v := range points {
		placed[i] = a.At(q[0]*v.X, q[1]*(v.Y+out))
	}
	return placed
}

// OnAxis is how near to a centre line, in metres, a point counts as lying on it. Such a
// point is joined to its mirror image.
const OnAxis = 1e-9

// SlitAt reports whether a piece is slit at the top of row r in a column.
func SlitAt(piece *bark.Piece, col, r int) bool {
	return piece.Vertex(col, r+1, geom.Before) != piece.Vertex(col, r+1, geom.After)
}
