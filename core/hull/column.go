package hull

import (
	"math"
	"sort"

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
func (h *Hull) Column(v float64) Column {
	o, foot, up := h.standing(v)
	return Column{Cut{Section: shape.New(o), Foot: foot, Up: up}, v}
}

// standing is the outline of the column at v with its foot and the direction in which
// its plane stands, in (x, z): past the heel the plane through the profile's foot and
// the top edge.
func (h *Hull) standing(v float64) (o shape.Outline, foot, up geom.Vec2) {
	if v <= 1 {
		x := v * h.HeelX
		return h.outline(x), geom.Vec2{X: x}, geom.Vec2{Y: 1}
	}
	foot = h.Foot(v)
	edge := h.edgePoint(h.columnTop(v))
	rise := geom.Vec2{X: edge.X, Y: edge.Z}.Sub(foot)
	return h.cornered(shape.Outline{Top: rise.Len(), Half: edge.Y}, edge.X), foot, rise.Unit()
}

// Girth is the length of the column from its foot to the top edge.
func (c Column) Girth() float64 { return c.Section.HalfGirth() }

// At is the point of the hull a girth up the column.
func (c Column) At(girth float64) geom.Vec3 { return c.Lift(c.Section.At(girth)) }

// Points are n+1 points of the column at equal lengths.
func (c Column) Points(n int) []geom.Vec3 { return c.lift(c.Section.Sample(n)) }

func (c Cut) lift(points []geom.Vec2) []geom.Vec3 {
	out := make([]geom.Vec3, len(points))
	for i, p := range points {
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
	edge := h.edgePoint(x).Sub(h.edgePoint(h.HeelX)).Len() / (x - h.HeelX)
	profile := math.Hypot(1, h.bottomSlope())
	return h.Edge.Length() / edge / (h.End.Path.Length() / profile)
}

// Skin returns the grid of the quarter skin on columns at the given places, with
// rows rows from the bottom to the top edge.
func (h *Hull) Skin(places []float64, rows int) geom.Grid {
	g := geom.Grid{Cols: len(places), Rows: rows, At: make([]geom.Vec3, 0, len(places)*rows)}
	for _, v := range places {
		g.At = append(g.At, h.Column(v).Points(rows-1)...)
	}
	return g
}

// Stations returns the transverse sections of the whole boat from the after to
// the foremost point, about n of them, each of girth points; the two extremes
// have no area. Stations forward of the heel are cut from the columns.
func (h *Hull) Stations(n, girth int) []Station {
	var half []Station
	inner := n / 3
	for i := 0; i <= inner; i++ {
		x := h.HeelX * float64(i) / float64(inner)
		half = append(half, Station{X: x, Outline: h.outline(x).Polygon(girth)})
	}
	cut := h.newCutter(n/2, girth)
	past := n/2 - inner
	for i := 1; i < past; i++ {
		// The last stations crowd toward the foremost point, where the
		// outlines shrink fastest.
		u := math.Sin(math.Pi / 2 * float64(i) / float64(past))
		x := h.HeelX + (h.Design.Length/2-h.HeelX)*u
		half = append(half, Station{X: x, Outline: cut.at(x)})
	}
	tip := cut.foremost()
	half = append(half, Station{X: h.Design.Length / 2, Outline: []geom.Vec2{tip, tip}})
	all := make([]Station, 0, 2*len(half)-1)
	for i := len(half) - 1; i > 0; i-- {
		all = append(all, Station{X: -half[i].X, Outline: half[i].Outline})
	}
	return append(all, half...)
}

// cutter holds the columns past the heel, to be cut across.
type cutter struct {
	columns [][]geom.Vec3
	girth   int
}

// newCutter takes about n columns: the one whose foot is the profile's foremost point
// is among them, so that every place short of that point cuts at least the profile.
func (h *Hull) newCutter(n, girth int) cutter {
	c := cutter{girth: girth}
	foremost := h.foremostColumn()
	before := max(1, min(n, int(math.Round(float64(n)*(foremost-1)))))
	for i := 0; i <= before; i++ {
		c.columns = append(c.columns, h.outlined(1+(foremost-1)*float64(i)/float64(before), girth))
	}
	after := max(1, n-before)
	for i := 1; i <= after && foremost < 2; i++ {
		c.columns = append(c.columns, h.outlined(foremost+(2-foremost)*float64(i)/float64(after), girth))
	}
	return c
}

// outlined is the column at v with its points where Polygon has them.
func (h *Hull) outlined(v float64, n int) []geom.Vec3 {
	o, foot, up := h.standing(v)
	return Cut{Foot: foot, Up: up}.lift(o.Polygon(n))
}

// foremostColumn is the place of the column that stands on the foremost point of the
// profile's Path.
func (h *Hull) foremostColumn() float64 {
	path := h.End.Path
	best := 0
	for i, p := range path.Points {
		if p.X > path.Points[best].X {
			best = i
		}
	}
	if best == len(path.Points)-1 {
		return 2
	}
	// The foot's share of the path, pace u + (1 - pace) u^2, grows with u.
	share := path.Run[best] / path.Length()
	u, _ := geom.Bisect(func(u float64) float64 { return u*(h.footPace+(1-h.footPace)*u) - share }, 0, 1, 1e-12)
	return 1 + u
}

// at cuts the skin at x: up the rows as each first reaches x and, where the end
// leans out beyond its head, back down them to the profile.
func (c cutter) at(x float64) []geom.Vec2 {
	up := make([]geom.Vec2, 0, c.girth+1)
	var down []geom.Vec2
	for r := 0; r <= c.girth; r++ {
		first := true
		for i := 1; i < len(c.columns); i++ {
			a, b := c.columns[i-1][r], c.columns[i][r]
			if (a.X <= x) == (b.X <= x) {
				continue
			}
			p := a.Lerp(b, (x-a.X)/(b.X-a.X))
			if first {
				up = append(up, geom.Vec2{X: p.Y, Y: p.Z})
			} else {
				down = append(down, geom.Vec2{X: p.Y, Y: p.Z})
			}
			first = false
		}
	}
	for i := len(down) - 1; i >= 0; i-- {
		up = append(up, down[i])
	}
	return up
}

// foremost is the point of the profile farthest forward, as (y, z).
func (c cutter) foremost() geom.Vec2 {
	i := sort.Search(len(c.columns)-1, func(i int) bool { return c.columns[i+1][0].X <= c.columns[i][0].X })
	return geom.Vec2{X: 0, Y: c.columns[i][0].Z}
}
