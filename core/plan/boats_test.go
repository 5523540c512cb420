package plan_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/plan"
)

// Several boats share gathering; more beds never end later.
func TestSeveralBoats(t *testing.T) {
	c := asks(nil)
	s := fromGathered(2, 4)
	s.Numbers[plan.Boats] = 2
	one := planned(t, s, c, "")
	s.Numbers[plan.Beds] = 2
	two := planned(t, s, c, "")
	assert.LessOrEqual(t, two.Days, one.Days)
	assert.InDelta(t, 2*c.Units[plan.DigRoots], s.Asked(c, plan.DigRoots), 1e-9)
	assert.InDelta(t, 1, s.Asked(c, plan.AskLeave), 1e-9)
}

// Every boat is dried and laid up for winter, however many there are: all of the work a day at the least after its
// own first water, the last of them after the end of the plan.
func TestEveryBoatIsLaidUp(t *testing.T) {
	c := asks(nil)
	for _, boats := range []float64{1, 3} {
		s := fromGathered(2, 2)
		s.Numbers[plan.Boats], s.Numbers[plan.Beds] = boats, 2
		p := planned(t, s, c, "2026-07-01")
		afloat, last := map[int]int{}, 0
		for _, j := range p.Jobs {
			if j.Task == plan.TestWater {
				afloat[j.Boat] = j.To
				last = max(last, j.To)
			}
		}
		laidUp := 0
		for _, j := range p.Jobs {
			if j.Task != plan.KeepWinter {
				continue
			}
			laidUp++
			assert.Greater(t, j.From, afloat[j.Boat])
			// Work of less than 1e-9 slots counts as none, and in a slot no more than a hundred units are done.
			assert.InDelta(t, 1, j.Shifts[len(j.Shifts)-1].After, 1e-7, "the whole of it")
			assert.LessOrEqual(t, j.To, p.Through()-1)
		}
		assert.Equal(t, int(boats), laidUp)
		assert.Equal(t, last+1, p.Days, "the end is the last first water")
		assert.Greater(t, p.Through(), p.Days)
	}
}

// A boat that is built but not laid up has no plan, and that is said.
func TestOnlyWinterIsLeft(t *testing.T) {
	c := asks(nil)
	s := fromGathered(2, 0)
	for id := range plan.Tasks {
		if plan.Of(id).Part != plan.Afterwards {
			s.Have[id] = s.Asked(c, id)
		}
	}
	p := planned(t, s, c, "")
	assert.Equal(t, plan.NothingLeft, p.State)
	assert.Equal(t, "Nothing is left to do but to dry the boat and lay it up for winter.", p.Remarks("")[0].Text)
	s.Have[plan.KeepWinter] = 1
	p = planned(t, s, c, "")
	assert.Equal(t, "Nothing is left to do.", p.Remarks("")[0].Text)
}

// Remarks on several boats name each task once, and are of all the boats.
func TestRemarksOnSeveralBoats(t *testing.T) {
	c := asks(nil)
	s := season(1, 0)
	s.Numbers[plan.Boats] = 3
	s.Have[plan.MakePegs] = 1e4
	said := map[string]string{}
	// A year's bark is over in August, and the boats of a crew that has it are afloat in winter.
	for begin, from := range map[string]float64{"2026-08-01": 0, "2026-09-01": 1} {
		s.Numbers[plan.From] = from
		p := planned(t, s, c, begin)
		for _, r := range p.Remarks("") {
			said[r.Key] = r.Text
		}
	}
	assert.Equal(t, 1, strings.Count(said["borrow"], "soak the bark"), said["borrow"])
	assert.Contains(t, said["haveMore"], "than is needed for these 3 boats: make the pegs")
	assert.Contains(t, said["nextYear"], "The bark comes off on")
	assert.Contains(t, said["frost"], "these 3 boats would still be wet")
}
