package raise

import (
	"math"
	"slices"

	"barkwright/core/bark"
	"barkwright/core/geom"
)

// Raised is a piece of bark on its way from the bed to the hull: a point for each
// of the piece's Points, so that its triangles are those of its Stretches.
type Raised struct {
	Points []geom.Vec3
	// Strain is the largest share by which an edge of a triangle is longer or
	// shorter than it should be at this share of the way.
	Strain float64
}

// raiseStrain is the share of its length that an edge may be off: a little less than
// what would look like rubber. raiseSweeps is the most rounds taken to get there.
// Choices of this project.
const (
	raiseStrain = 0.008
	raiseSweeps = 2000
)

// Sides returns a piece at a share from 0, flat on the bed, to 1, on the hull.
//
// Each stretch of a column turns from its place on the bed to its place on the hull
// by that share of the angle between the two, and the column is put together again
// from its foot: the bark bends where the ribs will bend it and by as much of the
// way. The feet themselves follow the bottom and the end profile in the same manner.
// What that leaves of stretch between columns is then eased out, first over the
// length of the boat and last edge by edge. The two edges of a gore move apart from
// one another, so gores close as the sides come up.
func Sides(p *bark.Piece, share float64) Raised {
	r := raising{Piece: p, share: max(0, min(1, share)), out: make([]geom.Vec3, len(p.Points))}
	r.turnUp()
	r.measureEdges()
	strain := r.worst()
	if strain > raiseStrain {
		for _, stride := range raiseStrides {
			r.coarsened(stride).ease()
		}
		strain = r.worst()
	}
	for sweep := 0; sweep < raiseSweeps && strain > raiseStrain; sweep++ {
		r.ease()
		strain = r.worst()
	}
	return Raised{Points: r.out, Strain: strain}
}

type raising struct {
	*bark.Piece
	share float64
	out   []geom.Vec3
	edges []raisedEdge
}

// raisedEdge joins two points that should be a length apart.
type raisedEdge struct {
	a, b   int
	length float64
}

// turnUp builds the columns from their feet.
func (r *raising) turnUp() {
	cols := r.Curved.Cols
	foot := onBed(r.At(0, 0, geom.Before)).Lerp(r.Curved.Point(0, 0), r.share)
	for c := range cols {
		if c > 0 {
			on := onBed(r.At(c, 0, geom.Before).Sub(r.At(c-1, 0, geom.After)))
			hull := r.Curved.Point(c, 0).Sub(r.Curved.Point(c-1, 0))
			foot = foot.Add(turned(on, hull, hull.Cross(r.side(c)), r.share))
		}
		for _, side := range [2]geom.Side{geom.Before, geom.After} {
			at := foot
			r.out[r.Vertex(c, 0, side)] = at
			for row := 1; row < r.Rows; row++ {
				on := onBed(r.At(c, row, side).Sub(r.At(c, row-1, side)))
				hull := r.Curved.Point(c, row).Sub(r.Curved.Point(c, row-1))
				at = at.Add(turned(on, hull, r.along(c, row, side).Cross(hull), r.share))
				r.out[r.Vertex(c, row, side)] = at
			}
		}
	}
}

// side returns the direction of the bark at a column from its lower edge. As far as the
// heel it is that of the lowest stretch, on the bottom. Past the heel it is that from
// foot to top edge, since the small face round the stem points elsewhere.
func (r *raising) side(c int) geom.Vec3 {
	row := 1
	if r.Places[c] > 1 {
		row = r.Rows - 1
		c = min(c, r.Curved.Cols-2)
	}
	return r.Curved.Point(c, row).Sub(r.Curved.Point(c, 0))
}

// along is the direction along the hull at the top of a stretch of column, on the
// bank it belongs to.
func (r *raising) along(c, row int, side geom.Side) geom.Vec3 {
	if (side == geom.Before && c > 0) || c == r.Curved.Cols-1 {
		return r.Curved.Point(c, row).Sub(r.Curved.Point(c-1, row))
	}
	return r.Curved.Point(c+1, row).Sub(r.Curved.Point(c, row))
}

// onBed is a point of the flat sheet in space.
func onBed(p geom.Vec2) geom.Vec3 { return geom.Vec3{X: p.X, Y: p.Y} }

