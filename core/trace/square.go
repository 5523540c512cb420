package trace

import (
	"math"

	"barkwright/core/geom"
)

// Square is a plane projective map: of the points of a picture to those of the plane that
// was pictured, which it shows as if looked at square on. The zero value moves nothing.
type Square struct {
	// from maps the picture to the plane, to maps back. Their last row is positive where the
	// plane is seen.
	from, to [9]float64
	set      bool
}

// leastCorner is the sine of the least angle at a corner of a rectangle as it is pictured. One
// seen nearer to edge on is not read. A choice of this project.
const leastCorner = 0.1

// SquareOf is the map that takes four corners of a picture, in their order round it, to those
// of a rectangle: (0, 0), (wide, 0), (wide, high), (0, high). It refuses corners that are
// no four corners of one, as they cross or three stand in a line.
//
// Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, gives the map of the
// unit square to four points in closed form; this is its inverse.
func SquareOf(corners [4]geom.Vec2, wide, high float64) (Square, error) {
	turned := 0.0
	for i, p := range corners {
		before, after := p.Sub(corners[(i+3)%4]).Unit(), corners[(i+1)%4].Sub(p).Unit()
		turn := before.Cross(after)
		if math.Abs(turn) < leastCorner || turn*turned < 0 {
			return Square{}, BadCorners
		}
		turned = turn
	}
	if !(wide > 0) || !(high > 0) {
		return Square{}, NoSides
	}
	a, b, c, d := corners[0], corners[1], corners[2], corners[3]
	far := a.Sub(b).Add(c).Sub(d)
	u, v := b.Sub(c), d.Sub(c)
	g, h := far.Cross(v)/u.Cross(v), u.Cross(far)/u.Cross(v)
	across, up := b.Sub(a).Add(b.Scale(g)), d.Sub(a).Add(d.Scale(h))
	to := [9]float64{
		across.X / wide, up.X / high, a.X,
		across.Y / wide, up.Y / high, a.Y,
		g / wide, h / high, 1,
	}
	return Square{from: inverse(to), to: to, set: true}, nil
}

// inverse is that of a map but for a positive factor, which a projective map takes no
// notice of.
func inverse(m [9]float64) [9]float64 {
	adjugate := [9]float64{
		m[4]*m[8] - m[5]*m[7], m[2]*m[7] - m[1]*m[8], m[1]*m[5] - m[2]*m[4],
		m[5]*m[6] - m[3]*m[8], m[0]*m[8] - m[2]*m[6], m[2]*m[3] - m[0]*m[5],
		m[3]*m[7] - m[4]*m[6], m[1]*m[6] - m[0]*m[7], m[0]*m[4] - m[1]*m[3],
	}
	if m[0]*adjugate[0]+m[1]*adjugate[3]+m[2]*adjugate[6] < 0 {
		for i := range adjugate {
			adjugate[i] = -adjugate[i]
		}
	}
	return adjugate
}

// At is where a point of the picture lies in the plane. It reports false for a point on the
// plane's horizon or beyond it.
func (s Square) At(p geom.Vec2) (geom.Vec2, bool) {
	if !s.set {
		return p, true
	}
	return project(s.from, p)
}

// Back is where a point of the plane lies in the picture, false for one that is not in it.
func (s Square) Back(p geom.Vec2) (geom.Vec2, bool) {
	if !s.set {
		return p, true
	}
	return project(s.to, p)
}

// project maps a point, and reports false for one on the horizon or beyond it.
func project(m [9]float64, p geom.Vec2) (geom.Vec2, bool) {
	w := m[6]*p.X + m[7]*p.Y + m[8]
	// Nearer to the horizon than this share of its terms, a pixel is worth a boat.
	if w <= 1e-6*(math.Abs(m[6]*p.X)+math.Abs(m[7]*p.Y)+math.Abs(m[8])) {
		return geom.Vec2{}, false
	}
	return geom.Vec2{X: (m[0]*p.X + m[1]*p.Y + m[2]) / w, Y: (m[3]*p.X + m[4]*p.Y + m[5]) / w}, true
}
