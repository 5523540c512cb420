package solid

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Surface is the bark of the forward port quarter as a grid of points: columns from amidships
// forward, each from the centre line or the end's profile up.
type Surface struct {
	Cols, Rows int
	// At is a point, on the bank of a slit that it belongs to.
	At func(c, r int, side geom.Side) geom.Vec3
	// Slit tells whether the bark is slit at a point.
	Slit func(c, r int) bool
	// Open tells whether the foot of a column is an edge; elsewhere port and starboard join there.
	Open func(c int) bool
	// Cut tells whether the first column is an edge; else fore and aft join there.
	Cut bool
	// Tint is the role of the inside of a face with an upward component of its direction.
	Tint func(c, r int, up float64) draw.Role
}

// Facing is by quarter, and by side of a slit, how far each point of a surface is turned to the
// eye with its inside: positive where the inside is seen.
type Facing [4][2][][]float64

// Inside tells whether the inside is seen at a point of a quarter.
func (f *Facing) Inside(quarter, c, r int) bool { return f[quarter][geom.After][c][r] > 0 }

// Surface puts a surface into the picture in all four quarters. Between what is seen from inside
// and from outside runs a curve, found along the sides of faces: in steps of whole faces the
// outline would be a saw.
func (p *Solid) Surface(s Surface) Facing {
	f := newFacing(s.Cols, s.Rows)
	for side := geom.Before; side <= geom.After; side++ {
		for c := range s.Cols {
			for r := range s.Rows {
				if side == geom.After && s.whole(c, r) {
					for i := range f {
						f[i][side][c][r] = f[i][geom.Before][c][r]
					}
					continue
				}
				at, n := s.At(c, r, side), s.normal(c, r, side)
				for i, m := range scene.Quarters {
					f[i][side][c][r] = p.Camera.facing(InPlace(at, m), InPlace(n, m))
				}
			}
		}
	}
	roles := make([]draw.Role, (s.Cols-1)*(s.Rows-1))
	for i, m := range scene.Quarters {
		// The last column is hardly any bark, and looks as its neighbour does.
		for r := range s.Rows {
			f[i][geom.Before][s.Cols-1][r] = f[i][geom.After][s.Cols-2][r]
			f[i][geom.After][s.Cols-1][r] = f[i][geom.After][s.Cols-2][r]
		}
		q := quarter{Solid: p, Surface: &s, facing: &f[i], m: m, roles: roles}
		q.findRoles()
		for c := range s.Cols - 1 {
			q.column(c)
		}
	}
	return f
}

// newFacing is all of it in one piece of memory.
func newFacing(cols, rows int) Facing {
	var f Facing
	all := make([]float64, len(f)*2*cols*rows)
	for i := range f {
		for side := range f[i] {
			f[i][side] = make([][]float64, cols)
			for c := range cols {
				f[i][side][c], all = all[:rows:rows], all[rows:]
			}
		}
	}
	return f
}

// whole tells whether the bark at a point, and at those over and under it, is the same on both sides.
func (s *Surface) whole(c, r int) bool {
	for k := max(0, r-1); k <= min(s.Rows-1, r+1); k++ {
		if s.Slit(c, k) || s.At(c, k, geom.Before) != s.At(c, k, geom.After) {
			return false
		}
	}
	return true
}

// normal is the direction in which the inside of the surface looks at a point, of no set length.
func (s *Surface) normal(c, r int, side geom.Side) geom.Vec3 {
	from, to := max(0, c-1), min(s.Cols-1, c+1)
	if s.Slit(c, r) {
		if side == geom.Before {
			to = c
		} else {
			from = c
		}
	}
	fore := func(k int) geom.Side {
		if k == c {
			return side
		} else if k < c {
			return geom.After
		}
		return geom.Before
	}
	along := s.At(to, r, fore(to)).Sub(s.At(from, r, fore(from)))
	if c == 0 && !s.Cut {
		along.Y, along.Z = 0, 0
	}
	low, high := max(0, r-1), min(s.Rows-1, r+1)
	up := s.At(c, high, side).Sub(s.At(c, low, side))
	if r == 0 && !s.Open(c) {
		up.X, up.Z = 0, 0
	}
	return along.Cross(up)
}

// facing is how far a face with a normal at q is turned to the eye.
func (k Camera) facing(q, normal geom.Vec3) float64 {
	return normal.Dot(k.toward.Sub(q.Scale(k.near))) / max(normal.Len(), 1e-12)
}

// quarter is a surface in one of its four places.
type quarter struct {
	*Solid
	*Surface
	facing *[2][][]float64
	m      [2]float64
	roles  []draw.Role // of its faces, column by column
	// outline is memory for the faces in hand.
	outline []geom.Vec3
	// wide is how wide the outside of the column in hand shows in the picture, in outlines' weights, less
	// than 0 where that is not known yet.
	wide float64
}

// width is how wide the outside shows between a column and the next, across the way between them.
func (q *quarter) width(c int) float64 {
	top := q.Rows - 1
	at := func(c, r int, side geom.Side) draw.Point { return q.Camera.At(InPlace(q.At(c, r, side), q.m)) }
	a, b := at(c, top, geom.After), at(c+1, top, geom.Before)
	dx, dy := b.X-a.X, b.Y-a.Y
	run := max(math.Hypot(dx, dy), 1e-9)
	low, high := math.Inf(1), math.Inf(-1)
	for r := range q.Rows {
		for i, side := range [2]geom.Side{geom.After, geom.Before} {
			if q.facing[side][c+i][r] <= 0 {
				k := at(c+i, r, side)
				off := ((k.X-a.X)*dy - (k.Y-a.Y)*dx) / run
				low, high = min(low, off), max(high, off)
			}
		}
	}
	return max(0, high-low) / q.Weight
}

