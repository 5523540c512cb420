package geom

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// Random positive definite systems against gonum's Cholesky.
func TestSolveCholesky(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	for n := 1; n <= 12; n++ {
		factor := mat.NewDense(n, n, nil)
		for i := range n {
			for j := range n {
				factor.Set(i, j, r.NormFloat64())
			}
			factor.Set(i, i, factor.At(i, i)+3)
		}
		var full mat.Dense
		full.Mul(factor.T(), factor)
		symmetric := mat.NewSymDense(n, nil)
		a, b := make([]float64, n*n), make([]float64, n)
		for i := range n {
			b[i] = r.NormFloat64()
			for j := i; j < n; j++ {
				symmetric.SetSym(i, j, full.At(i, j))
				a[i*n+j] = full.At(i, j)
			}
		}
		var chol mat.Cholesky
		require.True(t, chol.Factorize(symmetric))
		want := mat.NewVecDense(n, nil)
		require.NoError(t, chol.SolveVecTo(want, mat.NewVecDense(n, append([]float64(nil), b...))))
		require.True(t, solveCholesky(n, a, b))
		for i := range n {
			assert.InDelta(t, want.AtVec(i), b[i], 1e-9, "order %d", n)
		}
	}
	assert.False(t, solveCholesky(2, []float64{1, 2, 0, 1}, []float64{1, 1}), "not positive definite")
}
