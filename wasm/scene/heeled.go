package scene

import (
	"math"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// heeled is the boat cut amidships and leaned to starboard, seen from astern with
// the water level.
type heeled struct {
	plate
	sin, cos float64
}

// at is where a point of the section stands, breadth to port and height.
func (e heeled) at(y, z float64) Point {
	return e.plate.at(z*e.sin-y*e.cos, y*e.sin+z*e.cos)
}

func (e heeled) place(points []geom.Vec2) []Point {
	out := make([]Point, len(points))
	for i, q := range points {
		out[i] = e.at(q.X, q.Y)
	}
	return out
}

// heeledSteps is how many pieces draw half the section.
const heeledSteps = 22

// Heeled draws the boat cut amidships at a heel to starboard, rad, at rest in the
// water but for that heel, with the middle of all weight, that of the water pushed
// aside, and the righting arm between them.
func Heeled(c core.Canoe, heel float64, v View, size Size) List {
	p := newPen(v, size)
	a := c.Afloat
	at := afloat.Attitude{State: a.Floated.State}
	if at.State != afloat.Overloaded {
		at = a.Body.At(a.Load, a.Water, heel)
	}
	skin := mirrored(c.Hull.ColumnSection(c.Hull.ColumnAtEdge(0)).Sample(heeledSteps))
	surface := at.Plane.Height
	if at.State != afloat.Floats && at.State != afloat.Swamped {
		surface = c.Design.Depth
	}
	e := heeledPlate(a, skin, surface, size)
	e.sin, e.cos = math.Sincos(heel)
	name := units.Angle.Format(heel, v.System) + " of heel"
	p.list.Title = "Section amidships at " + name
	p.fill(Bark, e.place(skin))
	switch at.State {
	case afloat.Floats:
		p.list.Description = p.afloatAt(c, e, skin, at)
	case afloat.Swamped:
		p.list.Description = "At this heel water is over the gunwale: swamped."
		p.level(e, at.Plane.Height)
		p.say(rankMain, "swamped: water over the gunwale", Warn, Paper, spot{Point{size.Width / 2, 1.2 * p.letter}, Middle})
	default:
		p.list.Description = "There is no attitude to draw: " + at.State.String() + "."
		p.say(rankMain, at.State.String(), Warn, Paper, spot{Point{size.Width / 2, 1.2 * p.letter}, Middle})
	}
	p.line(Ink, p.outline(e.plate), e.place(skin)...)
	p.say(rankTitle, name, Ink, Paper, spot{Point{size.Width / 2, size.Height - 0.9*p.letter}, Middle}).text.Bold = true
	return p.done()
}

// heeledPlate holds the section at any heel at one scale, and the water still.
func heeledPlate(a core.Afloat, skin []geom.Vec2, surface float64, size Size) heeled {
	reach := math.Abs(a.Load.Centre.Z)
	for _, q := range skin {
		reach = max(reach, math.Hypot(q.X, q.Y))
	}
	t := lettering(size)
	k := max(1, min((size.Width-2*t)/(2*reach), (size.Height-5*t)/(1.3*reach)))
	water := 1.6*t + 0.65*reach*k
	return heeled{plate: plate{Point{size.Width / 2, water + surface*k}, k}}
}

// level is the surface, right across the picture.
func (p *pen) level(e heeled, height float64) {
	y := e.plate.at(0, height).Y
	p.line(Water, 1.6, Point{0, y}, Point{p.list.Width, y})
	p.say(rankExtra, "water", Water, Paper, spot{Point{0.6 * p.letter, y - 0.8*p.letter}, Start})
}

// afloatAt draws what holds the boat up at a heel, and says it in words.
func (p *pen) afloatAt(c core.Canoe, e heeled, skin []geom.Vec2, at afloat.Attitude) string {
	wet := below(e.place(skin), e.plate.at(0, at.Plane.Height).Y)
	p.list.Add(Hatch{Role: Water, Points: wet, Spacing: 5 * p.weight, Width: hairWidth * p.weight})
	p.level(e, at.Plane.Height)
	weight, water := e.at(c.Afloat.Load.Centre.Y, c.Afloat.Load.Centre.Z), e.at(at.Buoyancy.Y, at.Buoyancy.Z)
	p.centre(weight, Ink)
	p.centre(water, Water)
	beside := func(q, other Point) []spot {
		away := spot{Point{q.X - p.letter, q.Y}, End}
		if q.X > other.X {
			away = spot{Point{q.X + p.letter, q.Y}, Start}
		}
		return []spot{away, {Point{q.X, q.Y - 1.3*p.letter}, Middle}, {Point{q.X, q.Y + 1.3*p.letter}, Middle}}
	}
	p.say(rankPart, "all the weight", Ink, Bark, beside(weight, water)...)
	p.say(rankPart, "the water pushed aside", Water, Bark, beside(water, weight)...)

	length := units.SmallLength.Format(math.Abs(at.Arm), p.view.System)
	words := "righting arm " + length
	if at.Arm < 0 {
		words = length + " toward going over"
	}
	foot := p.list.Height - 2.5*p.letter
	p.dashed(Ink, fineWidth, shortDash, weight, Point{weight.X, foot})
	p.dashed(Water, fineWidth, shortDash, water, Point{water.X, foot})
	p.line(Mark, 2.4, Point{weight.X, foot}, Point{water.X, foot})
	p.say(rankMain, words, Mark, Paper, spot{Point{max(weight.X, water.X) + 0.6*p.letter, foot}, Start},
		spot{Point{min(weight.X, water.X) - 0.6*p.letter, foot}, End}).text.Bold = true
	return "The boat cut amidships and heeled to starboard: " + words + ", " + units.Length.Format(at.Freeboard, p.view.System) + " of freeboard at the lowest."
}

// centre marks a centre of mass and keeps labels off it.
func (p *pen) centre(at Point, r Role) {
	radius := 6 * p.weight
	p.centreSign(at, r, radius)
	p.keepOff(box{at.X - radius, at.Y - radius, at.X + radius, at.Y + radius})
}

// below is the part of a polygon under a level of the picture.
func below(points []Point, level float64) []Point {
	var out []Point
	for i, a := range points {
		b := points[(i+1)%len(points)]
		if a.Y >= level {
			out = append(out, a)
		}
		if (a.Y >= level) != (b.Y >= level) {
			s := (level - a.Y) / (b.Y - a.Y)
			out = append(out, Point{a.X + s*(b.X-a.X), level})
		}
	}
	return out
}
