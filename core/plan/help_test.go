package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
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
