package view_test

import (
	"testing"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A drag by d pixels sets the value whose handle stands d pixels away.
func TestHandlesFollowTheFinger(t *testing.T) {
	for _, b := range boats {
		for _, v := range views() {
			for _, size := range sizes {
				before := view.Handles(b.Canoe, v, size)
				require.Len(t, before, 5)
				for i, h := range before {
					p, ok := design.Lookup(h.Key)
					require.True(t, ok, h.Key)
					start := p.Get(&b.Design)
					to := draw.Point{X: h.At.X - h.Axis.X, Y: h.At.Y - h.Axis.Y}
					value := h.Value(start, h.At, to)
					assert.Less(t, value, start, h.Key)
					d := p.Set(b.Design, value)
					moved := v
					moved.Ghost = &b.Canoe
					hl := hull.New(d)
					after := view.Handles(core.Canoe{Design: d, Hull: hl, Frame: frame.Build(hl), Bark: bark.Plan(hl)}, moved, size)[i]
					assert.InDelta(t, to.X, after.At.X, 1e-9, h.Key)
					assert.InDelta(t, to.Y, after.At.Y, 1e-9, h.Key)
				}
			}
		}
	}
}

func TestHandleAt(t *testing.T) {
	handles := []view.Handle{{Key: "near", At: draw.Point{X: 10}, Reach: 22},
		{Key: "far", At: draw.Point{X: 30}, Reach: 22}}
	for _, c := range []struct {
		x    float64
		want string
	}{{12, "near"}, {29, "far"}, {21, "far"}, {-11.9, "near"}, {-12.1, ""}} {
		h, ok := view.HandleAt(handles, draw.Point{X: c.x})
		assert.Equal(t, c.want, h.Key)
		assert.Equal(t, c.want != "", ok)
	}
}

func TestClampAndZoom(t *testing.T) {
	size := draw.Size{Width: 400, Height: 200}
	assert.Equal(t, scene.View{Zoom: 1}, scene.View{Zoom: 0.2, PanX: 90, PanY: -9}.Clamp(size), "at no zoom nothing pans")
	assert.Equal(t, scene.View{Zoom: 2, PanX: 200, PanY: -100}, scene.View{Zoom: 2, PanX: 999, PanY: -999}.Clamp(size))
	assert.Equal(t, scene.View{Zoom: 2, PanX: -200, PanY: 100}, scene.View{Zoom: 2, PanX: -999, PanY: 999}.Clamp(size))
	assert.Equal(t, float64(scene.MostZoom), scene.View{Zoom: 99}.Clamp(size).Zoom)

	// What is under the finger stays there: (x - middle - pan) / zoom does not change.
	v := scene.View{Zoom: 2, PanX: 30, PanY: 10}
	at := draw.Point{X: 240, Y: 90}
	near := v.ZoomAt(at, 1.5, size)
	assert.InDelta(t, 3, near.Zoom, 1e-12)
	assert.InDelta(t, (at.X-200-v.PanX)/v.Zoom, (at.X-200-near.PanX)/near.Zoom, 1e-9)
	assert.InDelta(t, (at.Y-100-v.PanY)/v.Zoom, (at.Y-100-near.PanY)/near.Zoom, 1e-9)
}

// On a phone a pixel is more than an inch of beam: a finger moves it a quarter inch.
func TestFingerDragsFinely(t *testing.T) {
	c := core.Evaluate(design.Default())
	phone := draw.Size{Width: 369, Height: 182, Letter: 16}
	for _, h := range view.Handles(c, scene.View{State: scene.Finished, Zoom: 1}, phone) {
		f := h.ForFinger()
		assert.Greater(t, h.PerPixel, units.Inch/4, h.Key)
		moved := f.Value(1, draw.Point{}, draw.Point{X: 10 * h.Axis.X, Y: 10 * h.Axis.Y}) - 1
		assert.InDelta(t, 2.5*units.Inch, moved, 1e-12, h.Key)
		h.PerPixel = units.Inch / 16
		assert.Equal(t, h, h.ForFinger(), "no faster than the finger")
	}
}
