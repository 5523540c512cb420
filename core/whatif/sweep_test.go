package whatif_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/whatif"
)

func swept(t *testing.T, d design.Design, key string, s units.System, whole bool) *whatif.Sweep {
	t.Helper()
	w, ok := whatif.NewSweep(d, key, s, whole)
	require.True(t, ok, key)
	require.True(t, w.Run(nil))
	return w
}

// Every sample is the boat with the control set there, on a step of the control, and what was
// worked out is what that boat gives by itself.
func TestSamplesAreTheBoat(t *testing.T) {
	for _, s := range []units.System{units.Imperial16, units.Metric} {
		w := swept(t, design.Default(), "depth", s, false)
		assert.GreaterOrEqual(t, len(w.Samples), 25)
		assert.LessOrEqual(t, len(w.Samples), 48)
		step := w.Param.Step(s)
		for i, sample := range w.Samples {
			n := (sample.At - w.Param.Min) / step
			if sample.At != w.Present() {
				assert.InDelta(t, math.Round(n), n, 1e-9)
			}
			if i > 0 {
				assert.Greater(t, sample.At, w.Samples[i-1].At)
			}
			if i%12 == 0 && sample.Fault == nil {
				c := core.Evaluate(w.Param.Set(design.Default(), sample.At))
				all := answer.All(c)
				for _, n := range sample.Numbers {
					for _, m := range all {
						if m.Key == n.Key {
							assert.InDelta(t, m.Value, n.Value, 1e-12, n.Key)
						}
					}
				}
			}
		}
		assert.LessOrEqual(t, w.Low, 0.76*design.Default().Depth)
	}
}

// Drawn straight from point to point, a curve is near one worked out at every step: freeboard
// and load within a hundredth of the picture's height. Common practice, no published source.
func TestCurvesAreNearDenseOnes(t *testing.T) {
	d := design.Default()
	w := swept(t, d, "depth", units.Imperial16, false)
	for _, c := range w.Curves() {
		if c.Number.Key != "afloat.freeboard" && c.Number.Key != "afloat.loadAtSixInches" && c.Number.Key != "ribs.longest" {
			continue
		}
		for v := w.Low; v <= w.High; v += 3 * w.Param.StepInch {
			boat, faults := core.Try(w.Param.Set(d, v))
			require.Empty(t, faults)
			for _, n := range answer.All(boat) {
				if n.Key == c.Number.Key {
					assert.InDelta(t, n.Value, at(c.Points, v), 0.01*(c.High-c.Low), "%s at %v", n.Key, v/inch)
				}
			}
		}
	}
}

// at is a curve's value between its points.
func at(points []whatif.Point, v float64) float64 {
	for i := 1; i < len(points); i++ {
		if a, b := points[i-1], points[i]; v <= b.At {
			return a.Value + (b.Value-a.Value)*(v-a.At)/(b.At-a.At)
		}
	}
	return points[len(points)-1].Value
}

// The wall and the turns are where one step farther the boat cannot be built, or the word is
// another.
func TestWallsAndTurnsToAStep(t *testing.T) {
	d := design.Default()
	w := swept(t, d, "rocker", units.Imperial16, true)
	walls := w.Walls()
	require.Len(t, walls, 1)
	assert.InDelta(t, w.High, walls[0].At, 1e-9)
	assert.Empty(t, core.Validate(w.Param.Set(d, walls[0].At)))
	faults := core.Validate(w.Param.Set(d, walls[0].At+w.Param.StepInch))
	require.NotEmpty(t, faults)
	assert.Equal(t, faults[0].Message(units.Imperial16), walls[0].Fault.Message(units.Imperial16))

	w = swept(t, d, "beam", units.Imperial16, false)
	curve := w.Curves()[0]
	require.Equal(t, "afloat.gm", curve.Number.Key)
	word := func(v float64) string {
		for _, c := range answer.Checks(core.Evaluate(w.Param.Set(d, v))) {
			if c.Key == "afloat.steady" {
				return c.Word
			}
		}
		return ""
	}
	require.Greater(t, len(curve.Bands), 1)
	for i, b := range curve.Bands {
		assert.Equal(t, b.Word, word(b.First))
		assert.Equal(t, b.Word, word(b.Last))
		if i > 0 {
			before := curve.Bands[i-1]
			assert.InDelta(t, w.Param.StepInch, b.First-before.Last, 1e-9, "found to a step")
			assert.InDelta(t, before.Right, b.Left, 1e-12, "nothing between them")
			assert.NotEqual(t, before.Word, b.Word)
		}
	}
	assert.InDelta(t, w.Low, curve.Bands[0].Left, 1e-12)
	assert.InDelta(t, w.High, curve.Bands[len(curve.Bands)-1].Right, 1e-12)
}

