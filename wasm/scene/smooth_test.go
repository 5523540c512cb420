package scene_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// Points of a circle twelve degrees apart are joined along the circle: a straight piece is
// off it by 1 - cos(6 deg) = 0.0055 of the radius, the curve by a tenth of that at most. The
// middle of a circle's arc is a closed form.
func TestSmoothFollowsACircle(t *testing.T) {
	var arc []geom.Vec2
	for i := range 16 {
		sin, cos := math.Sincos(float64(i) * 12 * math.Pi / 180)
		arc = append(arc, geom.Vec2{X: cos, Y: sin})
	}
	smooth := scene.Smooth(arc)
	assert.Greater(t, len(smooth), 3*len(arc))
	for i, q := range smooth[4 : len(smooth)-4] {
		assert.InDelta(t, 1, q.Len(), 0.00055, "point %d", i+4)
	}
}

// A corner stays where it is, and straight lines get no more points.
func TestSmoothKeepsCorners(t *testing.T) {
	square := []geom.Vec2{{}, {X: 1}, {X: 2}, {X: 2, Y: 1}, {X: 2, Y: 2}}
	assert.Equal(t, square, scene.Smooth(square))
	assert.Equal(t, square[:2], scene.Smooth(square[:2]))
}
