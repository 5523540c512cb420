package core_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// The spread of the stiffness holds the stiffness, is what the section and the crew's
// height make of it, and is the section's alone where there is no crew.
func TestSpreadOfTheStiffness(t *testing.T) {
	a := core.Evaluate(design.Default()).Afloat
	assert.Less(t, a.GMLow, a.Floated.GM)
	assert.Greater(t, a.GMHigh, a.Floated.GM)
	// The crew's part by hand: their share of the mass times five centimetres.
	posture := 2 * design.AverageMass / a.Load.Mass * 0.05
	assert.Greater(t, a.Floated.GM-a.GMLow, posture)
	empty := core.Evaluate(check.With(t, "paddlers", 0.0)).Afloat
	assert.LessOrEqual(t, empty.GMLow, empty.Floated.GM)

	// Both boats that bound it, worked out whole, differ by as much as the coarse ones: to
	// a millimetre, where the spread itself is tens.
	narrow := core.Evaluate(core.Spread(design.Default(), 1))
	broad := core.Evaluate(core.Spread(design.Default(), -1))
	section := func(c core.Canoe) float64 {
		gm, ok := c.Afloat.Body.LevelStiffness(a.Load, a.Water)
		assert.True(t, ok)
		return gm
	}
	plain, _ := a.Body.LevelStiffness(a.Load, a.Water)
	assert.InDelta(t, math.Hypot(plain-section(narrow), posture), a.Floated.GM-a.GMLow, 0.001)
	assert.InDelta(t, math.Hypot(section(broad)-plain, posture), a.GMHigh-a.Floated.GM, 0.001)
}

// The section's own part was worked out before this was written, in a prototype, for a
// frame of 25 in: GM 3.37, with the girth's ease at 1.2 in and the bilge at 0.76 1.50, with
// no ease and 0.64 5.41. No published source. Within 0.05 in, as the boat's own weight was
// taken a tenth lighter then.
func TestSpreadOfTheSection(t *testing.T) {
	d := check.With(t, "frameWidth", 25*units.Inch)
	for way, want := range map[float64]float64{1: 1.50, 0: 3.37, -1: 5.41} {
		other := core.Spread(d, way)
		assert.InDelta(t, (0.6+0.6*way)*units.Inch, other.Ease, 1e-9)
		assert.InDelta(t, 0.7+0.06*way, other.Bilge, 1e-9)
		assert.InDelta(t, want, core.Evaluate(other).Afloat.Floated.GM/units.Inch, 0.05)
	}
}

// A taller crew kneels higher: 10 % of 0.37 m, in a boat with nothing else aboard.
func TestStatureRaisesTheCrew(t *testing.T) {
	gm := func(stature float64) (float64, core.Afloat) {
		a := core.Evaluate(check.With(t, "cargo", 0.0, "stature", stature)).Afloat
		return a.Floated.GM, a
	}
	usual, a := gm(design.ModelStature)
	tall, _ := gm(1.1 * design.ModelStature)
	assert.InDelta(t, 0.037*2*design.AverageMass/a.Load.Mass, usual-tall, 1e-9)
}

// Choosing to sit on a seat sets one, and kneeling takes it away; one of no height is
// refused with what fits, and a boat kept with one opens with the usual seat.
func TestASeatHasAHeight(t *testing.T) {
	d := check.With(t, "posture", float64(design.SittingOnSeat))
	assert.Equal(t, design.UsualSeat, d.SeatHeight)
	assert.Equal(t, design.UsualSeat, d.Aboard[0].SeatHeight)
	assert.Less(t, core.Evaluate(d).Afloat.Floated.GM, core.Evaluate(design.Default()).Afloat.Floated.GM,
		"a seat makes no boat steadier")
	assert.Zero(t, check.Of(t, d, "posture", float64(design.Kneeling)).SeatHeight)

	none := check.Of(t, d, "seatHeight", 0.0)
	faults := core.Validate(none)
	assert.Len(t, faults, 1)
	assert.Equal(t, "seatHeight", faults[0].Key)
	assert.Contains(t, faults[0].Message(units.Imperial16), `3"`)
	low := check.Of(t, d, "paddler2Seat", 1*units.Inch)
	assert.Equal(t, "paddler2Seat", core.Validate(low)[0].Key)
	assert.Equal(t, d, design.Seated(none))
	assert.Equal(t, low, design.Seated(low), "one that has a height is not touched")
	assert.Equal(t, afloat.Floats, core.Evaluate(d).Afloat.Floated.Upright.State)
}

// The boats that bound the spread are those that their designs give, their stations at the
// places of the boat itself too.
func TestResectionedIsTheBoat(t *testing.T) {
	h := hull.New(design.Default())
	at := h.Places(40, 12)
	for _, way := range []float64{1, -1} {
		d := core.Spread(design.Default(), way)
		assert.NotEqual(t, design.Default().TurnWidth, d.TurnWidth)
		whole, quick := hull.New(d), h.Resectioned(func(other *design.Design) { *other = d })
		for x := 0.0; x < whole.HeadX; x += 0.1 {
			v := whole.ColumnAtEdge(min(x, whole.GunwaleX))
			assert.Equal(t, whole.Column(v).Section, quick.Column(v).Section, x)
		}
		assert.Equal(t, whole.Stations(40, 12), quick.StationsAt(&at))
	}
}
