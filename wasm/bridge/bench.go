//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/bench"
)

// atBench answers a button of the bench.
func (p *page) atBench(what string) { p.reply(p.desk.AtBench(what, today())) }

func (p *page) listenBench() {
	dialog, line := p.id("bench"), p.id("bench-line")
	p.on(dialog, "close", func(js.Value) {
		if p.desk.BenchOpen() {
			p.atBench("close")
		}
	})
	p.on(p.id("bench-list"), "change", func(e js.Value) { p.atBench("list:" + e.Get("target").Get("value").String()) })
	p.on(dialog, "keydown", p.benchKey)
	// A button is also pressed by the letter that Enter makes, and by the space bar's going up.
	for _, event := range []string{"keypress", "keyup"} {
		p.on(dialog, event, func(e js.Value) {
			if key := e.Get("key").String(); (key == " " || key == "Enter") && p.ticks(e.Get("target")) {
				e.Call("preventDefault")
			}
		})
	}
	var x, y float64
	p.on(line, "pointerdown", func(e js.Value) { x, y = e.Get("clientX").Float(), e.Get("clientY").Float() })
	p.on(line, "pointerup", func(e js.Value) {
		if e.Get("pointerType").String() == "mouse" {
			return
		}
		if n := bench.Swiped(e.Get("clientX").Float()-x, e.Get("clientY").Float()-y); n != 0 {
			p.atBench("step:" + strconv.Itoa(n))
		}
	})
	p.on(js.Global(), "maysleep", func(js.Value) { p.hide("bench-sleeps", false) })
	p.on(js.Global(), "contrast", func(js.Value) { p.showSun() })
	p.showSun()
}

// ticks tells whether the space bar and Enter tick the line: anywhere but on what they
// press or open themselves.
func (p *page) ticks(target js.Value) bool {
	return target.Equal(p.id("bench-done")) || !target.Call("matches", "button, select, summary").Bool()
}

// benchKey answers a key at the bench. One that is held counts once.
func (p *page) benchKey(e js.Value) {
	target, held := e.Get("target"), e.Get("repeat").Bool()
	if e.Get("ctrlKey").Bool() || e.Get("metaKey").Bool() || e.Get("altKey").Bool() {
		return
	}
	what := ""
	switch key := e.Get("key").String(); key {
	case " ", "Enter":
		if !p.ticks(target) {
			if held {
				e.Call("preventDefault")
			}
			return
		}
		what = "done"
	case "ArrowRight":
		what = "step:1"
	case "ArrowLeft":
		what = "step:-1"
	case "Home":
		what = "first"
	case "End":
		what = "last"
	}
	if what == "" || target.Call("matches", "select").Bool() {
		return
	}
	e.Call("preventDefault")
	if !held || what != "done" {
		p.atBench(what)
	}
}

// showBench shows the line in hand, and opens or closes the bench.
func (p *page) showBench() {
	dialog := p.id("bench")
	slots, hidden, open := p.desk.BenchSlots()
	if is := dialog.Get("open").Bool(); !open {
		if is {
			js.Global().Call("stayAwake", false)
			dialog.Call("close")
		}
		return
	} else if !is {
		p.hide("bench-sleeps", true)
		dialog.Call("showModal")
		js.Global().Call("stayAwake", true)
		p.id("bench-done").Call("focus")
	}
	focused := ""
	if at := p.document.Get("activeElement"); !at.IsNull() {
		focused = data(at, "bench")
	}
	p.fillAll(slots)
	for id, is := range hidden {
		p.hide(id, is)
	}
	// What had the focus may have been written anew, or is hidden now.
	if dialog.Call("contains", p.document.Get("activeElement")).Bool() && !p.document.Get("activeElement").Equal(dialog) {
		return
	}
	back := p.id("bench-done")
	if focused != "" {
		if again := dialog.Call("querySelector", `[data-bench="`+focused+`"]`); !again.IsNull() && again.Call("checkVisibility").Bool() {
			back = again
		}
	}
	back.Call("focus")
}

// turnSun shows the page for sunlight, or no more.
func (p *page) turnSun(string) {
	p.desk.SetSun(data(p.root(), "sun") == "")
	p.showSun()
}

func (p *page) showSun() {
	on := p.desk.Sun(js.Global().Call("moreContrast").Bool())
	if is := data(p.root(), "sun") != ""; on != is {
		p.palette = draw.Screen()
		p.root().Get("dataset").Delete("sun")
		if on {
			p.palette = draw.Sun()
			p.root().Get("dataset").Set("sun", "true")
		}
		p.picture.Colours(p.palette)
		p.showCurves()
		js.Global().Call("measureRoom")
	}
	each(p.document, "[data-turns-sun]", func(b js.Value) { b.Call("setAttribute", "aria-pressed", on) })
}
