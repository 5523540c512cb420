package plan_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/units"
)

func asks(set func(d *design.Design)) plan.Counts {
	d := design.Default()
	if set != nil {
		set(&d)
		d = design.Follow(d)
	}
	return core.Evaluate(d).Asks()
}

func season(practised, learners int) plan.Season {
	s := plan.NewSeason()
	s.Numbers[plan.Practised], s.Numbers[plan.Learners] = float64(practised), float64(learners)
	return s
}

func fromGathered(practised, learners int) plan.Season {
	s := season(practised, learners)
	s.Numbers[plan.From] = 1
	return s
}

func planned(t *testing.T, s plan.Season, c plan.Counts, first string) plan.Plan {
	t.Helper()
	require.Empty(t, s.Faults())
	p, ok := plan.Make(s, c, plan.Progress{}, first, nil)
	require.True(t, ok)
	return p
}

// Two more inches change the hours behind the figure; a foot changes the days of two hands.
func TestFollowsTheBoat(t *testing.T) {
	s := fromGathered(2, 0)
	at := func(by float64) plan.Counts { return asks(func(d *design.Design) { d.Length += by }) }
	base, two, foot := at(0), at(2*units.Inch), at(-1*units.Foot)
	assert.Greater(t, hours(s, two), hours(s, base))
	assert.Less(t, planned(t, s, core.Evaluate(design.Default().Scaled(15.0/16)).Asks(), "").Days,
		planned(t, s, base, "").Days)
	assert.Less(t, hours(s, foot), hours(s, base))
}

func hours(s plan.Season, c plan.Counts) float64 {
	sums := s.Sum(c, plan.Progress{})
	return sums.Total()
}

// The range holds the plan, is wider for a task list of wider times, and is the same each time.
func TestRange(t *testing.T) {
	s, c := fromGathered(2, 0), asks(nil)
	p := planned(t, s, c, "")
	assert.LessOrEqual(t, p.Low, p.Days)
	assert.GreaterOrEqual(t, p.High, p.Days)
	assert.Less(t, p.Low, p.High)
	assert.Less(t, p.HoursLow, p.Sums.Total())
	assert.Greater(t, p.HoursHigh, p.Sums.Total())
	again := planned(t, s, c, "")
	assert.Equal(t, [4]int{p.Days, p.Low, p.High, p.Working}, [4]int{again.Days, again.Low, again.High, again.Working})
}

// The days of the plan whatever the target: the same numbers natively and in the browser, where
// a whole number has 32 bits. They are this program's own, no published figure; they move
// with counts and rates.
func TestTheSameOnEveryTarget(t *testing.T) {
	for _, want := range []struct{ practised, learners, days, low, high int }{
		{1, 0, 38, 34, 44}, {2, 0, 23, 19, 25}, {4, 0, 15, 13, 16},
	} {
		p := planned(t, fromGathered(want.practised, want.learners), asks(nil), "")
		assert.Equal(t, [3]int{want.days, want.low, want.high}, [3]int{p.Days, p.Low, p.High})
	}
}

// The last day alone gives the latest first one: a day later does not meet it.
func TestFromTheLastDay(t *testing.T) {
	s, c := fromGathered(2, 0), asks(nil)
	s.Days[plan.End] = "2026-08-31"
	p := planned(t, s, c, "")
	require.True(t, p.Dated)
	assert.False(t, p.Date(p.Days-1).After(time.Date(2026, 8, 31, 0, 0, 0, 0, time.UTC)))
	later := planned(t, s, c, p.First.AddDate(0, 0, 2).Format(time.DateOnly))
	assert.True(t, later.Date(later.Days-1).After(time.Date(2026, 8, 31, 0, 0, 0, 0, time.UTC)))
}