// A band ends at the wall, not beyond it; a result that nothing judges has none.
func TestBandsEndAtWalls(t *testing.T) {
	w := swept(t, design.Default(), "rocker", units.Imperial16, true)
	for _, c := range w.Curves() {
		for _, b := range c.Bands {
			assert.LessOrEqual(t, b.Right, w.High+1e-12, c.Number.Key)
		}
		if c.Number.Key == "seams.total" || c.Number.Key == "post.end" {
			assert.Empty(t, c.Bands, c.Number.Key)
		}
	}
}

// Counts and choices are tried one by one.
func TestWholesOneByOne(t *testing.T) {
	w := swept(t, design.Default(), "stemLaminations", units.Imperial16, false)
	for i, s := range w.Samples {
		assert.InDelta(t, float64(i+1), s.At, 1e-9)
	}
	assert.True(t, w.Curves()[0].Whole)
	odd := swept(t, design.Default(), "thwarts", units.Metric, false)
	for i, s := range odd.Samples {
		assert.InDelta(t, 1, math.Mod(s.At, 2), 1e-9)
		if i > 0 {
			assert.InDelta(t, 2, s.At-odd.Samples[i-1].At, 1e-9, "none left out")
		}
	}
	posture := swept(t, design.Default(), "posture", units.Metric, false)
	assert.Len(t, posture.Samples, 3)
	_, ok := whatif.NewSweep(design.Default(), "greatestBeam", units.Metric, false)
	assert.False(t, ok, "sides that do not bulge")
	_, ok = whatif.NewSweep(design.Default(), "no such", units.Metric, false)
	assert.False(t, ok)
}

// Cut off, it leaves what stands, and the present boat comes first.
func TestCutOff(t *testing.T) {
	w, ok := whatif.NewSweep(design.Default(), "beam", units.Imperial16, false)
	require.True(t, ok)
	n := 0
	assert.False(t, w.Run(func() bool { n++; return n < 3 }))
	require.Len(t, w.Samples, 3)
	assert.NotEmpty(t, w.Curves())
	assert.InDelta(t, design.Default().Beam, w.Samples[1].At, 1e-12)
	assert.True(t, w.Run(nil), "it can go on")
	assert.GreaterOrEqual(t, len(w.Samples), 25)
}

// A result that hardly moves lies flat, one that moves fills its picture no less than its due.
func TestHeights(t *testing.T) {
	w := swept(t, check.With(t), "depth", units.Imperial16, false)
	for _, c := range w.Curves() {
		assert.False(t, c.Hardly, c.Number.Key)
		for _, p := range c.Points {
			assert.True(t, c.Low <= p.Value && p.Value <= c.High, c.Number.Key)
		}
	}
	w = swept(t, check.With(t), "stature", units.Imperial16, false)
	assert.Less(t, w.Curves()[0].Low, w.Curves()[0].High)
	assert.InDelta(t, w.Low, w.Nearest(-3), 1e-12)
	assert.InDelta(t, w.High, w.Nearest(99), 1e-12)
}
