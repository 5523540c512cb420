package pattern

import (
	"math"

	"barkwright/core/geom"
)

const (
	// markSize is half of a mark in an overlap, mm: inside its 10 mm with room over.
	markSize = 2.3
	// crossSize is half the cross where four sheets meet, mm.
	crossSize = 4
	// edgeMarkAt is how far along a shared edge its mark stands, as a share; clear
	// of the scale bars on the long edges.
	edgeMarkAcross, edgeMarkDown = 0.5, 0.82
)

// registration is the marks that sheets share, in the pattern's millimetres: a
// cross where four meet and a symbol on every edge between two, the same on both.
func (t Tile) registration() []Line {
	var out []Line
	if t.Rows*t.Cols == 1 {
		return nil
	}
	stepX, stepY := t.Block.Width-t.Block.Overlap, t.Block.Height-t.Block.Overlap
	at := func(col, row float64) geom.Vec2 { return geom.Vec2{X: col * stepX, Y: row * stepY}.Sub(t.offset) }
	middle := t.Block.Overlap / 2
	for r := t.Row; r <= t.Row+1; r++ {
		for c := t.Col; c <= t.Col+1; c++ {
			if (r > 0 && r < t.Rows && t.Rows > 1) || (c > 0 && c < t.Cols) {
				out = append(out, cross(at(float64(c), float64(r)).Add(geom.Vec2{X: middle, Y: middle}))...)
			}
		}
	}
	for r := max(1, t.Row); r <= min(t.Rows-1, t.Row+1); r++ {
		out = append(out, symbol(r+t.Col, at(float64(t.Col)+edgeMarkAcross, float64(r)).Add(geom.Vec2{Y: markSize + 0.5})))
	}
	for c := max(1, t.Col); c <= min(t.Cols-1, t.Col+1); c++ {
		out = append(out, symbol(c+t.Row, at(float64(c), float64(t.Row)+edgeMarkDown).Add(geom.Vec2{X: middle})))
	}
	return out
}

func cross(at geom.Vec2) []Line {
	return []Line{
		{[]geom.Vec2{at.Add(geom.Vec2{X: -crossSize}), at.Add(geom.Vec2{X: crossSize})}, Mark},
		{[]geom.Vec2{at.Add(geom.Vec2{Y: -crossSize}), at.Add(geom.Vec2{Y: crossSize})}, Mark},
		{polygon(at, 24, 0), Mark},
	}
}

// symbol is one of four, so that an edge is not laid on its neighbour's.
func symbol(n int, at geom.Vec2) Line {
	switch n % 4 {
	case 0:
		return Line{polygon(at, 24, 0), Cut}
	case 1:
		return Line{polygon(at, 3, -math.Pi/2), Cut}
	case 2:
		return Line{polygon(at, 4, math.Pi/4), Cut}
	}
	return Line{polygon(at, 4, 0), Cut}
}

// polygon is a closed regular polygon of n corners, of a mark's size.
func polygon(at geom.Vec2, n int, turned float64) []geom.Vec2 {
	out := make([]geom.Vec2, n+1)
	for i := range out {
		sin, cos := math.Sincos(turned + 2*math.Pi*float64(i%n)/float64(n))
		out[i] = at.Add(geom.Vec2{X: markSize * cos, Y: markSize * sin})
	}
	return out
}
