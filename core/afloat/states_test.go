package afloat_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/bodies"
	"barkwright/core/internal/check"
)

func TestNamedStates(t *testing.T) {
	box := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.3))
	full := 4 * 0.8 * 0.3 * fresh.Density
	load := func(mass, x, z float64) afloat.Load {
		return afloat.Load{Mass: mass, Centre: geom.Vec3{X: x, Z: z}}
	}
	over := box.Float(load(full+25, 0, 0.1), fresh)
	assert.Equal(t, afloat.Overloaded, over.State)
	assert.InDelta(t, 25, over.Excess, 1e-9)
	assert.Equal(t, afloat.Overloaded, box.Righting(load(full+25, 0, 0.1), fresh, 10).State)

	assert.Equal(t, afloat.NotConverged, box.At(load(full+25, 0, 0.1), fresh, 0).State)

	down := box.Float(load(600, 0.5, 0.1), fresh)
	assert.Equal(t, afloat.Swamped, down.State)
	assert.Greater(t, down.Upright.FreeboardAt.X, 1.9, "at the bow")
	assert.Equal(t, afloat.Swamped, box.Righting(load(600, 0.5, 0.1), fresh, 10).State)

	assert.Equal(t, afloat.NotConverged, box.Float(load(100, 2.5, 0.1), fresh).State, "the load hangs outside the boat")
	assert.Equal(t, afloat.NotConverged, box.Righting(load(100, 2.5, 0.1), fresh, 10).State)
}

// A box whose sheer is D + c x^2: trimmed by a slope s it is lowest at x = s/2c, at
// D - s^2/4c above the plane amidships, exactly, since the rule there is a parabola.
func TestLowestSheerBetweenStations(t *testing.T) {
	const depth, c = 0.4, 0.02
	sections := bodies.Box(bodies.Even(4, 8), 0.8, depth)
	for i := range sections {
		rise := c * sections[i].X * sections[i].X
		sections[i].Outline = []geom.Vec2{{X: 0, Y: 0}, {X: 0.4, Y: 0}, {X: 0.4, Y: depth + rise}}
	}
	body := newBody(sections)
	for _, x := range []float64{0.03, -0.04, 0.1} {
		a := body.At(afloat.Load{Mass: 600, Centre: geom.Vec3{X: x, Z: 0.2}}, fresh, 0)
		s := a.Waterplane.Slope
		assert.InDelta(t, s/(2*c), a.FreeboardAt.X, 1e-9)
		assert.InDelta(t, (depth-a.Waterplane.Height-s*s/(4*c))*math.Cos(a.Trim), a.Freeboard, 1e-12)
	}
	assert.InDelta(t, depth, body.LowestSheer(), 1e-12)
}

func TestLoadAtFreeboard(t *testing.T) {
	box := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.5))
	boat := afloat.Load{Mass: 40, Centre: geom.Vec3{Z: 0.2}}
	for _, freeboard := range afloat.MarkedFreeboards() {
		want := 4 * 0.8 * (0.5 - freeboard) * fresh.Density
		level := box.CarriesLevel(boat, fresh, freeboard)
		require.True(t, level.Possible)
		assert.InDelta(t, want, level.Total, 1e-9)
		assert.InDelta(t, want-40, level.Payload, 1e-9)
	}
	assert.False(t, box.CarriesLevel(boat, fresh, 0.49).Possible)
}

// The load found for a freeboard, put in so that the boat lies level, leaves that
// freeboard.
func TestLoadLeavesItsFreeboard(t *testing.T) {
	body := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.5))
	boat := afloat.Load{Mass: 40, Centre: geom.Vec3{Z: 0.2}}
	for _, freeboard := range afloat.MarkedFreeboards() {
		c := body.CarriesLevel(boat, fresh, freeboard)
		f := body.Float(boat.With(afloat.Item{Mass: c.Payload, At: geom.Vec3{Z: 0.1}}), fresh)
		require.Equal(t, afloat.Floats, f.State)
		assert.InDelta(t, freeboard, f.Upright.Freeboard, 1e-9)
	}
}

