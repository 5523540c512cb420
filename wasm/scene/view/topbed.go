package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// topOnBed draws the bed from above: the bark laid out on it, slit at the gores,
// and the building frame weighted down on the bark.
func (p *pen) topOnBed(c core.Canoe, l layout) {
	h, a := c.Hull, l.top
	p.groundTop(c, l)
	edge, end := sheet(h)
	skin := a.Place(sheetOutline(edge, end))
	p.Fill(draw.Bark, skin)
	p.Surface(answer.BarkPart, skin)
	p.Ring(draw.Ink, p.Outline(a), skin)
	p.gunwaleAbove(c, a)
	p.centreLine(c, l)
	p.gores(c, a)
	p.seamsOnBed(c, a, edge, end)
	p.buildingFrame(c, a)
	p.stakesTop(c, a)
	p.ghostTop(a, func(g core.Canoe) [][]geom.Vec2 {
		e, _ := sheet(g.Hull)
		side := scene.Mirrored(e)
		end := scene.Mirrored(scene.Curve(g.Hull.FrameHalfBreadth, g.Hull.FrameEnd()))
		return [][]geom.Vec2{side, scene.Flipped(side), end}
	})
	p.topTitle(c, l)
}

// sheetOutline goes round the bark laid flat: along the port edge, round the bow,
// back along the starboard edge and round the stern.
func sheetOutline(edge, end []geom.Vec2) []geom.Vec2 {
	out := scene.Mirrored(edge)
	for i := len(end) - 1; i >= 0; i-- {
		out = append(out, end[i])
	}
	out = append(out, scene.Flipped(end[1:])...)
	star := scene.Flipped(scene.Mirrored(edge))
	for i := len(star) - 1; i >= 0; i-- {
		out = append(out, star[i])
	}
	for i := len(end) - 1; i >= 0; i-- {
		out = append(out, geom.Vec2{X: -end[i].X, Y: -end[i].Y})
	}
	for _, q := range end[1:] {
		out = append(out, geom.Vec2{X: -q.X, Y: q.Y})
	}
	return out
}

// groundTop is the bed under the bark.
func (p *pen) groundTop(c core.Canoe, l layout) {
	half := min(c.Design.BedLength/2, scene.BedShown(c))
	wide := sheetReach(c.Hull) + 0.03
	ground := l.top.Place(scene.Rect(0, half, -wide, wide))
	p.Fill(draw.Ground, ground)
	p.Surface(answer.BedPart, ground)
}

// gunwaleAbove is the finished plan over the bark, where the sides will stand.
func (p *pen) gunwaleAbove(c core.Canoe, a scene.Plate) {
	line := scene.Mirrored(scene.Curve(c.Hull.HalfBeam, c.Hull.GunwaleX))
	p.Dashed(draw.Faint, scene.FineWidth, scene.ShortDash, a.Place(line)...)
	p.Dashed(draw.Faint, scene.FineWidth, scene.ShortDash, a.Place(scene.Flipped(line))...)
}

// gores are slits from the foot to the edge on both sides.
func (p *pen) gores(c core.Canoe, a scene.Plate) {
	n := len(c.Bark.Gores)
	for i, g := range c.Bark.Gores {
		if g.State != bark.GoreCut {
			continue
		}
		name := scene.GoreName(i, n)
		for _, side := range [2]float64{1, -1} {
			foot, tip := a.At(g.X, side*g.FootGirth), a.At(g.X, side*g.EndGirth)
			open := max(1.2, 0.008*a.Scale)
			p.List.Add(draw.Fill{Role: draw.Ground,
				Points: []draw.Point{foot, {X: tip.X + open, Y: tip.Y}, {X: tip.X - open, Y: tip.Y}}})
			p.Line(draw.Seam, scene.StrongWidth,
				draw.Point{X: tip.X - open, Y: tip.Y}, foot, draw.Point{X: tip.X + open, Y: tip.Y})
			p.Part(name, false, []draw.Point{foot, tip})
		}
	}
}

// buildingFrame is two bent battens on crosspieces, with stones on them.
func (p *pen) buildingFrame(c core.Canoe, a scene.Plate) {
	h, bed := c.Hull, c.Frame.Bed
	batten := 0.0
	for _, x := range bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	end := h.FrameEnd()
	outer := scene.Mirrored(scene.Curve(h.FrameHalfBreadth, end))
	inner := scene.Mirrored(scene.Curve(func(x float64) float64 { return max(0, h.FrameHalfBreadth(x)-batten) }, end))
	for _, strip := range [][]geom.Vec2{scene.Between(outer, inner), scene.Flipped(scene.Between(outer, inner))} {
		points := a.Place(strip)
		p.Area(draw.Cedar, draw.Frame, p.Thin(a, batten, scene.TimberWidth), points)
		p.Part(answer.FramePart, true, points)
	}
	for i, x := range bed.Crosspieces {
		for k, points := range mates(a, scene.Rect(x.X, batten/2, -x.Clear/2, x.Clear/2), x.X == 0) {
			p.Area(draw.Cedar, draw.Frame, scene.TimberWidth, points)
			p.Part(answer.CrosspiecePart(i), true, points)
			sign := 1 - 2*float64(k)
			for _, y := range stonesOn(x.Clear) {
				p.Area(draw.Ground, draw.Frame, scene.FineWidth, stone(a, sign*x.X, y))
			}
		}
	}
}

// stonesOn is where the stones lie on a crosspiece: two on a long one.
func stonesOn(clear float64) []float64 {
	switch {
	case clear > 0.4:
		return []float64{0.27 * clear, -0.27 * clear}
	case clear > 0.12:
		return []float64{0}
	}
	return nil
}

// stone is a weight on a crosspiece, about 7 in long: uneven, as stones are. Its
// shape turns with its place so that no two lie alike.
func stone(a scene.Plate, x, y float64) []draw.Point {
	const sides, size = 9, 0.09
	out := make([]draw.Point, sides)
	for i := range out {
		angle := 2 * math.Pi * float64(i) / sides
		r := size * (1 + 0.13*math.Sin(3*angle+7*x+5*y) + 0.09*math.Sin(2*angle+11*y))
		out[i] = a.At(x+1.15*r*math.Cos(angle), y+0.8*r*math.Sin(angle))
	}
	return out
}

// stakesTop are the stakes round the frame, four to a line of their table.
func (p *pen) stakesTop(c core.Canoe, a scene.Plate) {
	const half = 0.013 // m: a stake about an inch through, drawn square
	size := max(half, 1.2/a.Scale)
	for i, s := range c.Frame.Bed.Stakes {
		if s.X > scene.BedShown(c) {
			continue
		}
		for _, y := range [2]float64{s.Y, -s.Y} {
			for _, points := range mates(a, scene.Rect(s.X, size, y-size, y+size), false) {
				p.Fill(draw.Frame, points)
				p.Part(answer.StakePart(i), true, points)
			}
		}
	}
}
