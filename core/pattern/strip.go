package pattern

import (
	"strconv"

	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// stripBreadth is how broad a strip may be and stay in one row of sheets with its marks
// and their words beside it, m.
const stripBreadth = 0.090

// framePieces is how many straight pieces half the frame's batten is drawn in.
const framePieces = 240

// framePatterns are the outer edge of one quarter of the building frame, laid along
// the paper chord by chord, so that each stays in one row of sheets.
func framePatterns(m maker) []Pattern {
	h := m.Hull
	end := h.FrameEnd()
	curve := make([]geom.Vec2, framePieces+1)
	for i := range curve {
		x := end * float64(i) / framePieces
		curve[i] = geom.Vec2{X: x, Y: h.FrameHalfBreadth(x)}
	}
	parts := split(curve, stripBreadth)
	var out []Pattern
	for i, part := range parts {
		p := Pattern{Key: "frame-" + strconv.Itoa(i+1), Name: "Building frame",
			Note: "The outer edge of the long batten, from the middle to the end; the same for all four quarters. Cross " +
				"lines stand square to the centre line of the frame."}
		if len(parts) > 1 {
			p.Name += ", strip " + strconv.Itoa(i+1)
		}
		turn := upThePaper(part[0], part[len(part)-1])
		p.draw(Cut, each(part, turn)...)
		name := func(x float64, texts ...string) {
			if x < part[0].X-rounding || x > part[len(part)-1].X+rounding {
				return
			}
			at := geom.Vec2{X: x, Y: h.FrameHalfBreadth(x)}
			p.draw(Mark, turn(at), turn(at.Add(geom.Vec2{Y: -0.022})))
			for i, text := range texts {
				p.label(turn(at.Add(geom.Vec2{Y: -0.024})).Add(geom.Vec2{Y: -0.0065 * float64(i)}), text)
			}
		}
		for k, c := range m.Frame.Bed.Crosspieces {
			name(c.X, "crosspiece "+strconv.Itoa(k), m.length(c.X)+" from the middle",
				m.length(c.OutToOut/2)+" off centre")
		}
		name(end, "end of the frame", m.length(end)+" from the middle")
		out = append(out, p.done())
	}
	return out
}

// split halves a curve until each part keeps within a breadth of its chord.
func split(curve []geom.Vec2, most float64) [][]geom.Vec2 {
	chord := curve[len(curve)-1].Sub(curve[0]).Unit()
	low, high := 0.0, 0.0
	for _, q := range curve {
		off := chord.Cross(q.Sub(curve[0]))
		low, high = min(low, off), max(high, off)
	}
	if high-low <= most || len(curve) < 4 {
		return [][]geom.Vec2{curve}
	}
	half := len(curve) / 2
	return append(split(curve[:half+1], most), split(curve[half:], most)...)
}

// upThePaper turns a plan so that the way from one point to another runs down the
// paper, with the centre line's side to the right.
func upThePaper(from, to geom.Vec2) func(geom.Vec2) geom.Vec2 {
	along := to.Sub(from).Unit()
	return func(q geom.Vec2) geom.Vec2 {
		off := q.Sub(from)
		return geom.Vec2{X: along.Cross(off) * -1, Y: -along.Dot(off)}
	}
}

func each(points []geom.Vec2, turn func(geom.Vec2) geom.Vec2) []geom.Vec2 {
	out := make([]geom.Vec2, len(points))
	for i, q := range points {
		out[i] = turn(q)
	}
	return out
}

// stickWidth is how broad the stick is drawn; ribs are marked across it, holes by
// short strokes. Metres.
const (
	stickWidth = 0.03
	holeMark   = 0.008
)

// stickPattern is the gunwale's marks from the middle to one end, to be carried
// over to a stick: the same toward both ends and on both sides.
func stickPattern(m maker) []Pattern {
	f := m.Frame
	p := Pattern{Key: "stick", Name: "Story stick for the gunwale",
		Note: "From the middle to one end, along the gunwale's curve; the same toward both ends and on both sides. " +
			"Prick the marks through to a straight stick, then roll the stick along the gunwale's top inner edge from " +
			"its middle."}
	run := f.Gunwales.Run
	at := func(x, along float64) geom.Vec2 { return geom.Vec2{X: x, Y: -along} }
	p.draw(Cut, at(stickWidth, 0), at(0, 0), at(0, run), at(stickWidth, run), at(stickWidth, 0))
	mark := func(along float64, text string) {
		p.draw(Mark, at(0, along), at(stickWidth, along))
		p.label(at(stickWidth+0.003, along+0.0015), text+", "+m.length(along))
	}
	for _, r := range f.Ribs {
		if r.Alone() {
			continue
		}
		mark(r.Run, "rib "+nameOfRib(r.Number))
	}
	for i, g := range f.Lacing.Groups {
		for _, hole := range g.Holes {
			if hole >= 0 {
				p.draw(Mark, at(0, hole), at(holeMark, hole))
			}
		}
		p.label(at(stickWidth+0.003, g.Run+0.0015), m.groupName(i, g))
		p.draw(Dotted, at(holeMark, g.Run), at(stickWidth, g.Run))
	}
	mark(f.Headboard.Run, "headboard")
	mark(run, "gunwale end")
	return []Pattern{p.done()}
}

func (m maker) groupName(i int, g frame.Group) string {
	name := "lacing " + units.Count.Format(float64(i), m.System)
	if g.Thwart >= 0 {
		name = frame.ThwartName(g.Thwart, len(m.Frame.Thwarts))
	}
	if g.Pegged {
		name += ", peg"
	}
	return name + ", " + m.length(g.Run)
}
