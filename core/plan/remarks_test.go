package plan_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
)

// Bad seasons have a fault at their field or a state with a name.
func TestBadPlansAreNamed(t *testing.T) {
	c := asks(nil)
	s := season(0, 0)
	require.Len(t, s.Faults(), 1)
	assert.Equal(t, "practised", s.Faults()[0].Key)
	s = season(2, 0)
	s.Numbers[plan.Travel], s.Numbers[plan.Hours] = 6, 6
	assert.Equal(t, "travel", s.Faults()[0].Key)
	s = season(2, 0)
	s.Days[plan.Begin], s.Days[plan.End] = "2026-06-02", "2026-06-01"
	assert.Equal(t, "end", s.Faults()[0].Key)
	s = season(2, 0)
	s.Days[plan.PeelFrom] = "31-12"
	assert.Equal(t, "peelFrom", s.Faults()[0].Key)
	s = season(2, 0)
	s.Likely[plan.Lace] = math.NaN()
	assert.Equal(t, "rate.lacing.lace", s.Faults()[0].Key)

	key := func(p plan.Plan, today string) (keys []string) {
		for _, r := range p.Remarks(today) {
			keys = append(keys, r.Key)
		}
		return keys
	}
	s = season(2, 0)
	s.Days[plan.PeelFrom], s.Days[plan.PeelTo] = "06-15", "06-15"
	assert.Equal(t, []string{"outOfSeason"}, key(planned(t, s, c, "2026-08-01"), ""), "a day is too short")
	short := planned(t, s, c, "2026-08-01")
	assert.Contains(t, short.Remarks("")[0].Text, "while bark peels: take the bark")
	s = season(2, 0)
	assert.Contains(t, key(planned(t, s, c, "2026-04-20"), ""), "cedarLate", "begun at the thaw")
	assert.NotContains(t, key(planned(t, s, c, "2026-01-10"), ""), "cedarLate", "begun in winter")
	assert.NotContains(t, key(planned(t, s, c, ""), ""), "cedarLate", "no season is held to")
	s.Have[plan.FellCedar] = 10
	assert.NotContains(t, key(planned(t, s, c, "2026-04-20"), ""), "cedarLate", "at hand already")
	s = season(2, 0)
	assert.Contains(t, key(planned(t, s, c, "2026-08-01"), ""), "nextYear")
	s.Days[plan.End] = "2026-05-01"
	assert.Contains(t, key(planned(t, s, c, "2026-04-20"), ""), "floor")
	s.Days[plan.End], s.Days[plan.Begin] = "", "2026-04-20"
	assert.Contains(t, key(planned(t, s, c, "2026-05-01"), "2026-05-01"), "beginPast")
	// A last day that is past is named as that: no more hands would help.
	for _, begin := range []string{"", "2026-04-20"} {
		s.Days[plan.Begin], s.Days[plan.End] = begin, "2026-04-30"
		late := key(planned(t, s, c, "2026-05-01"), "2026-05-01")
		assert.Contains(t, late, "endPast")
		for _, not := range []string{"floor", "late", "beginLate", "beginBy"} {
			assert.NotContains(t, late, not)
		}
		s.Days[plan.End] = "2026-05-01"
		assert.NotContains(t, key(planned(t, s, c, "2026-05-01"), "2026-05-01"), "endPast", "the day itself")
	}
	// A last day for which it is too late to begin is not met.
	s.Days[plan.Begin], s.Days[plan.End] = "", "2026-05-20"
	for today, want := range map[string][2]string{"2026-05-10": {"beginLate", "inTime"}, "2025-01-10": {"inTime", "beginLate"}} {
		said := key(planned(t, s, c, ""), today)
		assert.Contains(t, said, want[0])
		assert.NotContains(t, said, want[1])
	}
	s = season(2, 0)
	assert.NotContains(t, key(planned(t, s, c, "2026-05-01"), ""), "overNewYear")
	s.Days[plan.PeelFrom], s.Days[plan.PeelTo] = "07-15", "07-01"
	assert.Contains(t, key(planned(t, s, c, "2026-05-01"), ""), "overNewYear")
	s = season(2, 0)
	assert.Contains(t, key(planned(t, fromGathered(0, 2), c, ""), ""), "noPractised")
	assert.Contains(t, key(planned(t, fromGathered(1, 0), c, ""), ""), "borrow")
	s = fromGathered(2, 0)
	s.Have[plan.MakePegs] = 1e4
	assert.Contains(t, key(planned(t, s, c, ""), ""), "haveMore")
}
