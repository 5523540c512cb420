package view

import (
	"math"
	"slices"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// heeled is the boat cut amidships and leaning to starboard, seen from astern with the
// water level.
type heeled struct {
	scene.Plate
	sin, cos float64
}

// at is where a point of the section stands, breadth to port and height.
func (e heeled) at(y, z float64) draw.Point {
	return e.Plate.At(z*e.sin-y*e.cos, y*e.sin+z*e.cos)
}

func (e heeled) place(points []geom.Vec2) []draw.Point {
	out := make([]draw.Point, len(points))
	for i, q := range points {
		out[i] = e.at(q.X, q.Y)
	}
	return out
}

// heeledSteps is how many pieces draw half the section.
const heeledSteps = 22

// Heeled draws the boat cut amidships at a heel to starboard, in radians. It is at rest
// in the water apart from that heel. The picture marks the centre of all mass, that of
// the displaced water, and the righting arm between them.
func Heeled(c core.Canoe, heel float64, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	a := c.Afloat
	at := afloat.Attitude{State: a.Floated.State}
	if at.State != afloat.Overloaded {
		at = a.Body.At(a.Load, a.Water, heel)
	}
	skin := amidships(c)
	surface := at.Waterplane.Height
	if at.State != afloat.Floats && at.State != afloat.Swamped {
		surface = c.Design.Depth
	}
	shown := skin
	if v.Held != nil {
		shown = append(slices.Clone(skin), amidships(*v.Held)...)
	}
	e := heeledPlate(a, shown, surface, size)
	e.sin, e.cos = math.Sincos(heel)
	name := units.Angle.Format(heel, v.System) + " of lean"
	p.List.Title = "Section amidships at " + name
	p.Fill(draw.Bark, e.place(skin))
	switch at.State {
	case afloat.Floats:
		p.List.Description = p.afloatAt(c, e, skin, at)
	case afloat.Swamped:
		p.List.Description = "At this lean water is over the gunwale: swamped."
		p.level(e, at.Waterplane.Height)
		p.Say(scene.RankMain, "swamped: water over the gunwale", draw.Warn, draw.Paper,
			scene.SpotAt(size.Width/2, 1.2*p.Letter, draw.Middle))
	default:
		p.List.Description = "There is no attitude to draw: " + at.State.String() + "."
		p.Say(scene.RankMain, at.State.String(), draw.Warn, draw.Paper, scene.SpotAt(size.Width/2, 1.2*p.Letter, draw.Middle))
	}
	p.Line(draw.Ink, p.Outline(e.Plate), e.place(skin)...)
	p.heldHeeled(e)
	p.Say(scene.RankTitle, name, draw.Ink, draw.Paper,
		scene.SpotAt(size.Width/2, size.Height-0.9*p.Letter, draw.Middle)).Text.Bold = true
	return p.Done()
}

// amidships is the section there, both halves.
func amidships(c core.Canoe) []geom.Vec2 {
	return scene.Mirrored(c.Hull.Column(c.Hull.ColumnAtEdge(0)).Section.Sample(heeledSteps))
}

// heldHeeled draws the held boat's section at the same lean, bottom on bottom.
func (p *pen) heldHeeled(e heeled) {
	if p.View.Held == nil {
		return
	}
	line := e.place(amidships(*p.View.Held))
	p.HeldLine(line...)
	p.sayHeld(line)
}

// heeledPlate returns axes in which the section keeps its scale at any heel, and the
// water its place.
func heeledPlate(a core.Afloat, skin []geom.Vec2, surface float64, size draw.Size) heeled {
	reach := math.Abs(a.Load.Centre.Z)
	for _, q := range skin {
		reach = max(reach, math.Hypot(q.X, q.Y))
	}
	t := scene.Lettering(size)
	k := max(1, min((size.Width-2*t)/(2*reach), (size.Height-5*t)/(1.3*reach)))
	water := 1.6*t + 0.65*reach*k
	return heeled{Plate: scene.Plate{Origin: draw.Point{X: size.Width / 2, Y: water + surface*k}, Scale: k}}
}

// level is the surface, right across the picture.
func (p *pen) level(e heeled, height float64) {
	y := e.Plate.At(0, height).Y
	p.Line(draw.Water, 1.6, draw.Point{X: 0, Y: y}, draw.Point{X: p.List.Width, Y: y})
	p.Say(scene.RankExtra, "water", draw.Water, draw.Paper, scene.SpotAt(0.6*p.Letter, y-0.8*p.Letter, draw.Start))
}

// afloatAt draws the forces on the boat at a heel, and returns a sentence about them.
func (p *pen) afloatAt(c core.Canoe, e heeled, skin []geom.Vec2, at afloat.Attitude) string {
	wet := below(e.place(skin), e.Plate.At(0, at.Waterplane.Height).Y)
	p.Hatch(draw.Water, 5, scene.HairWidth, 0, wet)
	p.level(e, at.Waterplane.Height)
	weight, water := e.at(c.Afloat.Load.Centre.Y, c.Afloat.Load.Centre.Z), e.at(at.Buoyancy.Y, at.Buoyancy.Z)
	p.centre(weight, draw.Ink)
	p.centre(water, draw.Water)
	beside := func(q, other draw.Point) []scene.Spot {
		away := scene.SpotAt(q.X-p.Letter, q.Y, draw.End)
		if q.X > other.X {
			away = scene.SpotAt(q.X+p.Letter, q.Y, draw.Start)
		}
		return []scene.Spot{away, {At: draw.Point{X: q.X, Y: q.Y - 1.3*p.Letter}, Anchor: draw.Middle},
			{At: draw.Point{X: q.X, Y: q.Y + 1.3*p.Letter}, Anchor: draw.Middle}}
	}
	p.Say(scene.RankPart, "all the weight", draw.Ink, draw.Bark, beside(weight, water)...)
	p.Say(scene.RankPart, "the water pushed aside", draw.Water, draw.Bark, beside(water, weight)...)

	length := units.SmallLength.Format(math.Abs(at.Arm), p.View.System)
	words := "righting arm " + length
	if at.Arm < 0 {
		words = length + " toward going over"
	}
	foot := p.List.Height - 2.5*p.Letter
	p.Dashed(draw.Ink, scene.FineWidth, scene.ShortDash, weight, draw.Point{X: weight.X, Y: foot})
	p.Dashed(draw.Water, scene.FineWidth, scene.ShortDash, water, draw.Point{X: water.X, Y: foot})
	p.Line(draw.Mark, 2.4, draw.Point{X: weight.X, Y: foot}, draw.Point{X: water.X, Y: foot})
	p.Say(scene.RankMain, words, draw.Mark, draw.Paper,
		scene.SpotAt(max(weight.X, water.X)+0.6*p.Letter, foot, draw.Start),
		scene.SpotAt(min(weight.X, water.X)-0.6*p.Letter, foot, draw.End)).Text.Bold = true
	return "The boat cut amidships and leaning to starboard: " + words + ", " +
		units.Length.Format(at.Freeboard, p.View.System) + " of freeboard at the lowest."
}

// centre marks a centre of mass and keeps labels off it.
func (p *pen) centre(at draw.Point, r draw.Role) {
	radius := 6 * p.Weight
	p.centreSign(at, r, radius)
	p.KeepOff(draw.Box{Left: at.X - radius, Top: at.Y - radius, Right: at.X + radius, Bottom: at.Y + radius})
}

// below returns the part of a polygon under a level of the picture.
func below(points []draw.Point, level float64) []draw.Point {
	var out []draw.Point
	for i, a := range points {
		b := points[(i+1)%len(points)]
		if a.Y >= level {
			out = append(out, a)
		}
		if (a.Y >= level) != (b.Y >= level) {
			s := (level - a.Y) / (b.Y - a.Y)
			out = append(out, draw.Point{X: a.X + s*(b.X-a.X), Y: level})
		}
	}
	return out
}
