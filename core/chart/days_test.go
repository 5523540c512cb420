package chart_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/plan"
	"barkwright/core/tally"
)

func outlook(t *testing.T, first string, set func(s *plan.Season)) *core.Outlook {
	t.Helper()
	s := plan.NewSeason()
	s.Days[plan.Begin] = first
	if set != nil {
		set(&s)
	}
	o, ok := core.PlanWork(core.Evaluate(design.Default()), s, tally.Log{}, first, func(string) int { return 0 }, nil)
	require.True(t, ok)
	return o
}

// whole is the chart of days in one part.
func whole(t *testing.T, o *core.Outlook, width, letter float64) draw.List {
	t.Helper()
	const high = 1e4
	parts := chart.Days(o, chart.DaySize{Width: width, Letter: letter, Row: chart.ScreenRow, Least: chart.ScreenRow,
		First: high, Rest: high})
	require.Len(t, parts, 1)
	return parts[0]
}

// Every task has its name and a bar, all of it stands in the picture, and the longest chain is
// told by words as well as by its edge; on a phone, a page and a projector.
func TestDays(t *testing.T) {
	for name, o := range map[string]*core.Outlook{
		"no dates": outlook(t, "", nil),
		"season":   outlook(t, "2026-04-20", nil),
		"class": outlook(t, "", func(s *plan.Season) {
			s.Numbers[plan.Practised], s.Numbers[plan.Learners], s.Numbers[plan.From] = 1, 12, 1
		}),
	} {
		for _, size := range [][2]float64{{360, 12}, {900, 14}, {1800, 28}} {
			l := whole(t, o, size[0], size[1])
			fills, letters := 0, 0
			inside := func(q draw.Point) {
				assert.True(t, q.X >= -1 && q.X <= l.Width+1 && q.Y >= -1 && q.Y <= l.Height+1, "%s %v: %v", name, size, q)
			}
			for _, op := range l.Ops {
				switch op := op.(type) {
				case draw.Fill:
					fills++
					for _, q := range op.Points {
						inside(q)
					}
				case draw.Text:
					letters++
					b := op.Bounds()
					inside(draw.Point{X: b.Left, Y: op.At.Y})
				}
			}
			assert.GreaterOrEqual(t, fills, len(o.Jobs), name)
			assert.GreaterOrEqual(t, letters, len(o.Jobs), name)
			assert.Contains(t, l.Description, "longest chain")
		}
	}
}

// words are the texts of a picture.
func words(l draw.List) []string {
	var out []string
	for _, op := range l.Ops {
		if text, ok := op.(draw.Text); ok {
			out = append(out, text.Text)
		}
	}
	return out
}

// Today is marked within the plan and nowhere else; what the log has done of a task stands at its
// name, and a task that is done keeps a row with a tick.
func TestDaysOfToday(t *testing.T) {
	o := outlook(t, "2026-04-20", nil)
	assert.Contains(t, words(whole(t, o, 900, 14)), "today")
	later := *o
	later.Today = "2026-05-03"
	assert.Equal(t, 13, later.TodayAt())
	for _, outside := range []string{"", "2026-04-19", "2031-01-01"} {
		later.Today = outside
		assert.NotContains(t, words(whole(t, &later, 900, 14)), "today", outside)
	}

	log := tally.Log{}.Work("cedar.find", "2026-04-20", 1000, 8, 0).Work("lacing.lace", "2026-04-20", 9, 2, 0)
	s := plan.NewSeason()
	c := core.Evaluate(design.Default())
	o, ok := core.PlanWork(c, s, log, "2026-04-20", func(string) int { return 0 }, nil)
	require.True(t, ok)
	all := words(whole(t, o, 900, 14))
	assert.Contains(t, all, "Find the cedar")
	assert.Contains(t, all, "done")
	assert.Contains(t, strings.Join(all, "\n"), "Lace the gunwales, 10 % done")
}

// A chart that is too high is parted: no part is higher than it may be, each has the days' scale, its rows
// are as high as their letters at the least, and the parts together have every row once.
func TestDaysInParts(t *testing.T) {
	o := outlook(t, "", func(s *plan.Season) { s.Numbers[plan.Boats], s.Numbers[plan.Practised] = 3, 4 })
	for _, width := range []float64{320, 900} { // names over the bars, and beside them
		const letter, first, rest = 12, 400.0, 700.0
		rows, scales := map[string]int{}, 0
		parts := chart.Days(o, chart.DaySize{Width: width, Letter: letter, Row: chart.ScreenRow, Least: chart.LeastRow,
			First: first, Rest: rest})
		require.Greater(t, len(parts), 2)
		for i, part := range parts {
			assert.LessOrEqual(t, part.Height, map[bool]float64{true: first, false: rest}[i == 0])
			assert.Contains(t, part.Title, fmt.Sprintf("part %d of %d", i+1, len(parts)))
			last := 0.0
			for _, op := range part.Ops {
				text, ok := op.(draw.Text)
				if !ok {
					continue
				}
				assert.Equal(t, float64(letter), text.Size)
				if text.Text == "1" {
					scales++
				}
				if name := text.Text; name == "Sew the ends" || name == "Fit the caps" {
					rows[name]++
					assert.GreaterOrEqual(t, text.At.Y-last, float64(letter))
					last = text.At.Y
				}
			}
		}
		assert.Equal(t, map[string]int{"Sew the ends": 3, "Fit the caps": 3}, rows)
		assert.Equal(t, 2*len(parts), scales, "over the rows and under them")
	}
}

// Rows go down to the least that they may be, the end of that range included: what fits one part with them is
// one part.
func TestDaysAtTheirLowest(t *testing.T) {
	o := outlook(t, "", nil)
	for _, width := range []float64{320, 900} {
		size := chart.DaySize{Width: width, Letter: 12, Row: chart.LeastRow, Least: chart.LeastRow, First: 1e4, Rest: 1e4}
		lowest := chart.Days(o, size)
		require.Len(t, lowest, 1)
		size.Row, size.First = chart.PaperRow, lowest[0].Height+1e-6 // rounding; a row is 12
		assert.Equal(t, 1, len(chart.Days(o, size)))
		size.First--
		assert.Equal(t, 2, len(chart.Days(o, size)))
	}
}
