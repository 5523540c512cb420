//go:build js

package bridge

import (
	"math"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// fingerReach and mouseReach are how near a touch must come to a part, CSS pixels:
// half of the 44 pixels a target must have; a mouse is finer.
const (
	fingerReach = 22
	mouseReach  = 6
)

// hands is what pointers do on the picture. A mouse drags a handle at once. A finger
// also scrolls the page there: it drags a handle that it has tapped before, by the
// grip over it, which does not scroll; or one that goes sideways, as a slider does.
type hands struct {
	grip  js.Value     // the element over the handle tapped
	drag  *drag        // the handle in hand, or nil
	pull  *pull        // the picture in hand, or nil
	reach *reach       // a finger on a handle that may yet scroll, or nil
	held  *view.Handle // the handle tapped, or nil
	over  *view.Handle // the handle under the mouse, or nil
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

// drop lets go of whatever is in hand.
func (h *hands) drop() { h.drag, h.pull, h.reach = nil, nil, nil }

func (p *page) listenHands() {
	hit := p.id("hit")
	p.hands.grip = p.id("grip")
	p.on(hit, "pointerdown", p.pointerDown)
	p.on(p.hands.grip, "pointerdown", func(e js.Value) {
		if p.hands.drag == nil && p.hands.held != nil {
			p.takeHandle(*p.hands.held, e)
		}
	})
	for _, at := range []js.Value{hit, p.hands.grip} {
		p.on(at, "pointermove", p.pointerMove)
		p.on(at, "pointerup", p.pointerUp)
		p.on(at, "pointercancel", func(js.Value) { p.pointerCancel() })
	}
	p.on(hit, "pointerleave", func(e js.Value) {
		// A finger leaves when it is lifted: what it touched stays to be read.
		if p.hands.drag == nil && !byFinger(e) {
			p.hands.over = nil
			p.touch("")
			p.readOut("polite")
		}
	})
	// Whoever scrolls goes on to something else.
	p.on(js.Global(), "scroll", func(js.Value) {
		if p.hands.drag == nil {
			p.hold(nil)
		}
	})
}

// point is where on the picture an event is, CSS pixels.
func point(e js.Value) draw.Point {
	return draw.Point{X: e.Get("offsetX").Float(), Y: e.Get("offsetY").Float()}
}

// onPage is where on the page an event is, CSS pixels: it stays as it is where the
// picture moves under the finger.
func onPage(e js.Value) draw.Point {
	return draw.Point{X: e.Get("pageX").Float(), Y: e.Get("pageY").Float()}
}

// byFinger tells whether a pointer also scrolls the page, as a pen does too.
func byFinger(e js.Value) bool {
	kind := e.Get("pointerType").String()
	return kind == "touch" || kind == "pen"
}

func (p *page) handleAt(at draw.Point) (view.Handle, bool) {
	return view.HandleAt(view.Handles(p.work.Canoe(), p.view, p.picture.Size()), at)
}

func (p *page) pointerDown(e js.Value) {
	if p.hands.drag != nil {
		return // a second finger
	}
	h, ok := p.handleAt(point(e))
	switch {
	case p.work.None:
	case ok && !byFinger(e):
		p.takeHandle(h, e)
		return
	case ok:
		at := onPage(e)
		p.hands.reach = &reach{h, work.SwipeFrom(at.X, at.Y)}
		return
	}
	p.hold(nil)
	p.touchAt(e)
	if p.view.Zoom > 1 {
		p.hands.pull = &pull{onPage(e), p.view.PanX, p.view.PanY}
		e.Get("currentTarget").Call("setPointerCapture", e.Get("pointerId"))
	}
}

// takeHandle begins to drag a handle.
func (p *page) takeHandle(h view.Handle, e js.Value) {
	if byFinger(e) {
		h = h.ForFinger()
	}
	of := p.work.Canoe().Design
	p.hands.drag = &drag{h, onPage(e), p.controls[h.Key].param.Get(&of)}
	p.work.Commit()
	p.work.TakeUp(h.Key)
	before := p.work.Canoe()
	p.view.Ghost = &before
	e.Get("currentTarget").Call("setPointerCapture", e.Get("pointerId"))
	e.Call("preventDefault")
}

func (p *page) pointerMove(e js.Value) {
	at, hands := onPage(e), &p.hands
	switch {
	case hands.pull != nil:
		p.view.PanX, p.view.PanY = hands.pull.x+at.X-hands.pull.from.X, hands.pull.y+at.Y-hands.pull.from.Y
		p.draw()
	case hands.drag != nil:
		p.work.Set(hands.drag.Key, p.snapped(hands.drag.Key, hands.drag.Value(hands.drag.start, hands.drag.from, at)))
		p.refresh()
	case hands.reach != nil:
		switch h := hands.reach; h.To(at.X, at.Y) {
		case work.Sideways:
			hands.reach = nil
			if h.Axis.Y == 0 {
				p.takeHandle(h.Handle, e)
			}
		case work.UpOrDown:
			hands.reach = nil
		}
	default:
		p.touchAt(e)
	}
}

// snapped is the slider's step nearest to a dragged value, inside its range.
func (p *page) snapped(key string, v float64) float64 {
	c := p.controls[key].param
	step := c.Step(p.work.System)
	return c.Stepped(v-step/2, 0, p.work.System)
}

func (p *page) pointerUp(js.Value) {
	hands := &p.hands
	hands.pull = nil
	if tapped := hands.reach; tapped != nil {
		hands.reach = nil
		p.hold(&tapped.Handle)
	}
	if hands.drag == nil {
		return
	}
	hands.drag = nil
	p.view.Ghost = nil
	p.work.Commit()
	p.refresh()
	p.save()
}

// pointerCancel puts back what the finger has done so far: the browser has taken it
// for something else, such as a scroll.
func (p *page) pointerCancel() {
	hands := &p.hands
	hands.reach = nil
	if was := hands.pull; was != nil {
		hands.pull = nil
		p.view.PanX, p.view.PanY = was.x, was.y
		p.draw()
	}
	if hands.drag == nil {
		return
	}
	hands.drag = nil
	p.view.Ghost = nil
	p.work.Cancel()
	p.refresh()
}

// hold takes hold of the handle tapped, or lets go of the one there is.
func (p *page) hold(h *view.Handle) {
	if h == nil && p.hands.held == nil {
		return
	}
	p.hands.held = h
	p.readOut("polite")
	p.draw()
}

// placeGrip puts the grip over the handle held, wherever the boat has it now.
func (p *page) placeGrip(size draw.Size) {
	held := p.hands.held
	if p.hands.grip.IsUndefined() {
		return // nothing is listened to yet
	}
	if held != nil {
		near := math.Inf(1)
		var found *view.Handle
		for _, h := range view.Handles(p.work.Canoe(), p.view, size) {
			if away := math.Hypot(h.At.X-held.At.X, h.At.Y-held.At.Y); h.Key == held.Key && away < near {
				near, found = away, &h
			}
		}
		p.hands.held, held = found, found
	}
	p.hands.grip.Set("hidden", held == nil)
	if held != nil {
		style := p.hands.grip.Get("style")
		style.Set("left", decimal(held.At.X-held.Reach)+"px")
		style.Set("top", decimal(held.At.Y-held.Reach)+"px")
	}
}

// handleWords say what the handle in hand, held or under the mouse sets; empty where
// there is none.
func (p *page) handleWords() string {
	hands := &p.hands
	var h *view.Handle
	switch {
	case hands.drag != nil:
		h = &hands.drag.Handle
	case hands.held != nil:
		h = hands.held
	case hands.over != nil:
		h = hands.over
	default:
		return ""
	}
	c := p.controls[h.Key].param
	return c.Label + ": " + c.Format(c.Get(&p.work.Entered), p.work.System) + ". Drag its handle to change it."
}

// touchAt reads out what is under a pointer: the handle that a mouse would drag, or
// the part of the boat.
func (p *page) touchAt(e js.Value) {
	reach := float64(fingerReach)
	hands, was := &p.hands, p.hands.over
	hands.over = nil
	if !byFinger(e) {
		reach = mouseReach
		if h, ok := p.handleAt(point(e)); ok {
			hands.over = &h
		}
	}
	if (was == nil) != (hands.over == nil) {
		cursor := ""
		if hands.over != nil {
			cursor = "grab"
		}
		e.Get("currentTarget").Get("style").Set("cursor", cursor)
	}
	name := ""
	if hands.over == nil {
		name, _ = p.list.Hit(point(e), reach)
	}
	p.touch(name)
	p.readOut("polite")
}
