package answer_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// What comes next is the first day of the list of days, with all of its tasks in the list's order; it is
// today's once the plan has come to it.
func TestNextWork(t *testing.T) {
	boat := core.Evaluate(design.Default())
	for _, c := range []struct{ begin, today, when string }{
		{"", "2027-06-20", "Next: day 1"},
		{"2027-06-14", "2027-06-01", "Next: 14 Jun"},
		{"2027-06-14", "2027-06-14", "Today: 14 Jun"},
		{"2027-06-14", "2027-06-21", "Today: 21 Jun"}, // a first day that is past moves to today
	} {
		s := plan.NewSeason()
		s.Days[plan.Begin] = c.begin
		o, ok := core.PlanWork(boat, s, tally.Log{}, c.today, func(string) int { return 0 }, nil)
		require.True(t, ok)
		when, tasks, first := answer.NextWork(o)
		assert.Equal(t, c.when, when)
		assert.True(t, strings.HasPrefix(tasks, plan.Of(first).Name), tasks)
		for _, table := range answer.PlanTables(o, units.Metric) {
			if table.Key != "plan.days" {
				continue
			}
			var listed []string
			for _, r := range table.Rows {
				if r.Cells[0].Text == table.Rows[0].Cells[0].Text {
					listed = append(listed, strings.ToLower(r.Cells[1].Text))
				}
			}
			assert.Equal(t, strings.Join(listed, "; "), strings.ToLower(tasks))
		}
	}
	s := plan.NewSeason()
	s.Numbers[plan.Practised] = 0
	for _, o := range []*core.Outlook{nil, outlook(t, s)} {
		when, tasks, _ := answer.NextWork(o)
		assert.Empty(t, when+tasks)
	}
}
