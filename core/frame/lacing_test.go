package frame_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// One turn by hand on the default, inches: across inwale 1, outwale 1/2 and bark
// 0.14 twice, down 1 and 1/4 to the hole, there and back, and once round a circle
// a quarter of the root's 3/16 in radius: 2 (1.78 + 1.25) + pi (3/16)/2 = 6.3545.
// A group of four holes twice through: 8 turns, the one it starts with, two tails
// of 3: 9 x 6.3545 + 6 = 63.1907.
func TestTurnAndGroupByHand(t *testing.T) {
	_, f := build(design.Default())
	assert.InDelta(t, 6.3545, f.Lacing.Turn/inch, 0.00005)
	assert.InDelta(t, 63.1907, f.Lacing.Group/inch, 0.00005)
	assert.InDelta(t, float64(f.Lacing.Count)*f.Lacing.Group, f.Lacing.Total, rounding)
	assert.InDelta(t, 1.15*f.Lacing.Total, f.Lacing.WithWaste, rounding)
}

// A 15 ft canoe with 40 ribs: lacing of 400 to 450 ft before waste. Common
// practice, no published source; with the seams it makes the 500 to 600 ft of
// split root that is spoken of.
func TestFifteenFootCanoesLacing(t *testing.T) {
	_, f := build(check.With(t, "length", 15*foot, "ribs", 40.0))
	t.Logf("lacing %.0f ft in %d groups, %d pegs", f.Lacing.Total/foot, f.Lacing.Count, f.Lacing.Pegs)
	assert.Equal(t, 82, f.Lacing.Count)
	assert.GreaterOrEqual(t, f.Lacing.Total/foot, 400.0)
	assert.LessOrEqual(t, f.Lacing.Total/foot, 450.0)
}

// Ribs and one more a side, and one more where an odd rib splits its group.
// Common practice, no published source.
func TestGroupsByRibs(t *testing.T) {
	for _, ribs := range []int{38, 39, 40, 41, 44, 45} {
		for _, thwarts := range []float64{3, 5, 7} {
			_, f := build(check.With(t, "thwarts", thwarts, "ribs", float64(ribs)))
			assert.Equal(t, 2*(ribs+1+ribs%2), f.Lacing.Count, "%d ribs, %v thwarts", ribs, thwarts)
			at := map[int]int{}
			for _, g := range f.Lacing.Groups {
				at[g.Thwart]++
				if g.Thwart >= 0 {
					assert.InDelta(t, f.Thwarts[g.Thwart].Run, g.Run, rounding)
				}
			}
			for i := range f.Thwarts {
				assert.Equal(t, 1, at[i], "one group at thwart %d of %v", i, thwarts)
			}
		}
	}
}

// Four holes about half an inch apart make about an inch and a half; ribs stand
// between groups; every other group is pegged. Common practice, no published source. None past the
// end thwarts: Adney and Chapelle 1964, p. 48.
func TestHolesAndPegs(t *testing.T) {
	for _, ribs := range []float64{44, 45} {
		h, f := build(check.With(t, "ribs", ribs))
		require.Empty(t, frame.Faults(h))
		pegs := 0
		for i, g := range f.Lacing.Groups {
			require.Len(t, g.Holes, 4)
			if i > 0 || ribs == 44 {
				assert.InDelta(t, 1.5, (g.Holes[3]-g.Holes[0])/inch, rounding)
			}
			assert.InDelta(t, g.Run, h.RunTo(g.X), byKnots)
			assert.Equal(t, i%2 == 0 && g.Run <= f.Thwarts[2].Run, g.Pegged)
			if g.Pegged {
				pegs += 4
			}
		}
		last := f.Lacing.Groups[len(f.Lacing.Groups)-1]
		assert.Greater(t, last.Run, f.Thwarts[2].Run, "or there is none to leave out")
		assert.Equal(t, pegs-2, f.Lacing.Pegs, "the middle group stands once a side, the others twice")
		standsClear(t, h.Design, f)
	}
	_, third := build(check.With(t, "pegEvery", 3.0))
	assert.False(t, third.Lacing.Groups[1].Pegged || third.Lacing.Groups[2].Pegged)
	assert.True(t, third.Lacing.Groups[3].Pegged)
}

// The split group by hand: tips of 1 in, holes 1/2 apart: 1/4 clear of the tip,
// so 3/4 and 1 1/4 either side. The next group stands midway of what is left up
// to the tip of the next rib.
func TestGroupSplitRoundTheMiddleRib(t *testing.T) {
	_, f := build(check.With(t, "ribs", 45.0))
	for i, want := range []float64{-1.25, -0.75, 0.75, 1.25} {
		assert.InDelta(t, want, f.Lacing.Groups[0].Holes[i]/inch, rounding)
	}
	next := f.Lacing.Groups[1]
	before := next.Holes[0] - 1.25*inch
	after := f.Ribs[1].Run - 0.5*inch - next.Holes[3]
	assert.InDelta(t, before, after, rounding)
	assert.Greater(t, before, 0.0)
	_, five := build(check.With(t, "ribs", 45.0, "groupHoles", 5.0))
	for i, want := range []float64{-1.25, -0.75, 0.75, 1.25, 1.75} {
		assert.InDelta(t, want, five.Lacing.Groups[0].Holes[i]/inch, rounding)
	}
}

// standsClear checks that no hole stands under the tip of a rib, that each group is
// wholly between two, and that holes follow one another along the gunwale.
func standsClear(t *testing.T, d design.Design, f frame.Frame) {
	t.Helper()
	last := math.Inf(-1)
	for _, g := range f.Lacing.Groups {
		for _, hole := range g.Holes {
			require.Greater(t, hole, last)
			last = hole
			for _, r := range f.Ribs {
				require.GreaterOrEqual(t, math.Abs(hole-r.Run), d.RibTipWidth/2-rounding, "rib %d, hole %v", r.Number, hole)
			}
		}
	}
	require.Less(t, last, f.Headboard.Run)
}

// Where space is short the design is at fault and says how many holes fit; with
// no fault no hole is under a rib.
func TestNoHoleUnderARib(t *testing.T) {
	source := rand.New(rand.NewPCG(3, 3))
	short, even, odd := 0, 0, 0
	for range 600 {
		h := sound(source)
		faults := frame.Faults(h)
		if len(faults) == 1 && faults[0].Key == "groupHoles" && faults[0].HasFit {
			short++
			d := h.Design
			d.GroupHoles = int(faults[0].Fit)
			h = hull.New(d)
			faults = frame.Faults(h)
			require.Empty(t, faults, "what is offered fits")
			d.GroupHoles++
			require.NotEmpty(t, frame.Faults(hull.New(d)), "and one more does not")
		}
		if faults != nil {
			continue
		}
		if h.Design.Ribs%2 == 1 {
			odd++
		} else {
			even++
		}
		standsClear(t, h.Design, frame.Build(h))
	}
	t.Logf("%d mended, %d even, %d odd", short, even, odd)
	assert.Greater(t, short, 5)
	assert.Greater(t, even, 50)
	assert.Greater(t, odd, 50)
}
