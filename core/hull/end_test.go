package hull_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// Over the whole reach of endFull and the setback the end bends one way only, its
// tightest radius is a plain number, and above an endFull of 0.4 it is not tightest
// at the heel, where the stem's splits start. Laws of this project.
func TestEndCurve(t *testing.T) {
	for _, heel := range []float64{24, 30, 40} {
		for full := 0.2; full <= 1.001; full += 0.05 {
			for setback := 0.0; setback <= 14; setback++ {
				d := check.With(t, "overhang", 16*inch, "heelLength", heel*inch, "endFull", full, "headSetback", setback*inch)
				require.Empty(t, faultsOf(d), "heel %v full %v setback %v", heel, full, setback)
				e := hull.New(d).End
				require.False(t, math.IsInf(e.TightestRadius, 0))
				require.Positive(t, e.TightestRadius)
				most := 0.0
				for i := 0; i <= 2000; i++ {
					k := e.Curvature(float64(i) / 2000)
					require.GreaterOrEqual(t, k, -1e-9, "heel %v full %v setback %v at %v", heel, full, setback, float64(i)/2000)
					most = max(most, k)
				}
				assert.InDelta(t, 1/most, e.TightestRadius, 1e-3/most, "against a plain dense search")
				if full > 0.401 {
					assert.Greater(t, e.TightestAt, 0.01, "heel %v full %v setback %v", heel, full, setback)
				}
			}
		}
	}
}

// The end meets the bottom with no corner, ends at the head and reaches half the
// length overall.
func TestEndMeetsItsNeighbours(t *testing.T) {
	for _, h := range buildable(60, 8) {
		d := &h.Design
		require.InDelta(t, h.HeelX, h.End.At(0).X, 1e-12)
		require.InDelta(t, h.Bottom(h.HeelX), h.End.At(0).Y, 1e-12)
		slope := h.End.Derivative(0)
		require.InDelta(t, geom.Slope(h.Bottom, h.HeelX, 1e-3), slope.Y/slope.X, 1e-6)
		require.InDelta(t, h.HeadX, h.End.At(1).X, 1e-12)
		require.InDelta(t, d.EndHeight, h.End.At(1).Y, 1e-12)

		most := 0.0
		for i := 0; i <= 20000; i++ {
			most = max(most, h.End.At(float64(i)/20000).X)
		}
		require.InDelta(t, d.Length/2, most, 1e-4, "foremost point by a dense search, to 0.1 mm")
		require.InDelta(t, most, h.Foremost(), 1e-6, "the search misses by the square of its step")
	}
}

// Past the gunwale's end the top edge goes on with the sheer's slope and climbs to
// the head without falling.
func TestTopEdge(t *testing.T) {
	for _, h := range buildable(60, 9) {
		// One-sided differences good to the second order.
		side := func(step float64) float64 {
			x := h.GunwaleX
			return (-3*h.TopEdge(x) + 4*h.TopEdge(x+step) - h.TopEdge(x+2*step)) / (2 * step)
		}
		if step := 1e-5; h.HeadX-h.GunwaleX > 1000*step {
			require.InDelta(t, side(-step), side(step), 1e-4)
		}
		last := h.TopEdge(0)
		for i := 1; i <= 1000; i++ {
			z := h.TopEdge(h.HeadX * float64(i) / 1000)
			require.GreaterOrEqual(t, z, last-1e-9)
			last = z
		}
		require.InDelta(t, h.Design.EndHeight, last, 1e-9)
	}
}

// The floor goes on past the heel by the profile's lower branch: no step at the
// heel, never falling, and the lowest point of a station cut from the columns.
func TestFloorPastTheHeel(t *testing.T) {
	h := hull.New(design.Default())
	assert.InDelta(t, h.Bottom(h.HeelX), h.Floor(h.HeelX+1e-7), 1e-6, "1e-7 on, at a slope of under ten")
	last := h.Floor(h.HeelX)
	for _, s := range h.Stations(80, 24) {
		if s.X <= h.HeelX || s.X > 0.99*h.Foremost() {
			continue
		}
		floor := h.Floor(s.X)
		assert.Greater(t, floor, last)
		assert.InDelta(t, s.Outline[0].Y, floor, 0.002, "the profile's pieces and the columns' spacing")
		assert.Equal(t, floor, h.Floor(-s.X))
		last = floor
	}
}
