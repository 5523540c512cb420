package sheet_test

import (
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
		pages := sheet.PlanSheet(j, o, first)
		require.Len(t, pages, 1)
		words := pages[0].Words()
		assert.Contains(t, words, "Likely ")
		assert.Contains(t, words, "Ready before the bark is laid")
		assert.Contains(t, words, "gathering")
		assert.NotEmpty(t, sheet.DaySheets(j, o))
	}
}
