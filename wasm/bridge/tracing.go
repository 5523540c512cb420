//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/desk"
	"barkwright/wasm/tracing"
)

// fitWait is how long the fitted boat waits to be drawn over the picture after a change, ms: a
// fit takes a while, and another point may follow at once.
const fitWait = 250

// trace answers a button of the picture's window.
func (p *page) trace(what string) {
	switch what {
	case "file", "camera":
		p.id("tracing-" + what).Call("click")
		return
	case "keep":
		p.keepPicture()
		return
	}
	p.traced(p.desk.Trace(what), false)
	if what == "open" {
		p.showKept()
	}
	if p.desk.Tracing().IsOpen() && what != "open" {
		p.id("easel").Call("focus")
	}
}

// listenTracing answers the window of the picture that the record is read off.
func (p *page) listenTracing() {
	easel, dialog := p.id("easel"), p.id("tracing")
	t := p.desk.Tracing()
	on := func(event string, answer func(tracing.Pointer)) {
		p.on(easel, event, func(e js.Value) {
			answer(p.pointerOn(easel, e))
			p.showTracing(false)
			p.tracedSoon()
		})
	}
	p.on(easel, "pointerdown", func(e js.Value) {
		easel.Call("setPointerCapture", e.Get("pointerId"))
		// The mouse events that a browser makes of a touch afterwards would take the focus back
		// from the field that it has come to by then.
		e.Call("preventDefault")
		easel.Call("focus")
		t.Down(p.work, p.pointerOn(easel, e))
		p.showTracing(false)
	})
	p.on(easel, "pointermove", func(e js.Value) {
		if t.Move(p.work, p.pointerOn(easel, e)) {
			p.showTracing(true)
		}
	})
	on("pointerup", func(at tracing.Pointer) { t.Up(p.work, at) })
	on("pointercancel", func(at tracing.Pointer) { t.Cancel(p.work, at) })
	p.on(easel, "wheel", func(e js.Value) {
		e.Call("preventDefault")
		t.Wheel(p.work, p.pointerOn(easel, e).At, wheelDown(e))
		p.showTracing(true)
	})
	p.on(easel, "keydown", func(e js.Value) {
		if e.Get("ctrlKey").Bool() || e.Get("metaKey").Bool() || e.Get("altKey").Bool() {
			return
		}
		took, changed := t.Key(p.work, e.Get("key").String(), e.Get("shiftKey").Bool())
		if took {
			e.Call("preventDefault")
			p.showTracing(changed && p.work.InHand() != "")
		}
	})
	p.on(easel, "keyup", func(js.Value) {
		if p.work.InHand() == "tracing" {
			t.Rest(p.work)
		}
		p.tracedSoon()
	})
	p.on(dialog, "close", func(js.Value) {
		if t.IsOpen() {
			p.trace("close")
		}
	})
	p.on(dialog, "change", func(e js.Value) { p.changedTraced(e.Get("target")) })
	p.on(p.id("tracing-fade"), "input", func(e js.Value) { p.trace("fade:" + e.Get("target").Get("value").String()) })
	p.on(js.Global(), "resize", func(js.Value) {
		if t.IsOpen() {
			p.showTracing(false)
		}
	})
	p.on(easel, "contextmenu", func(e js.Value) { e.Call("preventDefault") })
	p.listenPictures()
}

// changedTraced answers a list, a box or a field of the window.
func (p *page) changedTraced(at js.Value) {
	id := at.Get("id").String()
	switch what := id[len("tracing-"):]; what {
	case "view", "task", "sort":
		p.trace(what + ":" + at.Get("value").String())
	case "half", "over":
		p.trace(what + ":" + strconv.FormatBool(at.Get("checked").Bool()))
	case "file", "camera":
		if files := at.Get("files"); files.Length() > 0 {
			p.takePicture(files.Index(0))
		}
		at.Set("value", "")
	case "fade":
	default:
		p.traced(p.desk.TypeTraced(tracing.Field(what), at.Get("value").String()), false)
	}
}

// pointerOn is where a pointer's event is on the picture's place.
func (p *page) pointerOn(easel, e js.Value) tracing.Pointer {
	box := easel.Call("getBoundingClientRect")
	at := tracing.Pointer{At: geom.Vec2{X: e.Get("clientX").Float() - box.Get("left").Float(),
		Y: e.Get("clientY").Float() - box.Get("top").Float()}}
	if id, finger, ok := pressed(e); ok {
		at.ID, at.Finger = id, finger
		at.Aside = e.Get("button").Int() > 0
	}
	return at
}

// traced carries out a reply of the window and shows it.
func (p *page) traced(r desk.Reply, moving bool) {
	p.reply(r)
	p.showTracing(moving)
	p.tracedSoon()
}

// tracedSoon follows a change of what was pressed once it is shown: the page behind the
// window, and the fitted boat over the picture.
func (p *page) tracedSoon() {
	if p.tracedOf != p.work.Notebook {
		p.tracedOf = p.work.Notebook
		p.noted()
	}
	p.later(fitWait, func() {
		if p.tracedOf == p.work.Notebook && p.work.InHand() == "" && p.desk.Tracing().Fit(p.work) {
			p.showTracing(false)
		}
	})
}

// showTracing shows the picture, what lies over it and what is said of it. While something
// is on the move it shows no more than that.
func (p *page) showTracing(moving bool) {
	dialog, easel := p.id("tracing"), p.id("easel")
	t := p.desk.Tracing()
	if is := dialog.Get("open").Bool(); is != t.IsOpen() {
		if is {
			dialog.Call("close")
			return
		}
		dialog.Call("showModal")
		p.id("tracing-file-button").Call("focus")
	} else if !is {
		return
	}
	t.Room(p.work, draw.Size{Width: easel.Get("clientWidth").Float(), Height: easel.Get("clientHeight").Float()})
	s := p.desk.TracingWindow(p.palette, moving)
	p.fillAll(s.Slots)
	for id, hidden := range s.Hidden {
		p.hide(id, hidden)
	}
	for id, ticked := range s.Ticked {
		p.id(id).Set("checked", ticked)
	}
	for id, text := range s.Values {
		if at := p.id(id); !at.Equal(p.document.Get("activeElement")) || at.Get("tagName").String() == "SELECT" {
			at.Set("value", text)
		}
	}
	for id, matrix := range map[string]string{"easel-picture": s.Matrix, "loupe-picture": s.LoupeMatrix} {
		style := p.id(id).Get("style")
		style.Set("width", s.Width)
		style.Set("height", s.Height)
		style.Set("transform", matrix)
	}
	p.id("easel-picture").Get("style").Set("opacity", s.Shines)
	p.id("loupe").Call("toggleAttribute", "data-left", s.LoupeLeft)
	if s.Focus != "" {
		p.id(s.Focus).Call("focus")
	}
}
