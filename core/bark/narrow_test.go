package bark

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/geom"
)

// Against every angle of a thousand: none is narrower, and the narrowest of them is within what the breadth can change
// over half a step, which is the reach of the points times its angle.
func TestLeastBreadth(t *testing.T) {
	const steps = 1000
	rng := rand.New(rand.NewPCG(3, 3))
	for n := range 60 {
		var all bands
		bow, flare := rng.NormFloat64()/4, rng.NormFloat64()/20
		for i := range n + 2 {
			x := float64(i) / 10
			y := bow*x*x + flare*x + rng.Float64()/200
			all = append(all, band{geom.Vec2{X: x, Y: y}, geom.Vec2{X: x + rng.NormFloat64()/100, Y: y + 0.3 + rng.Float64()/10}})
		}
		angle, breadth := all.least()
		assert.LessOrEqual(t, math.Abs(angle), mostTurned)
		assert.InDelta(t, all.breadth(angle), breadth, 1e-12, "rounding of some metres")
		tried := math.Inf(1)
		for i := -steps; i <= steps; i++ {
			tried = min(tried, all.breadth(mostTurned*float64(i)/steps))
		}
		assert.LessOrEqual(t, breadth, tried+1e-12)
		assert.InDelta(t, tried, breadth, all.extent(0)*2*mostTurned/steps/2+1e-12)
	}
}
