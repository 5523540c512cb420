package hands_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/hands"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

const inch = units.Inch

// picture is the default boat finished, near by a factor, and the handle of its heels.
func picture(t *testing.T, zoom float64) (hands.Picture, view.Handle) {
	t.Helper()
	w := work.New(design.Default(), units.Imperial16)
	size := draw.Size{Width: 900, Height: 500, Letter: 16}
	v := &scene.View{State: scene.Finished, Zoom: zoom, Handles: true, System: w.System}
	on := hands.Picture{Work: w, View: v, List: view.Draw(w.Canoe(), *v, size), Size: size}
	for _, h := range view.Handles(w.Canoe(), *v, size) {
		if h.Key == "heelLength" {
			require.Zero(t, h.Axis.Y)
			return on, h
		}
	}
	require.Fail(t, "no handle of the heels")
	return on, view.Handle{}
}

// heel is the heel's length as entered.
func heel(on hands.Picture) float64 {
	p, _ := design.Lookup("heelLength")
	return p.Get(&on.Work.Entered)
}

// at is a pointer on the picture, moved by so much.
func at(h view.Handle, dx, dy float64, finger bool) hands.Pointer {
	p := draw.Point{X: h.At.X + dx, Y: h.At.Y + dy}
	return hands.Pointer{At: p, OnPage: draw.Point{X: p.X, Y: p.Y + 100}, Finger: finger}
}

// A mouse drags a handle at once, in the slider's steps and in one step of undo.
func TestMouseDrags(t *testing.T) {
	on, handle := picture(t, 1)
	var h hands.Hands
	was := heel(on)
	a := h.Move(on, at(handle, 0, 0, false))
	assert.True(t, a.Touches && h.Over())
	assert.Contains(t, h.Readout(on.Work, *on.View), "Drag its handle to change it.")
	a = h.Down(on, at(handle, 0, 0, false))
	assert.True(t, a.Capture && a.Took)
	assert.NotNil(t, on.View.Ghost, "the boat as it was is seen")
	assert.Equal(t, hands.Answer{}, h.Down(on, at(handle, 50, 50, true)), "a second finger does nothing")
	for _, dx := range []float64{5, 15, 30} {
		assert.True(t, h.Move(on, at(handle, handle.Axis.X*dx, 0, false)).Stepped)
	}
	param, _ := design.Lookup("heelLength")
	steps := heel(on) / param.Step(units.Imperial16)
	assert.InDelta(t, 0, steps-float64(int(steps+0.5)), 1e-9)
	// It stands on the slider's steps: off where the mouse is by less than one.
	assert.InDelta(t, was+30*handle.PerPixel, heel(on), param.Step(units.Imperial16))
	a = h.Up(on, hands.Pointer{})
	assert.True(t, a.Stepped && a.Ended)
	assert.Nil(t, on.View.Ghost)
	assert.True(t, on.Work.Undo())
	assert.Equal(t, was, heel(on))
	assert.False(t, on.Work.CanUndo())
}

// A finger that goes up or down scrolls, one that goes sideways drags, finer than a
// mouse; what the browser takes for a scroll after all is put back.
func TestFingerOnAHandle(t *testing.T) {
	on, handle := picture(t, 1)
	var h hands.Hands
	was := heel(on)
	h.Down(on, at(handle, 0, 0, true))
	assert.Equal(t, hands.Answer{}, h.Move(on, at(handle, 2, 3, true)), "it may be unsteady")
	assert.Equal(t, hands.Answer{}, h.Move(on, at(handle, 2, 30, true)))
	assert.False(t, h.Move(on, at(handle, 60, 30, true)).Stepped, "it scrolls")
	assert.False(t, h.Up(on, hands.Pointer{}).Held, "a scroll is no tap")

	h.Down(on, at(handle, 0, 0, true))
	a := h.Move(on, at(handle, handle.Axis.X*20, 0, true))
	assert.True(t, a.Capture && a.Took)
	h.Move(on, at(handle, handle.Axis.X*40, 0, true))
	assert.Greater(t, heel(on), was)
	param, _ := design.Lookup("heelLength")
	assert.LessOrEqual(t, heel(on)-was, 20*inch/4+param.Step(units.Imperial16)/2+1e-9,
		"a quarter inch a pixel at most, to the nearest step of the slider")
	assert.True(t, h.Cancel(on, hands.Pointer{}).Stepped)
	assert.Equal(t, was, heel(on))
	assert.Nil(t, on.View.Ghost)
}

