package afloat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

func integrate(x []float64, f func(float64) float64) float64 {
	sum := 0.0
	for i, w := range integrationWeights(x) {
		sum += w * f(x[i])
	}
	return sum
}

func steps(n int, at func(share float64) float64) []float64 {
	x := make([]float64, n+1)
	for i := range x {
		x[i] = at(float64(i) / float64(n))
	}
	return x
}

// Integrals of powers and of the cosine, by hand.
func TestIntegrationWeights(t *testing.T) {
	uneven := []float64{-1, -0.9, -0.7, -0.2, 0.1, 0.6, 1}
	parabola := func(x float64) float64 { return 3 - 2*x + 5*x*x }
	assert.InDelta(t, 6+10.0/3, integrate(uneven, parabola), 1e-14)
	assert.InDelta(t, 2.0/3, integrate([]float64{-1, 0, 1}, func(x float64) float64 { return x * x }), 1e-15)

	// Halving the steps of a smooth curve divides the error by about 16.
	even := func(n int) []float64 { return steps(n, func(s float64) float64 { return s }) }
	coarse := math.Abs(integrate(even(20), math.Cos) - math.Sin(1))
	fine := math.Abs(integrate(even(40), math.Cos) - math.Sin(1))
	assert.InDelta(t, 16, coarse/fine, 2)

	crowded := steps(60, func(s float64) float64 { return -math.Cos(math.Pi * s) })
	for _, x := range [][]float64{uneven, even(30), crowded} {
		for _, w := range integrationWeights(x) {
			assert.Positive(t, w)
		}
	}
}

// Two stations almost on one another do no harm: a corner between them costs no
// more than the trapezium rule's error.
func TestCloseStations(t *testing.T) {
	x := steps(20, func(s float64) float64 { return s })
	x = append(x[:11], append([]float64{0.5 + 1e-6}, x[11:]...)...)
	corner := func(x float64) float64 { return max(0, x-0.5) }
	assert.InDelta(t, 0.125, integrate(x, corner), 0.05*0.05/8)
	for i := range len(x) - 1 {
		mid := (x[i] + x[i+1]) / 2
		f := make([]float64, len(x))
		for k := range x {
			f[k] = corner(x[k])
		}
		// A smooth curve misses a corner by less than a fifth of its step, 0.05.
		assert.InDelta(t, corner(mid), interpolate(x, f, i, mid), 0.01)
	}
}
