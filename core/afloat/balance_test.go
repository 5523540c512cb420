package afloat

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// From a start without a waterplane Newton's step does not exist. Bisection then finds
// the attitude that Newton finds from a better start.
func TestBalanceFromABadStart(t *testing.T) {
	outline := []geom.Vec2{{X: 0, Y: 0}, {X: 0.4, Y: 0}, {X: 0.4, Y: 0.5}}
	var stations []hull.Station
	for _, x := range []float64{-2, -1, 0, 1, 2} {
		stations = append(stations, hull.Station{X: x, Outline: outline})
	}
	b := NewBody(stations)
	load := Load{Mass: 600, Centre: geom.Vec3{X: 0.05, Z: 0.25}}
	const volume = 0.6

	good, _, ok := b.upright.newton(volume, load, Waterplane{Height: 0.2})
	require.True(t, ok)
	_, _, ok = b.upright.newton(volume, load, Waterplane{Height: 3})
	require.False(t, ok)
	got, m, ok := b.upright.balance(volume, load, Waterplane{Height: 3})
	require.True(t, ok)
	assert.InDelta(t, good.Height, got.Height, 2*stepTolerance)
	assert.InDelta(t, good.Slope*2, got.Slope*2, 2*stepTolerance)
	assert.InDelta(t, volume, m.volume, 1e-6)

	_, _, ok = b.upright.balance(volume, Load{Mass: 600, Centre: geom.Vec3{X: 3}}, Waterplane{Height: 0.2})
	assert.False(t, ok, "the load hangs outside the boat")
}
