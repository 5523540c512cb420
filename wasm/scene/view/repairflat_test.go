package view_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// repairedFlat is the default boat laid flat with a hole across its first gore forward of the middle, whose
// number it returns, a hole over the centre line amidships, a broken rib and torn lacing.
func repairedFlat(t *testing.T) (core.Canoe, scene.View, int) {
	t.Helper()
	c, v := skinned(core.Evaluate(design.Default()), bark.ForPicture, scene.View{State: scene.LaidFlat, Zoom: 1})
	number := slices.IndexFunc(v.Flat.Gores, func(g bark.FlatGore) bool { return g.X > 0 && g.State == bark.GoreCut })
	require.Positive(t, number)
	gore := v.Flat.Gores[number]
	place := c.Hull.ColumnAtEdge(gore.X)
	foot := c.Hull.FrameHalfBreadth(gore.X) + c.Design.GoreFoot
	edge := min(c.Hull.Column(place).Girth(), c.Bark.SheetWidth/2)
	for _, d := range []tally.Damage{
		{Kind: tally.Hole, At: gore.Run, Up: (foot + edge) / 2, Along: 3 * units.Inch, Round: (edge - foot) / 4},
		{Kind: tally.Hole, Along: 3 * units.Inch, Round: 2 * units.Inch},
		{Kind: tally.BrokenRib, At: -20 * units.Inch},
		{Kind: tally.TornLacing, At: -40 * units.Inch, Up: -1, Groups: 3},
	} {
		v.Repairs = append(v.Repairs, answer.Repairs(c, plan.NewSeason(), tally.Log{}.Repair("keep", "2027-06-14", d))...)
	}
	return c, v, number
}

// A hole across a gore stands on the flat bark on both sides of the gore, and so does its number; one over the
// centre line is a part in each quarter and is named once. Each can be touched, and the picture's words tell
// how it is cut.
func TestRepairsOnTheFlatBark(t *testing.T) {
	c, v, gore := repairedFlat(t)
	l := view.Draw(c, v, draw.Size{Width: 1400, Height: 800})
	boxes := map[string][]draw.Box{}
	for _, part := range l.Parts {
		boxes[part.Name] = append(boxes[part.Name], draw.BoxOf(part.Points))
	}
	across := boxes[scene.RepairPart(0)]
	require.Len(t, across, 2)
	after, fore := across[0], across[1]
	assert.Less(t, after.Left, fore.Left)
	between := 0
	for _, opening := range boxes[scene.GoreName(gore, len(v.Flat.Gores))] {
		if middle := (opening.Left + opening.Right) / 2; middle > (after.Left+after.Right)/2 && middle < (fore.Left+fore.Right)/2 {
			between++
		}
	}
	assert.Equal(t, 2, between, "the gore to port and the one to starboard of it")
	assert.Len(t, boxes[scene.RepairPart(1)], 4)
	assert.Contains(t, l.Description, "Mended, 1: hole, cut by gores or seams in 2 pieces.")
	assert.Contains(t, l.Description, "Mended, 2: hole.")
	said := map[string]int{}
	for _, op := range l.Ops {
		if text, ok := op.(draw.Text); ok {
			said[text.Text]++
		}
	}
	for _, k := range l.Key {
		said[k.Text]++
	}
	assert.Equal(t, 1, said["1: hole"]+said["repair 1: hole"])
	assert.Equal(t, 1, said["1"]+said["repair 1"])
	assert.Equal(t, 1, said["2: hole"]+said["repair 2: hole"])
	assert.Zero(t, said["repair 2"])
	assert.NotEmpty(t, view.ReadRepair(v.Repairs, scene.RepairPart(0), tally.Dates{}, units.Metric))
}

// The outlines stand where the flattening lays them, to the picture's scale, and the parts of a sheet show those
// that lie on it.
func TestRepairsOnTheFlatBarkAreInTheirPlace(t *testing.T) {
	c, v, _ := repairedFlat(t)
	size := draw.Size{Width: 1400, Height: 800}
	l := view.Draw(c, v, size)
	r := mend.Make(mend.Boat{Design: c.Design, Frame: c.Frame, Bark: c.Bark, Gather: c.Gather}, v.Repairs[1].Damage)
	var drawn draw.Box
	first := true
	for _, part := range l.Parts {
		if part.Name != scene.RepairPart(1) {
			continue
		}
		b := draw.BoxOf(part.Points)
		if first {
			drawn, first = b, false
		}
		drawn = draw.Box{Left: min(drawn.Left, b.Left), Right: max(drawn.Right, b.Right), Top: min(drawn.Top, b.Top),
			Bottom: max(drawn.Bottom, b.Bottom)}
	}
	// The patch on the all but flat bottom has its own proportion, within the bark's stretch and the bend of the bottom.
	assert.InEpsilon(t, r.PatchAlong/r.PatchRound, drawn.Width()/drawn.Height(), 0.01)
	assert.InDelta(t, size.Width/2, (drawn.Left+drawn.Right)/2, 1e-9, "amidships")

	v.Only = scene.BySheet
	on := 0
	l = view.Draw(c, v, size)
	assert.Contains(t, l.Description, "Mended, 1: hole, cut by gores or seams in 2 pieces.")
	for _, part := range l.Parts {
		if part.Name == scene.RepairPart(0) {
			on++
		}
	}
	assert.Positive(t, on)
}

// With repairs in it the flat bark's lettering is whole and clear, at every size and layer.
func TestRepairsOnTheFlatBarkAreLettered(t *testing.T) {
	c, v, _ := repairedFlat(t)
	for _, layer := range []scene.Layer{scene.Measures, scene.Names, scene.Plain} {
		for _, only := range []scene.Only{scene.Both, scene.BySheet} {
			for _, size := range cells {
				v.Layer, v.Only = layer, only
				what := fmt.Sprintf("layer %d, drawing %d, %.0fx%.0f", layer, only, size.Width, size.Height)
				clearLabels(t, what, view.Draw(c, v, size), size)
			}
		}
	}
}
