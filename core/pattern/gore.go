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
			"rides over and trim. It is drawn for port; turn it over for starboard and for the other end. The two edges " +
			"are what comes together when sewn. " + m.lapNote(g)}
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
	beside := a[0].X
	for _, q := range f {
		beside = max(beside, q.X)
	}
	m.goreLabels(&p, g, beside+0.004, top.Y)
	return p.done()
}

// goreLabels letters a gore beside its fore edge.
func (m maker) goreLabels(p *Pattern, g bark.FlatGore, x, top float64) {
	const letters, step = 0.0032, 0.0045
	place := []string{"at " + m.length(abs(g.Run)), "along the", "gunwale"}
	if g.Run == 0 {
		place = []string{"at the middle"}
	}
	for i, text := range append([]string{"edge:", "about " + m.small(g.Width), "rides over", "", "slash " + m.length(g.Cut), ""},
		place...) {
		if text != "" {
			p.Labels = append(p.Labels, Label{At: toPaper(geom.Vec2{X: x, Y: top - 0.004 - step*float64(i)}), Text: text,
				Size: letters * millimetres})
		}
	}
	p.Labels = append(p.Labels, Label{At: toPaper(geom.Vec2{X: x, Y: 0.002}), Text: "foot", Size: letters * millimetres})
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
