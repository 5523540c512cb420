package bark

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/geom"
)

// Against two thousand angles: none is narrower, and the narrowest of them is within what the breadth can change over
// half the angle between two, which is no more than that times how far any two points lie apart.
func TestLeastBreadth(t *testing.T) {
	const steps = 1000
	rng := rand.New(rand.NewPCG(3, 3))
	for n := range 60 {
		var all bands
		bow, flare := rng.NormFloat64()/4, rng.NormFloat64()/20
		for i := range n + 2 {
			x := float64(i) / 10
			y := bow*x*x + flare*x + rng.Float64()/200
			top := geom.Vec2{X: x + rng.NormFloat64()/100, Y: y + 0.3 + rng.Float64()/10}
			all = append(all, band{geom.Vec2{X: x, Y: y}, top})
		}
		angle, breadth := all.least()
		assert.LessOrEqual(t, math.Abs(angle), mostTurned)
		assert.InDelta(t, all.breadth(angle), breadth, 1e-12, "rounding of some metres")
		tried := math.Inf(1)
		for i := -steps; i <= steps; i++ {
			tried = min(tried, all.breadth(mostTurned*float64(i)/steps))
		}
		assert.LessOrEqual(t, breadth, tried+1e-12)
		apart := math.Hypot(all.extent(0), all.breadth(0))
		assert.InDelta(t, tried, breadth, apart*mostTurned/steps/2)
	}
}
