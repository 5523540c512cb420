package frame

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Curves whose radii have closed forms: a circle's is its own everywhere; the
// parabola a x^2 has 1/(2a) at its vertex; a catenary's c cosh(x/c) is c cosh^2;
// a line has none.
func TestTightestAgainstClosedForms(t *testing.T) {
	_, r := tightest(func(x float64) float64 { return 2 - math.Sqrt(4-x*x) }, 0, 1.8)
	assert.InEpsilon(t, 2, r, 1e-4, "differences over a millimetre, the slope 2 at the far end")
	x, r := tightest(func(x float64) float64 { return 0.3 * (x - 0.7) * (x - 0.7) }, 0, 2)
	assert.InEpsilon(t, 1/0.6, r, 1e-9)
	assert.InDelta(t, 0.7, x, 1e-3)
	x, r = tightest(func(x float64) float64 { return -3 * math.Cosh(x/3) }, 1, 2)
	assert.InEpsilon(t, 3*math.Pow(math.Cosh(1.0/3), 2), r, 1e-6, "the square of a millimetre")
	assert.InDelta(t, 1, x, 1e-6)
	_, r = tightest(func(x float64) float64 { return 0.25 * x }, 0, 2)
	assert.Equal(t, straight, r)
}
