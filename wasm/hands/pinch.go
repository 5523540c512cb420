package hands

import (
	"math"
	"slices"

	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

// pinch is the picture between two fingers: how it was, and where on it they came down.
type pinch struct {
	view scene.View
	from [2]draw.Point
}

// another notes a finger that comes down. The second of two takes the picture between them, and
// what the first was about is forgotten.
func (h *Hands) another(on Picture, p Pointer) bool {
	h.forget(p)
	h.down = append(h.down, p)
	if len(h.down) != 2 {
		return h.pinch != nil
	}
	h.reach, h.pull = nil, nil
	h.pinch = &pinch{*on.View, [2]draw.Point{h.down[0].At, h.down[1].At}}
	return true
}

// forget takes out the finger of a pointer.
func (h *Hands) forget(p Pointer) {
	h.down = slices.DeleteFunc(h.down, func(q Pointer) bool { return q.ID == p.ID })
}

// pinched zooms as far as the fingers are apart, at the place between them, and moves the picture
// with that place.
func (h *Hands) pinched(on Picture, p Pointer) Answer {
	for i, q := range h.down {
		if q.ID == p.ID {
			h.down[i] = p
		}
	}
	a, b := h.down[0].At, h.down[1].At
	was := h.pinch.from
	gap := math.Hypot(b.X-a.X, b.Y-a.Y) / max(1, math.Hypot(was[1].X-was[0].X, was[1].Y-was[0].Y))
	middle := was[0].Toward(was[1], 0.5)
	v := h.pinch.view.ZoomAt(middle, gap, on.Size)
	now := a.Toward(b, 0.5)
	on.View.Zoom, on.View.PanX, on.View.PanY = v.Zoom, v.PanX+now.X-middle.X, v.PanY+now.Y-middle.Y
	return Answer{Moved: true, Took: true}
}

// lifted takes out a finger, and reports whether that ends a pinch.
func (h *Hands) lifted(p Pointer) bool {
	h.forget(p)
	if h.pinch == nil || len(h.down) > 1 {
		return false
	}
	h.pinch = nil
	return true
}

// pullOn goes on with one finger of a pinch, which has the picture in hand.
func (h *Hands) pullOn(on Picture) {
	if len(h.down) == 1 && on.View.Zoom > 1 {
		h.pull = &pull{h.down[0].OnPage, on.View.PanX, on.View.PanY}
	}
}

// mostTurn is the most of one turn of a wheel that zooms, CSS pixels: a mouse's notch is a
// hundred and more, a touchpad's pinch a few. zoomPerPixel is what one of them adds.
const (
	mostTurn     = 30
	zoomPerPixel = 0.01
)

// Wheel zooms at the pointer by a wheel turned so many CSS pixels down.
func (h *Hands) Wheel(on Picture, p Pointer, down float64) Answer {
	turn := max(-mostTurn, min(mostTurn, down))
	*on.View = on.View.ZoomAt(p.At, math.Exp(-turn*zoomPerPixel), on.Size)
	return Answer{Moved: true, Took: true}
}
