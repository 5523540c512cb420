//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/work"
)

// finger is a finger on a slider. Browsers would move the slider to where the finger
// comes down, and on as it scrolls the page: what they do with it is undone, and the
// slider moves by how far the finger has gone sideways.
type finger struct {
	work.Swipe
	slider js.Value
	start  float64 // what the slider stood at
	shows  string  // what it stands at, as its value
	pixel  float64 // what a pixel of its way changes
	move   js.Func
}

// listenSliders answers every slider of the page under a finger; a mouse and keys are
// left to the browser.
func (p *page) listenSliders() {
	on := func(event string, act func(js.Value)) {
		// Before anyone else on the page hears of it.
		p.document.Call("addEventListener", event, p.answering(act), true)
	}
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
	slider := e.Get("target")
	p.dropFinger()
	if !byFinger(e) || !slider.Call("matches", "input[type=range]").Bool() {
		return
	}
	// Without this a tap would be a click of a mouse on the slider as well. It does not
	// keep the finger from scrolling.
	e.Call("preventDefault")
	at := onPage(e)
	f := &finger{Swipe: work.SwipeFrom(at.X, at.Y), slider: slider, shows: slider.Get("value").String()}
	f.start = f.number("value")
	f.pixel = (f.number("max") - f.number("min")) / slider.Get("clientWidth").Float()
	f.move = p.answering(func(e js.Value) { p.fingerMoved(f, e) })
	slider.Call("addEventListener", "pointermove", f.move)
	p.finger = f
}

func (p *page) fingerMoved(f *finger, e js.Value) {
	at, was := onPage(e), f.Way()
	if f.To(at.X, at.Y) != work.Sideways {
		return
	}
	if was == work.Nowhere {
		f.slider.Call("focus", map[string]any{"preventScroll": true})
	}
	f.slider.Set("value", decimal(f.start+f.pixel*f.Along(at.X)))
	f.tell("input")
}

// number is the slider's min, max or value.
func (f *finger) number(name string) float64 {
	return js.Global().Call("Number", f.slider.Get(name)).Float()
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
	switch moved := f.Way() == work.Sideways; {
	case moved && !cancelled:
		f.tell("change")
	case moved && keyOf(f.slider) != "":
		p.work.Cancel()
		p.refresh()
		f.shows = f.slider.Get("value").String()
	case moved:
		f.slider.Set("value", decimal(f.start))
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
	var later js.Func
	later = p.callback(func([]js.Value) {
		later.Release()
		if p.finger == f {
			p.dropFinger()
		}
	})
	js.Global().Call("setTimeout", later, delay)
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