// corner is a point of a face and how far it is turned to the eye.
type corner struct {
	at     geom.Vec3
	facing float64
}

// corners are those of the face over row r between columns c and c+1, round it.
func (q *quarter) corners(c, r int) [4]corner {
	at := func(c, r int, side geom.Side) corner {
		return corner{InPlace(q.At(c, r, side), q.m), q.facing[side][c][r]}
	}
	return [4]corner{at(c, r, geom.After), at(c+1, r, geom.Before), at(c+1, r+1, geom.Before), at(c, r+1, geom.After)}
}

// role is that of a face all of which is seen from one side, and empty where it is not.
func (q *quarter) role(c, r int) draw.Role { return q.roles[c*(q.Rows-1)+r] }

func (q *quarter) findRoles() {
	for c := range q.Cols - 1 {
		near, far := q.facing[geom.After][c], q.facing[geom.Before][c+1]
		for r := range q.Rows - 1 {
			role := draw.Role("")
			switch inside := near[r] > 0; {
			case (near[r+1] > 0) != inside, (far[r] > 0) != inside, (far[r+1] > 0) != inside:
			case inside:
				role = q.tint(c, r)
			default:
				role = draw.Bark
			}
			q.roles[c*(q.Rows-1)+r] = role
		}
	}
}

// tint is the role of the inside of a face.
func (q *quarter) tint(c, r int) draw.Role {
	n := q.normal(c, r, geom.After)
	return q.Tint(c, r, n.Z/max(n.Len(), 1e-12))
}

// rim is a part of the outline of the column in hand.
func (q *quarter) rim(c int, from, to geom.Vec3) {
	if q.wide < 0 {
		q.wide = q.width(c)
	}
	q.rimOf(Outer, q.wide, from, to)
}

// column draws the faces between a column and the next: those that look alike as one.
func (q *quarter) column(c int) {
	q.wide = -1
	for r := 0; r < q.Rows-1; {
		role := q.role(c, r)
		if role == "" {
			q.split(c, r)
			r++
			continue
		}
		to := r + 1
		for to < q.Rows-1 && q.role(c, to) == role {
			to++
		}
		q.strip(c, r, to, role)
		for ; r < to; r++ {
			if role == draw.Bark {
				q.rims(c, r)
			}
		}
	}
}

// strip goes on under the next faces where those look alike: edges that only meet would let the
// ground through.
func (q *quarter) strip(c, from, to int, role draw.Role) {
	last := c + 1
	if c+2 < q.Cols && !q.Slit(c+1, to) {
		last++
		for r := from; r < to; r++ {
			if q.role(c+1, r) != role {
				last = c + 1
			}
		}
	}
	outline := q.outline[:0]
	for r := from; r <= to; r++ {
		outline = append(outline, InPlace(q.At(c, r, geom.After), q.m))
	}
	if last > c+1 {
		outline = append(outline, InPlace(q.At(c+1, to, geom.Before), q.m))
	}
	for r := to; r >= from; r-- {
		outline = append(outline, InPlace(q.At(last, r, geom.Before), q.m))
	}
	if last > c+1 {
		outline = append(outline, InPlace(q.At(c+1, from, geom.Before), q.m))
	}
	q.Area(layerOf(role), role, outline...)
	q.outline = outline
}

func layerOf(role draw.Role) Layer {
	if role == draw.Bark {
		return Outer
	}
	return Inner
}

// split draws a face that is seen from inside in one part and from outside in the other.
func (q *quarter) split(c, r int) {
	k := q.corners(c, r)
	var room [3][8]geom.Vec3 // four corners and four turns at most
	inside, outside, turns := room[0][:0], room[1][:0], room[2][:0]
	for i, a := range k {
		b := k[(i+1)%4]
		if a.facing > 0 {
			inside = append(inside, a.at)
		} else {
			outside = append(outside, a.at)
		}
		if (a.facing > 0) != (b.facing > 0) {
			at := a.at.Lerp(b.at, a.facing/(a.facing-b.facing))
			inside, outside, turns = append(inside, at), append(outside, at), append(turns, at)
		}
	}
	q.Area(Inner, q.tint(c, r), inside...)
	q.Area(Outer, draw.Bark, outside...)
	for i := 1; i < len(turns); i += 2 {
		q.rim(c, turns[i-1], turns[i])
	}
	q.rims(c, r)
}

// rims are the sides of a face that are edges of the bark, as far as the outside is seen there.
func (q *quarter) rims(c, r int) {
	k := q.corners(c, r)
	edges := [4]bool{
		r == 0 && (q.Open(c) || q.Open(c+1)),
		c == q.Cols-2 || q.Slit(c+1, r+1),
		r == q.Rows-2,
		(c == 0 && q.Cut) || (c > 0 && q.Slit(c, r+1)),
	}
	for i, a := range k {
		b := k[(i+1)%4]
		if !edges[i] || (a.facing > 0 && b.facing > 0) {
			continue
		}
		if a.facing > 0 {
			a, b = b, a
		}
		end := b.at
		if b.facing > 0 {
			end = a.at.Lerp(b.at, a.facing/(a.facing-b.facing))
		}
		q.rim(c, a.at, end)
	}
}
