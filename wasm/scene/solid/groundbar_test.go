package solid_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// Whatever the perspective, four points at even distances on a line have the cross ratio 4/3 in the
// picture: a projection keeps it. Closed form, from any text on projective geometry. The bar of the
// 16 ft boat has four cells of a foot.
func TestGroundBarIsInPerspective(t *testing.T) {
	size := draw.Size{Width: 1000, Height: 620, Letter: 16}
	c := core.Evaluate(design.Default())
	for _, v := range []scene.View{{}, {From: scene.Ahead}, {From: scene.Above}, {Turned: 0.2}, {Turned: 0.45}, {Turned: 0.8}} {
		v.State, v.Zoom = scene.InTheRound, 1
		l := solid.Draw(c, v, size)
		var cells [][]draw.Point
		for _, op := range l.Ops {
			f, ok := op.(draw.Fill)
			if ok && len(cells) < 4 {
				cells = append(cells, f.Points)
			}
		}
		require.Len(t, cells, 4)
		apart := func(a, b draw.Point) float64 { return math.Hypot(b.X-a.X, b.Y-a.Y) }
		for _, edge := range [2][2]int{{0, 1}, {3, 2}} {
			a, b, e, d := cells[0][edge[0]], cells[1][edge[0]], cells[2][edge[0]], cells[2][edge[1]]
			assert.InDelta(t, 4.0/3, apart(a, e)*apart(b, d)/(apart(b, e)*apart(a, d)), 1e-9, "%s turned %g", v.From, v.Turned)
			assert.InDelta(t, 0, (d.X-a.X)*(b.Y-a.Y)-(d.Y-a.Y)*(b.X-a.X), 1e-9, "on one line")
		}
		said := false
		for _, op := range l.Ops {
			text, ok := op.(draw.Text)
			said = said || ok && text.Text == "4' 0\" on the ground"
		}
		assert.True(t, said, "%s turned %g: the bar is lettered", v.From, v.Turned)
		v.Layer = scene.Plain
		for _, op := range solid.Draw(c, v, size).Ops {
			_, ok := op.(draw.Text)
			assert.False(t, ok, "no lettering")
		}
	}
}
