package raise

import (
	"maps"
	"slices"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// bark adds the faces of a piece in all four quarters, two columns to a face where
// no slit lies between.
func (s *solid) bark(piece *bark.Piece, raised []geom.Vec3) {
	cols := piece.Curved.Cols
	at := func(c, r int, side geom.Side) geom.Vec3 { return raised[piece.Vertex(c, r, side)] }
	// Where the side seen changes from row to row runs the boat's rim in the picture. Its line
	// goes from the middle of one face to that of the next, so that it is even where the change
	// comes a row higher or lower.
	under := map[[2]int]bool{}
	rims := [4]map[int]geom.Vec3{{}, {}, {}, {}}
	for r := range piece.Rows - 1 {
		for c := 0; c < cols-1; {
			to := c + 1
			if to < cols-1 && !scene.SlitAt(piece, to, piece.Rows-2) {
				to++
			}
			var low, high []geom.Vec3
			for k := c; k <= to; k++ {
				side := geom.Before
				if k == c {
					side = geom.After
				}
				low, high = append(low, at(k, r, side)), append(high, at(k, r+1, side))
			}
			f := strip{from: c, to: to, row: r, low: low, high: high}
			for i, m := range scene.Quarters {
				inside := s.strip(piece, f, m)
				if key := [2]int{i, c}; r > 0 && under[key] != inside {
					rims[i][c] = inPlace(low[len(low)/2], m)
					if c == 0 {
						// There the quarters meet.
						rims[i][-1] = inPlace(low[0], m)
					}
				}
				under[[2]int{i, c}] = inside
			}
			c = to
		}
	}
	for _, rim := range rims {
		s.rim(rim)
	}
}

// rim draws the line through places of a rim, by their columns. It is broken where columns
// between have none.
func (s *solid) rim(at map[int]geom.Vec3) {
	columns := slices.Sorted(maps.Keys(at))
	var line []geom.Vec3
	for i, c := range columns {
		if i > 0 && c > columns[i-1]+2 {
			s.addLines(outerFaces, s.stroke(draw.Ink, rimWidth, line...))
			line = nil
		}
		line = append(line, at[c])
	}
	if len(line) > 1 {
		s.addLines(outerFaces, s.stroke(draw.Ink, rimWidth, line...))
	}
}

// strip is a face of bark between two rows.
type strip struct {
	from, to, row int
	low, high     []geom.Vec3
}

// strip adds a face in one of the four quarters and tells whether its inside is seen.
func (s *solid) strip(piece *bark.Piece, f strip, m [2]float64) bool {
	n := len(f.low)
	corners := mirroredLine(f.low, m)
	for i := n - 1; i >= 0; i-- {
		corners = append(corners, inPlace(f.high[i], m))
	}
	inward := corners[n-1].Sub(corners[0]).Cross(corners[2*n-1].Sub(corners[0])).Scale(m[0] * m[1])
	in, inside := outerFaces, s.camera.faces(corners[0], inward)
	if inside {
		in = innerFaces
	}
	points := s.place(corners)
	if !s.Seen(points) {
		return inside
	}
	up := inward.Z / max(inward.Len(), 1e-12)
	s.add(in, corners, draw.Fill{Role: s.tint(piece, f, inside, up), Points: points})
	if edges := s.edges(piece, f, corners); len(edges) > 0 {
		s.addLines(in, edges...)
	}
	return inside
}

func mirroredLine(line []geom.Vec3, m [2]float64) []geom.Vec3 {
	out := make([]geom.Vec3, len(line), 2*len(line))
	for i, q := range line {
		out[i] = inPlace(q, m)
	}
	return out
}

// How far the sides are up where each shade of their inside begins. By eye.
const halfShadeFrom, shadeFrom = 0.3, 0.6

// levelFrom is the upward component of a face's direction from which it counts as
// bottom.
const levelFrom = 0.55

// levelUpTo is the place, as hull.Hull.Column takes it, beyond which the bottom is too
// narrow to be told from the sides.
const levelUpTo = 0.85

// tint returns the shade of a face. The bark's outside, which is the inner rind, is tan.
// The inside of the boat, the white of the tree, is pale. Shades run along the boat
// where the sides leave the bottom.
func (s *solid) tint(piece *bark.Piece, f strip, inside bool, up float64) draw.Role {
	level := piece.Panel < 0 && f.row < piece.FootRow && piece.Places[f.from] < levelUpTo && up > levelFrom
	switch {
	case !inside:
		return draw.Bark
	case level || s.View.Up < halfShadeFrom:
		return draw.Inside
	case s.View.Up < shadeFrom:
		return draw.InsideHalf
	}
	return draw.InsideShade
}

// rimWidth is the width of the lines round the bark.
const rimWidth = 0.7 * scene.OutlineWidth

// edges adds the lines round a face where bark is cut, and here and there across the
// sheet the grain, which runs round the tree.
func (s *solid) edges(piece *bark.Piece, f strip, corners []geom.Vec3) []draw.Op {
	n := len(f.low)
	low, high := corners[:n], corners[n:]
	var ops []draw.Op
	if f.row == piece.Rows-2 {
		ops = append(ops, s.stroke(draw.Ink, rimWidth, high...))
	}
	if f.row == 0 && (piece.Panel >= 0 || piece.Places[f.from] >= 1) {
		ops = append(ops, s.stroke(draw.Ink, rimWidth, low...))
	}
	left, right := [2]geom.Vec3{low[0], high[n-1]}, [2]geom.Vec3{low[n-1], high[0]}
	cut := func(col int) bool {
		middle := col == 0 && piece.Panel < 0 && piece.Points[piece.Vertex(0, f.row+1, geom.After)].X > scene.OnAxis
		return middle || col == piece.Curved.Cols-1 || scene.SlitAt(piece, col, f.row)
	}
	switch {
	case cut(f.from):
		ops = append(ops, s.stroke(draw.Ink, scene.TimberWidth, left[:]...))
	case f.from%4 == 0:
		ops = append(ops, s.stroke(draw.Seam, 0.3, left[:]...))
	}
	if cut(f.to) {
		ops = append(ops, s.stroke(draw.Ink, scene.TimberWidth, right[:]...))
	}
	return ops
}
