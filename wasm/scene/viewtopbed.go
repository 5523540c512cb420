package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/geom"
)

// topOnBed draws the bed from above: the bark laid out on it, slit at the gores,
// and the building frame weighted down on the bark.
func (p *pen) topOnBed(c core.Canoe, l layout) {
	h, a := c.Hull, l.top
	p.groundTop(c, l)
	edge, end := sheet(h)
	skin := a.place(sheetOutline(edge, end))
	p.fill(Bark, skin)
	p.ring(Ink, p.outline(a), skin)
	p.gunwaleAbove(c, a)
	p.centreLine(c, l)
	p.gores(c, a)
	p.seamsOnBed(c, a, end)
	p.buildingFrame(c, a)
	p.stakesTop(c, a)
	p.ghostTop(a, func(g core.Canoe) [][]geom.Vec2 {
		e, _ := sheet(g.Hull)
		side := mirrored(e)
		return [][]geom.Vec2{side, flipped(side), mirrored(curve(g.Hull.FrameHalfBreadth, g.Hull.FrameEnd()))}
	})
	p.topTitle(c, l)
}

// sheetOutline goes round the bark laid flat: along the port edge, round the bow,
// back along the starboard edge and round the stern.
func sheetOutline(edge, end []geom.Vec2) []geom.Vec2 {
	out := mirrored(edge)
	for i := len(end) - 1; i >= 0; i-- {
		out = append(out, end[i])
	}
	out = append(out, flipped(end[1:])...)
	star := flipped(mirrored(edge))
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
	half := min(c.Design.BedLength/2, bedShown(c))
	wide := sheetReach(c.Hull) + 0.03
	p.fill(Ground, l.top.place(rect(0, half, -wide, wide)))
}

// gunwaleAbove is the finished plan over the bark, where the sides will stand.
func (p *pen) gunwaleAbove(c core.Canoe, a plate) {
	line := mirrored(curve(c.Hull.HalfBeam, c.Hull.GunwaleX))
	p.dashed(Faint, fineWidth, shortDash, a.place(line)...)
	p.dashed(Faint, fineWidth, shortDash, a.place(flipped(line))...)
}

// gores are slits from the foot to the edge on both sides.
func (p *pen) gores(c core.Canoe, a plate) {
	n := len(c.Bark.Gores)
	for i, g := range c.Bark.Gores {
		if g.State != bark.GoreCut {
			continue
		}
		name := goreName(i, n)
		for _, side := range [2]float64{1, -1} {
			foot, tip := a.at(g.X, side*g.FootGirth), a.at(g.X, side*g.EndGirth)
			open := max(1.2, 0.008*a.Scale)
			p.list.Add(Fill{Role: Ground, Points: []Point{foot, {tip.X + open, tip.Y}, {tip.X - open, tip.Y}}})
			p.line(Seam, 1.3, Point{tip.X - open, tip.Y}, foot, Point{tip.X + open, tip.Y})
			p.part(name, false, []Point{foot, tip})
		}
	}
}

// goreName numbers the gores of a side, from the after one forward, as their
// table does: from the one nearest the middle, mates alike.
func goreName(i, n int) string {
	off := 2*i - (n - 1)
	if off < 0 {
		off = -off
	}
	return answer.GorePart(off / 2)
}

// seamsOnBed are the side panels' seams and the joints between sheets.
func (p *pen) seamsOnBed(c core.Canoe, a plate, end []geom.Vec2) {
	h := c.Hull
	for _, b := range c.Bark.Beside {
		half := c.Bark.Bed[b.Piece].Width / 2
		from, to := p.onBed(c, end, b.Aft, half), p.onBed(c, end, b.Bow, half)
		for _, side := range [2]float64{1, -1} {
			p.dashed(Seam, timberWidth, shortDash, a.at(from.X, side*half), a.at(to.X, side*half))
		}
		p.say(rankExtra, "side panel", Seam, Bark, spot{a.at((from.X+to.X)/2, -half+0.7*p.letter/a.Scale), Middle})
	}
	for _, b := range c.Bark.Butts {
		p.butt(c, a, b)
	}
	p.wantingOnBed(c, a)
	for _, j := range c.Bark.Joints {
		foot, edge := flatColumn(h, j.Place)
		x := math.Copysign(1, j.Along)
		p.dashed(Seam, 1.3, []float64{7, 2, 2, 2}, a.at(x*edge.X, edge.Y), a.at(x*foot.X, foot.Y), a.at(x*foot.X, -foot.Y), a.at(x*edge.X, -edge.Y))
		away := a.at(x*foot.X, -0.62*edge.Y)
		p.say(rankExtra, "sheet joint", Seam, Bark, spot{Point{away.X + 5, away.Y}, Start}, spot{Point{away.X - 5, away.Y}, End})
	}
}

