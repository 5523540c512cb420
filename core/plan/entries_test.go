package plan_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/plan"
)

// Whatever the boats, teams and days a week: what to beware of at a boat is said at every stretch of days
// worked at it without a pause, at its first entry and no other; what hurts, on each day. Written out a second
// time, entry by entry, from the entries before.
func TestWhatToBewareOfIsSaidOnce(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 1964))
	for range 6 {
		s := plan.NewSeason()
		s.Numbers[plan.From] = float64(r.IntN(3))
		boats := 1 + r.IntN(2)
		s.Numbers[plan.Boats], s.Numbers[plan.Teams] = float64(boats), float64(1+r.IntN(boats))
		s.Numbers[plan.DaysAWeek] = []float64{1, 5, 6, 7}[r.IntN(4)]
		first := []string{"", "2026-04-20"}[r.IntN(2)]
		p := planned(t, s, asks(nil), first)
		all := p.Entries()
		for i, e := range all {
			text := e.Beware()
			var last *plan.Entry // the one before with the same words for the same boat
			for k := range all[:i] {
				if all[k].Beware() == text && all[k].Job.Boat == e.Job.Boat {
					last = &all[k]
				}
			}
			anew := last == nil || e.Day > last.Day && plan.Of(e.Job.Task).Said == plan.Daily
			for d := 0; last != nil && d < e.Day; d++ {
				anew = anew || d > last.Day && float64(d%7) < s.Numbers[plan.DaysAWeek]
			}
			assert.Equal(t, text != "" && anew, e.Begins, "%q on day %d", text, e.Day)
			assert.GreaterOrEqual(t, e.Until, e.Day)
			if text != "" && !anew {
				assert.Equal(t, last.Until, e.Until, "%q on day %d", text, e.Day)
			}
		}
	}
}

// What began before an entry and holds on its day is named once however many boats, with the longest stay.
func TestStillToBewareOf(t *testing.T) {
	lace, drive := &plan.Job{Task: plan.Lace}, &plan.Job{Task: plan.DriveRibs}
	ofTheSecond := &plan.Job{Task: plan.SewEnds, Boat: 1}
	all := []plan.Entry{
		{Day: 1, Job: lace, Begins: true, Until: 4},
		{Day: 1, Job: ofTheSecond, Begins: true, Until: 6},
		{Day: 2, Job: drive, Begins: true, Until: 2},
		{Day: 2, Job: lace, Until: 4},
		{Day: 3, Job: lace, Until: 4},
		{Day: 5, Job: ofTheSecond, Until: 6},
	}
	words := func(at int) (out []string) {
		for _, e := range plan.Still(all, at) {
			out = append(out, e.Beware())
		}
		return out
	}
	assert.Empty(t, words(0))
	assert.Equal(t, []string{"keep bark and root wet", "hull wet, with hot water"}, words(3))
	assert.Equal(t, []string{"keep bark and root wet"}, words(4), "the drive was for its day")
	assert.Equal(t, 6, plan.Still(all, 4)[0].Until)
	assert.Len(t, words(5), 1, "the second boat's goes on")
}
