package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/wood"
)

// topFinished draws the finished boat from above: the port side with its cap
// off, so that the lacing shows, the starboard side with it on.
func (p *pen) topFinished(c core.Canoe, l layout) {
	h, a := c.Hull, l.top
	port := skinPlan(h)
	skin := a.place(between(port, flipped(port)))
	p.fill(Bark, skin)
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
	p.ring(Ink, p.outline(a), skin)
	p.lacingTop(c, a)
	p.ghostTop(a, func(g core.Canoe) [][]geom.Vec2 {
		side := skinPlan(g.Hull)
		return [][]geom.Vec2{side, flipped(side)}
	})
	p.topTitle(c, l)
	p.crewTop(c, a)
	y := c.Design.Beam/2 + 0.6*p.letter/a.Scale
	x := 0.62 * h.GunwaleX
	p.say(rankExtra, "cap off: lacing and pegs", Faint, Paper, spot{a.at(-x, y), End})
	p.say(rankExtra, "cap on", Faint, Paper, spot{a.at(-x, -y), End})
	p.bendLegend(c, a)
}

// sheathing hints at the strips of the lining: lines along the boat.
func (p *pen) sheathing(c core.Canoe, a plate) {
	h := c.Hull
	const steps = 10
	for _, share := range []float64{-0.78, -0.5, -0.24, 0.24, 0.5, 0.78} {
		var line []geom.Vec2
		for _, x := range crowded(c.Frame.Headboard.X, steps) {
			line = append(line, geom.Vec2{X: x, Y: share * h.HalfBeam(x)})
		}
		p.line(Seam, 0.35, a.place(mirrored(line))...)
	}
}

// ribTop draws a rib and its mate at true width, tapering to the tips.
func (p *pen) ribTop(h *hull.Hull, r frame.Rib, a plate) {
	half := h.HalfBeam(r.X)
	// The taper begins where the rib has turned up; a rib that leans has its bottom out
	// of line with its tips.
	turn := min(h.Turn(r.X), 0.8*half)
	w, tip := r.Width/2, min(r.Width, h.Design.RibTipWidth)/2
	edge := []geom.Vec2{{X: r.X - tip, Y: -half}, {X: r.FootX - w, Y: -turn}, {X: r.FootX - w, Y: turn}, {X: r.X - tip, Y: half}}
	other := []geom.Vec2{{X: r.X + tip, Y: -half}, {X: r.FootX + w, Y: -turn}, {X: r.FootX + w, Y: turn}, {X: r.X + tip, Y: half}}
	outline := between(edge, other)
	crack := mates(a, []geom.Vec2{{X: r.FootX - w}, {X: r.FootX + w}}, r.Alone())
	for i, points := range mates(a, outline, r.Alone()) {
		p.area(Cedar, Ink, p.thin(a, r.Width, fineWidth), points)
		if spacing, ok := bendHatch(r, h.Design.RibStock); ok && r.Width*a.Scale > hatchFrom && p.seen(points) {
			p.list.Add(Hatch{Role: Warn, Points: points, Spacing: spacing * p.weight, Width: hairWidth * p.weight, Angle: -math.Pi / 4})
		}
		if r.Broken {
			p.line(Ink, timberWidth, crack[i]...)
		}
		p.part(answer.RibPart(r.Number), true, points)
	}
}

// hatchFrom is the breadth a rib needs for a hatch to read, CSS pixels.
const hatchFrom = 7

// bendHatch is how a rib's verdict is hatched: wider apart where it is tighter than most
// published ribs, close where it is tighter than any and not meant to be broken.
func bendHatch(r frame.Rib, stock wood.Stock) (spacing float64, ok bool) {
	if r.Broken {
		return 0, false
	}
	switch r.Bend.Rib(stock) {
	case wood.ColdRib, wood.TighterThanMost:
		return 8, true
	case wood.TighterThanAny:
		return 3, true
	}
	return 0, false
}

// bendLegend says what the hatches on the ribs mean, where there are any.
func (p *pen) bendLegend(c core.Canoe, a plate) {
	near, tight := 0, 0
	for _, r := range c.Frame.Ribs {
		switch spacing, ok := bendHatch(r, c.Design.RibStock); {
		case !ok || r.Width*a.Scale <= hatchFrom:
		case spacing < 4:
			tight++
		default:
			near++
		}
	}
	text := ""
	switch {
	case tight > 0:
		text = "close hatch: rib tighter than any published"
	case near > 0:
		text = "hatched: rib tighter than most published"
	default:
		return
	}
	h := c.Hull
	x := 0.62 * h.GunwaleX
	p.say(rankExtra, text, Warn, Paper, spot{a.at(x, -c.Design.Beam/2-0.6*p.letter/a.Scale), Start}, spot{a.at(x, c.Design.Beam/2+0.6*p.letter/a.Scale), Start})
}

