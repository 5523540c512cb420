package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// tape draws the measure between the views, from amidships both ways, with the
// stations of the thwarts drawn through both.
func (p *pen) tape(c core.Canoe, l layout) {
	a := scene.Plate{Origin: draw.Point{X: l.top.Origin.X, Y: l.tapeY}, Scale: l.top.Scale}
	end := c.Design.Length / 2
	for i, t := range c.Frame.Thwarts {
		for _, x := range [2]float64{t.X, -t.X} {
			top, low := l.top.At(x, c.Hull.HalfBeam(t.X)), l.side.At(x, c.Hull.Sheer(t.X))
			if !l.hasTop {
				top.Y = l.tapeY
			}
			if !l.hasSide {
				low.Y = l.tapeY
			}
			p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, top, low)
			if i == 0 {
				break
			}
		}
	}
	p.Line(draw.Faint, scene.FineWidth, a.At(-end, 0), a.At(end, 0))
	step, name := units.Foot, func(i int) string { return units.Count.Format(float64(i), p.View.System) + "'" }
	if p.View.System == units.Metric {
		step = 0.5
		name = func(i int) string { return units.Length.Format(float64(i)*step, p.View.System) }
	}
	every := 1
	for float64(every)*step*a.Scale < 5.5*p.Letter {
		every++
	}
	p.scaleOnTape(a, step, end)
	for i := 0; float64(i)*step <= end; i++ {
		high := 3.0
		if i%every == 0 {
			high = 5
		}
		for _, x := range [2]float64{float64(i) * step, -float64(i) * step} {
			at := a.At(x, 0)
			p.Line(draw.Faint, scene.FineWidth, draw.Point{X: at.X, Y: at.Y - high*p.Weight},
				draw.Point{X: at.X, Y: at.Y + high*p.Weight})
			if l.titled && i%every == 0 {
				n := p.Say(scene.RankExtra, name(i), draw.Faint, draw.Paper, scene.SpotAt(at.X, at.Y+1.3*p.Letter, draw.Middle),
					scene.SpotAt(at.X, at.Y-1.3*p.Letter, draw.Middle))
				n.Text.Size, n.Spare = max(11, 0.9*p.Letter), true
			}
			if i == 0 {
				break
			}
		}
	}
}

// scaleOnTape blackens every other step of the tape: the scale of both views.
func (p *pen) scaleOnTape(a scene.Plate, step, end float64) {
	for i := 0; float64(i+1)*step <= end; i += 2 {
		for _, side := range [2]float64{1, -1} {
			p.Line(draw.Faint, 2.2, a.At(side*float64(i)*step, 0), a.At(side*float64(i+1)*step, 0))
		}
	}
}
