package solid

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Held draws the outlines of the boat that this one is held against over it: both top edges, and
// the bottom with the profiles of its ends.
func (p *Solid) Held(c core.Canoe) {
	h := c.Hull
	const steps = 40
	line := func(at func(place float64) geom.Vec3) []draw.Point {
		var all []geom.Vec3
		for i := -steps; i <= steps; i++ {
			q := at(2 * float64(max(i, -i)) / steps)
			if i < 0 {
				q.X = -q.X
			}
			all = append(all, q)
		}
		placed := p.Place(all)
		p.HeldLine(placed...)
		return placed
	}
	for _, side := range [2]float64{1, -1} {
		edge := line(func(place float64) geom.Vec3 {
			column := h.Column(place)
			return InPlace(column.At(column.Girth()), [2]float64{1, side})
		})
		if side > 0 {
			at := edge[2*steps/3]
			p.Say(scene.RankPart, "held", draw.Ink, draw.Paper, scene.SpotAt(at.X, at.Y-p.Letter, draw.Middle),
				scene.SpotAt(at.X, at.Y+p.Letter, draw.Middle))
		}
	}
	line(func(place float64) geom.Vec3 {
		foot := h.Foot(place)
		return geom.Vec3{X: foot.X, Z: foot.Y}
	})
}
