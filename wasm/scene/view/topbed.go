package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
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

// seamsOnBed are the side panels' seams and the joints between sheets.
func (p *pen) seamsOnBed(c core.Canoe, a scene.Plate, edge, end []geom.Vec2) {
	h := c.Hull
	for i, b := range c.Bark.Beside {
		half := c.Bark.Bed[b.Piece].Width / 2
		from, to, outer := p.seamOnBed(c, edge, end, b, half)
		if from >= to {
			continue
		}
		for _, side := range [2]float64{1, -1} {
			line := []draw.Point{a.At(from, side*half), a.At(to, side*half)}
			p.Dashed(draw.Seam, scene.TimberWidth, scene.ShortDash, line...)
			p.Part(answer.SeamPart(i), false, line)
		}
		if p.View.Layer != scene.Measures {
			continue
		}
		seam := a.At((from+to)/2, -half)
		n := p.Say(scene.RankExtra, "side panel", draw.Seam, draw.Bark,
			scene.SpotAt(seam.X, seam.Y+0.8*p.Letter, draw.Middle),
			scene.SpotAt(seam.X, a.At(0, -outer).Y+0.9*p.Letter, draw.Middle))
		n.Lead = &draw.Point{X: seam.X, Y: seam.Y + 1}
	}
	for _, b := range c.Bark.Butts {
		p.butt(c, a, b)
	}
	p.wantingOnBed(c, a)
	for i, j := range c.Bark.Joints {
		foot, top := flatColumn(h, j.Place)
		x := math.Copysign(1, j.Along)
		port := []draw.Point{a.At(x*top.X, top.Y), a.At(x*foot.X, foot.Y)}
		star := []draw.Point{a.At(x*foot.X, -foot.Y), a.At(x*top.X, -top.Y)}
		if foot.Y > scene.OnAxis {
			// Past the heel the bark is in two horns with open ground between.
			p.Part(answer.JointPart(i), false, port)
			p.Part(answer.JointPart(i), false, star)
			p.Dashed(draw.Seam, scene.StrongWidth, scene.SheetDash, port...)
			p.Dashed(draw.Seam, scene.StrongWidth, scene.SheetDash, star...)
		} else {
			across := append(port, star...)
			p.Part(answer.JointPart(i), false, across)
			p.Dashed(draw.Seam, scene.StrongWidth, scene.SheetDash, across...)
		}
		if p.View.Layer != scene.Measures {
			continue
		}
		away := a.At(x*foot.X, -0.62*top.Y)
		where := units.Length.Format(math.Abs(j.Along), p.View.System) + " from the middle"
		p.Say(scene.RankExtra, "sheet joint, "+where, draw.Seam, draw.Bark, scene.SpotAt(away.X+5, away.Y, draw.Start),
			scene.SpotAt(away.X-5, away.Y, draw.End))
	}
}

// seamSteps is the number of places along it at which a seam is looked for.
const seamSteps = 24

// seamOnBed returns where along the bed a side panel's seam runs that lies so far from the
// centre line, and how far the bark reaches out over it. Where only the bark to trim, which
// the bed does not show, reaches the panel there is no seam to draw.
func (p *pen) seamOnBed(c core.Canoe, edge, end []geom.Vec2, b bark.Beside, half float64) (from, to, outer float64) {
	from, to = p.onBed(c, end, b.Aft, half).X, p.onBed(c, end, b.Bow, half).X
	step := (to - from) / seamSteps
	for i := 0; i < seamSteps && outAt(edge, from) < half; i++ {
		from += step
	}
	for i := 0; i < seamSteps && outAt(edge, to) < half; i++ {
		to -= step
	}
	return from, to, outAt(edge, (from+to)/2)
}

