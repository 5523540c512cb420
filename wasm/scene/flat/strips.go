package flat

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// stripsOver draws what side panels are cut from: their butts and names, with a hatch
// over what there is no bark for.
func (p *pen) stripsOver(c core.Canoe, a scene.Plate) {
	if c.Skin == nil {
		return
	}
	for _, s := range c.Bark.Bed {
		if s.Wanting() {
			p.Wanting(a.Place(scene.Rect((s.Aft+s.Bow)/2, (s.Bow-s.Aft)/2, -s.Width/2, s.Width/2)))
		}
	}
	for _, s := range c.Bark.Port {
		p.stripOver(c, a, s, 1)
	}
	for _, s := range c.Bark.Star {
		p.stripOver(c, a, s, -1)
	}
	for _, b := range c.Bark.Butts {
		side := -1.0
		if b.Port {
			side = 1
		}
		p.buttOver(c, a, b.Along, side)
	}
}

// stripOver names a strip and hatches it where it is wanting.
func (p *pen) stripOver(c core.Canoe, a scene.Plate, s bark.Laid, side float64) {
	var named []scene.Spot
	for _, half := range s.Halves() {
		for i := range p.View.Flat.Panels {
			low, high := p.View.Flat.Panels[i].Between(half.From, half.To)
			if len(low) == 0 {
				continue
			}
			q := [2]float64{half.Sign, side}
			points := a.InQuarter(q, panelGap, scene.Between(low, high))
			if s.Wanting() {
				p.Wanting(points)
			}
			for _, i := range [3]int{len(high) / 2, len(high) / 4, 3 * len(high) / 4} {
				at := high[i]
				at.Y += c.Design.GunwaleTurn + 0.9*p.Letter/a.Scale
				named = append(named, scene.Spot{At: a.InQuarter(q, panelGap, []geom.Vec2{at})[0], Anchor: draw.Middle})
			}
		}
	}
	lettered := p.View.Layer == scene.Measures || p.View.Layer == scene.Names && s.Wanting()
	if lettered && len(named) > 0 {
		text := s.Name
		if p.roomy(a) {
			text += ", " + units.Length.RoughUp(s.Length(), p.View.System) + " by " +
				units.Length.RoughUp(s.Width, p.View.System)
			if !s.Wanting() {
				text += ", " + scene.SheetWords(s, p.View.System)
			}
		}
		role := draw.Role(draw.Seam)
		if s.Wanting() {
			text, role = text+", wanting", draw.Warn
		}
		p.Say(scene.RankExtra, text, role, draw.Paper, named...)
	}
}

// buttOver is the seam between two strips.
func (p *pen) buttOver(c core.Canoe, a scene.Plate, along, side float64) {
	sign := 1.0
	if along < 0 {
		sign, along = -1, -along
	}
	const sliver = 1e-4
	for i := range p.View.Flat.Panels {
		low, high := p.View.Flat.Panels[i].Between(along-sliver, along+sliver)
		if len(low) > 0 {
			p.Dashed(draw.Seam, scene.TimberWidth, scene.SheetDash,
				a.InQuarter([2]float64{sign, side}, panelGap, []geom.Vec2{low[0], high[0]})...)
		}
	}
}
