package pattern

import (
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// gorePatterns are the openings of the gores of one quarter, laid flat, each with
// its middle up the paper and its foot down.
func gorePatterns(m maker) []Pattern {
	if m.Skin == nil {
		return nil
	}
	var out []Pattern
	number := 0
	for _, g := range m.Skin.Flat.Gores {
		if g.X < 0 {
			continue
		}
		name := units.Count.Format(float64(number), m.System)
		number++
		if g.State != bark.GoreCut || len(g.After) < 2 {
			continue
		}
		out = append(out, m.gore(name, g))
	}
	return out
}

func (m maker) gore(name string, g bark.FlatGore) Pattern {
	p := Pattern{Key: "gore-" + name, Name: "Gore " + name,
		Note: "Slash first, straight from the edge in to the foot, and turn the sides up; then hold this to what " +
			"rides over and trim. It stands " + m.length(abs(g.Run)) + " along the gunwale from the middle, port; turn " +
			"it over for starboard and for the other end. The two edges are what comes together when sewn. " +
			m.lapNote(g)}
	foot := g.After[0]
	after, fore := g.After[len(g.After)-1], g.Fore[len(g.Fore)-1]
	up := after.Lerp(fore, 0.5).Sub(foot).Unit()
	turn := func(q geom.Vec2) geom.Vec2 {
		off := q.Sub(foot)
		return geom.Vec2{X: -up.Cross(off), Y: up.Dot(off)}
	}
	a, f := each(g.After, turn), each(g.Fore, turn)
	p.draw(Cut, a...)
	p.draw(Cut, f...)
	p.draw(Mark, a[len(a)-1], f[len(f)-1])
	top := geom.Vec2{Y: turn(after.Lerp(fore, 0.5)).Y}
	p.draw(Centre, geom.Vec2{}, top)
	if lap := m.Design.SeamLap; lap > 0 && lap < g.Width {
		p.draw(Dotted, geom.Offset(a, -lap)...)
	}
	p.label(geom.Vec2{X: 0.035, Y: top.Y - 0.004}, "edge, about "+m.small(g.Width)+" rides over")
	p.label(geom.Vec2{X: 0.035, Y: top.Y / 2}, "slash "+m.length(g.Cut))
	p.label(geom.Vec2{X: 0.035, Y: 0.002}, "foot")
	return p.done()
}

// lapNote says what is cut away and what stays as the lap.
func (m maker) lapNote(g bark.FlatGore) string {
	switch lap := m.Design.SeamLap; {
	case lap == 0:
		return "Trim on both."
	case lap < g.Width:
		return "Trim on the fore edge and on the dotted line: what lies between it and the after edge is the lap."
	}
	return "It is no wider than the lap: slit the middle and lap one edge to the other."
}
