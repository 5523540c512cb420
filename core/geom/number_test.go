package geom_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/integrate/quad"

	"barkwright/core/geom"
)

// Five-point Gauss is exact to degree nine and not to ten; the constants have
// fifteen digits.
func TestIntegrateDegree(t *testing.T) {
	for degree := range 10 {
		f := func(x float64) float64 { return math.Pow(x, float64(degree)) }
		assert.InDelta(t, 1/float64(degree+1), geom.Integrate(f, 0, 1, 1), 1e-14, "degree %d", degree)
	}
	ten := func(x float64) float64 { return math.Pow(x, 10) }
	assert.Greater(t, math.Abs(1.0/11-geom.Integrate(ten, 0, 1, 1)), 1e-8)
}

// Oracle: gonum's Legendre quadrature of a high order.
func TestIntegrateAgainstLibrary(t *testing.T) {
	for _, f := range []func(float64) float64{math.Exp, math.Cos, func(x float64) float64 { return 1 / (1 + x*x) }} {
		assert.InDelta(t, quad.Fixed(f, -1, 3, 60, nil, 0), geom.Integrate(f, -1, 3, 12), 1e-9)
	}
	assert.InDelta(t, -geom.Integrate(math.Exp, 0, 2, 4), geom.Integrate(math.Exp, 2, 0, 4), 1e-12)
}

// Against gonum's central differences and closed forms; the error is h^4/30 times
// the fifth derivative.
func TestSlope(t *testing.T) {
	for _, x := range []float64{-1, 0.3, 2} {
		assert.InDelta(t, math.Cos(x), geom.Slope(math.Sin, x, 1e-3), 1e-12)
		assert.InDelta(t, fd.Derivative(math.Exp, x, &fd.Settings{Formula: fd.Central, Step: 1e-5}),
			geom.Slope(math.Exp, x, 1e-3), 1e-8)
	}
	const h = 0.1
	miss := math.Exp(0) - geom.Slope(math.Exp, 0, h)
	assert.InEpsilon(t, h*h*h*h/30, miss, 0.01)
	fourth := func(x float64) float64 { return x * x * x * x }
	assert.InDelta(t, 32, geom.Slope(fourth, 2, 0.5), 1e-12, "exact to degree four")
}

func TestBisect(t *testing.T) {
	square := func(x float64) float64 { return x*x - 2 }
	root, ok := geom.Bisect(square, 0, 2, 1e-12)
	require.True(t, ok)
	assert.InDelta(t, math.Sqrt2, root, 1e-12)
	root, ok = geom.Bisect(square, 2, 0, 1e-12)
	assert.True(t, ok, "either way round")
	assert.InDelta(t, math.Sqrt2, root, 1e-12)
	root, ok = geom.Bisect(func(x float64) float64 { return x }, 0, 1, 1e-9)
	assert.True(t, ok)
	assert.Zero(t, root, "a root at the end is itself")
	root, ok = geom.Bisect(func(x float64) float64 { return x - 1 }, 0, 1, 1e-9)
	assert.True(t, ok)
	assert.Equal(t, 1.0, root)
	root, ok = geom.Bisect(func(x float64) float64 { return x + 1 }, 0, 5, 1e-9)
	assert.False(t, ok)
	assert.Zero(t, root, "the end nearer a root")
	root, _ = geom.Bisect(func(x float64) float64 { return x - 1e-3 }, 0, 1e3, 0)
	assert.InDelta(t, 1e-3, root, 1e-18, "no tolerance is the last bit")
}

func TestLeast(t *testing.T) {
	at, value := geom.Least(func(x float64) float64 { return (x-0.3)*(x-0.3) + 2 }, 0, 1, 7)
	assert.InDelta(t, 0.3, at, 1e-7, "the square root of a double's last bit, about")
	assert.InDelta(t, 2, value, 1e-14)
	at, _ = geom.Least(math.Exp, 1, 2, 5)
	assert.InDelta(t, 1, at, 1e-8, "at an end")
	// The deeper of two valleys, cos x + x/10: least next to pi, not to 3 pi.
	at, _ = geom.Least(func(x float64) float64 { return math.Cos(x) + x/10 }, 0, 12, 24)
	assert.InDelta(t, math.Pi+math.Asin(0.1), at, 0.21)
	assert.InDelta(t, 0.1, math.Sin(at), 1e-7, "sin x = 1/10 where its slope is none")
}

// SoftMin never exceeds the lesser. It equals it where the two differ by more than a
// fifth of their sum. Its slope is continuous, and it scales with its arguments.
// SmoothStep has zero slope at both ends.
func TestSoftMin(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 6))
	for range 1000 {
		p, q, k := r.Float64()*2, r.Float64()*2, r.Float64()*9
		s := geom.SoftMin(p, q)
		require.LessOrEqual(t, s, min(p, q))
		require.GreaterOrEqual(t, s, 0.0)
		require.Equal(t, s, geom.SoftMin(q, p))
		require.InDelta(t, k*s, geom.SoftMin(k*p, k*q), 1e-13)
		if math.Abs(p-q) >= (p+q)/5 {
			require.Equal(t, min(p, q), s)
		}
	}
	assert.InDelta(t, 1-0.4/4, geom.SoftMin(1, 1), 1e-15, "a quarter of a fifth of the sum, where they are equal")
	assert.Zero(t, geom.SoftMin(0, 0))
	assert.Zero(t, geom.SoftMin(0, 3))
	// Where the rounding begins, |p - q| = (p + q)/5: p = 2/3 and 3/2 of q.
	for _, p := range []float64{2.0 / 3, 1.5, 1} {
		f := func(x float64) float64 { return geom.SoftMin(x, 1) }
		const h = 1e-6
		left, right := (f(p)-f(p-h))/h, (f(p+h)-f(p))/h
		assert.InDelta(t, left, right, 1e-5, "slope at %v", p)
	}
}

func TestSmoothStep(t *testing.T) {
	assert.Zero(t, geom.SmoothStep(-1))
	assert.Equal(t, 1.0, geom.SmoothStep(2))
	assert.Equal(t, 0.5, geom.SmoothStep(0.5))
	assert.InDelta(t, 0, geom.Slope(geom.SmoothStep, 0, 1e-4), 2e-4)
	assert.InDelta(t, 0, geom.Slope(geom.SmoothStep, 1, 1e-4), 2e-4)
	assert.InDelta(t, 1.5, geom.Slope(geom.SmoothStep, 0.5, 1e-3), 1e-9)
}