// A finger that goes sideways on a handle that moves up and down drags nothing.
func TestSidewaysOnAnUprightHandle(t *testing.T) {
	on, _ := picture(t, 1)
	var h hands.Hands
	for _, handle := range view.Handles(on.Work.Canoe(), *on.View, on.Size) {
		if handle.Key == "depth" {
			h.Down(on, at(handle, 0, 0, true))
			assert.Equal(t, hands.Answer{}, h.Move(on, at(handle, 30, 0, true)))
			assert.False(t, h.Move(on, at(handle, 30, 30, true)).Stepped)
			return
		}
	}
	require.Fail(t, "no handle of the depth")
}

// A handle that was tapped is held, follows the boat, and is dragged by its grip until
// the page is scrolled.
func TestTapHolds(t *testing.T) {
	on, handle := picture(t, 1)
	var h hands.Hands
	_, held := h.Held(on)
	assert.False(t, held)
	assert.False(t, h.Grip(on, at(handle, 0, 0, true)).Took, "nothing is held")
	h.Down(on, at(handle, 0, 0, true))
	assert.True(t, h.Up(on, hands.Pointer{}).Held)
	now, held := h.Held(on)
	assert.True(t, held)
	assert.Equal(t, handle, now)
	assert.True(t, h.Grip(on, at(handle, 0, 0, true)).Took)
	assert.False(t, h.Scroll().Held, "it is in hand")
	h.Up(on, hands.Pointer{})
	assert.True(t, h.Scroll().Held)
	assert.False(t, h.Scroll().Held, "there is none any more")
	h.Down(on, at(handle, 0, 0, true))
	h.Up(on, hands.Pointer{})
	on.View.State = scene.LaidFlat
	_, held = h.Held(on)
	assert.False(t, held, "the bark has no handles")
}

// Away from the handles the part under the pointer is read; near, the picture is pulled.
func TestPartsAreReadAndThePictureIsPulled(t *testing.T) {
	on, _ := picture(t, 1)
	var h hands.Hands
	var part hands.Pointer
	name := ""
	for x := 50.0; x < 850 && name == ""; x += 7 {
		for y := 20.0; y < 480 && name == ""; y += 7 {
			p := hands.Pointer{At: draw.Point{X: x, Y: y}}
			if a := h.Move(on, p); !h.Over() && a.Touched != "" {
				part, name = p, a.Touched
			}
		}
	}
	require.NotEmpty(t, name)
	on.View.Touched = name
	assert.Equal(t, view.Readout(on.Work.Canoe(), name, on.Work.System), h.Readout(on.Work, *on.View))
	a := h.Leave(hands.Pointer{})
	assert.True(t, a.Touches && a.Touched == "")
	assert.False(t, h.Leave(hands.Pointer{Finger: true}).Touches, "what a finger touched stays")
	on.View.Touched = ""
	assert.True(t, strings.HasPrefix(h.Readout(on.Work, *on.View), "Touch a part"))
	assert.False(t, h.Down(on, part).Capture, "the whole picture is seen")
	h.Up(on, hands.Pointer{})

	on, handle := picture(t, 2)
	away := at(handle, 0, 0, false)
	away.At = draw.Point{X: 1, Y: 1}
	assert.True(t, h.Down(on, away).Capture)
	away.OnPage.X += 12
	assert.True(t, h.Move(on, away).Moved)
	assert.InDelta(t, 12, on.View.PanX, 1e-9)
	assert.True(t, h.Cancel(on, hands.Pointer{}).Moved)
	assert.Zero(t, on.View.PanX)
}

func TestSlide(t *testing.T) {
	s := hands.SlideFrom(100, 50, 40, 0, 200, 400)
	_, moves, _ := s.To(103, 52)
	assert.False(t, moves, "it may be unsteady")
	v, moves, begun := s.To(120, 52)
	assert.True(t, moves && begun)
	assert.InDelta(t, 40+12*0.5, v, 1e-12, "half a unit a pixel, from where its way counts: 8 pixels off")
	v, moves, begun = s.To(160, 300)
	assert.True(t, moves && !begun)
	assert.InDelta(t, 40+52*0.5, v, 1e-12)
	assert.True(t, s.Moved())
	s = hands.SlideFrom(100, 50, 40, 0, 200, 400)
	s.To(102, 80)
	_, moves, _ = s.To(300, 80)
	assert.False(t, moves || s.Moved(), "it scrolls")
}
