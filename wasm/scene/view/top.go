package view

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/wood"
	"barkwright/wasm/scene"
)

// topFinished draws the finished boat from above: the port side with its cap
// off, so that the lacing shows, the starboard side with it on.
func (p *pen) topFinished(c core.Canoe, l layout) {
	h, a := c.Hull, l.top
	port := skinPlan(h)
	skin := a.Place(scene.Between(port, scene.Flipped(port)))
	p.Fill(draw.Bark, skin)
	p.Surface(answer.SheathingPart, skin)
	p.sheathing(c, a)
	p.stemsTop(c, a)
	for _, r := range c.Frame.Ribs {
		p.ribTop(h, r, a)
	}
	p.centreLine(c, l)
	for i, t := range c.Frame.Thwarts {
		p.thwartTop(h, i, t, a)
	}
	p.headboardsTop(c, a)
	p.gunwalesTop(c, a)
	p.Ring(draw.Ink, p.Outline(a), skin)
	p.lacingTop(c, a)
	p.ghostTop(a, func(g core.Canoe) [][]geom.Vec2 {
		side := skinPlan(g.Hull)
		return [][]geom.Vec2{side, scene.Flipped(side)}
	})
	p.topTitle(c, l)
	p.crewTop(c, a)
	if p.View.Layer != scene.Measures {
		return
	}
	boat := boatBoxes(h, l, port)
	p.capLegend(c, a, boat, 1, "cap off: lacing and pegs")
	p.capLegend(c, a, boat, -1, "cap on")
	p.bendLegend(c, a)
}

// capLegend says beside the gunwale of a side, 1 to port, how the cap is drawn there, with a line
// to it. It stands beside the boat in both views, as its number does.
func (p *pen) capLegend(c core.Canoe, a scene.Plate, boat []draw.Box, side float64, text string) {
	x := labelledAt * c.Hull.GunwaleX
	outer := c.Hull.SkinHalfBreadth(x) + c.Design.OutwaleThickness
	gap := 1.3 * p.Letter / a.Scale
	n := p.Say(scene.RankExtra, text, draw.Faint, draw.Paper, scene.Spot{At: a.At(-x, side*(outer+gap)), Anchor: draw.End},
		scene.Spot{At: a.At(-x, side*(c.Design.Beam/2+gap/2)), Anchor: draw.End})
	rail := a.At(-x, side*(outer-c.Design.OutwaleThickness/2))
	n.Lead, n.Tied = &rail, true
	// Moved along, it would come to lie beside the other view.
	n.Still, n.Off = true, boat
}

// boatBoxes are boxes that fill the boat from above, a slice for each piece of the edge of its port half, and the
// one that bounds it from the side, where it is drawn.
func boatBoxes(h *hull.Hull, l layout, edge []geom.Vec2) []draw.Box {
	boxes := []draw.Box{draw.BoxOf(l.side.Place(profile(h)))}
	for i, q := range edge[1:] {
		half := min(edge[i].Y, q.Y)
		boxes = append(boxes, draw.BoxOf(l.top.Place([]geom.Vec2{{X: edge[i].X, Y: half}, {X: q.X, Y: -half}})))
	}
	return boxes
}

// sheathing draws lines along the boat that stand for the strips of the lining.
func (p *pen) sheathing(c core.Canoe, a scene.Plate) {
	h := c.Hull
	const steps = 10
	var gunwale []geom.Vec2
	for _, x := range scene.Crowded(c.Frame.Headboard.X, steps) {
		gunwale = append(gunwale, geom.Vec2{X: x, Y: h.HalfBeam(x)})
	}
	for _, share := range []float64{-0.78, -0.5, -0.24, 0.24, 0.5, 0.78} {
		line := make([]geom.Vec2, len(gunwale))
		for i, q := range gunwale {
			line[i] = geom.Vec2{X: q.X, Y: share * q.Y}
		}
		p.Line(draw.Seam, 0.35, a.Place(scene.Mirrored(line))...)
	}
}

