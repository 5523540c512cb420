package afloat

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// girthPoints is how many points of a station stand in the skin. A chord falls
// short of its arc by (chord x curvature)^2 / 24: with 80 chords 1.6e-4 on an
// ellipse of half-axes 0.40 and 0.15, about the hardest bilge of a canoe.
const girthPoints = 81

// appendSkin adds a station to the port half of the skin: its outline at equal
// steps of girth.
func appendSkin(skin []geom.Vec3, s hull.Station) []geom.Vec3 {
	along := make([]float64, len(s.Outline))
	for i := 1; i < len(s.Outline); i++ {
		along[i] = along[i-1] + s.Outline[i].Sub(s.Outline[i-1]).Len()
	}
	girth := along[len(along)-1]
	i := 0
	for k := range girthPoints {
		want := girth * float64(k) / (girthPoints - 1)
		for i+2 < len(along) && along[i+1] < want {
			i++
		}
		p := s.Outline[i]
		if i+1 < len(along) && along[i+1] > along[i] {
			p = p.Lerp(s.Outline[i+1], math.Min((want-along[i])/(along[i+1]-along[i]), 1))
		}
		skin = append(skin, geom.Vec3{X: s.X, Y: p.X, Z: p.Y})
	}
	return skin
}

// WettedSurface returns the area of bark under water, both sides, with the boat
// upright: the flat triangles of the skin, those that cross the surface cut at it.
// It is of the second order in the spacing. It panics on a heeled plane.
func (b *Body) WettedSurface(p Plane) float64 {
	if p.Heel != 0 {
		panic(heeledPlane)
	}
	area := 0.0
	for i := 0; i+1 < len(b.x); i++ {
		row, next := b.skin[i*girthPoints:], b.skin[(i+1)*girthPoints:]
		for k := 0; k+1 < girthPoints; k++ {
			area += wetTriangle(p, row[k], next[k], next[k+1])
			area += wetTriangle(p, row[k], next[k+1], row[k+1])
		}
	}
	return 2 * area
}

const heeledPlane = "afloat: a heeled plane where an upright one is asked"

// wetTriangle returns the area of the part of a triangle below an upright plane.
func wetTriangle(p Plane, a, b, c geom.Vec3) float64 {
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
