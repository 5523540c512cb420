package view_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// heldStrokes are the lines of the held boat in a picture, and whether its name stands there.
func heldStrokes(l draw.List) (lines []draw.Stroke, said bool) {
	for _, op := range l.Ops {
		switch o := op.(type) {
		case draw.Stroke:
			if slices.Equal(o.Dash, scene.HeldDash) {
				lines = append(lines, o)
			}
		case draw.Text:
			said = said || o.Text == "held"
		}
	}
	return lines, said
}

// The held boat is drawn over the present one in every view, dashed and named, at the present one's
// scale: a boat an inch deeper reaches higher by an inch. Without one nothing is drawn.
func TestHeldIsDrawnOver(t *testing.T) {
	now := core.Evaluate(design.Default())
	held := core.Evaluate(set(set(design.Default(), "depth", 14.5), "length", 200))
	now, held = now.WithFlat(core.LayFlat(now, bark.ForPicture, nil, nil)), held.WithFlat(core.LayFlat(held, bark.ForPicture, nil, nil))
	size := draw.Size{Width: 900, Height: 700, Letter: 16}
	for _, state := range []scene.State{scene.Finished, scene.OnTheBed, scene.LaidFlat} {
		for _, only := range []scene.Only{scene.Both, scene.SideOnly, scene.SectionsOnly, scene.BodyPlan} {
			if state != scene.Finished && only != scene.Both {
				continue
			}
			v := scene.View{State: state, Only: only, Zoom: 1, Flat: &now.Skin.Flat}
			lines, said := heldStrokes(view.Draw(now, v, size))
			assert.Empty(t, lines)
			assert.False(t, said)
			v.Held = &held
			list := view.Draw(now, v, size)
			lines, said = heldStrokes(list)
			assert.NotEmpty(t, lines, "%v %v", state, only)
			assert.True(t, said, "%v %v", state, only)
			for _, line := range lines {
				for _, q := range line.Points {
					assert.True(t, q.X >= 0 && q.X <= size.Width && q.Y >= 0 && q.Y <= size.Height, "%v %v %v", state, only, q)
				}
			}
		}
	}
}

// The held boat is drawn over the canoe in the round, the boat on its way up and the section that leans.
func TestHeldIsDrawnInTheRoundAndHeeled(t *testing.T) {
	now := core.Evaluate(design.Default())
	held := core.Evaluate(set(design.Default(), "depth", 14.5))
	now = now.WithFlat(core.LayFlat(now, bark.ForPicture, nil, nil))
	size := draw.Size{Width: 900, Height: 560, Letter: 16}
	for name, draws := range map[string]func(*core.Canoe) draw.List{
		"round": func(h *core.Canoe) draw.List {
			return view.Draw(now, scene.View{State: scene.InTheRound, Zoom: 1, Held: h}, size)
		},
		"heeled": func(h *core.Canoe) draw.List { return view.Heeled(now, 0.2, scene.View{Zoom: 1, Held: h}, size) },
		"raised": func(h *core.Canoe) draw.List {
			return view.Draw(now, scene.View{State: scene.SidesUp, Up: 0.5, Zoom: 1, Flat: &now.Skin.Flat, Held: h}, size)
		},
	} {
		lines, said := heldStrokes(draws(nil))
		assert.Empty(t, lines, name)
		assert.False(t, said, name)
		lines, said = heldStrokes(draws(&held))
		assert.NotEmpty(t, lines, name)
		assert.True(t, said, name)
	}
}

// set is a design with a control at so many inches.
func set(d design.Design, key string, inches float64) design.Design {
	p, _ := design.Lookup(key)
	return p.Set(d, inches*units.Inch)
}
