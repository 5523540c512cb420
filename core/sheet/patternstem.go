package sheet

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// stemPieces is how many straight pieces an end's curve is drawn in.
const stemPieces = 160

// stemPath is the stem-piece's outer face in the plane of x and z, with where on it
// the solid heel ends: the bark's outer face less the bark, led back from the heel
// along the bottom.
func (m maker) stemPath() (outer []geom.Vec2, heel int) {
	end := m.Hull.End
	curve := make([]geom.Vec2, stemPieces+1)
	for i := range curve {
		curve[i] = end.At(float64(i) / stemPieces)
	}
	back := end.Derivative(0).Unit().Scale(-m.Design.StemSolid)
	return offset(append([]geom.Vec2{curve[0].Add(back)}, curve...), m.Design.BarkThickness), 1
}

// bends tells whether the stem's inner face is a curve at all.
func (m maker) bends() bool {
	return m.Hull.End.TightestRadius > m.Design.BarkThickness+m.Design.StemDepth
}

func stemPattern(m maker) []Pattern {
	d := m.Design
	outer, heel := m.stemPath()
	p := Pattern{Key: "stem", Name: "Stem-piece", Note: "Two alike. The outer line is the stem's outer face, inside the bark. The heel is left solid; " +
		units.Count.Format(float64(d.StemLaminations), m.System) + " laminations of " + units.Thickness.Format(m.Frame.Stem.Lamination, m.System) + " run from it to the head."}
	p.draw(Cut, outer...)
	last := len(outer) - 1
	if m.bends() {
		inner := offset(outer, d.StemDepth)
		p.draw(Cut, inner...)
		p.draw(Cut, outer[0], inner[0])
		p.draw(Cut, outer[last], inner[last])
		p.draw(Mark, outer[heel], inner[heel])
		for i := 1; i < d.StemLaminations; i++ {
			p.draw(Mark, offset(outer, float64(i)*m.Frame.Stem.Lamination)[heel:]...)
		}
		inside := offset(outer, d.StemDepth+0.012)
		p.label(inside[heel], "heel: solid to here, split from here")
		p.label(outer[last].Add(geom.Vec2{X: 0.005, Y: -0.006}), "head")
		tight := heel + int(m.Frame.Stem.TightestAt*stemPieces)
		p.draw(Mark, outer[tight], offset(outer, d.StemDepth)[tight])
		at := inside[tight]
		p.Labels = append(p.Labels, Label{At: toPaper(at), Text: "tightest, " + m.small(max(0, m.Frame.Stem.Innermost().Radius)), End: true})
	} else {
		p.Note += " The curve is tighter than the piece is deep: it will not fit, and only its outer face is drawn."
		p.label(outer[heel].Add(geom.Vec2{Y: 0.012}), "heel")
	}
	return []Pattern{p.done()}
}

// formDepth is how broad a bending form is drawn behind its face, and formRun how
// far it goes on straight past the head: room for clamps. Estimates.
const (
	formDepth = 0.09
	formRun   = 0.05
)

func formPattern(m maker) []Pattern {
	d := m.Design
	if !m.bends() {
		return nil
	}
	outer, heel := m.stemPath()
	face := offset(outer, d.StemDepth)
	last := len(face) - 1
	past := face[last].Sub(face[last-1]).Unit().Scale(formRun)
	face = append(face, face[last].Add(past))
	p := Pattern{Key: "form", Name: "Bending form of the stem", Note: "The curved edge is the stem's inner face, with nothing added for springback: " + m.springback() + "."}
	p.draw(Cut, face...)
	// Behind the face the form is as broad all along, or cut off along its chord
	// where the curve is too tight for that.
	back := offset(face, formDepth)
	if m.Hull.End.TightestRadius < d.BarkThickness+d.StemDepth+formDepth {
		in := face[len(face)-1].Sub(face[0]).Unit().Left().Scale(formDepth)
		back = []geom.Vec2{face[0].Add(in), face[len(face)-1].Add(in)}
	}
	p.draw(Cut, append(append([]geom.Vec2{face[0]}, back...), face[len(face)-1])...)
	p.draw(Mark, face[heel], face[heel].Add(geom.Vec2{Y: 0.02}))
	p.draw(Mark, face[last], face[last].Add(face[last].Sub(offset(outer, d.StemDepth-0.02)[last])))
	p.label(face[heel].Add(geom.Vec2{X: 0.003, Y: 0.014}), "heel")
	p.Labels = append(p.Labels, Label{At: toPaper(face[last].Add(geom.Vec2{X: -0.024})), Text: "head", End: true})
	return []Pattern{p.done()}
}

// springback says how far the stem may open when it leaves the form.
func (m maker) springback() string {
	s := m.Frame.Stem.Springback
	if s.FullyStraight {
		return "laminations this thin may spring straight, so let them dry in the form"
	}
	return "a lashed stem may open to at most " + units.Ratio.Format(math.Round(s.High*100)/100, m.System) + " times its radius, so let it dry in the form"
}
