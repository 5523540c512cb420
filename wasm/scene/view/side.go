package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// sideFinished draws the finished boat from its starboard side, with the stems
// and headboards that stand inside the bark.
func (p *pen) sideFinished(c core.Canoe, l layout) {
	h, a := c.Hull, l.side
	skin := a.Place(profile(h))
	p.Fill(draw.Bark, skin)
	p.Surface(answer.BarkPart, skin)
	p.seamsSide(c, a)
	p.stemsSide(c, a)
	p.headboardsSide(c, a)
	p.ribSide(c, a)
	p.gunwaleSide(c, a)
	p.Ring(draw.Ink, p.Outline(a), skin)
	p.lacingSide(c, a)
	p.water(c, a)
	p.crewSide(c, a)
	p.ghostSide(a)
	p.sideTitle(c, l)
	p.lengthOverall(c, l)
	p.heights(c, l)
	if p.View.Layer == scene.Measures {
		p.groupMarksSide(c, a)
	}
}

// gunwaleSide is the outwale along the top edge and the cap on it.
func (p *pen) gunwaleSide(c core.Canoe, a scene.Plate) {
	h, d := c.Hull, c.Design
	top := scene.Mirrored(edgeSide(h, 0))
	p.timber(answer.OutwalePart, p.Thin(a, d.OutwaleDepth, scene.FineWidth),
		a.Place(scene.Between(top, scene.Mirrored(edgeSide(h, -d.OutwaleDepth)))))
	p.timber(answer.CapPart, p.Thin(a, d.CapThickness, scene.FineWidth),
		a.Place(scene.Between(top, scene.Mirrored(edgeSide(h, d.CapThickness)))))
}

func (p *pen) lacingSide(c core.Canoe, a scene.Plate) {
	h, d := c.Hull, c.Design
	for i, g := range c.Frame.Lacing.Groups {
		from, to := scene.GroupSpan(c, g)
		high := h.Sheer(g.X)
		low := high - d.OutwaleDepth
		outline := []geom.Vec2{{X: from, Y: low}, {X: to, Y: low}, {X: to, Y: high}, {X: from, Y: high}}
		for _, points := range mates(a, outline, g.Run == 0) {
			p.Fill(draw.Root, points)
			p.Part(answer.GroupPart(i), true, points)
		}
	}
}

// seamsSide are the gores, panels and joints sewn up, and the stitches of the ends.
func (p *pen) seamsSide(c core.Canoe, a scene.Plate) {
	h := c.Hull
	n := len(c.Bark.Gores)
	for i, g := range c.Bark.Gores {
		if g.State != bark.GoreCut {
			continue
		}
		section := h.Column(h.ColumnAtEdge(math.Abs(g.X))).Section
		line := []draw.Point{a.At(g.X, section.At(g.FootGirth).Y), a.At(g.X, section.At(g.EndGirth).Y)}
		p.Line(draw.Seam, scene.TimberWidth, line...)
		p.stitches(line, 0.035*a.Scale)
		p.Part(scene.GoreName(i, n), false, line)
	}
	for i, b := range c.Bark.Beside {
		seam := make([]geom.Vec2, len(b.Path))
		for i, q := range b.Path {
			seam[i] = geom.Vec2{X: q.X, Y: q.Z}
		}
		line := a.Place(seam)
		p.Dashed(draw.Seam, scene.TimberWidth, scene.ShortDash, line...)
		p.Part(answer.SeamPart(i), false, line)
	}
	for i, j := range c.Bark.Joints {
		x := math.Copysign(1, j.Along)
		column := h.Column(j.Place).Points(1)
		seam := []draw.Point{a.At(x*column[0].X, column[0].Z), a.At(x*column[1].X, column[1].Z)}
		p.Line(draw.Seam, scene.StrongWidth, seam...)
		p.stitches(seam, 0.025*a.Scale)
		p.Part(answer.JointPart(i), false, seam)
	}
	for _, line := range mates(a, endSide(h, 0), false) {
		p.stitches(line, 0.045*a.Scale)
	}
}

// stitches draws short ticks across a seam at a spacing in pixels. It draws none where
// they would merge.
func (p *pen) stitches(line []draw.Point, every float64) {
	const least, most = 6, 30
	every = max(every, least)
	left := every / 2
	drawn := 0
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		dx, dy := b.X-a.X, b.Y-a.Y
		run := math.Hypot(dx, dy)
		for run > 0 && left <= run && drawn < most {
			x, y := a.X+dx*left/run, a.Y+dy*left/run
			nx, ny := -dy/run*2.2, dx/run*2.2
			p.Line(draw.Root, scene.FineWidth, draw.Point{X: x - nx, Y: y - ny}, draw.Point{X: x + nx, Y: y + ny})
			left += every
			drawn++
		}
		left -= run
	}
}

