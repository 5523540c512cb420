package solid

import (
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// bar is a straight-edged timber: its cross-sections from end to end, each by its corners in
// turn, the last and the first of them below.
type bar struct {
	sections [][4]geom.Vec3
	// from and to tell whether its ends are seen, not those of another piece of it.
	from, to bool
}

// underside is the side of a bar that is not drawn.
const underside = 3

// bar puts a timber into the picture, filled, with an unbroken outline.
func (p *Solid) bar(in Layer, role draw.Role, b bar) {
	n := len(b.sections) - 1
	// seen tells of each piece and side whether the side is turned to the eye.
	seen := make([][4]bool, n)
	for i := range n {
		middle := centre(b.sections[i]).Lerp(centre(b.sections[i+1]), 0.5)
		for k := range 4 {
			q := b.side(i, k)
			normal := q[2].Sub(q[0]).Cross(q[3].Sub(q[1]))
			at := centre(q)
			if normal.Dot(at.Sub(middle)) < 0 {
				normal = normal.Scale(-1)
			}
			// Under a gunwale that rises steeply stands the bark.
			seen[i][k] = k != underside && p.Camera.Faces(at, normal)
		}
	}
	for i := range n {
		for k := range 4 {
			if !seen[i][k] {
				continue
			}
			q := b.side(i, k)
			if i+1 < n && seen[i+1][k] {
				// It goes on under the next one: edges that only meet would let the ground through.
				next := b.side(i+1, k)
				p.Area(in, role, q[0], q[1], next[1], next[2], q[2], q[3])
				continue
			}
			p.Area(in, role, q[0], q[1], q[2], q[3])
		}
	}
	for k := range 4 {
		// Edge k lies between sides k-1 and k.
		b.chain(k, func(i int) bool { return seen[i][k] || seen[i][(k+3)%4] }, func(line []geom.Vec3) { p.rim(in, line...) })
		b.chain(k, func(i int) bool { return seen[i][k] && seen[i][(k+3)%4] },
			func(line []geom.Vec3) { p.Line(in, draw.Ink, hair, line...) })
	}
	if b.from {
		p.end(in, role, b.sections[0], b.sections[1])
	}
	if b.to {
		p.end(in, role, b.sections[n], b.sections[n-1])
	}
}

// hair is the width of the lines on timber.
const hair = 0.5

// end is an end of a bar, where it is turned to the eye.
func (p *Solid) end(in Layer, role draw.Role, at, next [4]geom.Vec3) {
	if p.Camera.Faces(centre(at), centre(at).Sub(centre(next))) {
		p.Area(in, role, at[:]...)
	}
	p.rim(in, at[0], at[1], at[2], at[3], at[0])
}

// side is side k of piece i, round it.
func (b bar) side(i, k int) [4]geom.Vec3 {
	l := (k + 1) % 4
	return [4]geom.Vec3{b.sections[i][k], b.sections[i+1][k], b.sections[i+1][l], b.sections[i][l]}
}

// chain hands on edge k in lines over the pieces that are wanted. Each line holds until the next.
func (b bar) chain(k int, wanted func(i int) bool, found func([]geom.Vec3)) {
	var line []geom.Vec3
	for i := range len(b.sections) {
		line = append(line, b.sections[i][k])
		if i == len(b.sections)-1 || !wanted(i) {
			if len(line) > 1 {
				found(line)
			}
			line = line[:0]
		}
	}
}

func centre(q [4]geom.Vec3) geom.Vec3 {
	return q[0].Add(q[1]).Add(q[2]).Add(q[3]).Scale(0.25)
}
