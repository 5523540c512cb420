package view

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// stationsShown is the largest number of ribs in a body plan whose lines can be told apart.
const stationsShown = 10

// bodyPlan draws sections at ribs about one centre line: those of the fore half to the right,
// those of the aft half, which is the same, to the left.
func (p *pen) bodyPlan(c core.Canoe, size draw.Size) {
	d := c.Design
	wide, high := 0.0, c.Hull.Sheer(c.Hull.GunwaleX)
	for _, r := range c.Frame.Ribs {
		wide = max(wide, r.Cut(c.Hull).Section.Breadth())
	}
	t := p.Letter
	k := max(1, min((size.Width-7*t)/(2*wide), (size.Height-5.6*t)/high))
	v := p.View.Clamp(size)
	middle := draw.Point{X: size.Width / 2, Y: 3*t + high*k + (size.Height-5.6*t-high*k)/2}
	a := scene.Plate{Scale: k * v.Zoom, Origin: draw.Point{X: size.Width/2 + (middle.X-size.Width/2)*v.Zoom + v.PanX,
		Y: size.Height/2 + (middle.Y-size.Height/2)*v.Zoom + v.PanY}}
	p.Line(draw.Faint, scene.FineWidth, a.At(-1.1*wide, 0), a.At(1.1*wide, 0))
	p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, a.At(0, -0.02), a.At(0, high))
	if p.View.Load != nil {
		z := p.View.Load.Height
		line := []draw.Point{a.At(-1.1*wide, z), a.At(1.1*wide, z)}
		p.Line(draw.Water, 1.2, line...)
		p.Part(answer.WaterPart, false, line)
	}
	ribs := c.Frame.Ribs
	shown := max(4, min(stationsShown, int(wide*a.Scale/p.Letter)))
	step := (len(ribs) + shown - 1) / shown
	for i, r := range ribs {
		name := answer.RibPart(r.Number)
		if i%step != 0 && i != len(ribs)-1 && name != p.View.Touched {
			continue
		}
		p.heldSection(r.Number, a, i == 0)
		section := r.Cut(c.Hull)
		half := halfSection(section.Section, section.Foot.Y)
		for _, side := range [2]float64{1, -1} {
			line := make([]draw.Point, len(half))
			for k, q := range half {
				line[k] = a.At(side*q.X, q.Y)
			}
			width := scene.TimberWidth
			if i == 0 {
				width = scene.OutlineWidth
			}
			p.Line(draw.Ink, width, line...)
			p.Part(name, false, line)
			if side > 0 || i == 0 {
				p.stationNumber(r, line[len(line)-1], side)
			}
		}
	}
	if v.Layer != scene.Measures {
		return
	}
	title := p.Say(scene.RankTitle, "Body plan", draw.Ink, draw.Paper, scene.SpotAt(size.Width/2, 1.1*t, draw.Middle))
	title.Text.Bold = true
	n := p.Say(scene.RankTitle, "bow half →", draw.Ink, draw.Paper, scene.SpotAt(size.Width-4, 1.1*t, draw.End))
	m := p.Say(scene.RankTitle, "← stern half", draw.Ink, draw.Paper, scene.SpotAt(4, 1.1*t, draw.Start))
	n.Still, m.Still = true, true
	beam := p.Say(scene.RankMain, "beam "+units.Length.Format(d.Beam, v.System), draw.Ink, draw.Paper,
		scene.SpotAt(a.Origin.X, a.At(0, c.Hull.Sheer(0)).Y+0.2*t, draw.Middle))
	beam.With = p.Arrows(a.At(-d.Beam/2, c.Hull.Sheer(0)-0.2*t/a.Scale), a.At(d.Beam/2, c.Hull.Sheer(0)-0.2*t/a.Scale))
	depth := p.Say(scene.RankMain, "depth "+units.Length.Format(c.Hull.Sheer(0), v.System), draw.Ink, draw.Paper,
		scene.SpotAt(a.At(-1.05*wide, 0).X, a.At(0, c.Hull.Sheer(0)/2).Y, draw.Middle))
	depth.With = p.Arrows(a.At(-1.05*wide, 0), a.At(-1.05*wide, c.Hull.Sheer(0)))
	at := a.At(0.9*wide, 0)
	p.Say(scene.RankExtra, "base line", draw.Faint, draw.Paper, scene.SpotAt(at.X, at.Y+0.8*t, draw.Middle)).Lead = &at
	if v.Load != nil {
		at := a.At(1.1*wide, v.Load.Height)
		w := p.Say(scene.RankExtra, "water line, loaded", draw.Water, draw.Paper, scene.SpotAt(at.X+4, at.Y, draw.Start),
			scene.SpotAt(at.X, at.Y-0.8*t, draw.End))
		w.Lead = &at
	}
	p.ScaleBar(draw.Point{X: a.Origin.X, Y: a.Origin.Y + 1.6*t}, a.Scale)
}

// stationNumber numbers a section of the body plan by its rib, over its top edge.
func (p *pen) stationNumber(r frame.Rib, at draw.Point, side float64) {
	anchor := draw.Middle
	text := strconv.Itoa(r.Number)
	n := p.Say(scene.RankHeight, text, draw.Ink, draw.Paper, scene.SpotAt(at.X, at.Y-0.9*p.Letter, anchor),
		scene.SpotAt(at.X+side*0.9*p.Letter, at.Y-0.4*p.Letter, anchor))
	n.Key, n.Lead = "rib "+text, &at
}
