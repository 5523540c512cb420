package geom

import "math"

// Cell is the stretch at the middle of a cell of the grid, and where on the sheet
// that middle lies. Its Corners are not set.
type Cell struct {
	Stretch
	Middle Vec2
}

// Cells returns the stretch at the middle of every cell of the grid, from
// the surface's and the sheet's tangents there by central differences: the error
// is of second order in the size of a cell. Stretches, of the two triangles of a
// cell, scatter about it to first order, which widens their percentiles. A cell
// whose corners lie in a line has none.
func (f *Flat) Cells() []Cell {
	g := f.grid
	out := make([]Cell, 0, (g.Cols-1)*(g.Rows-1))
	for c := range g.Cols - 1 {
		for r := range g.Rows - 1 {
			a, b := tangents3(g.Point(c, r), g.Point(c+1, r), g.Point(c, r+1), g.Point(c+1, r+1))
			corners := [4]Vec2{f.At(c, r, After), f.At(c+1, r, Before), f.At(c, r+1, After), f.At(c+1, r+1, Before)}
			p, q := tangents2(corners[0], corners[1], corners[2], corners[3])
			if s, ok := stretchOf(metric{a.Dot(a), a.Dot(b), b.Dot(b)}, metric{p.Dot(p), p.Dot(q), q.Dot(q)}); ok {
				middle := corners[0].Add(corners[1]).Add(corners[2]).Add(corners[3]).Scale(0.25)
				out = append(out, Cell{s, middle})
			}
		}
	}
	return out
}

// metric is a first fundamental form: E, F and G of two tangents.
type metric struct{ e, f, g float64 }

// stretchOf returns the principal stretches of a map from the metric of a surface
// to that of a sheet, the square roots of the eigenvalues of surface^-1 sheet. It
// reports false where the surface's tangents are parallel.
func stretchOf(surface, sheet metric) (Stretch, bool) {
	det := surface.e*surface.g - surface.f*surface.f
	if !(det > slenderness*slenderness*max(surface.e, surface.g)*max(surface.e, surface.g)) {
		return Stretch{}, false
	}
	half := (surface.g*sheet.e - 2*surface.f*sheet.f + surface.e*sheet.g) / (2 * det)
	product := (sheet.e*sheet.g - sheet.f*sheet.f) / det
	apart := math.Sqrt(max(0, half*half-product))
	return Stretch{S1: math.Sqrt(half + apart), S2: math.Sqrt(max(0, half-apart)), Area: math.Sqrt(det)}, true
}

// tangents3 returns the tangents at the middle of a cell along its columns' numbers
// and along its rows', from its corners (c, r), (c+1, r), (c, r+1) and (c+1, r+1).
func tangents3(p, right, up, across Vec3) (along, upward Vec3) {
	return right.Add(across).Sub(p.Add(up)).Scale(0.5), up.Add(across).Sub(p.Add(right)).Scale(0.5)
}

// tangents2 is tangents3 in the plane.
func tangents2(p, right, up, across Vec2) (along, upward Vec2) {
	return right.Add(across).Sub(p.Add(up)).Scale(0.5), up.Add(across).Sub(p.Add(right)).Scale(0.5)
}
