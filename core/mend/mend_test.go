package mend_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
)

const in = units.Inch

func boat() mend.Boat {
	c := core.Evaluate(design.Default())
	return mend.Boat{Design: c.Design, Frame: c.Frame, Bark: c.Bark, Gather: c.Gather, Season: plan.NewSeason()}
}

// A hole of 6 by 4 in, 3 ft forward on the default boat, worked out by hand: patch 9 by 7,
// its seam an ellipse of 7 1/2 by 5 1/2, stitches every half inch. Tolerances: half the last
// digit given.
func TestHole(t *testing.T) {
	r := mend.Make(boat(), tally.Damage{Kind: tally.Hole, At: 3 * units.Foot, Along: 6 * in, Round: 4 * in})
	assert.InDelta(t, 9*in, r.PatchAlong, 1e-9)
	assert.InDelta(t, 7*in, r.PatchRound, 1e-9)
	assert.InDelta(t, 20.5*in, r.Seam, 0.05*in)
	assert.Equal(t, 42, r.Stitches)
	assert.InDelta(t, 7.6*units.Foot, r.Root, 0.05*units.Foot)
	// As much on its length as on the boat's own seams: 1.77 kg on 13.92 m, of it 20.5 in.
	assert.InDelta(t, 0.066, r.Pitch, 0.0005)
	var out []int
	for _, rib := range r.Out {
		assert.True(t, rib.Forward)
		out = append(out, rib.Number)
	}
	assert.Equal(t, []int{8, 9, 10}, out, "the last fitted comes out first")
	// "Within a few hours", a leaflet of 1961; two hours for a bad break sewn and pitched by a
	// party, a journey of 1820. Tolerance: an hour either way of three.
	assert.InDelta(t, 3, r.Hours, 1)
}

// An ellipse's way round against quadrature of its definition. Tolerance: the formula is short
// by h^3/512 of it, h the square of (a-b)/(a+b), and terms of h^4: 1.4e-5 and less than half more.
func TestSeamRoundAnEllipse(t *testing.T) {
	r := mend.Make(boat(), tally.Damage{Kind: tally.Hole, Along: 10 * in, Round: 3 * in})
	a, b := (10+1.5)/2*in, (3+1.5)/2*in
	exact := 0.0
	const n = 10000
	for i := range n {
		at := (float64(i) + 0.5) / n * 2 * math.Pi
		exact += math.Hypot(a*math.Sin(at), b*math.Cos(at)) * 2 * math.Pi / n
	}
	assert.InEpsilon(t, exact, r.Seam, 2e-5)
}

// A crack of 8 in: 16 stitches at half an inch, 2.7 ft of root without its tails.
func TestCrack(t *testing.T) {
	b := boat()
	r := mend.Make(b, tally.Damage{Kind: tally.Crack, At: -2 * units.Foot, Round: 8 * in})
	assert.Equal(t, 16, r.Stitches)
	assert.InDelta(t, 2.7*units.Foot, r.Root-2*b.Design.Tail, 0.05*units.Foot)
	assert.InDelta(t, 11*in, r.PatchRound, 1e-9)
	for _, rib := range r.Out {
		assert.False(t, rib.Forward)
	}
}

// Lacing is laced again with the root of its groups; a broken rib gives one to make and the
// order in which its neighbours are slackened.
func TestLacingAndRib(t *testing.T) {
	b := boat()
	r := mend.Make(b, tally.Damage{Kind: tally.TornLacing, Groups: 3})
	assert.Equal(t, 3, r.Groups)
	assert.InDelta(t, 3*b.Frame.Lacing.Group*(1+b.Design.RootWaste), r.Root, 1e-9)
	assert.Zero(t, mend.Make(b, tally.Damage{Kind: tally.TornLacing, Groups: -1}).Root)

	r = mend.Make(b, tally.Damage{Kind: tally.BrokenRib, At: 3 * units.Foot})
	// Where it is mended no rib stands nearer to the place entered.
	for _, f := range b.Frame.Ribs {
		assert.GreaterOrEqual(t, math.Abs(f.Run-3*units.Foot), math.Abs(r.Damage.At-3*units.Foot))
	}
	assert.True(t, r.Broken.Forward)
	for _, f := range b.Frame.Ribs {
		if f.Number == r.Broken.Number {
			assert.Equal(t, f.Run, r.Damage.At)
		}
	}
	assert.NotNil(t, r.New)
	assert.Len(t, r.Out, 3)
	assert.False(t, r.Out[len(r.Out)-1].Slack, "the broken one is the last to come free")
	for i := range r.Out[1:] {
		assert.Greater(t, r.Out[i].Order, r.Out[i+1].Order)
	}
}

// Whatever is entered gives finite numbers, none less than zero.
func TestAnyDamage(t *testing.T) {
	b := boat()
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		for _, at := range []float64{-100, -1, 0, 1, 100} {
			for _, size := range []float64{-1, 0, 0.05, 10} {
				r := mend.Make(b, tally.Damage{Kind: k, At: at, Along: size, Round: size, Groups: int(10 * size)})
				for _, v := range []float64{r.PatchAlong, r.PatchRound, r.Seam, r.Root, r.Pitch, r.Hours} {
					assert.True(t, v >= 0 && !math.IsInf(v, 0), "%v", r)
				}
			}
		}
	}
}
