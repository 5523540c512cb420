package scene_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

func TestLook(t *testing.T) {
	size := draw.Size{Width: 400, Height: 200}
	v := scene.View{Zoom: 1}
	in := v.Look("in", size)
	assert.Greater(t, in.Zoom, 1.0)
	assert.InDelta(t, 1, in.Look("out", size).Zoom, 1e-12)
	for _, c := range []struct {
		key    string
		dx, dy float64
	}{{"ArrowRight", -60, 0}, {"ArrowLeft", 60, 0}, {"ArrowUp", 0, 30}, {"ArrowDown", 0, -30}} {
		step, ok := scene.LookOfKey(c.key)
		assert.True(t, ok)
		moved := in.Look(step, size)
		assert.InDelta(t, c.dx, moved.PanX, 1e-9, c.key)
		assert.InDelta(t, c.dy, moved.PanY, 1e-9, c.key)
		assert.Equal(t, v, moved.Look("fit", size))
	}
	_, ok := scene.LookOfKey("a")
	assert.False(t, ok)
}
