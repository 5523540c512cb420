package chart_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// A strip stays inside its picture, its letters keep off one another, and a place in it is the
// value that is drawn there.
func TestStrip(t *testing.T) {
	held := geom.Vec2{X: 0.3, Y: -1}
	s := chart.Strip{Title: "GM", Description: "by beam", Left: 0.2, Right: 0.6, Low: -2, High: 4, Zero: true,
		Here: geom.Vec2{X: 0.4, Y: 1}, Held: &held, Walls: []float64{0.2, 0.6},
		Bands: []chart.StripBand{{Left: 0.2, Right: 0.25, Word: "tender", Ground: chart.Close},
			{Left: 0.25, Right: 0.45, Word: "steady"},
			{Left: 0.45, Right: 0.6, Word: "stiff", Ground: chart.Sparse}},
		LowText: "−2", HighText: "4", LeftText: "low", RightText: "high"}
	for x := 0.2; x < 0.6; x += 0.02 {
		s.Points = append(s.Points, chart.StripPoint{At: geom.Vec2{X: x, Y: 10*x - 3}, Gap: x > 0.39 && x < 0.41})
	}
	for _, width := range []float64{150, 220, 400} {
		l := s.Draw(width)
		var boxes []draw.Box
		said := ""
		for _, op := range l.Ops {
			switch o := op.(type) {
			case draw.Text:
				box := o.Bounds()
				for _, b := range boxes {
					assert.False(t, box.Meets(b), "%s at %v", o.Text, width)
				}
				boxes = append(boxes, box)
				said += o.Text + " "
			case draw.Stroke:
				for _, q := range o.Points {
					assert.True(t, q.X >= 0 && q.X <= width && q.Y >= 0 && q.Y <= chart.StripHeight, "%v at %v", q, width)
				}
			}
		}
		assert.Contains(t, said, "low")
		assert.Contains(t, said, "steady")
		if width > 300 {
			assert.Contains(t, said, "stiff")
		}
		// Told apart without colour: the worst hatched both ways, the middle one plain.
		hatched := map[float64][]float64{}
		for _, op := range l.Ops {
			if h, ok := op.(draw.Hatch); ok {
				hatched[h.Points[0].X] = append(hatched[h.Points[0].X], h.Spacing)
			}
		}
		require.Len(t, hatched, 2, "one clear")
		bad, near := hatched[chart.StripMargin], hatched[chart.StripMargin+0.625*(width-2*chart.StripMargin)]
		require.Len(t, bad, 2)
		require.Len(t, near, 1)
		assert.Less(t, bad[0], near[0])
		var b strings.Builder
		require.NoError(t, draw.SVG{Palette: draw.Screen(), ID: "s"}.Write(&b, l))
		assert.NotContains(t, b.String(), "NaN")
		assert.InDelta(t, 0.2, s.ValueAt(0, width), 1e-12)
		assert.InDelta(t, 0.4, s.ValueAt(width/2, width), 1e-12)
		assert.InDelta(t, 0.6, s.ValueAt(width+50, width), 1e-12)
	}
}