// ribTop draws a rib and its mate at true width, tapering to the tips.
func (p *pen) ribTop(h *hull.Hull, r frame.Rib, a scene.Plate) {
	half := h.HalfBeam(r.X)
	// The taper begins where the rib has turned up. In a rib that leans, the bottom is not
	// in line with the tips.
	turn := min(h.Turn(r.X), 0.8*half)
	w, tip := r.Width/2, min(r.Width, h.Design.RibTipWidth)/2
	edge := []geom.Vec2{{X: r.X - tip, Y: -half}, {X: r.FootX - w, Y: -turn}, {X: r.FootX - w, Y: turn},
		{X: r.X - tip, Y: half}}
	other := []geom.Vec2{{X: r.X + tip, Y: -half}, {X: r.FootX + w, Y: -turn}, {X: r.FootX + w, Y: turn},
		{X: r.X + tip, Y: half}}
	outline := scene.Between(edge, other)
	crack := mates(a, []geom.Vec2{{X: r.FootX - w}, {X: r.FootX + w}}, r.Alone())
	for i, points := range mates(a, outline, r.Alone()) {
		p.Area(draw.Cedar, draw.Ink, p.Thin(a, r.Width, scene.FineWidth), points)
		if r.Width*a.Scale > hatchFrom {
			p.hatchBend(hatchOf(r, h.Design.RibStock), points)
		}
		if r.Broken {
			p.Line(draw.Ink, scene.TimberWidth, crack[i]...)
		}
		p.Part(answer.RibPart(r.Number), true, points)
	}
}

// labelledAt is where along the gunwale labels stand outside it, as a share of the
// distance to its end. By eye.
const labelledAt = 0.62

// hatchFrom is the least breadth of a rib, in CSS pixels, at which a hatch can be read.
const hatchFrom = 7

// bendHatch is how a rib's bend is hatched.
type bendHatch int

// The hatches. The close one is for a bend that is tighter than any published rib's, where
// the rib is not meant to be broken. The wide one is for a bend tighter than most.
const (
	noHatch bendHatch = iota
	wideHatch
	closeHatch
)

// hatchOf returns the hatch for a rib's verdict.
func hatchOf(r frame.Rib, stock wood.Stock) bendHatch {
	if r.Broken {
		return noHatch
	}
	switch r.Bend.Rib(stock) {
	case wood.ColdRib, wood.TighterThanMost:
		return wideHatch
	case wood.TighterThanAny:
		return closeHatch
	}
	return noHatch
}

// hatchBend hatches a rib by its bend.
func (p *pen) hatchBend(h bendHatch, points []draw.Point) {
	if h != noHatch {
		p.Hatch(draw.Warn, [...]float64{wideHatch: 8, closeHatch: 3}[h], scene.HairWidth, -math.Pi/4, points)
	}
}

// bendLegend says what the hatches on the ribs mean, where there are any.
func (p *pen) bendLegend(c core.Canoe, a scene.Plate) {
	most := noHatch
	for _, r := range c.Frame.Ribs {
		if r.Width*a.Scale > hatchFrom {
			most = max(most, hatchOf(r, c.Design.RibStock))
		}
	}
	text := [...]string{"", "hatched: rib tighter than most published",
		"close hatch: rib tighter than any published"}[most]
	if most == noHatch {
		return
	}
	x := labelledAt * c.Hull.GunwaleX
	y := c.Design.Beam/2 + 0.6*p.Letter/a.Scale
	p.Say(scene.RankExtra, text, draw.Warn, draw.Paper,
		scene.Spot{At: a.At(x, -y), Anchor: draw.Start}, scene.Spot{At: a.At(x, y), Anchor: draw.Start})
}

// mates returns an outline in the picture and, unless it stands alone, its mirror image
// aft.
func mates(a scene.Plate, outline []geom.Vec2, alone bool) [][]draw.Point {
	out := [][]draw.Point{a.Place(outline)}
	if alone {
		return out
	}
	back := make([]geom.Vec2, len(outline))
	for i, q := range outline {
		back[i] = geom.Vec2{X: -q.X, Y: q.Y}
	}
	return append(out, a.Place(back))
}

func (p *pen) thwartTop(h *hull.Hull, i int, t frame.Thwart, a scene.Plate) {
	const half = frame.ThwartWidth / 2
	in, out := h.HalfBeam(t.X-half), h.HalfBeam(t.X+half)
	for _, points := range mates(a, []geom.Vec2{{X: t.X - half, Y: -in}, {X: t.X + half, Y: -out},
		{X: t.X + half, Y: out}, {X: t.X - half, Y: in}}, i == 0) {
		p.Area(draw.Cedar, draw.Ink, scene.StrongWidth, points)
		p.Part(answer.ThwartPart(i), true, points)
	}
}

