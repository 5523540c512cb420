package view

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/shape"
)

// cut is the port half of the boat cut across at a rib, in the plane of the cut. Its
// points are breadth from the centre line and height over the bottom amidships, in
// metres.
type cut struct {
	bark, lining, ribOuter, ribInner []geom.Vec2
	// bend is the tightest place of the rib.
	bend geom.Vec2
	top  geom.Vec2 // of the bark
	// over and beside are how far the drawing reaches over the bark's top and out past it,
	// in metres. lines is how many lines of text stand under it, that of the scale bar among them.
	over, beside float64
	lines        float64
}

// bendSteps is how many pieces draw the bend of half a section; the rest of it is
// straight.
const bendSteps = 16

// halfSection is the outer face of the port half from the centre line up, raised
// by lift.
func halfSection(s shape.Section, lift float64) []geom.Vec2 {
	out := make([]geom.Vec2, 0, bendSteps+3)
	add := func(q geom.Vec2) {
		q.Y += lift
		if n := len(out); n == 0 || q.Sub(out[n-1]).Len() > 1e-6 {
			out = append(out, q)
		}
	}
	add(s.A)
	for i := range bendSteps + 1 {
		add(s.Bend.At(float64(i) / bendSteps))
	}
	add(s.P)
	return out
}

func cutAt(c core.Canoe, r frame.Rib) cut {
	h, d := c.Hull, c.Design
	section := r.Cut(h)
	s, lift := section.Section, section.Foot.Y
	points := halfSection(s, lift)
	inside := d.BarkThickness + d.SheathingThickness
	return cut{
		bark: points, lining: inward(points, d.BarkThickness),
		ribOuter: shortened(inward(points, inside), d.RibTuck),
		// The tips are bevelled at 45 degrees.
		ribInner: shortened(inward(points, inside+r.Thickness), d.RibTuck+r.Thickness),
		bend:     s.At(r.BendAt).Add(geom.Vec2{Y: lift}),
		top:      points[len(points)-1],
		over:     d.CapThickness, beside: d.OutwaleThickness, lines: 3.3,
	}
}

// inward moves a line from the centre line up the port side toward the inside.
func inward(points []geom.Vec2, depth float64) []geom.Vec2 {
	out := make([]geom.Vec2, len(points))
	last := len(points) - 1
	for i, q := range points {
		before := geom.Vec2{X: 1}
		if i > 0 {
			before = q.Sub(points[i-1]).Unit()
		}
		after := before
		if 0 < i && i < last {
			after = points[i+1].Sub(q).Unit()
		}
		out[i] = q.Add(before.Add(after).Unit().Left().Scale(depth))
		out[i].X = max(0, out[i].X)
	}
	return out
}

// shortened takes a length off a line's end.
func shortened(points []geom.Vec2, by float64) []geom.Vec2 {
	n := len(points)
	for n > 2 {
		last := points[n-1].Sub(points[n-2]).Len()
		if last > by {
			break
		}
		by -= last
		n--
	}
	out := append([]geom.Vec2{}, points[:n]...)
	if last := out[n-1].Sub(out[n-2]).Len(); last > 0 {
		out[n-1] = out[n-1].Lerp(out[n-2], min(1, by/last))
	}
	return out
}
