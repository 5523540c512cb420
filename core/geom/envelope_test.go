package geom

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// Oracle: gonum's banded Cholesky on the same matrix, as wide as its widest row.
func TestEnvelopeAgainstBandCholesky(t *testing.T) {
	random := rand.New(rand.NewPCG(2, 2))
	reach := []int{8, 6, 10, 8, 8, 6, 10, 8, 6, 4, 4, 2}
	const stride = 10
	n := 2 * len(reach)
	a := make([]float64, n*stride)
	band := mat.NewSymBandDense(n, stride-1, nil)
	b := make([]float64, n)
	for i := range n {
		b[i] = random.NormFloat64()
		for c := range reach[i/2] - i%2 {
			v := random.NormFloat64()
			if c == 0 {
				v = 20
			}
			a[i*stride+c] = v
			band.SetSymBand(i, i+c, v)
		}
	}
	var oracle mat.BandCholesky
	require.True(t, oracle.Factorize(band))
	want := mat.NewVecDense(n, nil)
	require.NoError(t, oracle.SolveVecTo(want, mat.NewVecDense(n, append([]float64(nil), b...))))

	require.True(t, factorEnvelope(a, stride, reach))
	solveEnvelope(a, stride, reach, b)
	for i := range b {
		assert.InDelta(t, want.AtVec(i), b[i], 1e-14)
	}

	assert.False(t, factorEnvelope([]float64{1, 2, 1, 0}, 2, []int{2}), "1 2; 2 1 has a negative eigenvalue")
}
