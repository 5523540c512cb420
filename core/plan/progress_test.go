package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/plan"
	"barkwright/core/tally"
)

// The worked example of learning from the log: 24 of 90 groups by two learners in 10 hours
// each; 18.3 minutes become 19.3, and 66 groups left take 21.2 hours. Worked out by hand:
// (18 * 18.33 + 24 * 20) / 42. Tolerance: half the last digit.
func TestRatesAreLearned(t *testing.T) {
	c := asks(nil)
	c.Units[plan.Lace] = 90
	s := season(2, 2)
	log := tally.Log{}.Work("lacing.lace", "2026-06-20", 24, 0, 20)
	p := s.Read(c, log, func(string) int { return 0 })
	assert.InDelta(t, 24, p.Units[plan.Lace], 1e-12)
	rate := s.Rates(c, p)[plan.Lace]
	assert.InDelta(t, 19.3, rate.Mean(), 0.05)
	assert.InDelta(t, 21.2, s.Left(c, p, plan.Lace)*rate.Mean()/60, 0.05)
	was := plan.Of(plan.Lace).Minutes
	assert.Less(t, (rate.High-rate.Low)/rate.Mean(), (was.High-was.Low)/was.Mean(), "a task that was timed is known better")
	assert.Greater(t, s.Rates(c, p)[plan.DriveRibs].Mean(), plan.Of(plan.DriveRibs).Mean(), "slow at one, slow at others")
}

// The next boat begins with what was learned: its time of a group is the one of the last.
func TestTheNextBoatBeginsWithWhatWasLearned(t *testing.T) {
	c := asks(nil)
	s := season(1, 3)
	s.Days[plan.Begin], s.Have[plan.TakeBark] = "2026-06-01", 2
	p := s.Read(c, tally.Log{}.Work("lacing.lace", "2026-06-20", 24, 0, 20), func(string) int { return 0 })
	next := s.Next(c, p)
	assert.InDelta(t, s.Rates(c, p)[plan.Lace].Mean(), next.Rates(c, plan.Progress{})[plan.Lace].Mean(), 1e-9)
	assert.Equal(t, 3, next.Int(plan.Learners))
	assert.Empty(t, next.Days[plan.Begin])
	assert.Zero(t, next.Have[plan.TakeBark])
}

// An entry far past the range is named and not taken.
func TestSuspectHours(t *testing.T) {
	c := asks(nil)
	s := season(2, 0)
	p := s.Read(c, tally.Log{}.Work("lacing.lace", "2026-06-20", 1, 10, 0), func(string) int { return 0 })
	assert.True(t, s.Suspect(p, plan.Lace))
	assert.Equal(t, plan.Of(plan.Lace).Minutes, s.Rates(c, p)[plan.Lace])
}

// Ticks of the log move the plan: a step that is ticked is done, half of its rows half of it.
func TestTicksMoveThePlan(t *testing.T) {
	c := asks(nil)
	s := fromGathered(2, 0)
	log := tally.Log{}.Tick("gunwales.outwales", "", "2026-06-20", true).Tick("rib.drive", "rib.1", "2026-06-20", true)
	p := s.Read(c, log, func(step string) int {
		if step == "rib.drive" {
			return 2
		}
		return 0
	})
	assert.Zero(t, s.Left(c, p, plan.MakeGunwales))
	assert.InDelta(t, c.Units[plan.DriveRibs]/2, s.Left(c, p, plan.DriveRibs), 1e-9)
	before, now := s.Sum(c, plan.Progress{}), s.Sum(c, p)
	assert.Less(t, now.Total(), before.Total())
	for i := range plan.Tasks {
		assert.GreaterOrEqual(t, s.Left(c, p, i), 0.0)
	}
}
