package view_test

import (
	"fmt"
	"math"
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

// pictureArea is the area of a closed outline by the shoelace formula.
func pictureArea(points []draw.Point) float64 {
	sum := 0.0
	for i, q := range points {
		next := points[(i+1)%len(points)]
		sum += q.X*next.Y - next.X*q.Y
	}
	return math.Abs(sum) / 2
}

// onButts is a boat whose side panels have butts, with a hole over the first of them.
func onButts(t *testing.T, d design.Design) (core.Canoe, scene.View) {
	t.Helper()
	width, _ := design.Lookup("sheetWidth")
	c, faults := core.Try(width.Set(d, 36*units.Inch))
	require.Empty(t, faults)
	c, v := skinned(c, bark.ForPicture, scene.View{State: scene.LaidFlat, Only: scene.BySheet, Zoom: 1})
	if len(c.Bark.Butts) == 0 {
		return c, v
	}
	b := c.Bark.Butts[0]
	column := c.Hull.Column(c.Bark.PlaceAt(c.Hull, b.Along))
	damage := tally.Damage{Kind: tally.Hole, At: math.Copysign(c.Hull.RunTo(column.At(column.Girth()).X), b.Along),
		Up: column.Girth(), Along: 5 * units.Inch, Round: 4 * units.Inch}
	if !b.Port {
		damage.Up = -damage.Up
	}
	v.Repairs = answer.Repairs(c, plan.NewSeason(), tally.Log{}.Repair("keep", "2027-06-14", damage))
	return c, v
}

// Sheet by sheet a patch over the butt of two strips stands on both of them where they are cut, inside the strip,
// and its parts there have together the area that it has on the panels, at the sheets' scale: they are only turned
// and moved. On every starting boat that has a butt.
func TestRepairAcrossAButtIsOnBothStrips(t *testing.T) {
	tried := 0
	for _, d := range design.Starting() {
		c, v := onButts(t, d)
		if len(v.Repairs) == 0 {
			continue
		}
		tried++
		whole, names := 0.0, map[string]bool{}
		for _, part := range mend.OnFlat(c.Hull, &c.Bark, v.Flat, v.Repairs[0].Repair) {
			if part.Strip != "" {
				points := make([]draw.Point, len(part.Outline))
				for i, q := range part.Outline {
					points[i] = draw.Point(q)
				}
				whole += pictureArea(points)
				names[part.Strip] = true
			}
		}
		require.Len(t, names, 2, d.Name)
		l := view.Draw(c, v, draw.Size{Width: 1400, Height: 800})
		// Strips of a panel have one name in the picture: each is known by its proportion.
		var strips []draw.Box
		scale := 0.0
		for _, s := range slices.Concat(c.Bark.Port, c.Bark.Star) {
			for _, part := range l.Parts {
				box := draw.BoxOf(part.Points)
				if k := box.Width() / s.Length(); part.Name == answer.StripPart(c, s) && math.Abs(box.Height()-k*s.Width) < 1e-9 {
					strips, scale = append(strips, box), k
				}
			}
		}
		drawn, on := 0.0, 0
		for _, part := range l.Parts {
			if part.Name != scene.RepairPart(0) {
				continue
			}
			for _, s := range strips {
				if draw.BoxOf(part.Points).Within(s) {
					drawn += pictureArea(part.Points)
					on++
					break
				}
			}
		}
		assert.Equal(t, 2, on, d.Name)
		assert.InEpsilon(t, whole*scale*scale, drawn, 1e-9, "%s: thousands of pixels, each to 1e-13 of them", d.Name)
	}
	assert.GreaterOrEqual(t, tried, 4)
}

// With repairs on strips the sheets' lettering is whole and clear, at every size and layer.
func TestRepairsOnStripsAreLettered(t *testing.T) {
	for _, d := range design.Starting()[1:3] {
		c, v := onButts(t, d)
		for _, layer := range []scene.Layer{scene.Measures, scene.Names, scene.Plain} {
			for _, only := range []scene.Only{scene.Both, scene.BySheet} {
				for _, size := range cells {
					v.Layer, v.Only = layer, only
					what := fmt.Sprintf("%s, layer %d, drawing %d, %.0fx%.0f", d.Name, layer, only, size.Width, size.Height)
					clearLabels(t, what, view.Draw(c, v, size), size)
				}
			}
		}
	}
}
