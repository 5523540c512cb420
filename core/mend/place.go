package mend

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/tally"
)

// arcSteps is in how many steps a side of a patch is drawn along the bark.
const arcSteps = 8

// Column is the column of the bark at a place along the gunwale, and how long it is from the
// centre line to the edge, m.
func Column(h *hull.Hull, at float64) (c hull.Column, girth float64) {
	run := min(math.Abs(at), h.Gunwale.Length())
	c = h.Column(h.ColumnAtEdge(h.StationAt(run)))
	return c, c.Girth()
}

// Outline is where a repair lies on the finished boat: the way round its patch, or round what is broken
// where no patch is wanted, x forward, y to port, z up. A rib's is a line from gunwale to gunwale. It
// is cut at the edges of the bark.
func Outline(h *hull.Hull, r Repair) (points []geom.Vec3, closed bool) {
	d := r.Damage
	if d.Kind == tally.BrokenRib {
		_, girth := Column(h, d.At)
		for i := range 2*arcSteps + 1 {
			points = append(points, onSkin(h, d.At, girth*(float64(i)/arcSteps-1)))
		}
		return points, false
	}
	along, round := r.PatchAlong, r.PatchRound
	up := middleRound(h, r)
	corner := []geom.Vec2{{X: -along / 2, Y: -round / 2}, {X: along / 2, Y: -round / 2},
		{X: along / 2, Y: round / 2}, {X: -along / 2, Y: round / 2}}
	for i, a := range corner {
		b := corner[(i+1)%len(corner)]
		for k := range arcSteps {
			s := float64(k) / arcSteps
			points = append(points, onSkin(h, d.At+a.X+s*(b.X-a.X), up+a.Y+s*(b.Y-a.Y)))
		}
	}
	return points, true
}

// middleRound is how far round the bark from the centre line the middle of a patch lies. The strip of torn
// lacing hangs from the edge, on the side that is said.
func middleRound(h *hull.Hull, r Repair) float64 {
	if r.Damage.Kind != tally.TornLacing {
		return r.Damage.Up
	}
	_, girth := Column(h, r.Damage.At)
	return math.Copysign(girth-r.PatchRound/2, r.Damage.Up)
}

// onSkin is the point of the bark at a place along the gunwale, so far round it from the centre line.
func onSkin(h *hull.Hull, at, up float64) geom.Vec3 {
	c, girth := Column(h, at)
	p := c.At(min(math.Abs(up), girth))
	return geom.Vec3{X: math.Copysign(p.X, at), Y: math.Copysign(p.Y, up), Z: p.Z}
}
