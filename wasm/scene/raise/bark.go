package raise

import (
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// sheet is a piece of bark on its way up, in all four quarters.
type sheet struct {
	piece  *bark.Piece
	raised []geom.Vec3
	share  float64 // how far it is turned up
}

func newSheet(h *hull.Hull, piece *bark.Piece, share float64) sheet {
	s := sheet{piece: piece, raised: Sides(piece, share).Points, share: share}
	s.towardBed(h)
	return s
}

// towardBed brings the piece from its way to the finished hull onto its way to the shape that
// the bark has round the frame.
func (s *sheet) towardBed(h *hull.Hull) {
	p := s.piece
	for c, place := range p.Places {
		column := h.Column(place)
		girth, run := column.Girth(), 0.0
		for r := range p.Rows {
			on := p.Curved.Point(c, r)
			if r > 0 {
				run += on.Sub(p.Curved.Point(c, r-1)).Len()
			}
			move := solid.OnBed(h, column, min(1, run/girth)).Sub(on).Scale(s.share)
			before, after := p.Vertex(c, r, geom.Before), p.Vertex(c, r, geom.After)
			s.raised[before] = s.raised[before].Add(move)
			if after != before {
				s.raised[after] = s.raised[after].Add(move)
			}
		}
	}
}

// bark puts a piece into the picture.
func (p *pen) bark(s *sheet) {
	piece := s.piece
	surface := solid.Surface{
		Cols: piece.Curved.Cols, Rows: piece.Rows,
		At:   func(c, r int, side geom.Side) geom.Vec3 { return s.raised[piece.Vertex(c, r, side)] },
		Slit: func(c, r int) bool { return r > 0 && scene.SlitAt(piece, c, r-1) },
		Open: func(c int) bool { return piece.Places[c] > 1 },
		Cut:  s.slitMiddle(),
		Tint: s.tint,
	}
	facing := p.Surface(surface)
	p.InsideParts(surface, answer.BarkPart)
	p.OutsideParts(surface, &facing, answer.BarkPart)
	for i, m := range scene.Quarters {
		p.edges(s, m)
		p.slits(s, &facing, i)
	}
}

// How far the sides are up where each shade of their inside begins. By eye.
const halfShadeFrom, shadeFrom = 0.3, 0.6

// levelFrom is the upward component of a face's direction from which it counts as
// bottom.
const levelFrom = 0.55

// tint returns the shade of the inside of a face, the white of the tree. Shades run along the
// boat where the sides leave the bottom.
func (s *sheet) tint(c, r int, up float64) draw.Role {
	level := r < s.piece.FootRow && s.piece.Places[c] < solid.LevelUpTo && up > levelFrom
	switch {
	case level || s.share < halfShadeFrom:
		return draw.Inside
	case s.share < shadeFrom:
		return draw.InsideHalf
	}
	return draw.InsideShade
}

// edges draws the lines of a piece in a quarter where bark is cut: its top edge, its edge along
// the end, and the slits once they are cut.
func (p *pen) edges(s *sheet, m [2]float64) {
	piece := s.piece
	cols, top := piece.Curved.Cols, piece.Rows-1
	line := func(points []geom.Vec3) {
		placed := make([]geom.Vec2, len(points))
		for i, q := range points {
			placed[i] = geom.Vec2(p.Camera.At(solid.InPlace(q, m)))
		}
		var smooth []draw.Point
		for _, q := range scene.Smooth(placed) {
			smooth = append(smooth, draw.Point(q))
		}
		if len(smooth) > 1 && p.Seen(smooth) {
			p.AddLines(solid.Inner, draw.Stroke{Role: draw.Ink, Points: smooth, Width: solid.RimWidth * p.Weight})
		}
	}
	var upper, lower []geom.Vec3
	for c := range cols {
		upper = append(upper, s.raised[piece.Vertex(c, top, geom.Before)])
		if scene.SlitAt(piece, c, top-1) {
			line(upper)
			upper = []geom.Vec3{s.raised[piece.Vertex(c, top, geom.After)]}
		}
		if piece.Places[c] >= 1 {
			lower = append(lower, s.raised[piece.Vertex(c, 0, geom.Before)])
		}
	}
	line(upper)
	line(lower)
	var end []geom.Vec3
	for r := range piece.Rows {
		end = append(end, s.raised[piece.Vertex(cols-1, r, geom.Before)])
	}
	line(end)
}

// slits draws the edges of the slits of a quarter, or bark between them where they are not cut
// yet.
func (p *pen) slits(s *sheet, facing *solid.Facing, quarter int) {
	piece, m := s.piece, scene.Quarters[quarter]
	edge := func(c int, side geom.Side) []geom.Vec3 {
		var out []geom.Vec3
		for r := piece.FootRow; r < piece.Rows; r++ {
			out = append(out, solid.InPlace(s.raised[piece.Vertex(c, r, side)], m))
		}
		return out
	}
	for _, c := range s.slitColumns() {
		before, after := edge(c, geom.Before), edge(c, geom.After)
		if c == 0 {
			before = nil
			for _, q := range after {
				before = append(before, geom.Vec3{X: -q.X, Y: q.Y, Z: q.Z})
			}
		}
		if p.View.Up < slitsFrom {
			p.Area(solid.Inner, draw.Inside, scene.Between(before, after)...)
			continue
		}
		in := solid.Outer
		if facing.Inside(quarter, c, (piece.FootRow+piece.Rows-1)/2) {
			in = solid.Inner
		}
		p.Line(in, draw.Ink, scene.TimberWidth, after...)
		if c > 0 {
			p.Line(in, draw.Ink, scene.TimberWidth, before...)
		}
	}
}

// slitMiddle tells whether there is a gore amidships: there the piece ends at the gore's edge.
func (s *sheet) slitMiddle() bool {
	return s.piece.Points[s.piece.Vertex(0, s.piece.Rows-1, geom.After)].X > scene.OnAxis
}

// slitColumns are the columns that are slit.
func (s *sheet) slitColumns() []int {
	var out []int
	if s.slitMiddle() {
		out = append(out, 0)
	}
	for _, slit := range s.piece.Slits() {
		out = append(out, slit.Col)
	}
	return out
}
