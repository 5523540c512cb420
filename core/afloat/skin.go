package afloat

import "barkwright/core/geom"

// girthPoints is how many points of a station stand in the skin. A chord falls
// short of its arc by (chord x curvature)^2 / 24: with 80 chords 1.6e-4 on an
// ellipse of half-axes 0.40 and 0.15, about the hardest bilge of a canoe.
const girthPoints = 81

// skin is the port half of a station: its outline at equal steps of girth.
type skin [girthPoints]geom.Vec3

func (b *Body) skin(i int) (out skin) {
	outline := b.outline(i)
	along := make([]float64, len(outline))
	for k := 1; k < len(outline); k++ {
		along[k] = along[k-1] + outline[k].Sub(outline[k-1]).Len()
	}
	girth := along[len(along)-1]
	n := 0
	for k := range out {
		want := girth * float64(k) / (girthPoints - 1)
		for n+2 < len(along) && along[n+1] < want {
			n++
		}
		p := outline[n]
		if n+1 < len(along) && along[n+1] > along[n] {
			p = p.Lerp(outline[n+1], min((want-along[n])/(along[n+1]-along[n]), 1))
		}
		out[k] = geom.Vec3{X: b.x[i], Y: p.X, Z: p.Y}
	}
	return out
}

// WettedSurface returns the area of bark under water, both sides, with the boat
// upright: the flat triangles of the skin, those that cross the surface cut at it.
// It is of the second order in the spacing. It panics on a heeled plane.
func (b *Body) WettedSurface(p Waterplane) float64 {
	if p.Heel != 0 {
		panic(heeledWaterplane)
	}
	area := 0.0
	next := b.skin(0)
	for i := 1; i < len(b.x); i++ {
		row := next
		next = b.skin(i)
		for k := 0; k+1 < girthPoints; k++ {
			area += wetTriangle(p, row[k], next[k], next[k+1])
			area += wetTriangle(p, row[k], next[k+1], row[k+1])
		}
	}
	return 2 * area
}

const heeledWaterplane = "afloat: a heeled plane where an upright one is asked"

// wetTriangle returns the area of the part of a triangle below an upright plane.
func wetTriangle(p Waterplane, a, b, c geom.Vec3) float64 {
	above := func(v geom.Vec3) float64 { return v.Z - p.Height - p.Slope*v.X }
	ha, hb, hc := above(a), above(b), above(c)
	if ha >= 0 && hb >= 0 && hc >= 0 {
		return 0
	}
	area := b.Sub(a).Cross(c.Sub(a)).Len() / 2
	switch {
	case ha <= 0 && hb <= 0 && hc <= 0:
		return area
	case (ha < 0) == (hb < 0):
		return area * wetShare(hc, ha, hb)
	case (hb < 0) == (hc < 0):
		return area * wetShare(ha, hb, hc)
	}
	return area * wetShare(hb, hc, ha)
}

// wetShare returns the share under water of a triangle whose corner at height
// alone stands on the other side of the surface from the corners at h and k.
func wetShare(alone, h, k float64) float64 {
	tip := alone / (alone - h) * alone / (alone - k)
	if alone < 0 {
		return tip
	}
	return 1 - tip
}
