package geom

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The corners of a square with points inside and on its sides, of a line and of a point: by hand.
func TestConvex(t *testing.T) {
	square := []Vec2{{X: 0, Y: 0}, {X: 2, Y: 0}, {X: 2, Y: 2}, {X: 0, Y: 2}}
	assert.Equal(t, square, Convex([]Vec2{{X: 1, Y: 1}, {X: 2, Y: 2}, {X: 1, Y: 0}, {X: 0, Y: 2}, {X: 0, Y: 0}, {X: 2, Y: 1},
		{X: 2, Y: 0}, {X: 2, Y: 0}, {X: 1, Y: 2}}))
	assert.Equal(t, []Vec2{{X: 0, Y: 0}, {X: 3, Y: 3}}, Convex([]Vec2{{X: 1, Y: 1}, {X: 3, Y: 3}, {X: 0, Y: 0}, {X: 2, Y: 2}}))
	assert.Equal(t, []Vec2{{X: 1, Y: 1}}, Convex([]Vec2{{X: 1, Y: 1}, {X: 1, Y: 1}}))
	assert.Empty(t, Convex(nil))
}

// Every point lies on the left of every side, or on it: what convex and holding all of them mean.
func TestConvexHoldsAll(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	for n := 3; n < 200; n++ {
		points := make([]Vec2, n)
		for i := range points {
			points[i] = Vec2{X: rng.NormFloat64(), Y: rng.NormFloat64()}
		}
		corners := Convex(points)
		area := 0.0
		for i, a := range corners {
			side := corners[(i+1)%len(corners)].Sub(a)
			area += a.Cross(a.Add(side)) / 2
			for _, p := range points {
				assert.GreaterOrEqual(t, side.Cross(p.Sub(a)), -1e-12, "rounding of what is a few units large")
			}
		}
		assert.Positive(t, area)
		assert.False(t, math.IsNaN(area))
	}
}
