package hull

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/shape"
)

// Cut is the skin cut by a plane across the boat that may lean along it. Its section
// lies in that plane with A at the origin; Foot is where the plane stands on the bottom
// or the end's profile and Up its upward direction, both in (x, z).
type Cut struct {
	shape.Section
	Foot, Up geom.Vec2
}

// CutAt cuts the skin by the plane through the floor at station foot and the top edge
// at station top.
//
// The plane holds the whole bottom of the column that stands at foot and the top of the
// one that ends at top; between the two the section is shaped as theirs are. That is
// within 1/12 in of the skin for planes that lean as ribs and headboards do.
func (h *Hull) CutAt(foot, top float64) Cut {
	low, high := h.columnAtFoot(foot), h.ColumnAtEdge(top)
	c := Cut{Foot: h.Foot(low)}
	rise := geom.Vec2{X: top, Y: h.TopEdge(top)}.Sub(c.Foot)
	c.Up = rise.Unit()
	inner := h.columnTop(low)
	s := h.stand(low)
	o := h.cornered(s.outline, s.top)
	o.Bottom, o.Top, o.Half = 0, rise.Len(), h.SkinHalfBreadth(top)
	o.Along = (inner + h.columnTop(high)) / 2 / h.GunwaleX
	c.Section = shape.New(o)
	return c
}

// Lift places a point of the cut's plane, breadth and height over its foot, in the boat.
func (c *Cut) Lift(p geom.Vec2) geom.Vec3 {
	return geom.Vec3{X: c.Foot.X + p.Y*c.Up.X, Y: p.X, Z: c.Foot.Y + p.Y*c.Up.Y}
}

// columnTop is the station of the top of the column at v.
func (h *Hull) columnTop(v float64) float64 {
	if v <= 1 {
		return v * h.HeelX
	}
	return h.Edge.ParameterAt((v - 1) * h.Edge.Length())
}

// columnAtFoot is the place of the column that stands at the station x, as far as the
// foremost point.
func (h *Hull) columnAtFoot(x float64) float64 {
	if x <= h.HeelX {
		return x / h.HeelX
	}
	return h.columnAtShare(h.End.RunTo(x) / h.End.Path.Length())
}

// columnAtShare is the place of the column that stands on a share of the profile's length.
func (h *Hull) columnAtShare(share float64) float64 {
	// The foot gains on the top by a square. Of the two roots this is the one that equals
	// the share where the gain is zero.
	pace := h.footPace
	return 1 + 2*share/(pace+math.Sqrt(max(0, pace*pace+4*(1-pace)*share)))
}
