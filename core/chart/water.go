package chart

import (
	"math"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/answer"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Water makes the curves on the water, each with its table's key and title.
func Water(c core.Canoe, w core.Water, s units.System) []Chart {
	var all []Chart
	for _, t := range answer.CurveTables(w) {
		chart := waterCharts[t.Key](c, w, s)
		chart.Key, chart.Title = t.Key, t.Title
		all = append(all, chart)
	}
	return all
}

// waterCharts draw the curves by the key of their table.
var waterCharts = map[string]func(core.Canoe, core.Water, units.System) Chart{
	"righting": rightingChart, "carries": carriesChart, "push": pushChart,
}

// leastHeel is the least heel the righting arm is drawn to, so that a boat that
// soon swamps does not look like one that never does.
const leastHeel = 30 * units.Degree

// rightingChart draws the arm only as far as the boat is dry.
func rightingChart(c core.Canoe, w core.Water, s units.System) Chart {
	r := w.Righting
	ch := Chart{
		X: Axis{Label: "Lean", Kind: units.Angle, System: s, High: leastHeel},
		Y: Axis{Label: "Righting arm", Kind: units.SmallLength, System: s},
	}
	if r.State != afloat.Floats {
		return ch.empty(r.State.String())
	}
	arm := func(a afloat.Attitude) geom.Vec2 { return geom.Vec2{X: a.Waterplane.Heel, Y: a.Arm} }
	var line []geom.Vec2
	for _, p := range r.Points {
		if p.Firm {
			line = append(line, arm(p.Attitude))
		}
	}
	length := func(v float64) string { return units.SmallLength.Format(v, s) }
	angle := func(v float64) string { return units.Angle.Rough(v, s) }
	here := c.Afloat.Floated.Rest
	if here.State == afloat.Floats {
		lies := "upright"
		if math.Abs(here.Waterplane.Heel) > units.Degree/2 {
			lies = angle(here.Waterplane.Heel)
		}
		ch.Marks = append(ch.Marks, Mark{arm(here), Here, "you are here: " + lies})
	}
	ch.Description = "The righting arm by lean. The largest while the boat is dry is " + length(r.Most.Arm) + " at " +
		angle(r.Most.Waterplane.Heel) + "."
	if r.Swamps {
		line = append(line, arm(r.Swamped))
		ch.Marks = append(ch.Marks, Mark{arm(r.Swamped), Cross, "water comes over: swamped, " +
			angle(r.Swamped.Waterplane.Heel)})
		ch.Description += " Water comes over the gunwale at " + angle(r.Swamped.Waterplane.Heel) + "; the line ends there."
	}
	if r.Most.Arm > 0 && !(r.Swamps && r.Swamped.Waterplane.Heel-r.Most.Waterplane.Heel < units.Degree) {
		ch.Marks = append(ch.Marks, Mark{arm(r.Most), Ring, "largest, " + length(r.Most.Arm)})
	}
	if lean := w.Lean; len(c.Afloat.Crew) > 0 && lean.State == afloat.Floats {
		at := lean.Rest.Waterplane.Heel
		ch.Marks = append(ch.Marks, Mark{geom.Vec2{X: at, Y: interpolated(line, at)}, Ring, "a paddler leaning " +
			length(core.LeanDistance)})
	}
	ch.Lines = []Line{{Points: line}}
	return ch.around()
}

// carriesChart draws the freeboard that each load leaves.
func carriesChart(c core.Canoe, w core.Water, s units.System) Chart {
	ch := Chart{
		X: Axis{Label: "Crew and cargo", Kind: units.Mass, System: s},
		Y: Axis{Label: "Freeboard", Kind: units.SmallLength, System: s},
	}
	var line []geom.Vec2
	for _, k := range w.Carries {
		if k.Possible {
			line = append(line, geom.Vec2{X: k.Payload, Y: k.Freeboard})
		}
	}
	if len(line) == 0 {
		return ch.empty(answer.NoLoad)
	}
	a := c.Afloat
	payload := a.Load.Mass - a.Boat.Mass
	ch.Lines = []Line{{Points: line}}
	// No load is known closer than a whole pound or kilogram.
	text := func(v float64) string { return units.Mass.Format(math.Round(v/ch.X.one())*ch.X.one(), s) }
	ch.Description = "The freeboard that is left falls from " + units.SmallLength.Format(line[len(line)-1].Y, s) +
		" with " + text(line[len(line)-1].X) +
		" of crew and cargo to none with " + text(line[0].X) + ", floated level."
	if a.Floated.State != afloat.Overloaded && a.Floated.Upright.State == afloat.Floats && a.Floated.Upright.Volume > 0 {
		ch.Marks = append(ch.Marks, Mark{geom.Vec2{X: payload, Y: a.Floated.Upright.Freeboard}, Here,
			"you are here: " + text(payload)})
		ch.Description += " With " + text(payload) + " as placed it is " +
			units.SmallLength.Format(a.Floated.Upright.Freeboard, s) + "."
	}
	for i, k := range a.Carries {
		if k.Possible && i > 0 {
			ch.Marks = append(ch.Marks, Mark{geom.Vec2{X: k.Payload, Y: k.Freeboard}, Ring, text(k.Payload)})
		}
	}
	return ch.around()
}

// pushShown is how far past the speeds of interest the push is drawn.
const pushShown = 1.2

// pushChart draws the push as a band: friction at the least, theory's waves on it
// at the most.
func pushChart(_ core.Canoe, w core.Water, s units.System) Chart {
	m := w.Moving
	ch := Chart{
		X: Axis{Label: "Speed", Kind: units.Speed, System: s},
		Y: Axis{Label: "Push", Kind: units.Force, System: s},
	}
	if m.State != afloat.Floats {
		return ch.empty(m.State.String())
	}
	most := core.Pace
	if m.Day.OnCurve {
		most = max(most, m.Day.SpeedHigh)
	}
	var low, high, theory []geom.Vec2
	for _, p := range m.Curve {
		if p.Speed > most*pushShown {
			break
		}
		low = append(low, geom.Vec2{X: p.Speed, Y: p.Low()})
		high = append(high, geom.Vec2{X: p.Speed, Y: p.High()})
		theory = append(theory, geom.Vec2{X: p.Speed, Y: p.Theory()})
	}
	ch.Bands = []Band{{low, high}}
	ch.Lines = []Line{{Points: low, Label: "friction alone"}, {Points: high, Label: "with the most waves"},
		{Points: theory, Dashed: true}}
	force := func(v float64) string { return units.Force.Format(v, s) }
	ch.Marks = []Mark{{geom.Vec2{X: m.Pace.Speed, Y: m.Pace.Theory()}, Ring, "walking pace, " + force(m.Pace.Low()) +
		" to " + force(m.Pace.High())}}
	ch.Description = "The push rises with speed: at " + units.Speed.Format(m.Pace.Speed, s) + " it is " +
		force(m.Pace.Low()) + " to " + force(m.Pace.High()) + "."
	if at := m.Day.Speed; m.Day.OnCurve && at > 0 {
		ch.Marks = append([]Mark{{geom.Vec2{X: at, Y: interpolated(theory, at)}, Here, "you are here: " +
			units.Speed.Format(at, s) + " all day"}}, ch.Marks...)
		ch.Description += " This crew holds about " + units.Speed.Format(at, s) + " for a day."
	}
	return ch.around()
}

// interpolated is the height of a line at x, by straight pieces.
func interpolated(line []geom.Vec2, x float64) float64 {
	for i := 1; i < len(line); i++ {
		if a, b := line[i-1], line[i]; x <= b.X && b.X > a.X {
			return a.Lerp(b, max(0, (x-a.X)/(b.X-a.X))).Y
		}
	}
	return line[len(line)-1].Y
}

// around sets the axes to hold every curve and zero.
func (c Chart) around() Chart {
	hold := func(points ...geom.Vec2) {
		for _, q := range points {
			c.X.Low, c.X.High = min(c.X.Low, q.X), max(c.X.High, q.X)
			c.Y.Low, c.Y.High = min(c.Y.Low, q.Y), max(c.Y.High, q.Y)
		}
	}
	for _, l := range c.Lines {
		hold(l.Points...)
	}
	for _, m := range c.Marks {
		hold(m.At)
	}
	return c
}

func (c Chart) empty(why string) Chart {
	c.Empty = "no curve: " + why
	c.Description = "There is nothing to draw: " + why + "."
	return c
}
