package raise

import (
	"cmp"
	"slices"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// solid gathers faces and lines and paints them from the farthest to the nearest.
type solid struct {
	*pen
	camera camera
	shown  []face
}

type face struct {
	layer layer
	// line marks lines on faces, which are drawn over all the faces of their layer: each face
	// is painted by its mean depth, and one beside a line would cover some of it.
	line  bool
	depth float64
	order int // as added, between equals
	ops   []draw.Op
}

// layer decides what is painted over what, before depth does. Seen from above the rail,
// the inside of the boat is always behind the frame and the outside always before it.
type layer int

const (
	innerFaces layer = iota
	frameFaces
	outerFaces
)

func (s *solid) paint() {
	slices.SortFunc(s.shown, func(a, b face) int {
		return cmp.Or(cmp.Compare(a.layer, b.layer), cmp.Compare(toInt(a.line), toInt(b.line)),
			cmp.Compare(a.depth, b.depth), cmp.Compare(a.order, b.order))
	})
	for _, f := range s.shown {
		s.List.Add(f.ops...)
	}
}

// add puts a face in the picture.
func (s *solid) add(in layer, corners []geom.Vec3, ops ...draw.Op) {
	middle := geom.Vec3{}
	for _, q := range corners {
		middle = middle.Add(q.Scale(1 / float64(len(corners))))
	}
	s.shown = append(s.shown, face{layer: in, depth: s.camera.depth(middle), order: len(s.shown), ops: ops})
}

// addLines puts lines that lie on faces in the picture.
func (s *solid) addLines(in layer, ops ...draw.Op) {
	s.shown = append(s.shown, face{layer: in, line: true, order: len(s.shown), ops: ops})
}

func toInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

func (s *solid) place(points []geom.Vec3) []draw.Point {
	out := make([]draw.Point, len(points))
	for i, q := range points {
		out[i] = s.camera.at(q)
	}
	return out
}

func (s *solid) stroke(r draw.Role, width float64, points ...geom.Vec3) draw.Op {
	return draw.Stroke{Role: r, Points: s.place(points), Width: width * s.Weight}
}
