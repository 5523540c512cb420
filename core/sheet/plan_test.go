package sheet_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// The plan with its chart, what must be ready and the hours stands on one page, with dates and
// without; the days are on as many pages as they take.
func TestPlanOnOnePage(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, first := range []string{"", "2026-04-20"} {
		s := plan.NewSeason()
		s.Days[plan.Begin] = first
		o, ok := core.PlanWork(c, s, tally.Log{}, first, func(string) int { return 0 }, nil)
		require.True(t, ok)
		j := sheet.Job{Canoe: c, System: units.Imperial16}
		pages := sheet.PlanSheet(j, o)
		require.Len(t, pages, 1)
		words := pages[0].Words()
		assert.Contains(t, words, "Likely ")
		assert.Contains(t, words, "Ready before the bark is laid")
		assert.Contains(t, words, "gathering")
		days := sheet.DaySheets(j, o)
		assert.NotEmpty(t, days)
		for _, p := range days {
			assert.NotContains(t, p.Description, "\n– |", "a row that does not say its day: a page may begin with it")
		}
	}
}

// With a class, a last day that cannot be met, the cedar felled out of season and a task half
// done, there is most to say: the plan still stands on one page.
func TestPlanWithMuchToSayOnOnePage(t *testing.T) {
	c := core.Evaluate(design.Default())
	s := plan.NewSeason()
	s.Days[plan.Begin], s.Days[plan.End] = "2026-04-20", "2026-05-20"
	s.Numbers[plan.Practised], s.Numbers[plan.Learners] = 1, 1
	log := tally.Log{}.Work("lacing.lace", "2026-04-20", 24, 8, 0)
	o, ok := core.PlanWork(c, s, log, "2026-04-21", func(string) int { return 0 }, nil)
	require.True(t, ok)
	pages := sheet.PlanSheet(sheet.Job{Canoe: c, System: units.Imperial16}, o)
	assert.Greater(t, len(o.Remarks(o.Today)), 4)
	assert.Len(t, pages, 1)
}

// The chart of several boats has a page of its own and stays on it.
func TestPlanOfSeveralBoats(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, boats := range []float64{2, 3} {
		s := plan.NewSeason()
		s.Numbers[plan.Boats], s.Numbers[plan.Practised] = boats, 4
		o, ok := core.PlanWork(c, s, tally.Log{}, "", func(string) int { return 0 }, nil)
		require.True(t, ok)
		charts := 0
		for _, p := range sheet.PlanSheet(sheet.Job{Canoe: c, System: units.Imperial16}, o) {
			assert.LessOrEqual(t, lowest(p), page.Bottom, "%v boats, %s", boats, p.Title)
			charts += strings.Count(p.Description, "A heavy edge marks the longest chain")
		}
		assert.Equal(t, 1, charts)
	}
}

// In teams the printed plan says who builds which boat, and each row of the days names its team.
func TestTeamsOnPaper(t *testing.T) {
	c := core.Evaluate(design.Default())
	s := plan.NewSeason()
	s.Numbers[plan.Boats], s.Numbers[plan.Teams], s.Numbers[plan.From] = 2, 2, 2
	o, ok := core.PlanWork(c, s, tally.Log{}, "", func(string) int { return 0 }, nil)
	require.True(t, ok)
	j := sheet.Job{Canoe: c, System: units.Imperial16}
	pages := sheet.PlanSheet(j, o)
	words := pages[0].Words()
	assert.Contains(t, words, "for 2 boats in 2 teams")
	assert.Contains(t, words, "team 1 (1 practised), boat 1; team 2 (1 practised), boat 2.")
	days := ""
	for _, p := range sheet.DaySheets(j, o) {
		days += p.Description
	}
	assert.Contains(t, days, "Lace the gunwales, boat 2, team 2")
}

// What the boat asks stands on one page in every system, with a class and a day to be done by.
func TestAsksOnOnePage(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, end := range []string{"", "2026-09-20"} {
		s := plan.NewSeason()
		s.Numbers[plan.Learners], s.Days[plan.End] = 12, end
		o, ok := core.PlanWork(c, s, tally.Log{}, "2026-04-20", func(string) int { return 0 }, nil)
		require.True(t, ok)
		for _, in := range []units.System{units.Imperial8, units.Imperial16, units.Metric} {
			pages := sheet.AsksSheet(sheet.Job{Canoe: c, System: in}, o)
			require.Len(t, pages, 1, "%v %q", in, end)
			assert.Contains(t, pages[0].Words(), "no rating: a load is tried")
		}
	}
}
