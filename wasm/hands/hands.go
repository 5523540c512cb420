package hands

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// fingerReach and mouseReach are how near a touch must come to a part, CSS pixels:
// half of the 44 pixels a target must have; a mouse is finer.
const (
	fingerReach = 22
	mouseReach  = 6
)

// Picture is what the pointers are on.
type Picture struct {
	Work *work.Work
	View *scene.View
	List draw.List // as it was drawn last
	Size draw.Size
}

// Pointer is where a pointer is, CSS pixels: on the picture, and on the page, where it
// stays as it is while the picture moves under it.
type Pointer struct {
	At, OnPage draw.Point
	// ID is the pointer's own while it is down.
	ID int
	// Finger tells that it also scrolls the page, as a pen does too.
	Finger bool
}

// Answer is what the page does about an event.
type Answer struct {
	Capture bool // what follows of this pointer is the picture's, wherever it goes
	Took    bool // the browser is to do nothing with the event
	Stepped bool // the boat is another
	Ended   bool // a change has ended, and is to be kept
	Moved   bool // the picture is to be drawn anew
	Held    bool // so is its read-out, for another handle is held or none
	// Touched is the part to be marked, where Touches tells that one is, or none.
	Touches bool
	Touched string
}

// Hands is what is in hand.
type Hands struct {
	drag  *drag        // the handle in hand, or nil
	pull  *pull        // the picture in hand, or nil
	reach *reach       // a finger on a handle that may yet scroll, or nil
	held  *view.Handle // the handle tapped, or nil
	over  *view.Handle // the handle under the mouse, or nil
	down  []Pointer    // the fingers on the picture
	pinch *pinch       // the picture between two fingers, or nil
}

// drag is a handle in hand: where on the page it was taken up and at what value.
type drag struct {
	view.Handle
	from  draw.Point
	start float64
}

// pull is the picture in hand while it is near: where on the page it was taken and
// where it was.
type pull struct {
	from draw.Point
	x, y float64
}

// reach is a finger on a handle that it has not taken up.
type reach struct {
	view.Handle
	work.Swipe
}

// Drop lets go of whatever is in hand.
func (h *Hands) Drop() { h.drag, h.pull, h.reach, h.down, h.pinch = nil, nil, nil, nil, nil }

// Over tells whether a mouse is over a handle.
func (h *Hands) Over() bool { return h.over != nil }

func (p Picture) handleAt(at draw.Point) (view.Handle, bool) {
	return view.HandleAt(view.Handles(p.Work.Canoe(), *p.View, p.Size), at)
}

// Down answers a pointer that comes down on the picture.
func (h *Hands) Down(on Picture, p Pointer) Answer {
	if h.drag != nil {
		return Answer{} // a second finger
	}
	if p.Finger && h.another(on, p) {
		return Answer{Capture: true, Took: true}
	}
	handle, ok := on.handleAt(p.At)
	switch {
	case on.Work.None:
	case ok && !p.Finger:
		return h.take(on, handle, p)
	case ok:
		h.reach = &reach{handle, work.SwipeFrom(p.OnPage.X, p.OnPage.Y)}
		return Answer{}
	}
	a := h.touch(on, p)
	a.Held = h.hold(nil)
	if on.View.Zoom > 1 {
		h.pull = &pull{p.OnPage, on.View.PanX, on.View.PanY}
		a.Capture = true
	}
	return a
}

// Grip answers a pointer that comes down on the grip over the handle held.
func (h *Hands) Grip(on Picture, p Pointer) Answer {
	if h.drag != nil || h.held == nil {
		return Answer{}
	}
	return h.take(on, *h.held, p)
}

// take begins to drag a handle.
func (h *Hands) take(on Picture, handle view.Handle, p Pointer) Answer {
	if p.Finger {
		handle = handle.ForFinger()
	}
	of, param := on.Work.Canoe().Design, paramOf(handle)
	h.drag = &drag{handle, p.OnPage, param.Get(&of)}
	on.Work.Commit()
	on.Work.TakeUp(handle.Key)
	before := on.Work.Canoe()
	on.View.Ghost = &before
	return Answer{Capture: true, Took: true}
}

func paramOf(h view.Handle) design.Param {
	p, _ := design.Lookup(h.Key)
	return p
}

