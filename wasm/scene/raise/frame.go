package raise

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// frameRise is how far over the bark the top of the frame is drawn, m.
const frameRise = 0.02

// frameSteps is how many straight pieces draw half a batten.
const frameSteps = 12

// frame is the building frame that holds the bottom down, with stones on its crosspieces. It lies
// on the bark, whose bottom comes from the bed to its rocker as the sides come up.
func (p *pen) frame(c core.Canoe) {
	if p.First > solid.Ribs {
		return
	}
	h := c.Hull
	batten := 0.0
	for _, x := range c.Frame.Bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	at := func(x, y float64) geom.Vec3 {
		bottom := h.Bottom(min(math.Abs(x), h.HeelX)) * sidesAt(p.View.Up)
		return geom.Vec3{X: x, Y: y, Z: bottom + frameRise}
	}
	piece := func(corners ...geom.Vec3) {
		points := p.Place(corners)
		if p.Seen(points) {
			p.Add(solid.Ribs, corners, draw.Fill{Role: draw.Cedar, Points: points},
				draw.Stroke{Role: draw.Frame, Points: points, Width: scene.FineWidth * p.Weight, Closed: true})
		}
	}
	half := h.FrameEnd()
	for i := -frameSteps; i < frameSteps; i++ {
		x0, x1 := half*float64(i)/frameSteps, half*float64(i+1)/frameSteps
		y0, y1 := h.FrameHalfBreadth(math.Abs(x0)), h.FrameHalfBreadth(math.Abs(x1))
		for _, side := range [2]float64{1, -1} {
			piece(at(x0, side*y0), at(x1, side*y1), at(x1, side*max(0, y1-batten)), at(x0, side*max(0, y0-batten)))
		}
	}
	for _, side := range [2]float64{1, -1} {
		var outer, inner []geom.Vec3
		for i := -frameSteps; i <= frameSteps; i++ {
			x := half * float64(i) / frameSteps
			y := h.FrameHalfBreadth(math.Abs(x))
			outer, inner = append(outer, at(x, side*y)), append(inner, at(x, side*max(0, y-batten)))
		}
		p.Part(answer.FramePart, true, p.Place(scene.Between(outer, inner)))
	}
	for i, x := range c.Frame.Bed.Crosspieces {
		for _, side := range [2]float64{1, -1} {
			q := scene.Rect(side*x.X, batten/2, -x.Clear/2, x.Clear/2)
			corners := []geom.Vec3{at(q[0].X, q[0].Y), at(q[1].X, q[1].Y), at(q[2].X, q[2].Y), at(q[3].X, q[3].Y)}
			piece(corners...)
			p.Part(answer.CrosspiecePart(i), true, p.Place(corners))
			p.stone(at(side*x.X, 0), min(x.Clear/3, stoneSize))
			if x.X == 0 {
				break
			}
		}
	}
}

// stoneSize is the radius of a stone as drawn, m. By eye.
const stoneSize = 0.11

// stone lies on a crosspiece.
func (p *pen) stone(at geom.Vec3, radius float64) {
	const corners = 9
	middle := p.Camera.At(at.Add(geom.Vec3{Z: radius / 3}))
	wide := math.Abs(p.Camera.At(at.Add(geom.Vec3{X: radius})).X - p.Camera.At(at).X)
	outline := draw.Polygon(draw.Point{}, wide, corners, 0.3)
	for i, q := range outline {
		outline[i] = draw.Point{X: middle.X + q.X, Y: middle.Y + 0.7*q.Y}
	}
	if p.Seen(outline) {
		p.Add(solid.Ribs, []geom.Vec3{at.Add(geom.Vec3{Z: radius})}, draw.Fill{Role: draw.Ground, Points: outline},
			draw.Stroke{Role: draw.Ink, Points: outline, Width: scene.FineWidth * p.Weight, Closed: true})
	}
}

// posts hold the gunwales at their sheer until the frame is taken out.
func (p *pen) posts(c core.Canoe) {
	h := c.Hull
	for i, b := range c.Frame.Bed.Posts {
		foot := geom.Vec3{X: b.X, Y: min(h.FrameHalfBreadth(b.X), h.HalfBeam(b.X)), Z: h.Bottom(min(b.X, h.HeelX)) + frameRise}
		top := geom.Vec3{X: b.X, Y: h.HalfBeam(b.X), Z: frame.UnderInwale(h, b.X)}
		for _, m := range scene.Quarters {
			line := []geom.Vec3{solid.InPlace(foot, m), solid.InPlace(top, m)}
			p.Line(solid.Ribs, draw.Frame, 2*scene.StrongWidth, line...)
			if p.First <= solid.Ribs {
				p.Part(answer.PostPart(i), false, p.Place(line))
			}
		}
	}
}

// gunwaleMarks show where the top edge will stand.
func (p *pen) gunwaleMarks(c core.Canoe) {
	h := c.Hull
	var line []geom.Vec2
	for _, x := range scene.Crowded(h.GunwaleX, scene.HalfSteps) {
		line = append(line, geom.Vec2{X: x, Y: h.SkinHalfBreadth(x)})
	}
	for _, side := range [2]float64{1, -1} {
		var rail []geom.Vec3
		for _, q := range scene.Mirrored(line) {
			rail = append(rail, geom.Vec3{X: q.X, Y: side * q.Y, Z: h.TopEdge(math.Abs(q.X))})
		}
		p.Marks = append(p.Marks, draw.Stroke{Role: draw.Faint, Points: p.Place(rail), Width: scene.FineWidth * p.Weight,
			Dash: scene.LongDash})
	}
}
