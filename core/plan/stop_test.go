package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
)

// What stops a plan is named with what would help: with that it ends.
func TestWhatStopsAPlan(t *testing.T) {
	c := asks(nil)
	weekends := func(hours float64) plan.Season {
		s := season(0, 1)
		s.Numbers[plan.DaysAWeek], s.Numbers[plan.Hours] = 2, hours
		return s
	}
	said := func(s plan.Season, first string) string {
		p := planned(t, s, c, first)
		require.Equal(t, plan.OutOfSeason, p.State)
		return p.Remarks("")[0].Text
	}
	// A learner's weekends of 5 hours, 3 of them on the way: three years of days when bark peels are too few.
	s := weekends(5)
	s.Have[plan.FindBirch], s.Have[plan.FindCedar], s.Have[plan.FellCedar], s.Have[plan.CarryCedar] = 1e4, 10, 10, 100
	text := said(s, "2026-05-02")
	assert.Contains(t, text, "while bark peels: take the bark")
	assert.Contains(t, text, "2 to 4 hands; this crew has 1. One more pair of hands on those days")
	s.Numbers[plan.Practised] = 1
	assert.Equal(t, plan.Made, planned(t, s, c, "2026-05-02").State)
	// The 8th and the 9th of June are no weekend from 2026 to 2028.
	s = weekends(8)
	s.Days[plan.PeelFrom], s.Days[plan.PeelTo] = "06-08", "06-09"
	assert.Contains(t, said(s, "2026-05-02"), "None of those days is one of work")
	// An hour on one day a week ends in no season, whatever is done.
	s = fromGathered(0, 1)
	s.Numbers[plan.DaysAWeek], s.Numbers[plan.Hours], s.Numbers[plan.Travel] = 1, 1, 0
	assert.Contains(t, said(s, "2026-05-02"), "the work takes more than three years")
}

// Where slower work misses the days when bark peels, the range keeps to the season and the year lost is named.
func TestRangeKeepsTheSeason(t *testing.T) {
	s, c := season(2, 0), asks(nil)
	s.Days[plan.End] = "2027-06-30"
	p := planned(t, s, c, "")
	assert.Less(t, p.High, p.Days+100, "no year in it")
	assert.Positive(t, p.Missed[plan.TakeBark])
	assert.Less(t, p.Missed[plan.TakeBark], 100)
	keys := map[string]bool{}
	for _, r := range p.Remarks("") {
		keys[r.Key] = true
	}
	assert.True(t, keys["mayMiss"])
	s.Days[plan.End], s.Days[plan.Begin] = "", "2027-05-01"
	assert.Zero(t, planned(t, s, c, "2027-05-01").Missed)
}