// Move answers a pointer that moves.
func (h *Hands) Move(on Picture, p Pointer) Answer {
	if h.pinch != nil {
		return h.pinched(on, p)
	}
	switch {
	case h.pull != nil:
		on.View.PanX, on.View.PanY = h.pull.x+p.OnPage.X-h.pull.from.X, h.pull.y+p.OnPage.Y-h.pull.from.Y
		return Answer{Moved: true}
	case h.drag != nil:
		param, system := paramOf(h.drag.Handle), on.Work.System
		// The slider's step nearest to where the handle is, inside its range.
		v := h.drag.Value(h.drag.start, h.drag.from, p.OnPage) - param.Step(system)/2
		on.Work.Set(h.drag.Key, param.Stepped(v, 0, system))
		return Answer{Stepped: true}
	case h.reach != nil:
		r := h.reach
		way := r.To(p.OnPage.X, p.OnPage.Y)
		if way != work.Nowhere {
			h.reach = nil
		}
		if way == work.Sideways && r.Axis.Y == 0 {
			return h.take(on, r.Handle, p)
		}
		return Answer{}
	}
	return h.touch(on, p)
}

// Up answers a pointer that is lifted.
func (h *Hands) Up(on Picture, p Pointer) Answer {
	var a Answer
	h.pull = nil
	if h.lifted(p) {
		h.pullOn(on)
		return a
	}
	if tapped := h.reach; tapped != nil {
		h.reach = nil
		a.Held = h.hold(&tapped.Handle)
	}
	if h.drag != nil {
		h.drag, on.View.Ghost = nil, nil
		on.Work.Commit()
		a.Stepped, a.Ended = true, true
	}
	return a
}

// Cancel puts back what the finger has done so far: the browser has taken it for
// something else, such as a scroll.
func (h *Hands) Cancel(on Picture, p Pointer) Answer {
	var a Answer
	h.reach = nil
	if was := h.pinch; h.lifted(p) {
		on.View.Zoom, on.View.PanX, on.View.PanY = was.view.Zoom, was.view.PanX, was.view.PanY
		return Answer{Moved: true}
	}
	if was := h.pull; was != nil {
		h.pull = nil
		on.View.PanX, on.View.PanY = was.x, was.y
		a.Moved = true
	}
	if h.drag != nil {
		h.drag, on.View.Ghost = nil, nil
		on.Work.Cancel()
		a.Stepped = true
	}
	return a
}

// Leave answers a pointer that leaves the picture. A finger leaves when it is lifted:
// what it touched stays to be read.
func (h *Hands) Leave(p Pointer) Answer {
	if h.drag != nil || p.Finger {
		return Answer{}
	}
	h.over = nil
	return Answer{Touches: true}
}

// Scroll answers a page that is scrolled: whoever does goes on to something else.
func (h *Hands) Scroll() Answer { return Answer{Held: h.drag == nil && h.hold(nil)} }

// hold takes hold of the handle tapped, or lets go of the one there is, and tells
// whether there was one of the two.
func (h *Hands) hold(handle *view.Handle) bool {
	another := handle != nil || h.held != nil
	h.held = handle
	return another
}

// Held is the handle held, wherever the boat has it now.
func (h *Hands) Held(on Picture) (view.Handle, bool) {
	if h.held == nil {
		return view.Handle{}, false
	}
	near := math.Inf(1)
	var found *view.Handle
	for _, now := range view.Handles(on.Work.Canoe(), *on.View, on.Size) {
		if away := math.Hypot(now.At.X-h.held.At.X, now.At.Y-h.held.At.Y); now.Key == h.held.Key && away < near {
			near, found = away, &now
		}
	}
	if h.held = found; found == nil {
		return view.Handle{}, false
	}
	return *found, true
}

// touch finds what is under a pointer: the handle that a mouse would drag, or the part
// of the boat.
func (h *Hands) touch(on Picture, p Pointer) Answer {
	reach := float64(fingerReach)
	h.over = nil
	if !p.Finger {
		reach = mouseReach
		if handle, ok := on.handleAt(p.At); ok {
			h.over = &handle
		}
	}
	a := Answer{Touches: true}
	if h.over == nil {
		a.Touched, _ = on.List.Hit(p.At, reach)
	}
	return a
}

// Readout says what the handle in hand, held or under the mouse sets, or else what the
// part touched is now.
func (h *Hands) Readout(w *work.Work, v scene.View) string {
	var handle *view.Handle
	switch {
	case h.drag != nil:
		handle = &h.drag.Handle
	case h.held != nil:
		handle = h.held
	case h.over != nil:
		handle = h.over
	}
	if handle != nil {
		p := paramOf(*handle)
		return p.Label + ": " + p.Format(p.Get(&w.Entered), w.System) + ". Drag its handle to change it."
	}
	if text := view.Readout(w.Canoe(), v.Touched, w.System); text != "" {
		return text
	}
	if text := view.ReadMeasured(v.Measured, v.Touched, w.System); text != "" {
		return text
	}
	if text := view.ReadRepair(v.Repairs, v.Touched, w.Dates, w.System); text != "" {
		return text
	}
	return "Touch a part of the boat to read it."
}
