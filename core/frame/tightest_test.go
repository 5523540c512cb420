package frame

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Curves whose radii have closed forms: a circle's is its own everywhere; the
// parabola a x^2 has 1/(2a) at its vertex; a catenary's c cosh(x/c) is c cosh^2;
// a line has none. Each by its derivatives and by differences.
func TestTightestAgainstClosedForms(t *testing.T) {
	for _, c := range []struct {
		name        string
		f           func(x float64) float64
		bend        func(x float64) (float64, float64)
		from, to    float64
		x, r        float64
		differenced float64
	}{
		{"circle", func(x float64) float64 { return 2 - math.Sqrt(4-x*x) },
			func(x float64) (float64, float64) { return x / math.Sqrt(4-x*x), 4 / math.Pow(4-x*x, 1.5) },
			0, 1.8, math.NaN(), 2, 1e-4}, // the slope is 2 at the far end
		{"parabola", func(x float64) float64 { return 0.3 * (x - 0.7) * (x - 0.7) },
			func(x float64) (float64, float64) { return 0.6 * (x - 0.7), 0.6 }, 0, 2, 0.7, 1 / 0.6, 1e-9},
		{"catenary", func(x float64) float64 { return -3 * math.Cosh(x/3) },
			func(x float64) (float64, float64) { return -math.Sinh(x / 3), -math.Cosh(x/3) / 3 },
			1, 2, 1, 3 * math.Pow(math.Cosh(1.0/3), 2), 1e-6}, // the square of a millimetre
	} {
		x, r := tightest(c.bend, c.from, c.to)
		assert.InEpsilon(t, c.r, r, 1e-14, c.name)
		_, rough := tightest(differences(c.f), c.from, c.to)
		assert.InEpsilon(t, c.r, rough, c.differenced, c.name)
		if !math.IsNaN(c.x) {
			// A place is known to the root of the rounding of what is least there.
			assert.InDelta(t, c.x, x, 1e-7, c.name)
		}
	}
	_, r := tightest(func(float64) (float64, float64) { return 0.25, 0 }, 0, 2)
	assert.Equal(t, straight, r)
	_, r = tightest(differences(func(x float64) float64 { return 0.25 * x }), 0, 2)
	assert.Equal(t, straight, r)
}
