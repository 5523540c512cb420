package scene

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
)

// stripsOver draws what side panels are cut of: their butts, their names, and hatched
// across what there is no bark for.
func (p *pen) stripsOver(c core.Canoe, a plate) {
	if c.Skin == nil {
		return
	}
	for _, s := range c.Bark.Bed {
		if s.Wanting() {
			p.wanting(a.place(rect((s.Aft+s.Bow)/2, (s.Bow-s.Aft)/2, -s.Width/2, s.Width/2)))
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
func (p *pen) stripOver(c core.Canoe, a plate, s bark.Laid, side float64) {
	named := false
	for _, half := range s.Halves() {
		for i := range p.view.Flat.Panels {
			low, high := p.view.Flat.Panels[i].Between(half.From, half.To)
			if len(low) == 0 {
				continue
			}
			q := [2]float64{half.Sign, side}
			points := a.inQuarter(q, panelGap, between(low, high))
			if s.Wanting() {
				p.wanting(points)
			}
			if !named {
				named = true
				text := s.Name
				if s.Wanting() {
					text += ", wanting"
				}
				at := high[len(high)/2]
				at.Y += c.Design.GunwaleTurn + 0.9*p.letter/a.Scale
				p.say(rankExtra, text, Seam, Paper, spot{a.inQuarter(q, panelGap, []geom.Vec2{at})[0], Middle})
			}
		}
	}
}

// buttOver is the seam between two strips.
func (p *pen) buttOver(c core.Canoe, a plate, along, side float64) {
	sign := 1.0
	if along < 0 {
		sign, along = -1, -along
	}
	const sliver = 1e-4
	for i := range p.view.Flat.Panels {
		low, high := p.view.Flat.Panels[i].Between(along-sliver, along+sliver)
		if len(low) > 0 {
			p.dashed(Seam, timberWidth, []float64{7, 2, 2, 2}, a.inQuarter([2]float64{sign, side}, panelGap, []geom.Vec2{low[0], high[0]})...)
		}
	}
}
