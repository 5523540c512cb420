package geom

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

func boxed(n int, lo, hi float64) LeastSquares {
	q := LeastSquares{}
	for range n {
		q.Lower, q.Upper, q.Scale = append(q.Lower, lo), append(q.Upper, hi), append(q.Scale, 1)
	}
	return q
}

// A straight line through points not on one: gonum's QR is the oracle.
func TestLeastSquaresOfALine(t *testing.T) {
	xs, ys := []float64{0, 1, 2, 3, 5}, []float64{1.1, 2.7, 5.3, 6.8, 11.4}
	q := boxed(2, -100, 100)
	q.Count = len(xs)
	q.Residuals = func(x, out []float64) {
		for i := range xs {
			out[i] = x[0] + x[1]*xs[i] - ys[i]
		}
	}
	a := mat.NewDense(len(xs), 2, nil)
	for i, x := range xs {
		a.SetRow(i, []float64{1, x})
	}
	var want mat.Dense
	require.NoError(t, want.Solve(a, mat.NewDense(len(ys), 1, ys)))
	got := q.Minimise([]float64{20, -20})
	require.True(t, got.Settled)
	// 1e-6 is ten times the step at which the search ends.
	assert.InDelta(t, want.At(0, 0), got.X[0], 1e-6)
	assert.InDelta(t, want.At(1, 0), got.X[1], 1e-6)
}

// The curved valley 100 (y - x^2)^2 + (1 - x)^2 has its minimum at (1, 1): closed form,
// from memory. Bounded to x <= 0.5 the minimum is at (0.5, 0.25).
func TestLeastSquaresInACurvedValley(t *testing.T) {
	for _, c := range []struct{ top, x, y float64 }{{5, 1, 1}, {0.5, 0.5, 0.25}} {
		valley := func(x, out []float64) {
			require.LessOrEqual(t, x[0], c.top, "asked outside the bounds")
			out[0], out[1] = 10*(x[1]-x[0]*x[0]), 1-x[0]
		}
		q := boxed(2, -5, 5)
		q.Count, q.Residuals, q.Upper[0] = 2, valley, c.top
		got := q.Minimise([]float64{-1.2, 1})
		require.True(t, got.Settled)
		assert.InDelta(t, c.x, got.X[0], 1e-6)
		assert.InDelta(t, c.y, got.X[1], 1e-6)
		assert.InDelta(t, math.Pow(1-c.x, 2), got.Sum, 1e-9)
	}
}

// A held variable does not move. A variable that nothing depends on stays where it
// began.
func TestLeastSquaresHoldsWhatIsHeld(t *testing.T) {
	q := boxed(3, -5, 5)
	q.Lower[1], q.Upper[1] = 2, 2
	q.Count = 1
	q.Residuals = func(x, out []float64) { out[0] = x[0] + x[1] - 3 }
	got := q.Minimise([]float64{0, 0, 4})
	assert.InDeltaSlice(t, []float64{1, 2, 4}, got.X, 1e-6)
	assert.Panics(t, func() { q.Minimise([]float64{0}) })
}
