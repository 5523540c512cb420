package shape_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/shape"
)

// off is by what share a power may be off: as much as its exponent to base 2 is rounded,
// three bits in 2^53 of it, and a dozen of its own.
func off(power float64) float64 { return 0x1p-53 * (12 + 3*math.Abs(math.Log2(power))) }

// Oracle: math.Pow, which is itself off by some of the last bits.
func TestPowerIsPow(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7))
	for i := range 200_000 {
		x, p := math.Exp(4*r.NormFloat64()), 6*r.NormFloat64()
		if i%4 == 0 {
			x = r.Float64() // where the curves ask
			p = 0.2 + 4*r.Float64()
		}
		want := math.Pow(x, p)
		require.InEpsilon(t, want, shape.Power(x, p), off(want), "%v to the power %v", x, p)
	}
	edges := []float64{1, math.Sqrt2, math.Sqrt2 / 2, 0.5, 2, math.Nextafter(1, 0), math.Nextafter(1, 2), 1e-310, 1e300}
	for _, x := range edges {
		for _, p := range []float64{-3, 0, 0.5, 1, 2, 7} {
			if want := math.Pow(x, p); math.IsInf(want, 0) || want == 0 {
				assert.Equal(t, want, shape.Power(x, p), "%v to the power %v", x, p)
			} else {
				assert.InEpsilon(t, want, shape.Power(x, p), off(want), "%v to the power %v", x, p)
			}
		}
	}
	assert.Zero(t, shape.Power(0, 2))
	assert.Equal(t, math.Inf(1), shape.Power(math.Inf(1), 2))
	assert.True(t, math.IsNaN(shape.Power(-1, 0.5)) && math.IsNaN(shape.Power(math.NaN(), 2)) &&
		math.IsNaN(shape.Power(2, math.NaN())))
}

func BenchmarkPower(b *testing.B) {
	sum := 0.0
	for i := 0; b.Loop(); i++ {
		sum += shape.Power(float64(i%1000)/1000+1e-3, 1.37)
	}
	if sum < 0 {
		b.Fatal("a power less than zero")
	}
}
