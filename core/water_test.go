package core_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// The curves agree with what the step of the slider found, point by point.
func TestCurvesAgreeWithTheBoatUpright(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	require.Equal(t, afloat.Floats, w.Righting.State)
	first, second := w.Righting.Points[0], w.Righting.Points[1]
	assert.InDelta(t, c.Afloat.Floated.Upright.Draught, first.Draught, 2e-8, "both are searched to 1e-8 m")
	// The arm's slope upright is GM; over 2 1/2 degrees it moves by some hundredths.
	assert.InEpsilon(t, c.Afloat.Floated.GM, second.Arm/second.Waterplane.Heel, 0.05)
	require.True(t, w.Righting.Swamps)
	assert.InDelta(t, 0, w.Righting.Swamped.Freeboard, 1e-9)
	for i, marked := range []int{3, 4, 6, 8} {
		assert.InDelta(t, c.Afloat.Carries[i].Payload, w.Carries[marked].Payload, 1e-9)
	}
	for i := 1; i < len(w.Carries); i++ {
		assert.Less(t, w.Carries[i].Total, w.Carries[i-1].Total, "less load leaves more freeboard")
	}
}

// A paddler of mass m leaning out by d brings a stiff boat to rest where the
// righting arm is m d cos(heel) over the whole mass: elementary statics.
func TestLeanBalances(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	require.Equal(t, afloat.Floats, w.Lean.State)
	heel := w.Lean.Rest.Waterplane.Heel
	assert.Positive(t, heel)
	arm := c.Afloat.Body.At(c.Afloat.Load, c.Afloat.Water, heel).Arm
	m := c.Afloat.Heaviest().Mass
	// Heels are searched to 1e-9 rad, how the boat lies at each to 1e-8 m.
	assert.InDelta(t, m*core.LeanDistance*math.Cos(heel)/c.Afloat.Load.Mass, arm, 1e-7)

	// What is said to be the most holds the boat, a little more does not.
	leaning := func(by float64) afloat.State {
		return c.Afloat.Body.Float(c.Afloat.Load.Moved(m, geom.Vec3{Y: -by}), c.Afloat.Water).State
	}
	assert.Equal(t, afloat.Floats, leaning(w.LeanMost-0.0005))
	assert.Equal(t, afloat.Swamped, leaning(w.LeanMost+0.0005))
}

// Each named state is met, and named.
func TestStatesOnTheWater(t *testing.T) {
	d := design.Default()
	state := func(d design.Design) afloat.State { return core.Evaluate(d).Afloat.Floated.State }
	assert.Equal(t, afloat.Floats, state(d))
	assert.Equal(t, afloat.Overloaded, state(set(t, d, "cargo", 4000*units.Pound)))
	assert.Equal(t, afloat.CapsizesUpright, state(set(t,
		set(t, set(t, d, "cargo", 300*units.Pound), "cargoHeight", 36*units.Inch), "beam", 22*units.Inch)))
	assert.Equal(t, afloat.NotConverged, state(set(t,
		set(t, set(t, d, "cargo", 600*units.Pound), "cargoPosition", 180*units.Inch), "paddlers", 0)))
	bow := set(t, set(t, d, "paddler1Place", 60*units.Inch), "paddler2Place", 60*units.Inch)
	assert.Equal(t, afloat.Swamped, state(bow))
	none := core.OnWater(core.Evaluate(set(t, set(t, d, "paddlers", 0), "cargo", 0)))
	assert.NotEmpty(t, none.Moving.Curve, "an empty boat can be towed")
	assert.Empty(t, none.Moving.Day.Distance)
}

// Whatever boat is drawn and whoever is aboard, every number is a number.
func TestWaterNeverNaN(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	states := map[afloat.State]int{}
	for n := 0; n < 60; {
		d := check.NearDesign(r, design.Default(), 0.3)
		if core.Validate(d) != nil {
			continue
		}
		n++
		c := core.Evaluate(d)
		states[c.Afloat.Floated.State]++
		w := core.OnWater(c)
		c.Afloat.Body = nil
		check.RequireFinite(t, c.Afloat)
		check.RequireFinite(t, w)
	}
	t.Log(states)
	assert.Positive(t, states[afloat.Floats])
	assert.Greater(t, len(states), 2, "the states are met too")
}

// The curves come within 100 ms of the last step in the browser: 15 ms native is
// half of that at its usual two and a half times.
func BenchmarkOnWater(b *testing.B) {
	c := core.Evaluate(design.Default())
	b.ReportAllocs()
	for b.Loop() {
		core.OnWater(c)
	}
}

// Nobody leans outside the boat: the 24 ft one is so stiff that the hips reach the
// gunwale first, the default is not.
func TestLeanEndsAtTheGunwale(t *testing.T) {
	c := core.Evaluate(design.Starting()[2])
	w := core.OnWater(c)
	assert.True(t, w.ToGunwale)
	assert.Equal(t, c.Hull.HalfBeam(c.Afloat.Heaviest().At.X), w.LeanMost)
	assert.Less(t, w.LeanMost, c.Design.Beam/2+1e-9)
	assert.False(t, core.OnWater(core.Evaluate(design.Default())).ToGunwale)
}
