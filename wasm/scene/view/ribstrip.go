package view

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// ribStrip draws every rib as the straight blank it is bent from, from the middle of the boat outward:
// lengths are to scale, widths in proportion to one another. Each has the marks of its table.
func (p *pen) ribStrip(c core.Canoe, size draw.Size) {
	t, ribs := p.Letter, c.Frame.Ribs
	long, wide := 0.0, 0.0
	for _, r := range ribs {
		long, wide = max(long, r.Length+2*gather.RibTrim), max(wide, r.Width)
	}
	beside, top, foot := 6.5*t, 2.6*t, 4*t
	v := p.View.Clamp(size)
	row := (size.Height - top - foot) / float64(len(ribs)) * v.Zoom
	a := scene.Plate{Scale: max(1, (size.Width-2*beside)/long) * v.Zoom,
		Origin: draw.Point{X: size.Width/2 + v.PanX, Y: size.Height/2 + (top-size.Height/2)*v.Zoom + v.PanY}}
	for i, r := range ribs {
		p.blank(c, r, a.Origin.Y+row*(float64(i)+0.5), 0.34*row/wide, a)
	}
	// Rows closer together than lettering is high are numbered by turns.
	step := 1 + int(1.2*t/row)
	for i, r := range ribs {
		if i%step == 0 {
			p.blankLabels(r, a.Origin.Y+row*(float64(i)+0.5), a)
		}
	}
	low := a.Origin.Y + row*float64(len(ribs))
	p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, a.Origin, draw.Point{X: a.Origin.X, Y: low})
	n := p.Say(scene.RankTitle, "Ribs as straight blanks", draw.Ink, draw.Paper,
		scene.SpotAt(size.Width/2, 1.1*t, draw.Middle))
	n.Text.Bold = true
	turns := ""
	if step > 1 {
		turns = "; one of " + strconv.Itoa(step) + " is lettered"
	}
	text := "dashed: " + units.SmallLength.Format(gather.RibTrim, v.System) + " more at each tip until it is tried; " +
		"marks: bent hardest, long; taper begins, short; widths not to scale" + turns
	p.Say(scene.RankPart, text, draw.Ink, draw.Paper,
		scene.SpotAt(size.Width/2, low+1.1*t, draw.Middle))
	p.ScaleBar(draw.Point{X: size.Width/2 - 0.3*long*a.Scale, Y: low + 2.6*t}, a.Scale)
}

// blank draws one rib about a height of the picture: tall is in CSS pixels to a metre of width.
func (p *pen) blank(c core.Canoe, r frame.Rib, y, tall float64, a scene.Plate) {
	taper := r.Taper(c.Design)
	half := r.Length / 2
	at := func(along, across float64) draw.Point {
		return draw.Point{X: a.Origin.X + along*a.Scale, Y: y - across*tall}
	}
	shoulder := half - taper.Length
	rough := half + gather.RibTrim
	for _, side := range [2]float64{1, -1} {
		p.Dashed(draw.Seam, scene.FineWidth, scene.ShortDash, at(side*half, taper.Tip), at(side*rough, taper.Tip),
			at(side*rough, -taper.Tip), at(side*half, -taper.Tip))
	}
	port := []geom.Vec2{{Y: taper.Middle}, {X: shoulder, Y: taper.Shoulder}, {X: half, Y: taper.Tip}}
	edge := scene.Mirrored(port)
	outline := make([]draw.Point, 0, 2*len(edge))
	for _, q := range scene.Between(edge, scene.Flipped(edge)) {
		outline = append(outline, at(q.X, q.Y))
	}
	p.Area(draw.Cedar, draw.Ink, scene.TimberWidth, outline)
	p.Part(answer.RibPart(r.Number), true, outline)
	bend := r.BendFrom(c.Hull)
	for _, side := range [2]float64{1, -1} {
		p.Line(draw.Ink, scene.FineWidth, at(side*shoulder, taper.Shoulder), at(side*shoulder, 0.4*taper.Shoulder))
		if !r.Broken && !r.Bend.WillNotFit {
			p.Line(draw.Mark, scene.StrongWidth, at(side*bend, 1.05*taper.Middle), at(side*bend, -1.05*taper.Middle))
		}
	}
	if r.Broken {
		p.Line(draw.Ink, scene.StrongWidth, at(0, taper.Middle), at(0, -taper.Middle))
	}
}

// blankLabels numbers a blank to its left and says to its right how long it is finished.
func (p *pen) blankLabels(r frame.Rib, y float64, a scene.Plate) {
	half := (r.Length/2+gather.RibTrim)*a.Scale + 0.5*p.Letter
	number := p.Say(scene.RankHeight, strconv.Itoa(r.Number), draw.Ink, draw.Paper,
		scene.SpotAt(a.Origin.X-half, y, draw.End))
	number.Key = ribName(r)
	text := units.Length.Format(r.Length, p.View.System)
	length := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.SpotAt(a.Origin.X+half, y, draw.Start))
	length.Key = ribName(r) + ", finished " + text
}
