package pattern

import (
	"math"
	"sort"

	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// stemPath is the stem-piece's outer face in the plane of x and z, from the heel's
// inboard end, with where on it the solid ends: the bark's outer face less the bark.
func (m maker) stemPath() (outer []geom.Vec2, solid int) {
	s := m.Frame.Stem
	return geom.Offset(s.Profile.Points, m.Design.BarkThickness), s.Point
}

// bends tells whether the stem's inner face is a curve at all.
func (m maker) bends() bool {
	s := m.Frame.Stem
	return min(s.Radius, s.SolidRadius) > m.Design.BarkThickness+m.Design.StemDepth
}

func stemPattern(m maker) []Pattern {
	d, s := m.Design, m.Frame.Stem
	outer, solid := m.stemPath()
	p := Pattern{Key: "stem", Name: "Stem-piece",
		Note: "Two alike. The outer line is the stem's outer face, inside the bark. The heel is left solid and sawn " +
			"to its curve from stock " + m.small(s.Stock) + " deep; " +
			units.Count.Format(float64(d.StemLaminations), m.System) + " laminations of " +
			units.Thickness.Format(s.Lamination, m.System) + " run from it to the head."}
	if s.SolidTightest {
		p.Note += " The end is tightest in the solid, radius " + m.small(s.SolidRadius) + "."
	}
	p.draw(Cut, outer...)
	last := len(outer) - 1
	if m.bends() {
		inner := geom.Offset(outer, d.StemDepth)
		p.draw(Cut, inner...)
		p.draw(Cut, outer[0], inner[0])
		p.draw(Cut, outer[last], inner[last])
		p.draw(Mark, outer[solid], inner[solid])
		for i := 1; i < d.StemLaminations; i++ {
			p.draw(Mark, geom.Offset(outer, float64(i)*s.Lamination)[solid:]...)
		}
		m.headboardOn(&p)
		inside := geom.Offset(outer, d.StemDepth+0.012)
		p.Labels = append(p.Labels, Label{At: toPaper(inside[solid].Add(geom.Vec2{X: -0.004, Y: 0.012})),
			Text: "solid to here, split from here", End: true})
		p.label(outer[last].Add(geom.Vec2{X: 0.005, Y: -0.006}), "head")
		tight := sort.SearchFloat64s(s.Profile.Run, s.Tightest-rounding)
		p.draw(Mark, outer[tight], inner[tight])
		p.Labels = append(p.Labels, Label{At: toPaper(inside[tight]),
			Text: "tightest, " + m.small(max(0, s.Innermost().Radius)), End: true})
	} else {
		p.Note += " The curve is tighter than the piece is deep: it will not fit, and only its outer face is drawn."
		p.label(outer[solid].Add(geom.Vec2{Y: 0.012}), "heel")
	}
	return []Pattern{p.done()}
}

// headboardOn marks where the headboard stands over the heel.
func (m maker) headboardOn(p *Pattern) {
	b := m.Frame.Headboard
	up := b.Top.Sub(b.Stands).Unit()
	foot := b.Stands.Add(up.Scale(b.NotchDepth))
	p.draw(Centre, foot, foot.Add(up.Scale(0.03)))
	p.Labels = append(p.Labels, Label{At: toPaper(foot.Add(geom.Vec2{X: -0.003, Y: 0.024})), Text: "headboard",
		End: true})
}

// formDepth is how broad a bending form is drawn behind its face, and formRun how
// far it goes on straight past the head: room for clamps. Estimates.
const (
	formDepth = 0.09
	formRun   = 0.05
)

// formFace is the bending form's face along the laminations, from the end of the solid,
// with every bend tighter by what a trial piece opened; the solid runs on straight from it.
func (m maker) formFace() []geom.Vec2 {
	outer, solid := m.stemPath()
	inner := geom.Offset(outer, m.Design.StemDepth)[solid:]
	return overbent(inner, 1+m.Design.StemOpening)
}

// overbent is a path whose pieces keep their lengths and turn by more from each to the
// next.
func overbent(path []geom.Vec2, by float64) []geom.Vec2 {
	out := []geom.Vec2{path[0], path[1]}
	first := path[1].Sub(path[0])
	heading, was := math.Atan2(first.Y, first.X), first
	for i := 2; i < len(path); i++ {
		piece := path[i].Sub(path[i-1])
		heading += by * math.Atan2(was.Cross(piece), was.Dot(piece))
		was = piece
		sin, cos := math.Sincos(heading)
		out = append(out, out[i-1].Add(geom.Vec2{X: cos, Y: sin}.Scale(piece.Len())))
	}
	return out
}

func formPattern(m maker) []Pattern {
	s := m.Frame.Stem
	if !m.bends() {
		return nil
	}
	face := m.formFace()
	first, last := face[0], len(face)-1
	back := face[1].Sub(first).Unit().Scale(-s.Solid)
	past := face[last].Sub(face[last-1]).Unit().Scale(formRun)
	face = append(append([]geom.Vec2{first.Add(back)}, face...), face[last].Add(past))
	end := len(face) - 2 // the head
	note := "The curved edge is the stem's inner face from the end of the solid to the head, with nothing added " +
		"for what it opens: test first. " + m.springback() + ". Bend one lamination on this form, let it dry, let it " +
		"go, and enter by how much its radius grew: the form is then drawn tighter by that."
	if frame.Tried(m.Design) {
		note = "The curved edge is bent tighter than the stem's inner face all along, for a trial piece whose radius " +
			"grew by " + units.Percent.Format(m.Design.StemOpening, m.System) + ": its tightest radius is " +
			m.small(s.FormRadius) + "."
	}
	p := Pattern{Key: "form", Name: "Bending form of the stem",
		Note: note + " The solid heel lies straight on it and is sawn to its curve afterwards."}
	p.draw(Cut, face...)
	// Behind the face the form is as broad all along, or cut off along its chord
	// where the curve is too tight for that.
	behind := geom.Offset(face, formDepth)
	if s.FormRadius < formDepth {
		in := face[len(face)-1].Sub(face[0]).Unit().Left().Scale(formDepth)
		behind = []geom.Vec2{face[0].Add(in), face[len(face)-1].Add(in)}
	}
	p.draw(Cut, append(append([]geom.Vec2{face[0]}, behind...), face[len(face)-1])...)
	p.draw(Mark, face[1], face[1].Add(face[1].Sub(face[0]).Unit().Left().Scale(0.02)))
	p.draw(Mark, face[end], face[end].Add(face[end+1].Sub(face[end]).Unit().Left().Scale(0.02)))
	p.Labels = append(p.Labels, Label{At: toPaper(face[1].Add(geom.Vec2{X: -0.003, Y: 0.014})),
		Text: "end of the solid", End: true})
	p.Labels = append(p.Labels, Label{At: toPaper(face[end].Add(geom.Vec2{X: -0.024})), Text: "head", End: true})
	return []Pattern{p.done()}
}

// springback says how far the stem may open when it leaves the form.
func (m maker) springback() string {
	s := m.Frame.Stem.Springback
	if s.FullyStraight {
		return "Laminations this thin may spring straight, so let them dry in the form"
	}
	return "A lashed stem may open to at most " + units.Ratio.Format(math.Round(s.High*100)/100, m.System) +
		" times its radius, so let it dry in the form"
}
