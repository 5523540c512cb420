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
		Turns:   []chart.StripTurn{{At: 0.25, From: "tender", To: "steady"}, {At: 0.55, From: "steady", To: "stiff"}},
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
		if width > 300 {
			assert.Contains(t, said, "stiff")
		}
		var b strings.Builder
		require.NoError(t, draw.SVG{Palette: draw.Screen(), ID: "s"}.Write(&b, l))
		assert.NotContains(t, b.String(), "NaN")
		assert.InDelta(t, 0.2, s.ValueAt(0, width), 1e-12)
		assert.InDelta(t, 0.4, s.ValueAt(width/2, width), 1e-12)
		assert.InDelta(t, 0.6, s.ValueAt(width+50, width), 1e-12)
	}
}
