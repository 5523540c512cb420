package solid

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Solid gathers faces and lines and paints them layer by layer, and within a layer from the
// farthest to the nearest.
type Solid struct {
	*scene.Pen
	Camera Camera
	// First is the farthest layer that is not hidden by nearer ones.
	First Layer
	shown [layers][kinds][]face
	ops   []draw.Op    // of all faces, one after another
	room  []draw.Point // memory for points to come
}

type face struct {
	depth    float64
	from, to int // its part of ops, in the order in which faces were added
}

// kind orders what a layer holds. Each face is painted by its mean depth, so one beside a line
// would cover some of it. Lines on faces are therefore drawn over all the faces of their layer.
// Rims are drawn under them all, twice as wide as they are to show: what is left of them is one
// unbroken outline.
type kind int

const (
	rims kind = iota
	faces
	lines

	kinds
)

// Layer decides what is painted over what, before depth does. Seen from above the rail, the
// inside of the boat is always behind the frame and the outside always before it.
type Layer int

// The layers, from the farthest.
const (
	Inner Layer = iota // faces of the skin whose inside is seen
	Sheathing
	Ribs // and headboards, and what holds the boat up while it is built
	FarGunwale
	Thwarts
	Outer // faces of the skin whose outside is seen
	StemBand
	NearGunwale

	layers
)

// Paint puts what has been gathered into the picture.
func (p *Solid) Paint() {
	for layer := range p.shown {
		// Only faces have a depth: the others are painted as they were added.
		slices.SortFunc(p.shown[layer][faces], func(a, b face) int {
			if a.depth != b.depth {
				return cmp.Compare(a.depth, b.depth)
			}
			return a.from - b.from
		})
		for _, shown := range p.shown[layer] {
			for i := range shown {
				p.List.Add(p.ops[shown[i].from:shown[i].to]...)
			}
		}
	}
}

// Add puts a face in the picture.
func (p *Solid) Add(in Layer, corners []geom.Vec3, ops ...draw.Op) {
	if in < p.First {
		return
	}
	middle := geom.Vec3{}
	for _, q := range corners {
		middle = middle.Add(q.Scale(1 / float64(len(corners))))
	}
	p.show(in, faces, p.Camera.depth(middle), ops)
}

// AddLines puts lines that lie on faces in the picture.
func (p *Solid) AddLines(in Layer, ops ...draw.Op) { p.addKind(in, lines, ops...) }

func (p *Solid) addKind(in Layer, k kind, ops ...draw.Op) {
	if in < p.First {
		return
	}
	p.show(in, k, 0, ops)
}

func (p *Solid) show(in Layer, k kind, depth float64, ops []draw.Op) {
	from := len(p.ops)
	p.ops = append(p.ops, ops...)
	p.shown[in][k] = append(p.shown[in][k], face{depth, from, len(p.ops)})
}

// Area puts a filled face in the picture, if it is seen.
func (p *Solid) Area(in Layer, r draw.Role, corners ...geom.Vec3) {
	if points := p.Place(corners); p.Seen(points) {
		p.Add(in, corners, draw.Fill{Role: r, Points: points})
	}
}

// part makes a piece of a layer touchable, if the layer is seen.
func (p *Solid) part(in Layer, name string, closed bool, points []draw.Point) {
	if in >= p.First {
		p.Part(name, closed, points)
	}
}

// Line puts a line on faces in the picture, if it is seen.
func (p *Solid) Line(in Layer, r draw.Role, width float64, points ...geom.Vec3) {
	if placed := p.Place(points); len(placed) > 1 && p.Seen(placed) {
		p.AddLines(in, draw.Stroke{Role: r, Points: placed, Width: width * p.Weight})
	}
}

// rim puts a part of an outline in the picture. Half of its width will be covered. It goes on at
// both ends by half its width, so that parts that meet at an angle leave no gap.
func (p *Solid) rim(in Layer, points ...geom.Vec3) { p.rimOf(in, RimWidth, points...) }

// rimOf is rim of something that is so wide in the picture: what is narrower than half the outline does
// not cover half of it, which is drawn so much narrower.
func (p *Solid) rimOf(in Layer, wide float64, points ...geom.Vec3) {
	placed := p.Place(points)
	if len(placed) < 2 || !p.Seen(placed) {
		return
	}
	longer := func(end, next draw.Point) draw.Point {
		dx, dy := end.X-next.X, end.Y-next.Y
		if run := math.Hypot(dx, dy); run > 0 {
			return draw.Point{X: end.X + dx/run*RimWidth*p.Weight, Y: end.Y + dy/run*RimWidth*p.Weight}
		}
		return end
	}
	last := len(placed) - 1
	placed[0], placed[last] = longer(placed[0], placed[1]), longer(placed[last], placed[last-1])
	p.addKind(in, rims, draw.Stroke{Role: draw.Ink, Points: placed, Width: (RimWidth + min(RimWidth, wide)) * p.Weight})
}

// RimWidth is the width of outlines.
const RimWidth = 0.7 * scene.OutlineWidth

// Place returns where points stand in the picture.
func (p *Solid) Place(points []geom.Vec3) []draw.Point {
	// A picture has thousands of faces of a few points each.
	const many = 1024
	if len(p.room) < len(points) {
		p.room = make([]draw.Point, max(many, len(points)))
	}
	out := p.room[:len(points):len(points)]
	p.room = p.room[len(points):]
	for i, q := range points {
		out[i] = p.Camera.At(q)
	}
	return out
}

// stroke is a line through points.
func (p *Solid) stroke(r draw.Role, width float64, points ...geom.Vec3) draw.Op {
	return draw.Stroke{Role: r, Points: p.Place(points), Width: width * p.Weight}
}

// InPlace puts a point of the forward port quarter in one of the four.
func InPlace(q geom.Vec3, m [2]float64) geom.Vec3 {
	return geom.Vec3{X: m[0] * q.X, Y: m[1] * q.Y, Z: q.Z}
}

// inPlace is InPlace of several points.
func inPlace(points []geom.Vec3, m [2]float64) []geom.Vec3 {
	out := make([]geom.Vec3, len(points))
	for i, q := range points {
		out[i] = InPlace(q, m)
	}
	return out
}
