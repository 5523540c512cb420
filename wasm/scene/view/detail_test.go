package view_test

import (
	"math"
	"slices"
	"testing"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// partArea is the area of a part by the shoelace rule, px2.
func partArea(p draw.Part) float64 {
	sum := 0.0
	for i, q := range p.Points {
		r := p.Points[(i+1)%len(p.Points)]
		sum += (q.X*r.Y - r.X*q.Y) / 2
	}
	return math.Abs(sum)
}

// In the cut of the gunwale the timbers stand to one another as their sizes do: areas of rectangles,
// the inwale's less the triangle of its bevel (closed forms).
func TestGunwaleCutIsToScale(t *testing.T) {
	for _, line := range extreme[:8] {
		c := lineBoat(t, line)
		d, j := c.Design, frame.NewJoinery(c.Design)
		l := view.Draw(c, scene.View{State: scene.Finished, Only: scene.Details, Zoom: 1}, large)
		area := func(name string) float64 { return partArea(partsNamed(l, name)[0]) }
		scale := area(answer.CapPart) / (d.CapWidth * d.CapThickness)
		assert.InEpsilon(t, scale*(d.InwaleThickness*d.InwaleDepth-j.Bevel*j.Bevel/2), area(answer.InwalePart), 1e-9, line)
		assert.InEpsilon(t, scale*d.OutwaleThickness*d.OutwaleDepth, area(answer.OutwalePart), 1e-9, line)
	}
}

// The details letter what the tables say of the same things.
func TestDetailsAgreeWithTheTables(t *testing.T) {
	for _, line := range extreme[:8] {
		c := lineBoat(t, line)
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			v := scene.View{State: scene.Finished, Only: scene.Details, Zoom: 1, System: s}
			said := lettering(view.Draw(c, v, large))
			joinery, _ := answer.MakeTable(c, "joinery")
			for _, row := range joinery.Rows {
				name := row.Cells[0].Text
				if slices.Contains([]string{"inwale, bevel for the ribs' tips", "outwale pegs",
					"stitches through the stem-pieces"}, name) {
					assert.Contains(t, said, joinery.Columns[1].Format(row.Cells[1], s), "%s %s", line, name)
				}
			}
			v.Only = scene.RibBlanks
			said = lettering(view.Draw(c, v, draw.Size{Width: 718, Height: 1000, Letter: 16}))
			ribs, _ := answer.MakeTable(c, "ribs")
			for _, row := range ribs.Rows {
				assert.Contains(t, said, cellOf(ribs, row, "length", s), "%s rib %s", line, row.Cells[0].Text)
			}
		}
	}
}

// Every rib is a blank as long as it is finished, all at one scale.
func TestRibBlanksAreToScale(t *testing.T) {
	c := core.Evaluate(design.Default())
	l := view.Draw(c, scene.View{State: scene.Finished, Only: scene.RibBlanks, Zoom: 1}, large)
	scale := 0.0
	for _, r := range c.Frame.Ribs {
		parts := partsNamed(l, answer.RibPart(r.Number))
		require.Len(t, parts, 1)
		b := draw.BoxOf(parts[0].Points)
		if scale == 0 {
			scale = b.Width() / r.Length
		}
		assert.InEpsilon(t, scale, b.Width()/r.Length, 1e-9)
		assert.InDelta(t, large.Width/2, (b.Left+b.Right)/2, 1e-9)
	}
}
