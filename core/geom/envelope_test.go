package geom

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// Oracle: gonum's Cholesky on the same matrix written out in full.
func TestEnvelopeAgainstCholesky(t *testing.T) {
	random := rand.New(rand.NewPCG(2, 2))
	var e envelope
	e.shape([]int{0, 0, 1, 0, 2, 5, 3, 3, 6})
	n := 2 * len(e.first)
	full := mat.NewSymDense(n, nil)
	b := make([]float64, n)
	for v, f := range e.first {
		x, y := e.rows(v)
		for c := range x {
			x[c], y[c] = random.NormFloat64(), random.NormFloat64()
		}
		x[len(x)-2], y[len(y)-1] = 20, 20
		for c := range x {
			if c < len(x)-1 {
				full.SetSym(2*v, 2*f+c, x[c])
			}
			full.SetSym(2*v+1, 2*f+c, y[c])
		}
		b[2*v], b[2*v+1] = random.NormFloat64(), random.NormFloat64()
	}
	for _, pinned := range []int{6, 11} {
		e.pin(pinned)
		for i := range n {
			full.SetSym(pinned, i, 0)
		}
		full.SetSym(pinned, pinned, 1)
	}
	var oracle mat.Cholesky
	require.True(t, oracle.Factorize(full))
	want := mat.NewVecDense(n, nil)
	require.NoError(t, oracle.SolveVecTo(want, mat.NewVecDense(n, append([]float64(nil), b...))))

	require.Equal(t, positive, e.factor(nil))
	e.solve(b)
	for i := range b {
		assert.InDelta(t, want.AtVec(i), b[i], 1e-14)
	}
}

func TestEnvelopeNotPositive(t *testing.T) {
	var e envelope
	e.shape([]int{0})
	copy(e.a, []float64{1, 0, 2, 1})
	assert.Equal(t, singular, e.factor(nil), "1 2; 2 1 has a negative eigenvalue")
	copy(e.a, []float64{0, 0, 0, 1})
	assert.Equal(t, singular, e.factor(nil))
}
