package plan_test

import (
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/units"
)

// A boat that asks for more of some task and for less of none ends sooner by a day at most, by any crew: every
// control of every boat that the page comes with, moved by a step of its slider, its ends among the steps. A
// control that makes some tasks more and others less, such as the width of ribs, whose number follows, may
// end either way: then the plans lie between those of the least and the most of each task, by a day at most. What a
// larger boat may gain is this program's own finding, no published figure: list rules are not the best there
// is, and one of them may end sooner with more work (R. L. Graham, 1969). BARKWRIGHT_PLANS=1 moves every
// control of every boat.
func TestALargerBoatEndsNoSooner(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	boats := append(design.Starting(), design.Default())
	all := os.Getenv("BARKWRIGHT_PLANS") != ""
	tried, more, mixed := 0, 0, map[string][]string{}
	for i, p := range design.Params() {
		if p.Paddler > 0 || p.Tolerance {
			continue // no boat follows from it
		}
		for k, boat := range boats {
			if !all && k != i%len(boats) {
				continue
			}
			for end := range 3 {
				if !all && end != i/len(boats)%3 {
					continue
				}
				a, b, built := aStep(r, p, boat, end)
				if !built || a.OnGunwales != b.OnGunwales {
					continue // the order is another one: what it is built on makes it no larger
				}
				tried++
				if a == b {
					continue
				}
				s := anyCrew(r)
				low, high := bounds(a, b)
				if a == low || b == low {
					more++
					assert.GreaterOrEqual(t, planned(t, s, high, "").Days, planned(t, s, low, "").Days-1, "%s of %s, %v", p.Key,
						boat.Name, s.Numbers)
					continue
				}
				mixed[p.Key] = lessOf(a, b)
				least, most := planned(t, s, low, "").Days, planned(t, s, high, "").Days
				for _, c := range []plan.Counts{a, b} {
					days := planned(t, s, c, "").Days
					assert.GreaterOrEqual(t, days, least-1, "%s of %s, %v", p.Key, boat.Name, s.Numbers)
					assert.LessOrEqual(t, days, most+1, "%s of %s, %v", p.Key, boat.Name, s.Numbers)
				}
			}
		}
	}
	for key, tasks := range mixed {
		t.Logf("%s: less of %s", key, strings.Join(tasks, ", "))
	}
	t.Logf("%d steps, %d of them more of some task and less of none", tried, more)
	assert.Greater(t, tried, len(design.Params())/2)
	assert.Greater(t, more, tried/5)
}

// aStep is what a boat asks for before and after a step of a control: at its lower end, its upper end, or anywhere.
// It reports false for a boat that cannot be built with it.
func aStep(r *rand.Rand, p design.Param, boat design.Design, end int) (a, b plan.Counts, built bool) {
	step := p.Step(units.Imperial16)
	v := p.Get(&boat) // what the boat has, where an end is no boat
	switch end {
	case 0:
		v = p.Min
	case 1:
		v = p.Stepped(p.Max, -1, units.Imperial16)
	default:
		v += float64(r.IntN(9)-4) * step
	}
	v = max(p.Min, min(v, p.Max))
	out := [2]plan.Counts{}
	for k, at := range []float64{v, p.Stepped(v, 1, units.Imperial16)} {
		c, faults := core.Try(p.Set(boat, at))
		if len(faults) > 0 {
			return a, b, false
		}
		out[k] = c.Asks()
	}
	return out[0], out[1], true
}

// anyCrew is a season of any small crew from stock of any state.
func anyCrew(r *rand.Rand) plan.Season {
	s := fromGathered(1+r.IntN(4), r.IntN(4))
	s.Numbers[plan.Hours], s.Numbers[plan.DaysAWeek] = float64(6+r.IntN(5)), float64(5+r.IntN(3))
	s.Numbers[plan.From] = float64(r.IntN(3))
	return s
}

// bounds are the least and the most of each task of two boats.
func bounds(a, b plan.Counts) (low, high plan.Counts) {
	low, high = a, b
	for id := range a.Units {
		low.Units[id], high.Units[id] = min(a.Units[id], b.Units[id]), max(a.Units[id], b.Units[id])
	}
	return low, high
}

// lessOf names the tasks of which the second boat asks for less.
func lessOf(a, b plan.Counts) (less []string) {
	for id := range a.Units {
		if b.Units[id] < a.Units[id] {
			less = append(less, plan.Of(plan.ID(id)).Key)
		}
	}
	return less
}

// The table of sizes has a longer boat never sooner, nor one that is longer than the boat in hand sooner than that. Planned
// by itself, with all orders tried, each ends by the day that the table says. Two boats that the page comes with, each
// with a crew of its own.
func TestTheTableOfSizes(t *testing.T) {
	boats := append(design.Starting(), design.Default())
	for i, crew := range [][2]int{{2, 0}, {1, 3}} {
		c, faults := core.Try(boats[i*(len(boats)-1)])
		require.Empty(t, faults)
		o, ok := core.PlanWork(c, fromGathered(crew[0], crew[1]), nil, "", func(string) int { return 0 }, nil)
		require.True(t, ok)
		o, ok = o.WithHelp(c, nil)
		require.True(t, ok)
		require.NotEmpty(t, o.Sizes)
		assert.True(t, slices.IsSortedFunc(o.Sizes, func(a, b core.Size) int { return b.Days - a.Days }), "%v", o.Sizes)
		for _, size := range o.Sizes {
			alone, faults := core.Try(c.Design.Scaled(size.Length / c.Design.Length))
			require.Empty(t, faults)
			assert.LessOrEqual(t, planned(t, o.Season, alone.Asks(), "").Days, size.Days, "%v", size)
			if size.Length >= c.Design.Length {
				assert.GreaterOrEqual(t, size.Days, o.Days)
			} else {
				assert.LessOrEqual(t, size.Days, o.Days)
			}
		}
	}
}
