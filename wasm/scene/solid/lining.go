package solid

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// sheathing shows the edges of the strips that line the skin, as far as the headboards.
func (p *Solid) sheathing(c core.Canoe, s *Skin) {
	end, wide := c.Hull.HeadboardX(), c.Design.SheathingWidth
	for q, m := range scene.Quarters {
		for k := 0; float64(k)*wide < s.girths[0]; k++ {
			if k == 0 && m[1] < 0 {
				continue // the centre line, once
			}
			girth := float64(k) * wide
			var line []geom.Vec3
			for i := range s.columns {
				at, ok := s.at(i, girth)
				if ok = ok && at.X < end && s.insideAt(q, i, girth); ok {
					line = append(line, InPlace(at, m))
				}
				if !ok || i == len(s.columns)-1 {
					p.Line(Sheathing, draw.Faint, hair, line...)
					line = nil
				}
			}
		}
	}
}

// ribPieces is in how many pieces half a rib is drawn.
const ribPieces = 12

// ribs puts those that are fitted by a turn of the fitting order into the picture.
func (p *Solid) ribs(c core.Canoe, s *Skin, fitted int) {
	if fitted == 0 || p.First > Ribs {
		return
	}
	edges := s.ribsOf(c)
	for i, r := range c.Frame.Ribs {
		low, high := edges[i].low, edges[i].high
		for _, m := range scene.Quarters {
			order := r.Order
			if m[0] < 0 && !r.Alone() {
				order++ // its mate aft follows
			}
			if order > fitted || (r.Alone() && m[0] < 0) {
				continue
			}
			p.halfRib(r, inPlace(low, m), inPlace(high, m), m)
		}
	}
}

// halfRib is a rib on one side, where its inner face is turned to the eye.
func (p *Solid) halfRib(r frame.Rib, low, high []geom.Vec3, m [2]float64) {
	for from := 0; from < ribPieces; {
		seen := func(i int) bool {
			inward := high[i+1].Sub(low[i]).Cross(low[i+1].Sub(high[i])).Scale(m[0] * m[1])
			return p.Camera.Faces(low[i], inward)
		}
		if !seen(from) {
			from++
			continue
		}
		to := from + 1
		for to < ribPieces && seen(to) {
			to++
		}
		outline := append([]geom.Vec3{}, low[from:to+1]...)
		for i := to; i >= from; i-- {
			outline = append(outline, high[i])
		}
		points := p.Place(outline)
		if p.Seen(points) {
			p.Add(Ribs, outline, draw.Fill{Role: draw.Cedar, Points: points},
				p.stroke(draw.Ink, hair, low[from:to+1]...), p.stroke(draw.Ink, hair, high[from:to+1]...))
		}
		// The near side of the boat hides what lies behind it.
		if m[1]*p.Camera.toward.Y <= 0 {
			p.part(Ribs, answer.RibPart(r.Number), true, points)
		}
		from = to
	}
}

// ribEdge is a rib's edges, as ribEdges gives them.
type ribEdge struct{ low, high []geom.Vec3 }

// ribsOf are the edges of all ribs, the same for every picture of one skin.
func (s *Skin) ribsOf(c core.Canoe) []ribEdge {
	if *s.ribs == nil {
		for _, r := range c.Frame.Ribs {
			low, high := ribEdges(c, r)
			*s.ribs = append(*s.ribs, ribEdge{low, high})
		}
	}
	return *s.ribs
}

// ribEdges are the edges of a rib nearer to amidships and farther from it, of the port half
// from the centre line up. Both lie on the skin: on a plumb cut they would pierce it past the
// heel.
func ribEdges(c core.Canoe, r frame.Rib) (low, high []geom.Vec3) {
	h, d := c.Hull, c.Design
	half := r.Width / 2
	edge := func(by float64) []geom.Vec3 {
		cut := h.CutAt(r.FootX+by, r.X+by)
		inside := frame.Inside(cut.Section, d.BarkThickness+d.SheathingThickness, cut.Section.HalfGirth()-d.RibTuck, ribPieces)
		out := make([]geom.Vec3, len(inside))
		for i, q := range inside {
			out[i] = cut.Lift(geom.Vec2{X: max(0, q.X), Y: q.Y})
		}
		return out
	}
	low, high = edge(-half), edge(half)
	t := r.Taper(d)
	for i := range low {
		fromTip := r.Length / 2 * (1 - float64(i)/ribPieces)
		width := t.Middle + (t.Shoulder-t.Middle)*min(1, max(0, (r.Length/2-fromTip)/max(r.Length/2-t.Length, 1e-9)))
		if fromTip < t.Length {
			width = t.Tip + (t.Shoulder-t.Tip)*fromTip/t.Length
		}
		middle, share := low[i].Lerp(high[i], 0.5), width/t.Middle
		low[i], high[i] = middle.Lerp(low[i], share), middle.Lerp(high[i], share)
	}
	return low, high
}

// headboards stand inside each end.
func (p *Solid) headboards(c core.Canoe) {
	b := c.Frame.Headboard
	up := b.Top.Sub(b.Stands).Unit()
	for _, way := range [2]float64{1, -1} {
		var outline []geom.Vec3
		at := func(q geom.Vec2, side float64) geom.Vec3 {
			on := b.Stands.Add(up.Scale(q.Y))
			return geom.Vec3{X: way * on.X, Y: side * q.X, Z: on.Y}
		}
		for _, q := range b.Outline {
			outline = append(outline, at(q, 1))
		}
		for i := len(b.Outline) - 1; i >= 0; i-- {
			outline = append(outline, at(b.Outline[i], -1))
		}
		points := p.Place(outline)
		if p.Seen(points) {
			p.Add(Ribs, outline, draw.Fill{Role: draw.Cedar, Points: points},
				draw.Stroke{Role: draw.Ink, Points: points, Width: hair * p.Weight, Closed: true})
			p.part(Ribs, answer.HeadboardPart, true, points)
		}
	}
}
