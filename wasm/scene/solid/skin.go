package solid

import (
	"slices"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/wasm/scene"
)

// The mesh of a quarter of the skin: columns as far as the heel and past it, and faces up each
// column. With 16 columns past the heel the ends look cornered.
const (
	columnsToHeel   = 40
	columnsPastHeel = 24
	skinRows        = 16
	// toCorner are the rows of the bottom as far as the corner at the frame.
	toCorner = skinRows / 2
)

// LevelUpTo is the place, as hull.Hull.Column takes it, beyond which the bottom is too narrow to be
// told from the sides.
const LevelUpTo = 0.85

// Skin is the skin of the forward port quarter, as far as it has come from the bed to the
// finished hull.
type Skin struct {
	h       *hull.Hull
	places  []float64
	girths  []float64 // of each column
	bare    bool      // nothing lines it yet
	columns [][]geom.Vec3
	facing  Facing
	ribs    *[]ribEdge // where the pictures of the skin find them once the first has
}

// NewSkin is the skin at a share of the way from the bed, where the bark is folded up round the
// frame, to the finished hull.
func NewSkin(h *hull.Hull, share float64) Skin {
	s := Skin{h: h, ribs: new([]ribEdge)}
	for i := range columnsToHeel {
		s.places = append(s.places, float64(i)/columnsToHeel)
	}
	for i := range columnsPastHeel + 1 {
		s.places = append(s.places, 1+float64(i)/columnsPastHeel)
	}
	// A column at the gunwale's end, where gunwales change.
	end := h.ColumnAtEdge(h.GunwaleX)
	i, _ := slices.BinarySearch(s.places, end)
	if i > 0 && i < len(s.places)-1 {
		if end-s.places[i-1] < s.places[i]-end && i > 1 {
			i--
		}
		s.places[i] = end
	}
	for _, v := range s.places {
		c := h.Column(v)
		s.columns = append(s.columns, raisedColumn(h, c, share))
		s.girths = append(s.girths, c.Girth())
	}
	return s
}

// raisedColumn is a column of the skin between bed and hull. While the bark has a corner at the
// frame, a row follows it: rows at equal girths would step across it from column to column.
func raisedColumn(h *hull.Hull, c hull.Column, share float64) []geom.Vec3 {
	if share >= 1 {
		return c.Points(skinRows)
	}
	const least = 0.05
	rim, top := onBed(h, c)
	bottom := rim.Sub(c.Section.At(0)).Len()
	corner := max(least, min(1-least, bottom/(bottom+top.Sub(rim).Len())))
	points := make([]geom.Vec3, skinRows+1)
	for r := range points {
		u := corner * float64(r) / toCorner
		if r > toCorner {
			u = corner + (1-corner)*float64(r-toCorner)/(skinRows-toCorner)
		}
		points[r] = OnBed(h, c, u).Lerp(c.At(u*c.Girth()), share)
	}
	return points
}

// onBed is the corner and the top of the bark at a column while it is folded up round the frame,
// in the column's plane.
func onBed(h *hull.Hull, c hull.Column) (corner, top geom.Vec2) {
	top = c.Section.At(c.Girth())
	return geom.Vec2{X: min(h.FrameHalfBreadth(c.Foot.X), top.X), Y: c.Section.At(0).Y}, top
}

// easedFrom is how far before the heel, by place, the shape round the frame begins to go over into
// that of the finished hull, which it has from the heel on: there is nothing inside to fold the
// bark round. By eye.
const easedFrom = 0.25

// OnBed is the point at a share of the girth of a column while the bark is folded up round the
// frame: flat as far as the frame is broad there, and straight from its rim to the top edge.
func OnBed(h *hull.Hull, c hull.Column, share float64) geom.Vec3 {
	hull := c.At(share * c.Girth())
	w := max(0, min(1, (1-c.Place)/easedFrom))
	if w == 0 {
		return hull
	}
	foot := c.Section.At(0)
	corner, top := onBed(h, c)
	flat, side := corner.Sub(foot).Len(), top.Sub(corner).Len()
	at := foot
	if g := share * (flat + side); g > flat {
		at = corner.Lerp(top, (g-flat)/max(side, 1e-12))
	} else if flat > 0 {
		at = foot.Lerp(corner, g/flat)
	}
	return hull.Lerp(c.Lift(at), w*w*(3-2*w))
}

// nearAt tells whether the gunwale at a column of a quarter is painted after the outside of the
// skin: where its own outside or the skin's is seen.
func (s *Skin) nearAt(k Camera, quarter, c int) bool {
	c = min(c, len(s.columns)-2)
	m := scene.Quarters[quarter]
	a, b := InPlace(s.columns[c][skinRows], m), InPlace(s.columns[c+1][skinRows], m)
	along := b.Sub(a).Scale(m[0] * m[1])
	return k.Faces(a, geom.Vec3{X: -along.Y, Y: along.X}) || !s.facing.Inside(quarter, c, skinRows)
}

// tint is the shade of the inside, the white of the tree: darker up the sides while they are bare.
func (s *Skin) tint(c, r int, _ float64) draw.Role {
	if s.bare && (r >= toCorner || s.places[c] >= LevelUpTo) {
		return draw.InsideShade
	}
	return draw.Inside
}

// skin puts the skin into the picture, and returns it as a surface.
func (p *Solid) skin(s *Skin) Surface {
	bark := Surface{
		Cols: len(s.columns), Rows: skinRows + 1,
		At:   func(c, r int, _ geom.Side) geom.Vec3 { return s.columns[c][r] },
		Slit: func(_, _ int) bool { return false },
		Open: func(c int) bool { return s.places[c] > 1 },
		Tint: s.tint,
	}
	s.facing = p.Surface(bark)
	return bark
}

// topEdge is the bark's edge where no gunwale covers it.
func (p *Solid) topEdge(s *Skin) {
	for _, m := range scene.Quarters {
		var line []geom.Vec3
		for _, column := range s.columns {
			line = append(line, InPlace(column[skinRows], m))
		}
		p.Line(Inner, draw.Ink, RimWidth, line...)
	}
}

// at is the point of the skin a girth up a column, and whether the column is as long.
func (s *Skin) at(c int, girth float64) (geom.Vec3, bool) {
	u := girth / s.girths[c] * skinRows
	if u > skinRows {
		return geom.Vec3{}, false
	}
	r := min(int(u), skinRows-1)
	return s.columns[c][r].Lerp(s.columns[c][r+1], u-float64(r)), true
}

// insideAt tells whether the skin is seen from inside about a girth up a column of a quarter.
func (s *Skin) insideAt(quarter, c int, girth float64) bool {
	return s.facing.Inside(quarter, c, min(int(girth/s.girths[c]*skinRows+0.5), skinRows))
}
