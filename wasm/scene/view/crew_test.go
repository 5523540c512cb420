package view_test

import (
	"strings"
	"testing"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var desk = draw.Size{Width: 1000, Height: 420, Letter: 16}

// Each paddler and the cargo have a handle in the finished state only. Dragging it by
// some pixels changes the parameter by what those pixels measure in the picture.
func TestCrewIsTakenAndMoved(t *testing.T) {
	c := core.Evaluate(design.Default())
	v := scene.View{State: scene.Finished, Zoom: 1, Handles: true}
	wide := draw.Size{Width: 1000, Height: 560, Letter: 16}
	found := map[string]int{}
	for _, h := range view.Handles(c, v, wide) {
		p, ok := design.Lookup(h.Key)
		require.True(t, ok, h.Key)
		if strings.HasPrefix(h.Key, "paddler") || h.Key == "cargoPosition" {
			found[h.Key]++
			to := h.At
			to.X += 30
			moved := p.Set(c.Design, h.Value(p.Get(&c.Design), h.At, to))
			for _, g := range view.Handles(core.Evaluate(moved), v, wide) {
				if g.Key == h.Key && g.Axis == h.Axis && g.PerPixel == h.PerPixel && g.At.Y-h.At.Y < 40 && h.At.Y-g.At.Y < 40 {
					assert.InDelta(t, to.X, g.At.X, 1e-9, h.Key)
				}
			}
		}
	}
	assert.Equal(t, map[string]int{"paddler1Place": 2, "paddler2Place": 2, "cargoPosition": 2}, found)
	for _, h := range view.Handles(c, scene.View{Zoom: 1, Handles: true}, wide) {
		assert.NotContains(t, h.Key, "paddler", "no one sits in a boat on the bed")
	}
}

func words(l draw.List) string {
	var all []string
	for _, op := range l.Ops {
		if text, ok := op.(draw.Text); ok {
			all = append(all, text.Text)
		}
	}
	return strings.Join(all, "|")
}

// The section says the righting arm that the curve has at its heel, and names what
// becomes of the boat.
func TestHeeledSection(t *testing.T) {
	d := design.Default()
	c := core.Evaluate(d)
	v := scene.View{Zoom: 1}
	size := draw.Size{Width: 460, Height: 340, Letter: 16}
	heel := 10 * units.Degree
	arm := c.Afloat.Body.At(c.Afloat.Load, c.Afloat.Water, heel).Arm
	l := view.Heeled(c, heel, v, size)
	assert.Contains(t, words(l), "righting arm "+units.SmallLength.Format(arm, v.System))
	assert.Contains(t, l.Description, "righting arm")
	assert.Contains(t, words(view.Heeled(c, 50*units.Degree, v, size)), "swamped")

	p, _ := design.Lookup("cargo")
	over := core.Evaluate(p.Set(d, 4000*units.Pound))
	require.Equal(t, afloat.Overloaded, over.Afloat.Floated.State)
	assert.Contains(t, words(view.Heeled(over, heel, v, size)), "overloaded")
}

// The water line drawn is that of the boat's own trim: with all the crew forward it
// stands higher on the bow.
func TestWaterLineIsTrimmed(t *testing.T) {
	p, _ := design.Lookup("cargoPosition")
	c := core.Evaluate(p.Set(design.Default(), 40*units.Inch))
	up := c.Afloat.Floated.Upright
	require.Equal(t, afloat.Floats, up.State)
	assert.Positive(t, up.Waterplane.Slope)
	v := scene.View{State: scene.Finished, Zoom: 1, Load: &scene.Load{Height: up.Waterplane.Height,
		Slope: up.Waterplane.Slope}}
	for _, op := range view.TopAndSide(c, v, desk).Ops {
		if line, ok := op.(draw.Stroke); ok && line.Role == draw.Water && line.Width > 1.5 {
			from, to := line.Points[0], line.Points[1]
			assert.InDelta(t, up.Waterplane.Slope, (from.Y-to.Y)/(to.X-from.X), 1e-9)
			return
		}
	}
	t.Fatal("no water line")
}