func (p *pen) headboardsTop(c core.Canoe, a scene.Plate) {
	b := c.Frame.Headboard
	for _, points := range mates(a, scene.Rect(b.X, frame.HeadboardThickness/2, -b.Neck/2, b.Neck/2), false) {
		p.Area(draw.Cedar, draw.Ink, scene.TimberWidth, points)
		p.Part(answer.HeadboardPart, true, points)
	}
}

func (p *pen) stemsTop(c core.Canoe, a scene.Plate) {
	h, half := c.Hull, c.Design.StemWidth/2
	from := c.Frame.Stem.SolidFrom
	outline := []geom.Vec2{{X: from, Y: -half}, {X: h.HeadX, Y: -half}, {X: h.HeadX, Y: half}, {X: from, Y: half}}
	for _, points := range mates(a, outline, false) {
		p.Area(draw.Cedar, draw.Ink, p.Thin(a, 2*half, scene.FineWidth), points)
		p.Part(answer.StemPart, true, points)
	}
}

// gunwalesTop draws inwale and outwale to port and the cap to starboard.
func (p *pen) gunwalesTop(c core.Canoe, a scene.Plate) {
	h, d := c.Hull, c.Design
	inner := scene.Curve(h.HalfBeam, h.GunwaleX)
	skin := scene.Curve(h.SkinHalfBreadth, h.GunwaleX)
	barkIn, outer := make([]geom.Vec2, len(skin)), make([]geom.Vec2, len(skin), len(skin)+1)
	for i, q := range skin {
		barkIn[i] = geom.Vec2{X: q.X, Y: max(inner[i].Y, q.Y-d.BarkThickness)}
		outer[i] = geom.Vec2{X: q.X, Y: q.Y + d.OutwaleThickness}
	}
	// Past the gunwale's end the outwale runs on to the stem head.
	stem := h.SkinHalfBreadth(h.HeadX)
	skin = append(skin, geom.Vec2{X: h.HeadX, Y: stem})
	outer = append(outer, geom.Vec2{X: h.HeadX, Y: stem + d.OutwaleThickness/2})
	p.timber(answer.InwalePart, p.Thin(a, d.InwaleThickness, scene.FineWidth),
		a.Place(scene.Between(scene.Mirrored(inner), scene.Mirrored(barkIn))))
	p.timber(answer.OutwalePart, p.Thin(a, d.OutwaleThickness, scene.FineWidth),
		a.Place(scene.Between(scene.Mirrored(skin), scene.Mirrored(outer))))
	low := make([]geom.Vec2, len(outer))
	high := make([]geom.Vec2, len(outer))
	for i, q := range outer {
		in := 0.0
		if i < len(inner) {
			in = inner[i].Y
		}
		middle := (in + q.Y) / 2
		low[i] = geom.Vec2{X: q.X, Y: -max(0, middle-d.CapWidth/2)}
		high[i] = geom.Vec2{X: q.X, Y: -middle - d.CapWidth/2}
	}
	p.timber(answer.CapPart, p.Thin(a, d.CapWidth, scene.TimberWidth),
		a.Place(scene.Between(scene.Mirrored(low), scene.Mirrored(high))))
}

// timber draws a piece of the gunwale that can be touched.
func (p *pen) timber(name string, width float64, points []draw.Point) {
	p.Area(draw.Cedar, draw.Ink, width, points)
	p.Part(name, true, points)
}

// lacingTop draws the groups across the port gunwales, with their pegs.
func (p *pen) lacingTop(c core.Canoe, a scene.Plate) {
	h, d := c.Hull, c.Design
	for i, g := range c.Frame.Lacing.Groups {
		from, to := scene.GroupSpan(c, g)
		in := func(x float64) float64 { return h.HalfBeam(math.Abs(x)) }
		out := func(x float64) float64 { return h.SkinHalfBreadth(x) + d.OutwaleThickness }
		outline := []geom.Vec2{{X: from, Y: in(from)}, {X: to, Y: in(to)}, {X: to, Y: out(to)}, {X: from, Y: out(from)}}
		for _, points := range mates(a, outline, g.Run == 0) {
			p.Fill(draw.Root, points)
			p.Part(answer.GroupPart(i), true, points)
		}
		if !g.Pegged {
			continue
		}
		y := (in(g.X) + out(g.X)) / 2
		for _, x := range [2]float64{g.X, -g.X} {
			p.Fill(draw.Paper, draw.Polygon(a.At(x, y), max(0.9, 0.006*a.Scale), 6, 0))
			if g.X == 0 {
				break
			}
		}
	}
}
