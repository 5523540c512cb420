package whatif_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/diff/fd"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/whatif"
)

func costs(d design.Design) *whatif.Costs {
	c := whatif.NewCosts(d)
	for c.Next() {
	}
	return c
}

func costOf(t *testing.T, all []whatif.Cost, key string) whatif.Cost {
	t.Helper()
	for _, c := range all {
		if c.Param.Key == key {
			return c
		}
	}
	require.Fail(t, "no cost of "+key)
	return whatif.Cost{}
}

// The slopes are gonum's, by its own central differences, where results do not step.
func TestSlopesAreGonums(t *testing.T) {
	d := design.Default()
	all := costs(d)
	for _, key := range []string{"depth", "beam", "rocker"} {
		cost := costOf(t, all.Lengths, key)
		assert.False(t, cost.OneSided)
		for _, result := range []string{"bark.width", "ribs.longest", "afloat.freeboard", "afloat.gm"} {
			f := func(v float64) float64 {
				for _, n := range answer.All(core.Evaluate(lookup(key).Nudge(d, v))) {
					if n.Key == result {
						return n.Value
					}
				}
				return math.NaN()
			}
			p := lookup(key)
			want := fd.Derivative(f, p.Get(&d), &fd.Settings{Formula: fd.Central, Step: inch / 2}) * inch
			got := cost.Slopes[slices.Index(whatif.Costed(), result)]
			assert.InDelta(t, want, got, 1e-9*inch, "%s by %s", result, key)
		}
	}
}

// An inch of depth is an inch of side twice: rib and sheet grow by nearly two, and freeboard by
// nearly one, less what the boat sinks under its own new weight. From the shape, by hand: nearly two
// is 1.8 to 2, and nearly one 0.9 to 1.
func TestAnInchOfDepth(t *testing.T) {
	c := costOf(t, costs(design.Default()).Lengths, "depth")
	of := func(result string) float64 { return c.Slopes[slices.Index(whatif.Costed(), result)] / inch }
	assert.InDelta(t, 1.9, of("bark.width"), 0.1)
	assert.InDelta(t, 1.9, of("ribs.longest"), 0.1)
	assert.InDelta(t, 0.95, of("afloat.freeboard"), 0.05)
	assert.InDelta(t, units.Inch, c.Per, 0)
}

// At a wall the slope is one-sided and says so; what it cannot have stays out.
func TestOneSided(t *testing.T) {
	d := check.With(t, "rocker", 0.0)
	assert.True(t, costOf(t, costs(d).Lengths, "rocker").OneSided)
	pieces := costs(design.Default()).Pieces
	ribs := costOf(t, pieces, "ribs")
	assert.InDelta(t, 1, ribs.Per, 0)
	assert.Positive(t, ribs.Slopes[slices.Index(whatif.Costed(), "root.total")])
	assert.InDelta(t, 2, costOf(t, pieces, "thwarts").Per, 0)
}

// A size is told by its own step: a sixteenth of an inch more of the inwales' thickness is a sixteenth of an
// inch of board. What an inch of each weighs stays the same, by gonum's differences over the same run.
func TestSizesByTheirStep(t *testing.T) {
	d := design.Default()
	all := costs(d)
	for _, c := range all.Lengths {
		assert.Greater(t, (c.Param.Max-c.Param.Min)/inch, 4.0, c.Param.Key)
		assert.Equal(t, inch, c.Per)
	}
	// One heading names the step of all of them.
	for _, c := range all.Sizes {
		assert.InDelta(t, inch/16, c.Per, 1e-12, c.Param.Key)
		assert.InDelta(t, 0.001, c.Param.Step(units.Metric), 1e-12, c.Param.Key)
	}
	cost := costOf(t, all.Sizes, "inwaleThickness")
	p := lookup("inwaleThickness")
	f := func(v float64) float64 {
		for _, n := range answer.All(core.Evaluate(p.Nudge(d, v))) {
			if n.Key == "weight.total" {
				return n.Value
			}
		}
		return math.NaN()
	}
	want := fd.Derivative(f, p.Get(&d), &fd.Settings{Formula: fd.Central, Step: 1.5 * inch / 16}) * inch / 16
	assert.InDelta(t, want, cost.Slopes[slices.Index(whatif.Costed(), "weight.total")], 1e-9)
}

// Ranked by a result, the one that moves it most comes first.
func TestRanked(t *testing.T) {
	all := costs(design.Default()).Lengths
	i := slices.Index(whatif.Costed(), "afloat.gm")
	ranked := whatif.Ranked(all, "afloat.gm")
	require.Len(t, ranked, len(all))
	for j := 1; j < len(ranked); j++ {
		assert.GreaterOrEqual(t, math.Abs(ranked[j-1].Slopes[i]), math.Abs(ranked[j].Slopes[i]))
	}
	assert.Equal(t, all, whatif.Ranked(all, "no such"))
}
