//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/hands"
	"barkwright/wasm/work"
)

// finger is a finger on a slider: what the browser itself does with it is undone.
type finger struct {
	hands.Slide
	slider js.Value
	shows  string // what it stands at, as its value
	move   js.Func
}

// listenSliders answers every slider of the page under a finger; a mouse and keys are
// left to the browser.
func (p *page) listenSliders() {
	// Before anyone else on the page hears of it.
	on := func(event string, act func(js.Value)) { p.onCapture(p.document, event, act) }
	on("pointerdown", p.fingerDown)
	on("pointerup", func(e js.Value) { p.fingerUp(e, false) })
	on("pointercancel", func(e js.Value) { p.fingerUp(e, true) })
	on("input", p.undoBrowser)
	on("change", p.undoBrowser)
	for _, event := range []string{"touchend", "touchcancel"} {
		on(event, func(js.Value) { p.leaveSlider(0) })
	}
}

func (p *page) fingerDown(e js.Value) {
	slider, at := e.Get("target"), pointer(e)
	p.dropFinger()
	if !at.Finger || !slider.Call("matches", "input[type=range]").Bool() {
		return
	}
	// Without this a tap would be a click of a mouse on the slider as well. It does not
	// keep the finger from scrolling.
	e.Call("preventDefault")
	number := func(name string) float64 { return js.Global().Call("Number", slider.Get(name)).Float() }
	f := &finger{slider: slider, shows: slider.Get("value").String(), Slide: hands.SlideFrom(at.OnPage.X, at.OnPage.Y,
		number("value"), number("min"), number("max"), slider.Get("clientWidth").Float())}
	f.move = p.answering(func(e js.Value) { f.moved(pointer(e).OnPage) })
	slider.Call("addEventListener", "pointermove", f.move)
	p.finger = f
}

func (f *finger) moved(at draw.Point) {
	value, moves, begun := f.To(at.X, at.Y)
	if begun && moves {
		f.slider.Call("focus", map[string]any{"preventScroll": true})
	}
	if moves {
		f.slider.Set("value", work.Decimal(value))
		f.tell("input")
	}
}

// tell lets the page know of a value that the finger has set.
func (f *finger) tell(event string) {
	f.shows = f.slider.Get("value").String()
	f.slider.Call("dispatchEvent", js.Global().Get("Event").New(event, map[string]any{"bubbles": true}))
}

// fingerUp ends a finger's change, or puts the value back where the browser has taken
// the finger for something else.
func (p *page) fingerUp(e js.Value, cancelled bool) {
	f := p.finger
	if f == nil || !e.Get("target").Equal(f.slider) {
		return
	}
	f.slider.Call("removeEventListener", "pointermove", f.move)
	switch moved := f.Moved(); {
	case moved && !cancelled:
		f.tell("change")
	case moved && keyOf(f.slider) != "":
		p.work.Cancel()
		p.refresh()
		f.shows = f.slider.Get("value").String()
	case moved:
		f.slider.Set("value", work.Decimal(f.Start))
		f.tell("input")
	}
	if !cancelled {
		p.leaveSlider(afterTouch)
	}
}

// afterTouch is when at the latest a browser has done what it does at a finger's end,
// ms. One that scrolls goes on to the end of the touch, which touchend tells.
const afterTouch = 400

// leaveSlider lets the browser have the slider again, once what it is about to do with
// this touch is done.
func (p *page) leaveSlider(delay int) {
	f := p.finger
	if f == nil {
		return
	}
	p.later(delay, func() {
		if p.finger == f {
			p.dropFinger()
		}
	})
}

func (p *page) dropFinger() {
	if f := p.finger; f != nil {
		f.slider.Call("removeEventListener", "pointermove", f.move)
		f.move.Release()
		p.finger = nil
	}
}

// undoBrowser takes back what the browser itself does with a slider under a finger.
func (p *page) undoBrowser(e js.Value) {
	f := p.finger
	if f == nil || !e.Get("isTrusted").Bool() || !e.Get("target").Equal(f.slider) {
		return
	}
	f.slider.Set("value", f.shows)
	e.Call("stopImmediatePropagation")
}
