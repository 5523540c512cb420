package hull

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/shape"
)

// Column is a line of the skin from the bottom or the end's profile up to the top edge: a
// cut, upright as far as the heel and past it leaning with the end. As far as the heel
// Foot is on the base line, under the bottom, and heights are counted from there.
type Column struct {
	Cut
	// Place runs from 0 amidships to 1 at the heel, by x, and on to 2 at the stem head,
	// by equal shares of the top edge's length. The foot leaves the heel at the pace of
	// the top, so that the skin has no crease there, and gains on it toward the head.
	Place float64
}

// Column is the column at place v.
func (h *Hull) Column(v float64) (c Column) {
	c.Set(h, v)
	return c
}

// Set makes a zero column that of a hull at place v.
func (c *Column) Set(h *Hull, v float64) {
	s := h.stand(v)
	o := h.cornered(s.outline, s.top)
	c.Shape(&o)
	c.Foot, c.Up, c.Place = s.foot, s.up, v
}

// standing is where a column stands and all that its section has no part in: the outline
// but for its corner, the station of the top edge, the foot and the direction in which its
// plane stands, in (x, z).
type standing struct {
	outline  shape.Outline
	top      float64
	foot, up geom.Vec2
}

// stand is where the column at v stands: past the heel the plane through the profile's foot
// and the top edge.
func (h *Hull) stand(v float64) standing {
	if v <= 1 {
		x := v * h.HeelX
		return standing{h.edge(x), x, geom.Vec2{X: x}, geom.Vec2{Y: 1}}
	}
	foot := h.Foot(v)
	edge := h.EdgePoint(h.columnTop(v))
	rise := geom.Vec2{X: edge.X, Y: edge.Z}.Sub(foot)
	return standing{shape.Outline{Top: rise.Len(), Half: edge.Y}, edge.X, foot, rise.Unit()}
}

// Girth is the length of the column from its foot to the top edge.
func (c Column) Girth() float64 { return c.Section.HalfGirth() }

// At is the point of the hull a girth up the column.
func (c *Column) At(girth float64) geom.Vec3 { return c.Lift(c.Section.At(girth)) }

// Points are n+1 points of the column at equal lengths.
func (c Column) Points(n int) []geom.Vec3 {
	out := make([]geom.Vec3, n+1)
	for i, p := range c.Section.Sample(n) {
		out[i] = c.Lift(p)
	}
	return out
}

// ColumnAtEdge is the place of the column whose top stands at x along the edge.
func (h *Hull) ColumnAtEdge(x float64) float64 {
	if x <= h.HeelX {
		return x / h.HeelX
	}
	return 1 + h.Edge.RunTo(x)/h.Edge.Length()
}

// Foot is where the column at v stands on the bottom or on the end's profile, in
// (x, z).
func (h *Hull) Foot(v float64) geom.Vec2 {
	if v <= 1 {
		x := v * h.HeelX
		return geom.Vec2{X: x, Y: h.Bottom(x)}
	}
	u := v - 1
	return h.End.Path.At(h.End.Path.Length() * u * (h.footPace + (1-h.footPace)*u))
}

// newFootPace is the share of the profile per share of the top edge at which the
// foot keeps abreast of the top at the heel: under 2, so that it never turns back,
// for the profile between the same two columns is no shorter than the edge's run.
func (h *Hull) newFootPace() float64 {
	// A short step, in proportion to the end.
	x := h.HeelX + (h.HeadX-h.HeelX)*1e-4
	edge := h.EdgePoint(x).Sub(h.EdgePoint(h.HeelX)).Len() / (x - h.HeelX)
	profile := math.Hypot(1, h.bottomSlope())
	return h.Edge.Length() / edge / (h.End.Path.Length() / profile)
}