// stemsSide are the stem-pieces inside the bark, with as many of their
// laminations as can be told apart.
func (p *pen) stemsSide(c core.Canoe, a scene.Plate) {
	d := c.Design
	const apart = 1.6 // CSS pixels between lines that still read as lines
	stem := c.Frame.Stem
	outer, inner := stemSide(stem, d.BarkThickness, 0), stemSide(stem, d.BarkThickness+d.StemDepth, 0)
	for _, points := range mates(a, scene.Between(outer, inner), false) {
		p.Area(draw.Cedar, draw.Ink, scene.FineWidth, points)
		p.Part(answer.StemPart, true, points)
	}
	n := min(d.StemLaminations, int(d.StemDepth*a.Scale/apart))
	for i := 1; i < n; i++ {
		depth := d.BarkThickness + d.StemDepth*float64(i)/float64(n)
		for _, line := range mates(a, stemSide(stem, depth, stem.Solid), false) {
			p.Line(draw.Ink, 0.4, line...)
		}
	}
}

// stemSide is the stem-piece's profile from a length along it to the head, moved
// inboard by depth.
func stemSide(s frame.Stem, depth, from float64) []geom.Vec2 {
	out := make([]geom.Vec2, endSteps+1)
	for i := range out {
		run := from + (s.Curve-from)*float64(i)/endSteps
		out[i] = s.Profile.At(run).Add(s.Profile.Heading(run).Left().Scale(depth))
	}
	return out
}

// headboardsSide are the headboards as they are sprung: their middles outboard of the
// straight from foot to top.
func (p *pen) headboardsSide(c core.Canoe, a scene.Plate) {
	for _, line := range mates(a, boardSide(c), false) {
		p.Dashed(draw.Ink, 1.4, scene.ShortDash, line...)
		p.Part(answer.HeadboardPart, false, line)
	}
}

// boardSide is the after face of the bow's headboard, from its foot up.
func boardSide(c core.Canoe) []geom.Vec2 {
	b := c.Frame.Headboard
	const pieces = 6
	out := b.Top.Sub(b.Stands).Unit().Left().Scale(-c.Design.HeadboardBelly)
	board := make([]geom.Vec2, pieces+1)
	for i := range board {
		t := float64(i) / pieces
		board[i] = b.Stands.Lerp(b.Top, t).Add(out.Scale(4 * t * (1 - t)))
	}
	return board
}

// ribSide draws the touched rib through the bark, since it stands inside.
func (p *pen) ribSide(c core.Canoe, a scene.Plate) {
	h := c.Hull
	for _, r := range c.Frame.Ribs {
		if answer.RibPart(r.Number) != p.View.Touched {
			continue
		}
		cut := r.Cut(h)
		foot, top := cut.Lift(cut.A), cut.Lift(cut.P)
		w, tip := r.Width/2, c.Design.RibTipWidth/2
		for _, points := range mates(a, []geom.Vec2{{X: foot.X - w, Y: foot.Z}, {X: foot.X + w, Y: foot.Z},
			{X: top.X + tip, Y: top.Z}, {X: top.X - tip, Y: top.Z}}, r.Alone()) {
			p.Part(p.View.Touched, true, points)
		}
	}
}

// water is the water line at the load.
func (p *pen) water(c core.Canoe, a scene.Plate) {
	if p.View.Load == nil {
		return
	}
	z := func(x float64) float64 { return p.View.Load.Height + p.View.Load.Slope*x }
	end := c.Design.Length / 2
	line := []draw.Point{a.At(-end, z(-end)), a.At(end, z(end))}
	p.Line(draw.Water, 1.6, line...)
	p.Part(answer.WaterPart, false, line)
	for i := 1; i <= 3; i++ {
		// The surveyors' sign for a water level: shorter lines under it.
		y := float64(i) * 3.2
		from, to := a.At(-0.92*end, z(-0.92*end)), a.At(-0.80*end, z(-0.80*end))
		short := (to.X - from.X) * float64(i) / 8
		p.Line(draw.Water, scene.FineWidth, draw.Point{X: from.X + short, Y: from.Y + y},
			draw.Point{X: to.X - short, Y: to.Y + y})
	}
	at := a.At(0.42*end, z(0.42*end))
	if p.View.Layer != scene.Measures {
		return
	}
	p.Say(scene.RankPart, "water line, loaded", draw.Water, draw.Bark,
		scene.SpotAt(at.X, at.Y-0.75*p.Letter, draw.Middle), scene.SpotAt(at.X, at.Y+0.75*p.Letter, draw.Middle))
}

// heights are the top of the inwale over the bottom, at the thwarts and the ends.
func (p *pen) heights(c core.Canoe, l layout) {
	if p.View.Layer != scene.Measures {
		return
	}
	h, a := c.Hull, l.side
	top := c.Design.CapThickness
	p.baseLine(c, a)
	n := p.heightText(a, 0, h.Sheer(0)+top, "depth "+units.Length.Format(h.Sheer(0), p.View.System), scene.RankMain)
	if p.roomFor(a) {
		n.With = p.Arrows(a.At(0, 0), a.At(0, h.Sheer(0)))
	}
	for i := len(c.Frame.Thwarts) - 1; i > 0; i-- {
		x := c.Frame.Thwarts[i].X
		p.height(a, x, h.Sheer(x)+top, h.Sheer(x), frame.ThwartName(i, len(c.Frame.Thwarts)), scene.RankHeight)
	}
	p.stemHeight(c, a)
	p.height(a, -h.GunwaleX, h.Sheer(h.GunwaleX)+top, h.Sheer(h.GunwaleX), "gunwale end", scene.RankPart)
}