func TestLoads(t *testing.T) {
	two := afloat.Total(afloat.Item{Mass: 1, At: geom.Vec3{X: 4}}, afloat.Item{Mass: 3, At: geom.Vec3{Z: 2}})
	assert.Equal(t, afloat.Load{Mass: 4, Centre: geom.Vec3{X: 1, Z: 1.5}}, two)
	assert.Equal(t, geom.Vec3{X: 1, Y: 0.5, Z: 1.5}, two.Moved(2, geom.Vec3{Y: 1}).Centre)
	assert.Equal(t, afloat.Load{}, afloat.Total())
}

func TestMisusePanics(t *testing.T) {
	point := []geom.Vec2{{X: 0, Y: 0}, {X: 1, Y: 1}}
	closed := []geom.Vec2{{X: 0, Y: 0}, {X: 1, Y: 1}, {X: 0, Y: 2}}
	at := func(x ...float64) []hull.Station {
		var s []hull.Station
		for _, x := range x {
			s = append(s, hull.Station{X: x, Outline: point})
		}
		return s
	}
	for want, stations := range map[string][]hull.Station{
		"afloat: fewer than three stations":    at(0, 1),
		"afloat: stations not increasing in x": at(0, 1, 1),
		"afloat: station without points":       {{X: 0}, {X: 1}, {X: 2}},
		"afloat: no station is open at the sheer": {{X: 0, Outline: closed}, {X: 1, Outline: closed},
			{X: 2, Outline: closed}},
	} {
		assert.PanicsWithValue(t, want, func() { afloat.NewBody(stations) })
	}
	box := newBody(bodies.Box(bodies.Even(4, 8), 0.8, 0.3))
	assert.PanicsWithValue(t, "afloat: load without mass", func() { box.At(afloat.Load{}, fresh, 0) })
	assert.PanicsWithValue(t, "afloat: a righting curve needs at least two steps",
		func() { box.Righting(afloat.Load{Mass: 1}, fresh, 1) })
	assert.PanicsWithValue(t, "afloat: a heeled plane where an upright one is asked",
		func() { box.WettedSurface(afloat.Waterplane{Heel: 0.1}) })
}

// Whatever load is put wherever, every number is a number.
func TestNeverNaN(t *testing.T) {
	body := leaning()
	r := rand.New(rand.NewPCG(1, 1))
	count := map[afloat.State]int{}
	for range 300 {
		load := afloat.Load{Mass: 1 + 1100*r.Float64(),
			Centre: geom.Vec3{X: r.NormFloat64() * 0.5, Y: r.NormFloat64() * 0.1, Z: r.Float64()}}
		f := body.Float(load, fresh)
		count[f.State]++
		check.RequireFinite(t, f)
		check.RequireFinite(t, body.Righting(load, fresh, 12))
	}
	for _, s := range []afloat.State{afloat.Floats, afloat.Overloaded, afloat.Swamped, afloat.CapsizesUpright} {
		assert.Positive(t, count[s], "%v not met", s)
	}
}

// A body that is looked at on one half, as its halves hold the same outlines, floats as one
// with copies of them does, which is looked at whole: to rounding, as the sums run in
// another order.
func TestHalvesAlikeFloatAsAWhole(t *testing.T) {
	h := hull.New(design.Default())
	at := h.Stations(40, 12)
	copies := slices.Clone(at)
	for i := range copies {
		copies[i].Outline = slices.Clone(at[i].Outline)
	}
	half, whole := afloat.NewBody(at), afloat.NewBody(copies)
	for _, mass := range []float64{30, 200, 500} {
		load := afloat.Load{Mass: mass, Centre: geom.Vec3{Z: 0.25}}
		a, okA := half.LevelStiffness(load, fresh)
		b, okB := whole.LevelStiffness(load, fresh)
		require.True(t, okA && okB)
		assert.InEpsilon(t, b, a, 1e-9)
		assert.InEpsilon(t, whole.Float(load, fresh).Upright.Draught, half.Float(load, fresh).Upright.Draught, 1e-9)
	}
}
