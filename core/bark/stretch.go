package bark

import (
	"math"

	"barkwright/core/geom"
)

// Pieces returns the sheet and the panels.
func (f *Flat) Pieces() []*Piece {
	out := []*Piece{&f.Sheet}
	for i := range f.Panels {
		out = append(out, &f.Panels[i])
	}
	return out
}

// patchSide is the side of the squares among which the one that stretches most is
// found, m: a hand's breadth, so that one triangle at a gore's foot does not decide.
const patchSide = 0.1

// measure sums up the pieces.
func (f *Flat) measure() {
	type patch struct{ area, squares float64 }
	patches := map[[2]int]patch{}
	cells := 0
	for _, p := range f.Pieces() {
		cells += len(p.Stretches) / 2
	}
	all := make([]geom.Stretch, 0, cells)
	area, squares := 0.0, 0.0
	for _, p := range f.Pieces() {
		for _, q := range p.Points {
			f.Length, f.Breadth = max(f.Length, 2*q.X), max(f.Breadth, 2*q.Y)
		}
		for _, s := range p.Cells() {
			all = append(all, s.Stretch)
			square := s.Area * ((s.S1-1)*(s.S1-1) + (s.S2-1)*(s.S2-1))
			area, squares = area+s.Area, squares+square
			key := [2]int{int(math.Floor(s.Middle.X / patchSide)), int(math.Floor(s.Middle.Y / patchSide))}
			at := patches[key]
			patches[key] = patch{at.area + s.Area, at.squares + square}
		}
	}
	f.RMS = math.Sqrt(squares / area)
	f.P95 = geom.StretchPercentile(all, 0.95)
	most := 0.0
	for key, p := range patches {
		// A sliver at the edge of the sheet is no place.
		if mean := p.squares / max(p.area, patchSide*patchSide/2); mean > most {
			most = mean
			f.Where = geom.Vec2{X: (float64(key[0]) + 0.5) * patchSide, Y: (float64(key[1]) + 0.5) * patchSide}
		}
	}
}
