package bark

import (
	"math"

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

// raiseStrain is the share of its length that an edge may be off, half of what
// still looks like bark and not like rubber, and raiseSweeps the most rounds taken
// to get there. Choices of this project.
const (
	raiseStrain = 0.005
	raiseSweeps = 600
)

// Raise returns the piece at a share from 0, flat on the bed, to 1, on the hull.
//
// Each stretch of a column turns from its direction on the bed to its direction on
// the hull by that share of the angle between the two, about the axis across both,
// and the column is put together again from its foot: the bark bends where the ribs
// will bend it and by as much of the way. The feet themselves follow the bottom and
// the end profile in the same manner. What that leaves of stretch between columns
// is then eased out edge by edge. The two edges of a gore move apart from one
// another, so gores close as the sides come up.
func (p *Piece) Raise(share float64) Raised {
	r := raising{Piece: p, share: math.Max(0, math.Min(1, share)), out: make([]geom.Vec3, len(p.Points))}
	r.turnUp()
	r.measureEdges()
	strain := r.worst()
	for sweep := 0; sweep < raiseSweeps && strain > raiseStrain; sweep++ {
		r.ease()
		strain = r.worst()
	}
	return Raised{Points: r.out, Strain: strain}
}

type raising struct {
	*Piece
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
			foot = foot.Add(r.turned(
				onBed(r.At(c, 0, geom.Before).Sub(r.At(c-1, 0, geom.After))),
				r.Curved.Point(c, 0).Sub(r.Curved.Point(c-1, 0))))
		}
		for _, side := range [2]geom.Side{geom.Before, geom.After} {
			at := foot
			r.out[r.Vertex(c, 0, side)] = at
			for row := 1; row < r.Rows; row++ {
				at = at.Add(r.turned(
					onBed(r.At(c, row, side).Sub(r.At(c, row-1, side))),
					r.Curved.Point(c, row).Sub(r.Curved.Point(c, row-1))))
				r.out[r.Vertex(c, row, side)] = at
			}
		}
	}
}

// onBed is a point of the flat sheet in space.
func onBed(p geom.Vec2) geom.Vec3 { return geom.Vec3{X: p.X, Y: p.Y} }

// turned is from turned a share of the way to to, and as much of the way as long.
func (r *raising) turned(from, to geom.Vec3) geom.Vec3 {
	a, b := from.Len(), to.Len()
	if a == 0 || b == 0 {
		return from.Lerp(to, r.share)
	}
	from, to = from.Scale(1/a), to.Scale(1/b)
	angle := math.Atan2(from.Cross(to).Len(), from.Dot(to))
	length := a + (b-a)*r.share
	if angle < 1e-9 {
		return from.Scale(length)
	}
	sin := math.Sin(angle)
	return from.Scale(math.Sin((1-r.share)*angle) / sin).Add(to.Scale(math.Sin(r.share*angle) / sin)).Scale(length)
}

// measureEdges lists the edges with their lengths at this share of the way from
// those on the sheet to those on the hull.
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
			flat, hull := r.Points[a].Sub(r.Points[b]).Len(), curved[a].Sub(curved[b]).Len()
			r.edges = append(r.edges, raisedEdge{a, b, flat + (hull-flat)*r.share})
		}
	}
}

// ease moves the ends of each edge half-way each toward its length. Row 0 as far as
// the heel stays in the plane of symmetry of the boat, and so does, amidships, what
// is not cut there.
func (r *raising) ease() {
	for _, e := range r.edges {
		d := r.out[e.b].Sub(r.out[e.a])
		move := d.Scale(0.5 * (1 - e.length/d.Len()))
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

// worst is the largest share an edge is off its length by.
func (r *raising) worst() float64 {
	most := 0.0
	for _, e := range r.edges {
		most = math.Max(most, math.Abs(r.out[e.b].Sub(r.out[e.a]).Len()/e.length-1))
	}
	return most
}
