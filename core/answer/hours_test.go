package answer_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/plan"
)

func usual() *plan.Season {
	s := plan.NewSeason()
	return &s
}

// hoursOf are the hours of a boat by their keys, and their total.
func hoursOf(d design.Design) (map[string]float64, float64) {
	at := map[string]float64{}
	for _, n := range answer.Hours(core.Evaluate(d), *usual(), plan.Progress{}) {
		at[n.Key] = n.Value
	}
	return at, at["hours.total"]
}

// The hours of the stages add up to all of it as shown, and to what the plan adds up but for the
// rounding of each.
func TestHoursAddUp(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		at, total := hoursOf(d)
		sum := 0.0
		for key, v := range at {
			assert.Equal(t, math.Round(v), v, key)
			if key != "hours.total" {
				sum += v
			}
		}
		assert.Equal(t, total, sum)
		s := usual()
		// Each stage's whole hours are off by half of one at most.
		assert.InDelta(t, s.Sum(core.Evaluate(d).Asks(), plan.Progress{}).Total(), total, 0.5*float64(len(at)-1))
	}
}

// Every task that is asked for is at home at a stage: made a thousand hours longer, none of them gets
// lost.
func TestEveryTaskHasAHome(t *testing.T) {
	c := core.Evaluate(design.Default())
	_, before := hoursOf(c.Design)
	for id, units := range c.Asks().Units {
		if units > 0 {
			s := usual()
			s.Likely[id] = plan.Of(plan.ID(id)).Minutes.Likely + 60*1000/units
			after := answer.Hours(c, *s, plan.Progress{})
			assert.Greater(t, after[len(after)-1].Value, before+990, plan.Of(plan.ID(id)).Key)
		}
	}
}

// Two ribs more are two more to split, carve, bend, drive and drive again, with their share of the
// spares and their lashings: the hours of the rows of the plan, by hand.
func TestHoursOfTwoRibs(t *testing.T) {
	few, many := core.Evaluate(check.With(t, "ribs", 40.0)), core.Evaluate(check.With(t, "ribs", 50.0))
	a, b := few.Asks(), many.Asks()
	want := 0.0
	for _, id := range []plan.ID{plan.SplitRibs, plan.CarveRibs, plan.BendRibs, plan.DriveRibs, plan.DriveAgain} {
		want += (b.Units[id] - a.Units[id]) * plan.Of(id).Mean() / 60
	}
	x, _ := hoursOf(few.Design)
	y, _ := hoursOf(many.Design)
	assert.Greater(t, want, 5.0)
	// Both are rounded to whole hours, by half of one at most.
	assert.InDelta(t, want, y["hours.rib"]-x["hours.rib"], 1)
	assert.Greater(t, y["hours.lace"], x["hours.lace"])
}
