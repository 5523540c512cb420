package solid

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Made says how far the boat is made. The zero value is bare bark.
type Made struct {
	Gunwales, Capped bool
	Lashed           float64 // share of the groups
	Ends             bool    // stems in and ends sewn
	Sheathed         bool
	Ribs             int // how many are fitted, in the fitting order
	Headboards       bool
}

// Done is the finished boat.
func Done(c core.Canoe) Made {
	return Made{Gunwales: true, Capped: true, Lashed: 1, Ends: true, Sheathed: true, Ribs: c.Design.Ribs, Headboards: true}
}

// Canoe puts the boat into the picture, on a skin, as far as it is made.
func (p *Solid) Canoe(c core.Canoe, s Skin, made Made) {
	s.bare = !made.Sheathed
	bark := p.skin(&s)
	lining := answer.BarkPart
	if made.Sheathed {
		lining = answer.SheathingPart
		p.sheathing(c, &s)
	}
	p.InsideParts(bark, lining)
	p.ribs(c, &s, made.Ribs)
	if made.Headboards {
		p.headboards(c)
	}
	p.OutsideParts(bark, &s.facing, answer.BarkPart)
	p.seams(c, &s)
	if made.Ends {
		p.stems(c)
		p.ends(c)
	}
	if made.Gunwales {
		p.gunwales(c, &s, made.Capped)
		p.thwarts(c)
	} else {
		p.topEdge(&s)
	}
	p.lacing(c, &s, made.Lashed, made.Capped)
}

// Extremes are the outermost points of the finished boat: what a picture of it must hold.
func Extremes(c core.Canoe) []geom.Vec3 {
	h, d := c.Hull, c.Design
	var all []geom.Vec3
	add := func(q geom.Vec3) {
		for _, m := range scene.Quarters {
			all = append(all, InPlace(q, m))
		}
	}
	const columns = 24
	for i := range columns + 1 {
		place := 2 * float64(i) / columns
		points := h.Column(place).Points(4)
		for _, q := range points {
			add(q)
		}
		x := points[4].X
		add(geom.Vec3{X: x, Y: h.SkinHalfBreadth(x) + d.OutwaleThickness, Z: h.TopEdge(x) + d.CapThickness})
	}
	add(geom.Vec3{X: h.Foremost(), Z: d.EndHeight / 2})
	return all
}
