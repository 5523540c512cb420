package pattern

import (
	"barkwright/core/geom"
	"barkwright/core/units"
)

// headRun is how far outboard of the stem head the note of the head stands, metres, and
// tick the length of a lashing's mark to either side of the edge.
const (
	headRun = 0.006
	tick    = 0.012
)

// trimPattern is the bark's end in the plane of x and z: what it is trimmed to, what is
// left past that until the stem-piece is tried in, the stem-piece inside, the holes of the
// stitches, and the top edge with the places of the outwale's lashings.
func trimPattern(m maker) []Pattern {
	c := m.Frame.Closing
	line := c.Trim.Points
	p := Pattern{Key: "trim", Name: "Trim line of the bark's end",
		Note: "For both ends. Lay it on the bark where it leaves the bottom and follow the whole line. Leave the bark " +
			"to the dotted line, " + m.small(c.Leave) + " past it, until the stem-piece is tried in; then trim both " +
			"barks to the line together, and sew. The thin line inside is the stem-piece's outer face. Crosses are the " +
			"holes of the stitches, " + m.small(c.Spacing) + " apart and " + m.small(c.HoleIn) + " in; the marks across " +
			"the top edge are the three lashings of the outwales, seen from the side."}
	p.draw(Cut, line...)
	p.draw(Dotted, geom.Offset(line, -c.Leave)...)
	p.draw(Mark, geom.Offset(line, m.Design.BarkThickness)...)
	edge := m.topEdge()
	p.draw(Mark, edge...)
	for k := range c.Stitches() {
		m.hole(&p, k)
	}
	for i, l := range c.Lashings {
		at := geom.Vec2{X: l.X, Y: m.Hull.TopEdge(l.X)}
		p.draw(Mark, at.Add(geom.Vec2{Y: -tick}), at.Add(geom.Vec2{Y: tick / 2}))
		under := toPaper(at.Add(geom.Vec2{X: 0.002, Y: -tick - 0.005}))
		p.Labels = append(p.Labels, Label{At: under, Text: units.Count.Format(float64(i+1), m.System), Size: smallLetters})
	}
	p.label(line[0].Add(geom.Vec2{X: -0.001, Y: 0.012}), "heel")
	head := toPaper(line[len(line)-1].Add(geom.Vec2{X: -headRun, Y: headRun}))
	p.Labels = append(p.Labels, Label{At: head, Text: "stem head", End: true})
	return []Pattern{p.done()}
}

// smallLetters are those of the lashings' numbers, mm.
const smallLetters = 3.5

// topEdge is the bark's top edge in the same plane, from the stem head in past the last
// lashing.
func (m maker) topEdge() []geom.Vec2 {
	const pieces = 60
	lashings := m.Frame.Closing.Lashings
	to := lashings[len(lashings)-1].X - tick
	out := make([]geom.Vec2, pieces+1)
	for i := range out {
		x := m.Hull.HeadX + (to-m.Hull.HeadX)*float64(i)/pieces
		out[i] = geom.Vec2{X: x, Y: m.Hull.TopEdge(x)}
	}
	return out
}

// hole marks the hole of a stitch.
func (m maker) hole(p *Pattern, k int) {
	at, along := m.Frame.Closing.HoleAt(k)
	const arm = 0.002
	p.draw(Mark, at.Sub(along.Scale(arm)), at.Add(along.Scale(arm)))
	p.draw(Mark, at.Sub(along.Left().Scale(arm)), at.Add(along.Left().Scale(arm)))
}
