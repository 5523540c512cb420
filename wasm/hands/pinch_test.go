package hands_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/wasm/hands"
	"barkwright/wasm/scene"
)

func finger(id int, x, y float64) hands.Pointer {
	return hands.Pointer{ID: id, Finger: true, At: draw.Point{X: x, Y: y}, OnPage: draw.Point{X: x, Y: y + 100}}
}

// shown is what of the whole picture lies at a place of it, in shares of the zoom.
func shown(v scene.View, at draw.Point, size draw.Size) draw.Point {
	return draw.Point{X: (at.X - size.Width/2 - v.PanX) / v.Zoom, Y: (at.Y - size.Height/2 - v.PanY) / v.Zoom}
}

// Two fingers that go apart zoom by as much as they do, and what lay under each stays under it;
// one that stays has the picture in hand, and the boat is left alone.
func TestPinch(t *testing.T) {
	on, _ := picture(t, 1)
	was := on.Work.Entered
	var h hands.Hands
	h.Down(on, finger(1, 400, 200))
	a := h.Down(on, finger(2, 500, 260))
	assert.True(t, a.Capture && a.Took)
	before := [2]draw.Point{shown(*on.View, draw.Point{X: 400, Y: 200}, on.Size),
		shown(*on.View, draw.Point{X: 500, Y: 260}, on.Size)}
	// Both go twice as far from a place between them, moved a little to the right.
	assert.True(t, h.Move(on, finger(1, 360, 170)).Moved)
	h.Move(on, finger(2, 560, 290))
	assert.InDelta(t, 2, on.View.Zoom, 1e-12)
	for i, at := range []draw.Point{{X: 360, Y: 170}, {X: 560, Y: 290}} {
		now := shown(*on.View, at, on.Size)
		assert.InDelta(t, before[i].X, now.X, 1e-9)
		assert.InDelta(t, before[i].Y, now.Y, 1e-9)
	}
	h.Up(on, finger(1, 360, 170))
	x := on.View.PanX
	assert.True(t, h.Move(on, finger(2, 570, 290)).Moved)
	assert.InDelta(t, x+10, on.View.PanX, 1e-9, "the finger that stays pulls")
	h.Up(on, finger(2, 570, 290))
	assert.False(t, h.Move(on, finger(3, 100, 100)).Moved)
	assert.Equal(t, was, on.Work.Entered)
}

// A pinch that the browser takes away leaves the picture as it was, and so does one on a handle
// leave the boat.
func TestPinchTakenAway(t *testing.T) {
	on, handle := picture(t, 1)
	was := on.Work.Entered
	var h hands.Hands
	h.Down(on, finger(1, handle.At.X, handle.At.Y))
	h.Down(on, finger(2, handle.At.X+80, handle.At.Y))
	h.Move(on, finger(2, handle.At.X+200, handle.At.Y))
	assert.Greater(t, on.View.Zoom, 2.0)
	assert.True(t, h.Cancel(on, finger(2, 0, 0)).Moved)
	assert.Equal(t, 1.0, on.View.Zoom)
	assert.False(t, h.Up(on, finger(1, 0, 0)).Held)
	assert.Equal(t, was, on.Work.Entered)
}

// The wheel zooms at the pointer, by no more for a mouse's notch than for a touchpad's push of
// thirty pixels, and back by as much.
func TestWheel(t *testing.T) {
	on, _ := picture(t, 2)
	var h hands.Hands
	at := finger(0, 300, 180)
	before := shown(*on.View, at.At, on.Size)
	assert.True(t, h.Wheel(on, at, -120).Took)
	assert.InDelta(t, 2*math.Exp(0.3), on.View.Zoom, 1e-9)
	after := shown(*on.View, at.At, on.Size)
	assert.InDelta(t, before.X, after.X, 1e-9)
	assert.InDelta(t, before.Y, after.Y, 1e-9)
	h.Wheel(on, at, 30)
	assert.InDelta(t, 2, on.View.Zoom, 1e-9)
}
