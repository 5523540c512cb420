package view_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// led counts the names with a line to their part, in the picture or in its key.
func led(l draw.List) int {
	n := len(l.Key)
	for _, op := range l.Ops {
		line, ok := op.(draw.Stroke)
		if ok && line.Role == draw.Faint && line.Width == scene.HairWidth && len(line.Points) == 2 && len(line.Dash) == 0 {
			n++
		}
	}
	return n
}

// The bark laid flat and each of the details names ten to fourteen parts, as the other views do. A
// choice of this project, no published source.
func TestTenToFourteenNames(t *testing.T) {
	between := func(n int, name string) {
		t.Helper()
		assert.GreaterOrEqual(t, n, 10, name)
		assert.LessOrEqual(t, n, 14, name)
	}
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		names := scene.View{State: scene.Finished, Layer: scene.Names, Zoom: 1}
		between(led(view.GunwaleCut(c, names, large)), d.Name+", the gunwale")
		between(led(view.End(c, names, large)), d.Name+", the end")
		flat, v := skinned(c, bark.ForPicture, scene.View{State: scene.LaidFlat, Layer: scene.Names, Zoom: 1})
		between(led(view.Draw(flat, v, large)), d.Name+", the bark")
		v.Layer = scene.Plain
		assert.Zero(t, led(view.Draw(flat, v, large)), d.Name)
	}
}
