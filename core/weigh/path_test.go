package weigh_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/weigh"
)

const inch = units.Inch

func built(t *testing.T, d design.Design) core.Canoe {
	t.Helper()
	c, faults := core.Try(d)
	require.Empty(t, faults)
	return c
}

func number(t *testing.T, c core.Canoe, key string) answer.Number {
	t.Helper()
	for _, n := range answer.All(c) {
		if n.Key == key {
			return n
		}
	}
	require.Fail(t, "no number "+key)
	return answer.Number{}
}

// Two inches of depth lift the gunwales' ends by two more, which follow: the freeboard is all the
// depth's own, the post at the gunwale's end all what followed. By hand from the rules in the
// table of parameters.
func TestPathOfDepth(t *testing.T) {
	held, now := built(t, design.Default()), built(t, check.With(t, "depth", 14.5*inch))
	moved, followers := weigh.Moved(held.Design, now.Design, nil)
	assert.Equal(t, []string{"depth"}, moved)
	assert.Contains(t, followers, "gunwaleEndHeight")
	assert.Contains(t, followers, "endHeight")
	steps := weigh.Path(held, now, moved)
	require.Len(t, steps, 2)
	assert.Equal(t, []string{"depth"}, steps[0].Keys)
	assert.False(t, steps[0].Along)
	assert.Empty(t, steps[1].Keys)
	assert.Equal(t, now.Design, steps[1].Canoe.Design)
	own := steps[0].Canoe
	assert.Equal(t, held.Design.GunwaleEndHeight, own.Design.GunwaleEndHeight)
	post := func(c core.Canoe) float64 { return number(t, c, "post.end").Value }
	// Shown to a sixteenth: within half of that.
	assert.InDelta(t, post(held), post(own), inch/32)
	assert.InDelta(t, 2*inch, post(now)-post(own), inch/32)
	freeboard := func(c core.Canoe) float64 { return number(t, c, "afloat.freeboard").Value }
	// What followed weighs under 2 lb, on a water plane that takes over 100 lb to the inch.
	assert.InDelta(t, freeboard(now)-freeboard(held), freeboard(own)-freeboard(held), 0.02*inch)
	assert.Greater(t, freeboard(own)-freeboard(held), 1.7*inch)
}

// A control that was set and is let go counts as moved; one of the crew's weights moves each
// paddler's with it.
func TestPathOfSetAndOfCrew(t *testing.T) {
	held := built(t, check.With(t, "gunwaleEndHeight", 22*inch))
	now := built(t, design.Default())
	moved, _ := weigh.Moved(held.Design, now.Design, nil)
	assert.Equal(t, []string{"gunwaleEndHeight"}, moved)
	steps := weigh.Path(held, now, moved)
	assert.Equal(t, now.Design, steps[len(steps)-1].Canoe.Design)

	heavy := built(t, check.With(t, "paddlerMass", 100.0))
	moved, _ = weigh.Moved(now.Design, heavy.Design, nil)
	require.Equal(t, []string{"paddlerMass"}, moved)
	steps = weigh.Path(now, heavy, moved)
	require.Len(t, steps, 1)
	assert.Equal(t, []string{"paddlerMass"}, steps[0].Keys)
}

// The order is that in which controls were last taken up.
func TestOrderOfMoved(t *testing.T) {
	held := design.Default()
	now := check.With(t, "ribs", 40.0, "beam", 35*inch, "depth", 13*inch)
	moved, _ := weigh.Moved(held, now, []string{"ribs", "depth", "beam"})
	assert.Equal(t, []string{"ribs", "depth", "beam"}, moved)
	moved, _ = weigh.Moved(held, now, nil)
	assert.Equal(t, []string{"beam", "depth", "ribs"}, moved)
	moved, _ = weigh.Moved(held, now, []string{"beam"})
	assert.Equal(t, []string{"depth", "ribs", "beam"}, moved)
}

// A shorter boat with its frame held as it was cannot be built: what follows moves along, and it is said.
func TestPathThatCannotBeBuilt(t *testing.T) {
	held, now := built(t, design.Default()), built(t, check.With(t, "length", 168*inch))
	moved, _ := weigh.Moved(held.Design, now.Design, nil)
	steps := weigh.Path(held, now, moved)
	require.Len(t, steps, 1)
	assert.True(t, steps[0].Along)
	assert.Equal(t, now.Design, steps[0].Canoe.Design)
}

// Between any two boats the way ends at the present one, and the shares of every number add up
// to its whole change.
func TestPathEndsAtThePresentBoat(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 15))
	along := 0
	for n := 0; n < 12; {
		d := check.NearDesign(r, design.Default(), 0.08)
		now, faults := core.Try(d)
		if len(faults) > 0 {
			continue
		}
		n++
		held := built(t, design.Default())
		moved, _ := weigh.Moved(held.Design, now.Design, nil)
		steps := weigh.Path(held, now, moved)
		if len(moved) == 0 && len(steps) == 0 {
			continue
		}
		require.Equal(t, now.Design, steps[len(steps)-1].Canoe.Design)
		var keys []string
		for _, s := range steps {
			keys = append(keys, s.Keys...)
			if s.Along {
				along++
			}
		}
		assert.Equal(t, moved, keys)
		before := number(t, held, "ribs.longest").Value
		sum, at := 0.0, before
		for _, s := range steps {
			v := number(t, s.Canoe, "ribs.longest").Value
			sum, at = sum+v-at, v
		}
		assert.InDelta(t, number(t, now, "ribs.longest").Value-before, sum, 1e-9)
	}
	assert.Positive(t, along)
}
