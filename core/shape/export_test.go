package shape

import "barkwright/core/geom"

// WholeLegSection is a section whose bend takes both legs whole, which no design
// has, for the test against the ellipse.
func WholeLegSection(corner, depth, weight float64) Section {
	s := Section{C: geom.Vec2{X: corner}, P: geom.Vec2{X: corner, Y: depth}}
	s.Bend = geom.Conic{A: s.A, C: s.C, B: s.P, W: weight}
	s.measure()
	return s
}
