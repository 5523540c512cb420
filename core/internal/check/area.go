package check

import "barkwright/core/geom"

// Area is what a closed path encloses, by the shoelace formula: positive where it
// runs counterclockwise.
func Area(points []geom.Vec2) float64 {
	sum := 0.0
	for i, p := range points {
		sum += p.Cross(points[(i+1)%len(points)])
	}
	return sum / 2
}