// turned returns a stretch of bark at a share of its way from the bed, where its face
// looks up, to the hull, where its face looks along normal. It applies that share of the
// angle of the one rotation between the two, and that share of the change of length to
// long.
func turned(on, hull, normal geom.Vec3, share float64) geom.Vec3 {
	a, b := on.Len(), hull.Len()
	if a == 0 || b == 0 || normal.Len() == 0 {
		return on.Lerp(hull, share)
	}
	t, n := hull.Scale(1/b), normal.Scale(1/normal.Len())
	flat := [3]geom.Vec3{on.Scale(1 / a), {Z: 1}}
	flat[2] = flat[1].Cross(flat[0])
	up := [3]geom.Vec3{t, n, n.Cross(t)}
	axis, angle := rotation(flat, up)
	v := on.Scale((a + (b-a)*share) / a)
	sin, cos := math.Sincos(angle * share)
	return v.Scale(cos).Add(axis.Cross(v).Scale(sin)).Add(axis.Scale(axis.Dot(v) * (1 - cos)))
}

// rotation is the axis and the angle, up to a half turn, that carry one right-angled
// frame of unit directions into another.
func rotation(from, to [3]geom.Vec3) (axis geom.Vec3, angle float64) {
	// The sum of the cross products of each direction with its image is twice the
	// axis times the sine; the sum of the scalar products is one and twice the cosine.
	cos := -1.0
	for i := range from {
		axis = axis.Add(from[i].Cross(to[i]))
		cos += from[i].Dot(to[i])
	}
	sin := axis.Len()
	if sin < 1e-12 {
		return geom.Vec3{}, 0
	}
	return axis.Scale(1 / sin), math.Atan2(sin, cos)
}

// measureEdges lists the edges of the triangles.
func (r *raising) measureEdges() {
	curved := make([]geom.Vec3, len(r.Points))
	for c := range r.Curved.Cols {
		for row := range r.Rows {
			for _, side := range [2]geom.Side{geom.Before, geom.After} {
				curved[r.Vertex(c, row, side)] = r.Curved.Point(c, row)
			}
		}
	}
	seen := map[[2]int]bool{}
	for _, s := range r.Stretches {
		for i := range s.Corners {
			a, b := s.Corners[i], s.Corners[(i+1)%3]
			key := [2]int{min(a, b), max(a, b)}
			if seen[key] {
				continue
			}
			seen[key] = true
			r.edges = append(r.edges, r.edge(raisedPoint{a, curved[a]}, raisedPoint{b, curved[b]}))
		}
	}
}

// raisedPoint is a point of the piece and where it comes to on the hull.
type raisedPoint struct {
	vertex int
	hull   geom.Vec3
}

// edge joins two points, with the length it should have at this share of the way
// from that on the sheet to that on the hull.
func (r *raising) edge(a, b raisedPoint) raisedEdge {
	flat, hull := r.Points[a.vertex].Sub(r.Points[b.vertex]).Len(), a.hull.Sub(b.hull).Len()
	return raisedEdge{a.vertex, b.vertex, flat + (hull-flat)*r.share}
}

// ease moves both ends of each edge so that it comes half-way to its length. It goes
// through the list forward and backward in turn, so that errors run out both ways. As
// far as the heel row 0 stays in the boat's plane of symmetry. Amidships so does every
// point that is not cut.
func (r *raising) ease() {
	slices.Reverse(r.edges)
	for _, e := range r.edges {
		d := r.out[e.b].Sub(r.out[e.a])
		now := d.Len()
		if now == 0 {
			continue
		}
		move := d.Scale(0.5 * (1 - e.length/now))
		r.out[e.a] = r.out[e.a].Add(move)
		r.out[e.b] = r.out[e.b].Sub(move)
	}
	for c, place := range r.Places {
		if v := r.Vertex(c, 0, geom.Before); r.Panel < 0 && place <= 1 {
			r.out[v].Y = 0
		}
	}
	if r.Places[0] > 0 {
		return
	}
	for row := range r.Rows {
		v := r.Vertex(0, row, geom.Before)
		if r.Points[v].X == 0 {
			r.out[v].X = 0
		}
	}
}

// shownEdge is the length of edge, m, below which a share of it no longer shows.
const shownEdge = 0.01

// worst returns the largest share by which an edge misses its length.
func (r *raising) worst() float64 {
	most := 0.0
	for _, e := range r.edges {
		off := math.Abs(r.out[e.b].Sub(r.out[e.a]).Len() - e.length)
		most = max(most, off/max(e.length, shownEdge))
	}
	return most
}
