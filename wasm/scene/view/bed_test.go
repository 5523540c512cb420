package view_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

func lineBoat(t *testing.T, line string) core.Canoe {
	t.Helper()
	d, _, err := design.ReadLine("barkwright1_" + line)
	require.NoError(t, err)
	return core.Evaluate(d)
}

// Stakes past the bed's end and seams of side panels past the bark's edge are not drawn over
// bare ground, and a joint past the heel does not cross the open ground between the horns.
func TestBedHoldsWhatLiesOnIt(t *testing.T) {
	size := draw.Size{Width: 1366, Height: 700, Letter: 16}
	for _, line := range extreme {
		c := lineBoat(t, line)
		l := view.Draw(c, scene.View{State: scene.OnTheBed, Only: scene.TopOnly, Zoom: 1}, size)
		var ground, bark draw.Box
		var outline []draw.Point
		for _, op := range l.Ops {
			if f, ok := op.(draw.Fill); ok && f.Role == draw.Ground && ground == (draw.Box{}) {
				ground = draw.BoxOf(f.Points)
			}
			if f, ok := op.(draw.Fill); ok && f.Role == draw.Bark && outline == nil {
				bark, outline = draw.BoxOf(f.Points), f.Points
			}
		}
		for _, part := range l.Parts {
			if b := draw.BoxOf(part.Points); strings.HasPrefix(part.Name, "stake.") {
				assert.True(t, b.Within(grown(ground, 2)), "%s: %s at %v stands off the bed", line, part.Name, b)
			}
		}
		for _, op := range l.Ops {
			s, ok := op.(draw.Stroke)
			if !ok || s.Role != draw.Seam || len(s.Dash) == 0 || !draw.BoxOf(s.Points).Within(bark) {
				continue
			}
			for i := 1; i < len(s.Points); i++ {
				a, b := s.Points[i-1], s.Points[i]
				middle := draw.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
				assert.True(t, draw.Encloses(outline, middle), "%s: a seam from %v to %v over bare ground", line, a, b)
			}
		}
	}
}

func grown(b draw.Box, by float64) draw.Box {
	return draw.Box{Left: b.Left - by, Top: b.Top - by, Right: b.Right + by, Bottom: b.Bottom + by}
}
