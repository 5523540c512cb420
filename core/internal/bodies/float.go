package bodies

import (
	"math"

	"barkwright/core/geom"
)

// Section is one station of a floating body, laid out as hull.Station is: the port
// half (y, z) from the centre line at the bottom up to the sheer. A test converts
// it; this package imports no boat.
type Section struct {
	X       float64
	Outline []geom.Vec2
}

// Slit is the half-breadth, m, left open at the top of a body that is closed all
// round, so that it has a sheer; it changes no number in the first nine digits.
const Slit = 1e-6

// Even returns n+1 stations at equal distances over a length, midships at nothing.
func Even(length float64, n int) []float64 {
	x := make([]float64, n+1)
	for i := range x {
		x[i] = length * (float64(i)/float64(n) - 0.5)
	}
	return x
}

// Crowded returns n+1 stations over a length, closer towards the ends: equal steps
// of angle seen from midships.
func Crowded(length float64, n int) []float64 {
	x := make([]float64, n+1)
	for i := range x {
		x[i] = -length / 2 * math.Cos(math.Pi*float64(i)/float64(n))
	}
	return x
}

// same puts one outline at every station.
func same(x []float64, outline []geom.Vec2) []Section {
	sections := make([]Section, len(x))
	for i := range x {
		sections[i] = Section{x[i], outline}
	}
	return sections
}

// Box is a box of a beam and depth with plumb ends.
func Box(x []float64, beam, depth float64) []Section {
	return same(x, []geom.Vec2{{X: 0, Y: 0}, {X: beam / 2, Y: 0}, {X: beam / 2, Y: depth}})
}

// Prism is a wedge, edge down, its sides at a slope of half-breadth to height, up to
// a depth.
func Prism(x []float64, slope, depth float64) []Section {
	return same(x, []geom.Vec2{{X: 0, Y: 0}, {X: slope * depth, Y: depth}})
}

// Cylinder is a round log on its side in n chords to the half, resting on nothing.
func Cylinder(x []float64, radius float64, n int) []Section {
	return same(x, oval(radius, radius, radius, n))
}

// oval is the half of an ellipse with its centre at a height, in n chords at equal
// angles, open by Slit at the top.
func oval(across, up, centre float64, n int) []geom.Vec2 {
	points := make([]geom.Vec2, n+1)
	for i := range points {
		sin, cos := math.Sincos(math.Pi * float64(i) / float64(n))
		points[i] = geom.Vec2{X: across * sin, Y: centre - up*cos}
	}
	points[n].X = Slit
	return points
}

// Ellipsoid has half-axes a along, b across and c up, its lowest point at nothing.
// Its end stations are points.
func Ellipsoid(x []float64, b, c float64, n int) []Section {
	a := x[len(x)-1]
	sections := make([]Section, len(x))
	for i := range x {
		k := math.Sqrt(max(1-x[i]*x[i]/(a*a), 0))
		sections[i] = Section{x[i], oval(b*k, c*k, c, n)}
	}
	sections[0].Outline = []geom.Vec2{{X: 0, Y: c}}
	sections[len(x)-1].Outline = []geom.Vec2{{X: 0, Y: c}}
	return sections
}

// Trough is z = draught (2y/beam)^2 up to a depth, in n chords at equal steps of y.
func Trough(x []float64, beam, draught, depth float64, n int) []Section {
	most := beam / 2 * math.Sqrt(depth/draught)
	points := make([]geom.Vec2, n+1)
	for i := range points {
		y := most * float64(i) / float64(n)
		points[i] = geom.Vec2{X: y, Y: draught * 4 * y * y / (beam * beam)}
	}
	return same(x, points)
}