// outAt is how far the flat bark's edge stands from the centre line, so far from amidships.
// Past the edge's own end it is that of the end.
func outAt(edge []geom.Vec2, x float64) float64 {
	x = math.Abs(x)
	for i := 1; i < len(edge); i++ {
		if a, b := edge[i-1], edge[i]; a.X <= x && x <= b.X && b.X > a.X {
			return a.Lerp(b, (x-a.X)/(b.X-a.X)).Y
		}
	}
	return edge[len(edge)-1].Y
}

// onBed returns where bark that reaches half from the centre line has its edge, so far
// along the bed.
func (p *pen) onBed(c core.Canoe, end []geom.Vec2, along, half float64) geom.Vec2 {
	foot, edge := flatColumn(c.Hull, c.Bark.PlaceAt(c.Hull, along))
	at := geom.Vec2{X: foot.X, Y: half}
	switch {
	case foot.Y >= half || edge.Y <= foot.Y:
		at.X = endAt(end, half)
	default:
		at.X = foot.X + (edge.X-foot.X)*(half-foot.Y)/(edge.Y-foot.Y)
	}
	at.X = math.Copysign(at.X, along)
	return at
}

// butt is where two strips of a side panel meet.
func (p *pen) butt(c core.Canoe, a scene.Plate, b bark.Butt) {
	_, edge := flatColumn(c.Hull, c.Bark.PlaceAt(c.Hull, b.Along))
	side, x := 1.0, math.Copysign(edge.X, b.Along)
	if !b.Port {
		side = -1
	}
	p.Dashed(draw.Seam, scene.TimberWidth, scene.ShortDash, a.At(x, side*(edge.Y-b.Length)), a.At(x, side*edge.Y))
}

// wantingSteps is the number of places along it at which a missing piece is drawn.
const wantingSteps = 12

// wantingOnBed hatches the bark that is missing.
func (p *pen) wantingOnBed(c core.Canoe, a scene.Plate) {
	for _, piece := range c.Bark.Wanting() {
		onBed := piece.Side == bark.OnBed
		var inner, outer []geom.Vec2
		for i := range wantingSteps + 1 {
			along := piece.Aft + (piece.Bow-piece.Aft)*float64(i)/wantingSteps
			foot, edge := flatColumn(c.Hull, c.Bark.PlaceAt(c.Hull, along))
			low, high := foot, edge
			if half := bedHalf(c.Bark, along); onBed {
				high.Y = max(foot.Y, min(edge.Y, half))
			} else {
				low.Y = max(foot.Y, min(edge.Y, half))
			}
			inner = append(inner, geom.Vec2{X: math.Copysign(low.X, along), Y: low.Y})
			outer = append(outer, geom.Vec2{X: math.Copysign(high.X, along), Y: high.Y})
		}
		shape := scene.Between(inner, outer)
		port, star := a.Place(shape), a.Place(scene.Flipped(shape))
		if onBed || piece.Side == bark.Port {
			p.Wanting(port)
		}
		if onBed || piece.Side == bark.Starboard {
			p.Wanting(star)
		}
		at := inner[wantingSteps/2].Lerp(outer[wantingSteps/2], 0.5)
		if piece.Side == bark.Starboard {
			at.Y = -at.Y
		}
		p.Say(scene.RankPart, piece.Name+" wanting", draw.Warn, draw.Bark,
			scene.Spot{At: a.At(at.X, at.Y), Anchor: draw.Middle})
	}
}

// bedHalf is half the width of the piece on the bed so far along.
func bedHalf(l bark.Layout, along float64) float64 {
	for _, s := range l.Bed {
		if along >= s.Aft && along <= s.Bow {
			return s.Width / 2
		}
	}
	return l.SheetWidth / 2
}

// endAt is where the flat end's edge is y out from the centre line.
func endAt(end []geom.Vec2, y float64) float64 {
	for i := 1; i < len(end); i++ {
		if a, b := end[i-1], end[i]; b.Y >= y {
			return a.X + (b.X-a.X)*(y-a.Y)/max(b.Y-a.Y, 1e-9)
		}
	}
	return end[len(end)-1].X
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
