//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/hands"
	"barkwright/wasm/work"
)

func (p *page) listenHands() {
	hit, grip := p.id("hit"), p.id("grip")
	on := func(target js.Value, event string, answer func(hands.Picture, hands.Pointer) hands.Answer) {
		p.on(target, event, func(e js.Value) { p.handled(e, answer(p.pointedAt(), pointer(e))) })
	}
	on(hit, "pointerdown", p.hands.Down)
	on(grip, "pointerdown", p.hands.Grip)
	for _, at := range []js.Value{hit, grip} {
		on(at, "pointermove", p.hands.Move)
		on(at, "pointerup", p.hands.Up)
		on(at, "pointercancel", p.hands.Cancel)
	}
	// Two fingers are the picture's: the browser would scroll with them.
	for _, event := range []string{"touchstart", "touchmove"} {
		p.on(hit, event, func(e js.Value) {
			if e.Get("touches").Length() > 1 && e.Get("cancelable").Bool() {
				e.Call("preventDefault")
			}
		})
	}
	p.on(hit, "wheel", func(e js.Value) {
		if e.Get("ctrlKey").Bool() || e.Get("metaKey").Bool() {
			p.handled(e, p.hands.Wheel(p.pointedAt(), pointer(e), wheelDown(e)))
		}
	})
	on(hit, "pointerleave", func(_ hands.Picture, at hands.Pointer) hands.Answer { return p.hands.Leave(at) })
	p.on(js.Global(), "scroll", func(e js.Value) { p.handled(e, p.hands.Scroll()) })
}

func (p *page) pointedAt() hands.Picture { return p.pointedIn(p.picture.Size()) }

// pointedIn is pointedAt where the picture's size is known.
func (p *page) pointedIn(size draw.Size) hands.Picture {
	return hands.Picture{Work: p.work, View: &p.view, List: p.list, Size: size}
}

// wheelDown is how far down a wheel was turned, CSS pixels. Some browsers count lines or pages.
func wheelDown(e js.Value) float64 {
	const line, page = 16, 400
	return e.Get("deltaY").Float() * [...]float64{1, line, page}[e.Get("deltaMode").Int()]
}

// pointer is where a pointer's event is.
func pointer(e js.Value) hands.Pointer {
	at := func(x, y string) draw.Point { return draw.Point{X: e.Get(x).Float(), Y: e.Get(y).Float()} }
	p := hands.Pointer{At: at("offsetX", "offsetY"), OnPage: at("pageX", "pageY")}
	p.ID, p.Finger, _ = pressed(e)
	return p
}

// pressed is the number of an event's pointer and whether it scrolls the page as a finger does;
// ok is false for a turn of the wheel, which names no pointer.
func pressed(e js.Value) (id int, finger, ok bool) {
	n := e.Get("pointerId")
	if n.Type() != js.TypeNumber {
		return 0, false, false
	}
	kind := e.Get("pointerType").String()
	return n.Int(), kind == "touch" || kind == "pen", true
}

// handled carries out what the hands answer to an event.
func (p *page) handled(e js.Value, a hands.Answer) {
	if a.Capture {
		js.Global().Call("holdPointer", e.Get("currentTarget"), e.Get("pointerId"))
	}
	if a.Took {
		e.Call("preventDefault")
	}
	if a.Held {
		p.readOut("polite")
	}
	if a.Held || a.Moved {
		p.draw()
	}
	if a.Touches {
		cursor := ""
		if p.hands.Over() {
			cursor = "grab"
		}
		if style := p.id("hit").Get("style"); style.Get("cursor").String() != cursor {
			style.Set("cursor", cursor)
		}
		p.touch(a.Touched)
		p.readOut("polite")
	}
	if a.Stepped {
		p.refresh()
	}
	if a.Ended {
		p.save()
	}
}

// placeGrip puts the grip over the handle held, wherever the boat has it now.
func (p *page) placeGrip(size draw.Size) {
	held, ok := p.hands.Held(p.pointedIn(size))
	p.toggle("grip", "hidden", !ok)
	if ok {
		grip := p.id("grip")
		grip.Get("style").Set("left", work.Decimal(held.At.X-held.Reach)+"px")
		grip.Get("style").Set("top", work.Decimal(held.At.Y-held.Reach)+"px")
	}
}
