package plan_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
)

// Bark peels from 15 June: nothing is taken from a tree before, and every task of a season
// lies in it.
func TestSeasonsAreKept(t *testing.T) {
	p := planned(t, season(4, 0), asks(nil), "2026-04-20")
	require.Equal(t, plan.Made, p.State)
	seen := 0
	for _, j := range p.Jobs {
		from, to := p.Date(j.From), p.Date(j.To)
		switch plan.Of(j.Task).Season {
		case plan.BarkPeels:
			seen++
			assert.False(t, from.Before(time.Date(2026, 6, 15, 0, 0, 0, 0, time.UTC)))
			assert.False(t, to.After(time.Date(2026, 7, 10, 0, 0, 0, 0, time.UTC)))
		case plan.Warm:
			seen++
			assert.False(t, from.Before(time.Date(2026, 5, 15, 0, 0, 0, 0, time.UTC)))
			assert.False(t, to.After(time.Date(2026, 9, 15, 0, 0, 0, 0, time.UTC)))
		case plan.Thawed:
			seen++
			assert.False(t, from.Before(time.Date(2026, 4, 20, 0, 0, 0, 0, time.UTC)))
			assert.False(t, to.After(time.Date(2026, 11, 15, 0, 0, 0, 0, time.UTC)))
		}
	}
	assert.Equal(t, 3, seen)
	assert.Equal(t, plan.BySeason, p.Chain[0].By)
	assert.Equal(t, plan.TakeBark, p.Jobs[p.Chain[0].Job].Task)
}

// The order holds: nothing is worked before what it waits for, no hour has more hands than
// there are, and the ribs stay bound as long as set.
func TestOrderHolds(t *testing.T) {
	for _, onGunwales := range []bool{false, true} {
		c := asks(nil)
		c.OnGunwales = onGunwales
		if onGunwales {
			c.Units[plan.MakeFrame] = 0
		}
		for _, last := range []float64{0, 1} {
			s := fromGathered(2, 1)
			s.Numbers[plan.SeamsLast] = last
			p := planned(t, s, c, "")
			day := map[plan.ID][2]int{}
			worked := 0.0
			for _, j := range p.Jobs {
				day[j.Task] = [2]int{j.From, j.To}
				if j.Task != plan.KeepWinter {
					for _, sh := range j.Shifts {
						worked += sh.Hours
						assert.LessOrEqual(t, sh.Practised+sh.Others, 3)
					}
				}
			}
			assert.InDelta(t, p.Hours, worked, 1e-9)
			assert.LessOrEqual(t, day[plan.BendRibs][1]+3, day[plan.DriveRibs][0])
			assert.LessOrEqual(t, day[plan.DriveRibs][1]+3, day[plan.DriveAgain][0])
			assert.LessOrEqual(t, day[plan.LayBark][1], day[plan.SewSeams][0])
			if last == 1 {
				assert.LessOrEqual(t, day[plan.Lace][1], day[plan.SewSeams][0])
			}
			if onGunwales {
				assert.LessOrEqual(t, day[plan.FitThwarts][1], day[plan.LayBark][0])
			} else {
				assert.LessOrEqual(t, day[plan.SetStems][1], day[plan.FitThwarts][0])
			}
		}
	}
}

// What is left of a task, day by day, adds up to all of it.
func TestShiftsAddUp(t *testing.T) {
	c := asks(nil)
	p := planned(t, fromGathered(2, 0), c, "")
	for _, j := range p.Jobs {
		at := 0.0
		for _, sh := range j.Shifts {
			assert.InDelta(t, at, sh.Done, 1e-9, plan.Of(j.Task).Key)
			assert.GreaterOrEqual(t, sh.After, sh.Done)
			at = sh.After
		}
		// Work of less than 1e-9 slots counts as none, and in a slot no more than a hundred units are done.
		assert.InDelta(t, c.Units[j.Task], at, 1e-7, plan.Of(j.Task).Key)
	}
}

// The longest chain names what held each start: ribs are driven after they were bound to dry, and
// again after they settled.
func TestChainNamesItsWaits(t *testing.T) {
	p := planned(t, fromGathered(4, 0), asks(nil), "")
	by := map[plan.ID]plan.Cause{}
	for _, h := range p.Chain {
		by[p.Jobs[h.Job].Task] = h.By
	}
	assert.Equal(t, plan.ByWait, by[plan.DriveRibs])
	assert.Equal(t, plan.ByWait, by[plan.DriveAgain])
	assert.Equal(t, plan.ByOrder, by[plan.BendRibs])
	assert.Equal(t, plan.FromTheFirst, p.Chain[0].By)
}
