package flat

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/mend"
	"barkwright/wasm/scene"
)

// onTheBed is the bark on the bed without the strips sewn to it.
func onTheBed(a scene.Plate) laidOut {
	return func(part mend.Laid, line []geom.Vec2) []draw.Point {
		if part.Strip != "" {
			return nil
		}
		return a.InQuarter(part.Quarter, 0, line)
	}
}

// stripRepairs draws the repairs on a strip as it is cut from its sheet, with the edge of the boat's bark in it.
func (p *pen) stripRepairs(c core.Canoe, l bark.Laid, a scene.Plate) {
	var on []laidRepair
	for _, r := range p.repairs {
		for _, part := range r.parts {
			if part.Strip == l.Name {
				on = append(on, r)
				break
			}
		}
	}
	if len(on) == 0 {
		return
	}
	edges := p.stripEdges(c, l)
	lie := lieOf(edges, l, c.Design.GunwaleTurn)
	place := func(line []geom.Vec2) []draw.Point {
		out := make([]draw.Point, len(line))
		for i, q := range line {
			v := lie.at(q)
			out[i] = a.At(v.X, v.Y)
		}
		return out
	}
	for _, edge := range edges {
		p.Line(draw.Seam, scene.FineWidth, place(edge)...)
	}
	at := func(part mend.Laid, line []geom.Vec2) []draw.Point {
		if part.Strip != l.Name {
			return nil
		}
		all := make([]geom.Vec2, len(line))
		for i, q := range line {
			all[i] = geom.Vec2{X: part.Quarter[0] * q.X, Y: part.Quarter[1] * q.Y}
		}
		return place(all)
	}
	room := draw.BoxOf(a.Place(scene.Rect(l.Cut.Along+l.Length()/2, l.Length()/2, l.Cut.Across, l.Cut.Across+l.Width)))
	for _, r := range on {
		p.repairLines(r, at)
		p.repairNames(r, at, room)
	}
}

// stripEdges are the edges of the bark of a strip as it reaches, its ends too, forward and to port counted as more
// than zero.
func (p *pen) stripEdges(c core.Canoe, l bark.Laid) [][]geom.Vec2 {
	side := 1.0
	if l.Side == bark.Starboard {
		side = -1
	}
	l.Aft, l.Bow = c.Bark.Reach(l)
	var out [][]geom.Vec2
	for _, half := range l.Halves() {
		for i := range p.View.Flat.Panels {
			low, high := p.View.Flat.Panels[i].Between(half.From, half.To)
			if len(low) == 0 {
				continue
			}
			lines := [][]geom.Vec2{low, high, {low[len(low)-1], high[len(high)-1]}}
			if low[0].X > scene.OnAxis {
				lines = append(lines, []geom.Vec2{low[0], high[0]})
			}
			for _, line := range lines {
				for k, q := range line {
					line[k] = geom.Vec2{X: half.Sign * q.X, Y: side * q.Y}
				}
				out = append(out, line)
			}
		}
	}
	return out
}

// lie is how the bark of a strip lies on its sheet: turned, then moved.
type lie struct {
	sin, cos float64
	by       geom.Vec2
}

// lieOf lays a strip's bark along its sheet: turned to where it is least broad, but over the middle, where it lies
// along the boat; in the middle of what the strip is cut with, and the bark to trim outside the gunwale's edge.
func lieOf(edges [][]geom.Vec2, l bark.Laid, trim float64) lie {
	const steps, step = 70, 0.005 // radians: two millimetres in the length of a strip
	best := lie{cos: 1}
	from, to := best.box(edges)
	for n := -steps; n <= steps && (l.Aft >= 0 || l.Bow <= 0); n++ {
		try := lie{sin: math.Sin(step * float64(n)), cos: math.Cos(step * float64(n))}
		if low, high := try.box(edges); high.Y-low.Y < to.Y-from.Y {
			best, from, to = try, low, high
		}
	}
	room := (l.Width - trim - (to.Y - from.Y)) / 2
	best.by = geom.Vec2{X: l.Cut.Along + l.Length()/2 - (from.X+to.X)/2, Y: l.Cut.Across + room - from.Y}
	if l.Side == bark.Starboard {
		best.by.Y += trim
	}
	return best
}

func (l lie) at(q geom.Vec2) geom.Vec2 {
	return geom.Vec2{X: l.cos*q.X - l.sin*q.Y + l.by.X, Y: l.sin*q.X + l.cos*q.Y + l.by.Y}
}

// box is the least and the most of edges as they lie.
func (l lie) box(edges [][]geom.Vec2) (from, to geom.Vec2) {
	from, to = geom.Vec2{X: math.Inf(1), Y: math.Inf(1)}, geom.Vec2{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, edge := range edges {
		for _, q := range edge {
			v := l.at(q)
			from = geom.Vec2{X: min(from.X, v.X), Y: min(from.Y, v.Y)}
			to = geom.Vec2{X: max(to.X, v.X), Y: max(to.Y, v.Y)}
		}
	}
	return from, to
}
