package pipeline

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/plan"
	"barkwright/core/record"
	"barkwright/core/units"
)

// The plan is worked out in slices, while the page shows it and not before; a step or another
// crew cuts it off, and the last whole plan stands meanwhile, told from one that is known.
func TestPlanInSlices(t *testing.T) {
	b := New(with(t), units.Imperial16)
	finish(b)
	o, known := b.Outlook()
	assert.Nil(t, o, "nobody looks at it")
	assert.False(t, known)

	b.WantPlan(true, false, "2027-06-14")
	slices := 0
	for {
		p, finished, worked := b.Next()
		require.True(t, worked)
		require.Equal(t, Season, p)
		slices++
		if finished {
			break
		}
	}
	assert.Greater(t, slices, 100, "in slices")
	two, known := b.Outlook()
	require.True(t, known)
	assert.Empty(t, two.Today, "nothing hangs on the day while none is set")
	assert.False(t, two.Helped)
	until(t, b, Sooner)
	helped, _ := b.Outlook()
	assert.True(t, helped.Helped)
	assert.Equal(t, two.Days, helped.Days)

	s := plan.NewSeason()
	s.Numbers[plan.Practised] = 4
	b.Measure(&record.Notebook{Season: &s}, units.Imperial16)
	_, known = b.Outlook()
	assert.False(t, known)
	for range 10 {
		b.Next()
	}
	was, known := b.Outlook()
	assert.False(t, known)
	assert.Equal(t, two.Days, was.Days, "the last whole one")
	until(t, b, Sooner)
	four, known := b.Outlook()
	assert.True(t, known && four.Helped)
	assert.Less(t, four.Days, two.Days)

	// A step and back again: what would help is worked out anew with the plan.
	c := b.Canoe()
	b.Take(with(t, "length", 15*12*inch))
	until(t, b, Season)
	b.Take(c)
	until(t, b, Sooner)
	again, known := b.Outlook()
	assert.True(t, known && again.Helped)
	assert.Equal(t, four.Days, again.Days)
}

// Where little else is looked at, the plan comes as soon as what it goes by is known.
func TestPlanFirst(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.WantPlan(true, true, "")
	until(t, b, Season)
	assert.True(t, b.Known(Figures))
	until(t, b, Sooner)
	assert.False(t, b.Known(Curve))
	finish(b)
	assert.True(t, b.Known(Curve) && b.Known(Sooner))
}
