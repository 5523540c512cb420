package plan_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
)

// plans are what the search is measured by: two hands, a class, and boats in teams.
var plans = []struct {
	name                                   string
	practised, learners, boats, teams, bed float64
}{
	{"2 hands", 2, 0, 1, 1, 1},
	{"1 and 12 learners", 1, 12, 1, 1, 1},
	{"6 boats, 6 teams", 6, 6, 6, 6, 6},
	{"12 boats, 12 teams", 12, 0, 12, 12, 12},
	{"12 boats, 12 teams, 42 hands", 12, 30, 12, 12, 12},
	{"12 boats, one team of 34 hands", 4, 30, 12, 1, 12},
}

// The budget natively is 1 s for 12 boats in 12 teams, and 50 ms a slice. Each is a whole season's.
func BenchmarkPlan(b *testing.B) {
	for _, v := range plans {
		b.Run(v.name, func(b *testing.B) {
			s := season(int(v.practised), int(v.learners))
			s.Numbers[plan.Boats], s.Numbers[plan.Teams], s.Numbers[plan.Beds] = v.boats, v.teams, v.bed
			c, slices, longest := asks(nil), 0, time.Duration(0)
			for b.Loop() {
				last := time.Now()
				plan.Make(s, c, plan.Progress{}, "2026-04-20", func() bool {
					now := time.Now()
					longest, last = max(longest, now.Sub(last)), now
					slices++
					return true
				})
			}
			b.ReportMetric(float64(longest.Microseconds())/1000, "ms/longest-slice")
			b.ReportMetric(float64(slices)/float64(b.N), "slices/op")
		})
	}
}

// A large plan is bounded by how much is tried, which is the same on every machine: no more slices than twice a
// class's, though each of its crews and teams has hundreds of orders. This program's own figure.
func TestLargePlansAreBounded(t *testing.T) {
	slices := func(s plan.Season) int {
		n := 0
		_, ok := plan.Make(s, asks(nil), plan.Progress{}, "", func() bool { n++; return true })
		require.True(t, ok)
		return n
	}
	class := slices(fromGathered(1, 12))
	s := fromGathered(12, 30)
	s.Numbers[plan.Boats], s.Numbers[plan.Teams], s.Numbers[plan.Beds] = 12, 12, 12
	assert.Less(t, slices(s), 2*class)
}