// onBed is where bark half wide out from the centre line has its edge, so far along.
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
func (p *pen) butt(c core.Canoe, a plate, b bark.Butt) {
	_, edge := flatColumn(c.Hull, c.Bark.PlaceAt(c.Hull, b.Along))
	side, x := 1.0, math.Copysign(edge.X, b.Along)
	if !b.Port {
		side = -1
	}
	p.dashed(Seam, timberWidth, shortDash, a.at(x, side*(edge.Y-b.Length)), a.at(x, side*edge.Y))
}

// wantingSteps is in how many places along it a piece that is wanting is drawn.
const wantingSteps = 12

// wantingOnBed hatches the bark that is not there.
func (p *pen) wantingOnBed(c core.Canoe, a plate) {
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
		shape := between(inner, outer)
		port, star := a.place(shape), a.place(flipped(shape))
		if onBed || piece.Side == bark.Port {
			p.wanting(port)
		}
		if onBed || piece.Side == bark.Starboard {
			p.wanting(star)
		}
		at := inner[wantingSteps/2].Lerp(outer[wantingSteps/2], 0.5)
		if piece.Side == bark.Starboard {
			at.Y = -at.Y
		}
		p.say(rankPart, piece.Name+" wanting", Warn, Bark, spot{a.at(at.X, at.Y), Middle})
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

// wanting hatches a piece of bark that there is none for.
func (p *pen) wanting(points []Point) {
	p.list.Add(Hatch{Role: Warn, Points: points, Spacing: 5 * p.weight, Width: fineWidth * p.weight, Angle: math.Pi / 4})
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
func (p *pen) buildingFrame(c core.Canoe, a plate) {
	h, bed := c.Hull, c.Frame.Bed
	batten := 0.0
	for _, x := range bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	end := h.FrameEnd()
	outer := mirrored(curve(h.FrameHalfBreadth, end))
	inner := mirrored(curve(func(x float64) float64 { return max(0, h.FrameHalfBreadth(x)-batten) }, end))
	for _, strip := range [][]geom.Vec2{between(outer, inner), flipped(between(outer, inner))} {
		p.area(Cedar, Frame, p.thin(a, batten, timberWidth), a.place(strip))
	}
	for i, x := range bed.Crosspieces {
		for k, points := range mates(a, rect(x.X, batten/2, -x.Clear/2, x.Clear/2), x.X == 0) {
			p.area(Cedar, Frame, timberWidth, points)
			p.part(answer.CrosspiecePart(i), true, points)
			sign := 1 - 2*float64(k)
			for _, y := range stonesOn(x.Clear) {
				p.area(Ground, Frame, fineWidth, stone(a, sign*x.X, y))
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
func stone(a plate, x, y float64) []Point {
	const sides, size = 9, 0.09
	out := make([]Point, sides)
	for i := range out {
		angle := 2 * math.Pi * float64(i) / sides
		r := size * (1 + 0.13*math.Sin(3*angle+7*x+5*y) + 0.09*math.Sin(2*angle+11*y))
		out[i] = a.at(x+1.15*r*math.Cos(angle), y+0.8*r*math.Sin(angle))
	}
	return out
}

// stakesTop are the stakes round the frame, four to a line of their table.
func (p *pen) stakesTop(c core.Canoe, a plate) {
	const half = 0.013 // m: a stake about an inch through, drawn square
	size := max(half, 1.2/a.Scale)
	for i, s := range c.Frame.Bed.Stakes {
		for _, y := range [2]float64{s.Y, -s.Y} {
			for _, points := range mates(a, rect(s.X, size, y-size, y+size), false) {
				p.fill(Frame, points)
				p.part(answer.StakePart(i), true, points)
			}
		}
	}
}
