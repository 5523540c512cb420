package raise

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// frameRise is how far over the bark the top of the frame is drawn, m.
const frameRise = 0.02

// barkHeight returns the height of the sheet's inside at a place, in metres. The bottom
// rounds up, and the frame rests on it by its rim.
func barkHeight(sheet *bark.Piece, raised []geom.Vec3, x, y float64) float64 {
	at := func(c, r int) geom.Vec3 { return raised[sheet.Vertex(c, r, geom.Before)] }
	c := 0
	for c < sheet.Curved.Cols-1 && at(c, 0).X < x {
		c++
	}
	r := 1
	for r < sheet.Rows-1 && at(c, r).Y < y {
		r++
	}
	low, high := at(c, r-1), at(c, r)
	share := max(0, min(1, (y-low.Y)/max(high.Y-low.Y, 1e-9)))
	return low.Lerp(high, share).Z
}

// frameSteps is how many straight pieces draw half a batten.
const frameSteps = 12

// frame is the building frame that holds the bottom down, gone once the hull is
// finished.
func (s *solid) frame(c core.Canoe, sheet *bark.Piece, raised []geom.Vec3) {
	if s.View.Up >= 1 {
		return
	}
	h := c.Hull
	batten := 0.0
	for _, x := range c.Frame.Bed.Crosspieces {
		batten = max(batten, (x.OutToOut-x.Clear)/2)
	}
	at := func(x, y float64) geom.Vec3 {
		rim := barkHeight(sheet, raised, math.Abs(x), h.FrameHalfBreadth(math.Abs(x)))
		return geom.Vec3{X: x, Y: y, Z: rim + frameRise}
	}
	piece := func(corners ...geom.Vec3) {
		points := s.place(corners)
		if s.Seen(points) {
			s.add(frameFaces, corners, draw.Fill{Role: draw.Cedar, Points: points},
				draw.Stroke{Role: draw.Frame, Points: points, Width: scene.FineWidth * s.Weight, Closed: true})
		}
	}
	half := c.Hull.FrameEnd()
	for i := -frameSteps; i < frameSteps; i++ {
		x0, x1 := half*float64(i)/frameSteps, half*float64(i+1)/frameSteps
		y0, y1 := h.FrameHalfBreadth(math.Abs(x0)), h.FrameHalfBreadth(math.Abs(x1))
		for _, side := range [2]float64{1, -1} {
			piece(at(x0, side*y0), at(x1, side*y1), at(x1, side*max(0, y1-batten)), at(x0, side*max(0, y0-batten)))
		}
	}
	for _, x := range c.Frame.Bed.Crosspieces {
		for _, side := range [2]float64{1, -1} {
			q := scene.Rect(side*x.X, batten/2, -x.Clear/2, x.Clear/2)
			piece(at(q[0].X, q[0].Y), at(q[1].X, q[1].Y), at(q[2].X, q[2].Y), at(q[3].X, q[3].Y))
			if x.X == 0 {
				break
			}
		}
	}
}

// gunwales show where the top edge will stand: dashed until it does.
func (s *solid) gunwales(c core.Canoe) {
	if s.View.Up >= 1 {
		return
	}
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
		s.Marks = append(s.Marks, draw.Stroke{Role: draw.Faint, Points: s.place(rail), Width: scene.FineWidth * s.Weight,
			Dash: scene.LongDash})
	}
}
