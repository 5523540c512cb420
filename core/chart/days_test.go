package chart_test

import (
	"os"
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
			l := chart.Days(o, size[0], size[1], chart.ScreenRow, 2)
			if out := os.Getenv("DAYS_OUT"); out != "" {
				var b strings.Builder
				require.NoError(t, draw.SVG{Palette: draw.Screen(), ID: "x"}.Write(&b, l))
				require.NoError(t, os.WriteFile(out+strings.ReplaceAll(name, " ", "")+string(rune('a'+int(size[1])%26))+".svg", []byte(b.String()), 0o644))
			}
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
