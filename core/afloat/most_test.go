package afloat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The largest righting arm of the ellipsoid of TestEllipsoidArmVanishes stands where its
// closed form has it, however the steps of heel fall about it. A parabola through three
// points 2 to 3 degrees apart misses the place by the third derivative over the second,
// times a sixth of the step squared: under a tenth of a degree.
func TestLargestArmLiesBetweenSteps(t *testing.T) {
	const b, c, og = 0.4, 0.15, 0.05
	arm := func(phi float64) float64 {
		sin, cos := math.Sincos(phi)
		return 0.375*(b*b-c*c)*sin*cos/math.Sqrt(b*b*sin*sin+c*c*cos*cos) - og*sin
	}
	most, at := 0.0, 0.0
	for phi := 0.01; phi < 1.5; phi += 1e-5 {
		if a := arm(phi); a > most {
			most, at = a, phi
		}
	}
	e := exactBodies()["ellipsoid"]
	for _, steps := range []int{31, 35, 39} {
		got := e.body.Righting(e.load(), fresh, steps).Most
		assert.InDelta(t, at, got.Waterplane.Heel, degrees(0.1), "%d steps", steps)
		assert.InDelta(t, most, got.Arm, 1e-5, "%d steps", steps)
	}
}
