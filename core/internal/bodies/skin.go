package bodies

import (
	"math"

	"barkwright/core/geom"
)

// Frustum is the wall of a cone cut square to its axis: lower radius R1, upper
// radius R2 > R1, height H, in one unit of length.
type Frustum struct{ R1, R2, H float64 }

// Slant returns the length of the wall up its slope.
func (f Frustum) Slant() float64 { return math.Hypot(f.H, f.R2-f.R1) }

// FlatRadii returns the radii of the annular sector the wall lies flat as.
func (f Frustum) FlatRadii() (inner, outer float64) {
	k := f.Slant() / (f.R2 - f.R1)
	return f.R1 * k, f.R2 * k
}

// FlatAngle returns the sector's angle for the share of the round that angle
// (radians about the axis) is: angle (R2-R1)/slant.
func (f Frustum) FlatAngle(angle float64) float64 { return angle * (f.R2 - f.R1) / f.Slant() }

// At returns the point at an angle about the axis and a share v of the slope, 0
// at the lower radius.
func (f Frustum) At(angle, v float64) geom.Vec3 {
	r := f.R1 + v*(f.R2-f.R1)
	return geom.Vec3{X: r * math.Cos(angle), Y: r * math.Sin(angle), Z: v * f.H}
}

// EllipseCylinder is a level cylinder on a quarter ellipse of half-axes A
// (across) and B (down): the side of a round-bottomed trough.
type EllipseCylinder struct{ A, B float64 }

// At returns the point a distance x along and at a share v of the quarter's arc,
// 0 at the bottom.
func (e EllipseCylinder) At(x, v float64) geom.Vec3 {
	want := v * e.arc(math.Pi/2)
	angle := v * math.Pi / 2
	for range 20 {
		angle += (want - e.arc(angle)) / e.speed(angle)
	}
	s, c := math.Sincos(angle)
	return geom.Vec3{X: x, Y: e.A * s, Z: -e.B * c}
}

// speed is the arc per unit of the ellipse's parameter, 0 at the bottom.
func (e EllipseCylinder) speed(angle float64) float64 {
	s, c := math.Sincos(angle)
	return math.Hypot(e.A*c, e.B*s)
}

// arc integrates speed from the bottom by Simpson's rule; 64 panels are exact to
// rounding for half-axes within a factor two of each other.
func (e EllipseCylinder) arc(angle float64) float64 {
	const panels = 64
	h := angle / panels
	sum := 0.0
	for i := range panels {
		a := float64(i) * h
		sum += e.speed(a) + 4*e.speed(a+h/2) + e.speed(a+h)
	}
	return sum * h / 6
}

// SphereZone is the part of a unit sphere between the latitudes Low and High, radians.
type SphereZone struct{ Low, High float64 }

// At returns the point at a longitude and a share v of the way from Low to High.
func (z SphereZone) At(longitude, v float64) geom.Vec3 {
	lat := z.Low + v*(z.High-z.Low)
	return geom.Vec3{
		X: math.Cos(lat) * math.Cos(longitude),
		Y: math.Cos(lat) * math.Sin(longitude),
		Z: math.Sin(lat),
	}
}

// Curvature returns the integral of the Gaussian curvature over a width of
// longitude: width (sin High - sin Low).
func (z SphereZone) Curvature(width float64) float64 {
	return width * (math.Sin(z.High) - math.Sin(z.Low))
}

// Pan is a round pan: a flat disc of radius Disc, a fillet of radius Fillet that
// turns the wall up by Slope (radians), and a straight wall of length Wall.
type Pan struct{ Disc, Fillet, Slope, Wall float64 }

// Arc returns the length of the fillet along its profile.
func (p Pan) Arc() float64 { return p.Fillet * p.Slope }

// At returns the point at an angle about the axis and a length s up the profile
// from the edge of the disc; a negative s is on the disc.
func (p Pan) At(angle, s float64) geom.Vec3 {
	r, z := p.Disc+s, 0.0
	if s > 0 {
		turn := min(s/p.Fillet, p.Slope)
		beyond := max(0, s-p.Arc())
		sin, cos := math.Sincos(turn)
		r = p.Disc + p.Fillet*sin + beyond*cos
		z = p.Fillet*(1-cos) + beyond*sin
	}
	return geom.Vec3{X: r * math.Cos(angle), Y: r * math.Sin(angle), Z: z}
}

// Wedge returns the whole angle that gores must take out of the wall over an
// angle about the axis if the pieces between them are not strained: angle
// (1 - cos Slope), whatever the fillet.
func (p Pan) Wedge(angle float64) float64 { return angle * (1 - math.Cos(p.Slope)) }

// Gap returns the width gores must take out at the rim over an angle about the
// axis, the flat sheet's rim less the pan's.
func (p Pan) Gap(angle float64) float64 {
	flat := p.Disc + p.Arc() + p.Wall
	return angle * (flat - p.Disc - p.Fillet*math.Sin(p.Slope) - p.Wall*math.Cos(p.Slope))
}
