package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/geom"
)

// Zeros by hand: of the exponential, of a power flat at its zero, of a step that no
// secant finds and at the very ends.
func TestZero(t *testing.T) {
	rows := []struct {
		f        func(float64) float64
		lo, hi   float64
		want     float64
		mostAsks int
	}{
		{func(x float64) float64 { return math.Exp(x) - 2 }, 0, 5, math.Ln2, 16},
		{func(x float64) float64 { return 3 - x*x }, 0, 100, math.Sqrt(3), 20},
		{func(x float64) float64 { d := x - 0.3; return d * d * d * d * d }, -1, 1, 0.3, 240},
		{func(x float64) float64 { return math.Copysign(1, x-0.7) }, 0, 1, 0.7, 90},
		{func(x float64) float64 { return x - 1e-13 }, 0, 1, 0, 8},
		{func(x float64) float64 { return 1 - x }, 0, 1, 1, 2},
	}
	for i, row := range rows {
		asked := 0
		x, ok := geom.Zero(func(x float64) float64 { asked++; return row.f(x) }, row.lo, row.hi, 1e-12)
		assert.True(t, ok, "row %d", i)
		assert.InDelta(t, row.want, x, 1e-12, "row %d", i)
		assert.LessOrEqual(t, asked, row.mostAsks, "row %d", i)
	}
	x, ok := geom.Zero(func(x float64) float64 { return x + 1 }, 0, 1, 1e-12)
	assert.False(t, ok)
	assert.Equal(t, 0.0, x)
}
