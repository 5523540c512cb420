package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
)

// The least crew meets the day and one fewer does not.
func TestLeastCrew(t *testing.T) {
	c := asks(nil)
	p := planned(t, fromGathered(1, 0), c, "")
	crews, ok := p.Least(20, nil)
	require.True(t, ok)
	require.NotEmpty(t, crews)
	n := crews[0].Practised
	assert.LessOrEqual(t, planned(t, fromGathered(n, 0), c, "").Days, 20)
	assert.Greater(t, planned(t, fromGathered(n-1, 0), c, "").Days, 20)
	none, _ := p.Least(p.Floor-1, nil)
	assert.Empty(t, none, "no crew undercuts the floor")
}

// Nothing that would help makes it later.
func TestWaysHelp(t *testing.T) {
	p := planned(t, fromGathered(2, 0), asks(nil), "")
	ways, ok := p.Ways(nil, 0, nil)
	require.True(t, ok)
	assert.NotEmpty(t, ways)
	for _, w := range ways {
		assert.LessOrEqual(t, w.Days, p.Days, w.Text)
	}
}

// What is so already is no way to end sooner: stock that is made, a week of seven days, ribs bound one night.
func TestWaysAreOtherThanThePlan(t *testing.T) {
	c := asks(nil)
	s := fromGathered(2, 0)
	s.Numbers[plan.DaysAWeek], s.Numbers[plan.RibsDry], s.Numbers[plan.Settle] = 7, 0.5, 0
	for _, id := range []plan.ID{plan.DigRoots, plan.PeelRoots, plan.SplitSeamRoot, plan.SplitLacingRoot} {
		s.Have[id] = s.Asked(c, id)
	}
	p := planned(t, s, c, "")
	ways, ok := p.Ways(&c, 1, nil)
	require.True(t, ok)
	assert.Len(t, ways, 5)
	for _, w := range ways {
		assert.NotContains(t, []string{"", "every day of the week", "ribs bound one night, and no settling",
			"all root peeled and split beforehand"}, w.Text)
	}
}
