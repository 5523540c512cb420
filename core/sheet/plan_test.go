package sheet_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/pattern"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// planned is the plan of a boat from a first day, or without one, with nothing done yet.
func planned(t *testing.T, c core.Canoe, first string) *core.Outlook {
	t.Helper()
	s := plan.NewSeason()
	s.Days[plan.Begin] = first
	o, ok := core.PlanWork(c, s, tally.Log{}, first, func(string) int { return 0 }, nil)
	require.True(t, ok)
	return o
}

// The plan with its chart, what must be ready and the hours stands on one page, with dates and
// without; the days are on as many pages as they take.
func TestPlanOnOnePage(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, first := range []string{"", "2026-04-20"} {
		o := planned(t, c, first)
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

// severalBoats is the plan of two boats with more of them: the second's work again for each, a week later
// each time.
func severalBoats(two *core.Outlook, boats int) *core.Outlook {
	copied := *two
	o := &copied
	o.Jobs = slices.Clone(two.Jobs)
	for _, j := range two.Jobs {
		for b := 2; b < boats && j.Boat == 1; b++ {
			later := j
			later.Boat, later.From, later.To = b, j.From+7*(b-1), j.To+7*(b-1)
			later.Shifts = slices.Clone(j.Shifts)
			for i := range later.Shifts {
				later.Shifts[i].Day += 7 * (b - 1)
			}
			o.Jobs = append(o.Jobs, later)
			o.Days = max(o.Days, later.To+1)
		}
	}
	o.Season.Numbers[plan.Boats] = float64(boats)
	return o
}

// From one boat to twelve, by days of the work and by dates, under a name that has no end, no lettering of the
// plan is under eight points or over other lettering or out of the page that fits A4 and Letter, and every task
// of every boat stands on some page under its boat's heading. One boat takes one page.
func TestPlanOfAnyNumberOfBoats(t *testing.T) {
	const leastLetter = 8 * 25.4 / 72 // common practice, no published source
	head := pattern.Head{Boat: strings.Repeat("<b>&amp; \"Ŵŵ\" ", 40), Date: "2026-04-20"}
	c := core.Evaluate(design.Default())
	for _, first := range []string{"", "2026-04-20"} {
		s := plan.NewSeason()
		s.Numbers[plan.Practised], s.Days[plan.Begin] = 4, first
		one, ok := core.PlanWork(c, s, tally.Log{}, first, func(string) int { return 0 }, nil)
		require.True(t, ok)
		s.Numbers[plan.Boats] = 2
		two, ok := core.PlanWork(c, s, tally.Log{}, first, func(string) int { return 0 }, nil)
		require.True(t, ok)
		for boats := 1; boats <= 12; boats++ {
			o := one
			if boats > 1 {
				o = severalBoats(two, boats)
			}
			pages := sheet.PlanSheet(sheet.Job{Canoe: c, System: units.Metric, Head: head}, o)
			if boats == 1 {
				assert.Len(t, pages, 1)
			}
			rows, charts := map[string]int{}, 0
			for n, p := range pages {
				where := fmt.Sprintf("%d boats from %q, %s", boats, first, p.Title)
				assert.Equal(t, page, draw.Box{Right: p.Width, Bottom: p.Height}, where)
				assert.Contains(t, p.Title, fmt.Sprintf("page %d of %d", n+1, len(pages)))
				charts += strings.Count(p.Description, "A heavy edge marks the longest chain")
				var texts []draw.Text
				for _, op := range p.Ops {
					text, ok := op.(draw.Text)
					if !ok {
						continue
					}
					rows[text.Text]++
					assert.GreaterOrEqual(t, text.Size, leastLetter-1e-9, "%s: %q", where, text.Text)
					assert.True(t, text.Bounds().Within(page), "%s: %q", where, text.Text)
					// Rows may stand as close as their letters are high.
					box := lettersOf(text)
					for _, other := range texts {
						assert.False(t, box.Meets(lettersOf(other)), "%s: %q over %q", where, text.Text, other.Text)
					}
					texts = append(texts, text)
				}
			}
			assert.Regexp(t, `about \d+0 to \d+0: .* hours a boat`, pages[0].Words())
			assert.GreaterOrEqual(t, charts, 1)
			assert.LessOrEqual(t, charts, (boats+3)/2, "a page holds two boats")
			for _, j := range o.Jobs {
				if name := plan.Of(j.Task).Name; j.Boat == boats-1 && o.Season.BoatByBoat(j.Task) && len(name) < 40 {
					assert.Equal(t, boats, rows[name], "%d boats: %s", boats, name)
				}
			}
			for b := 1; b <= boats && boats > 1; b++ {
				assert.Equal(t, 1, rows[fmt.Sprintf("Boat %d", b)], "%d boats: heading %d", boats, b)
			}
		}
	}
}

// lettersOf is the room of a line's letters, without the air between lines.
func lettersOf(text draw.Text) draw.Box {
	b := text.Bounds()
	b.Top, b.Bottom = text.At.Y-0.49*text.Size, text.At.Y+0.49*text.Size
	return b
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

// The sheet of what is gathered counts for one boat, and says so where the plan is for several.
func TestGatheringSheetIsForOneBoat(t *testing.T) {
	const says = "What stands here is for one boat."
	j := everything()
	j.Season = plan.NewSeason()
	assert.NotContains(t, words(j, stage.Gather), says)
	j.Season.Numbers[plan.Boats] = 3
	assert.Contains(t, words(j, stage.Gather), says+" The plan is for 3")
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

// On every page of the list of days stands what to beware of at each of its rows: at the row, at one over it, or
// at the head of the page that it goes on to. From the gores to the lacing, worked at without a pause, a page says
// once that bark and root are kept wet.
func TestEveryPageOfDaysSaysWhatToBewareOf(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, first := range []string{"", "2026-04-20"} {
		o := planned(t, c, first)
		rows, reminded := 0, 0
		for _, p := range sheet.DaySheets(sheet.Job{Canoe: c, System: units.Imperial16}, o) {
			over := ""
			for _, line := range strings.Split(p.Description, "\n") {
				over += line + "\n"
				reminded += strings.Count(line, "Still to beware of: ")
				for _, task := range plan.All() {
					if strings.Contains(line, " | "+task.Name+" | ") {
						rows++
						assert.Contains(t, over, task.Spoils, line)
					}
				}
			}
			laced, _, _ := strings.Cut(over, "Take the frame out")
			assert.LessOrEqual(t, strings.Count(laced, "keep bark and root wet"), 1, laced)
		}
		assert.Equal(t, len(o.Entries()), rows)
		assert.GreaterOrEqual(t, reminded, 1)
	}
}
