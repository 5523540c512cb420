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
		n.Spare = i > 0 // one of them says what such a line is
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