// mates places an outline and, unless it stands alone, its mirror image aft.
func mates(a plate, outline []geom.Vec2, alone bool) [][]Point {
	out := [][]Point{a.place(outline)}
	if alone {
		return out
	}
	back := make([]geom.Vec2, len(outline))
	for i, q := range outline {
		back[i] = geom.Vec2{X: -q.X, Y: q.Y}
	}
	return append(out, a.place(back))
}

func (p *pen) thwartTop(h *hull.Hull, i int, t frame.Thwart, a plate) {
	const half = frame.ThwartWidth / 2
	in, out := h.HalfBeam(t.X-half), h.HalfBeam(t.X+half)
	for _, points := range mates(a, []geom.Vec2{{X: t.X - half, Y: -in}, {X: t.X + half, Y: -out}, {X: t.X + half, Y: out}, {X: t.X - half, Y: in}}, i == 0) {
		p.area(Cedar, Ink, 1.3, points)
		p.part(answer.ThwartPart(i), true, points)
	}
}

func (p *pen) headboardsTop(c core.Canoe, a plate) {
	b := c.Frame.Headboard
	for _, points := range mates(a, rect(b.X, frame.HeadboardThickness/2, -b.Neck/2, b.Neck/2), false) {
		p.area(Cedar, Ink, timberWidth, points)
		p.part(answer.HeadboardPart, true, points)
	}
}

func (p *pen) stemsTop(c core.Canoe, a plate) {
	h, half := c.Hull, c.Design.StemWidth/2
	from := c.Frame.Stem.SolidFrom
	outline := []geom.Vec2{{X: from, Y: -half}, {X: h.HeadX, Y: -half}, {X: h.HeadX, Y: half}, {X: from, Y: half}}
	for _, points := range mates(a, outline, false) {
		p.area(Cedar, Ink, p.thin(a, 2*half, fineWidth), points)
		p.part(answer.StemPart, true, points)
	}
}

// gunwalesTop draws inwale and outwale to port and the cap to starboard.
func (p *pen) gunwalesTop(c core.Canoe, a plate) {
	h, d := c.Hull, c.Design
	inner := curve(h.HalfBeam, h.GunwaleX)
	barkIn := curve(func(x float64) float64 { return max(h.HalfBeam(x), h.SkinHalfBreadth(x)-d.BarkThickness) }, h.GunwaleX)
	skin := curve(h.SkinHalfBreadth, h.GunwaleX)
	outer := curve(func(x float64) float64 { return h.SkinHalfBreadth(x) + d.OutwaleThickness }, h.GunwaleX)
	// Past the gunwale's end the outwale runs on to the stem head.
	stem := h.SkinHalfBreadth(h.HeadX)
	skin = append(skin, geom.Vec2{X: h.HeadX, Y: stem})
	outer = append(outer, geom.Vec2{X: h.HeadX, Y: stem + d.OutwaleThickness/2})
	p.area(Cedar, Ink, p.thin(a, d.InwaleThickness, fineWidth), a.place(between(mirrored(inner), mirrored(barkIn))))
	p.area(Cedar, Ink, p.thin(a, d.OutwaleThickness, fineWidth), a.place(between(mirrored(skin), mirrored(outer))))
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
	p.area(Cedar, Ink, p.thin(a, d.CapWidth, timberWidth), a.place(between(mirrored(low), mirrored(high))))
}

// lacingTop draws the groups across the port gunwales, with their pegs.
func (p *pen) lacingTop(c core.Canoe, a plate) {
	h, d := c.Hull, c.Design
	for i, g := range c.Frame.Lacing.Groups {
		from, to := groupSpan(c, g)
		in := func(x float64) float64 { return h.HalfBeam(math.Abs(x)) }
		out := func(x float64) float64 { return h.SkinHalfBreadth(x) + d.OutwaleThickness }
		outline := []geom.Vec2{{X: from, Y: in(from)}, {X: to, Y: in(to)}, {X: to, Y: out(to)}, {X: from, Y: out(from)}}
		for _, points := range mates(a, outline, g.Run == 0) {
			p.fill(Root, points)
			p.part(answer.GroupPart(i), true, points)
		}
		if !g.Pegged {
			continue
		}
		y := (in(g.X) + out(g.X)) / 2
		for _, x := range [2]float64{g.X, -g.X} {
			p.fill(Paper, dot(a.at(x, y), max(0.9, 0.006*a.Scale)))
			if g.X == 0 {
				break
			}
		}
	}
}

// groupSpan is where a group of lacing runs along x, its outer holes and half a
// root beyond.
func groupSpan(c core.Canoe, g frame.Group) (from, to float64) {
	h := c.Hull
	first, last := g.Holes[0]-c.Design.RootWidth/2, g.Holes[len(g.Holes)-1]+c.Design.RootWidth/2
	return math.Copysign(h.StationAt(math.Abs(first)), first), math.Copysign(h.StationAt(math.Abs(last)), last)
}

// dot is a small round spot.
func dot(at Point, radius float64) []Point {
	const sides = 6
	out := make([]Point, sides)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / sides)
		out[i] = Point{at.X + radius*cos, at.Y + radius*sin}
	}
	return out
}
