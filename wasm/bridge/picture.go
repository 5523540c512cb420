//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/onsheet"
	"barkwright/wasm/scene/view"
)

// draw shows the boat as it is looked at now.
func (p *page) draw() { p.drawIn(p.picture.Size()) }

// drawIn is draw where the picture's size is known.
func (p *page) drawIn(size draw.Size) {
	p.view.System = p.work.System
	p.view.Load = scene.LoadOf(p.work.Canoe())
	p.view.Repairs = p.work.Repairs()
	p.enterAnew(size)
	p.view = p.view.Clamp(size)
	p.view.Held = nil
	if held, ok := p.work.HeldCanoe(); ok {
		p.view.Held = &held
	}
	p.readOut("off")
	p.toggle("view", "data-near", p.view.Zoom > 1)
	if p.view.Flat = nil; p.showsBark() {
		if p.view.Flat = p.known().Drawing(); p.view.Flat == nil {
			// It follows in a turn of its own, so that the step of a slider in hand is not
			// held up.
			p.turnIn(0)
			return
		}
	}
	if p.list = (draw.List{}); !p.work.None {
		p.list = view.Draw(p.work.Canoe(), p.view, size)
	}
	// To the page the paper is a window of another size.
	if !p.printing {
		p.picture.Show(p.list)
		p.key.set(keyText(p.list))
	}
	p.placeGrip(size)
}

// keyText is what found no room in the picture, which stands beside it.
func keyText(l draw.List) string {
	if words := l.KeyWords(); words != "" {
		return "Key: " + words
	}
	return ""
}

// printPicture gives the printer the whole of the picture, at the size of a sheet and
// without what only a finger has a use for.
func (p *page) printPicture() {
	v := scene.View{State: p.view.State, Only: p.view.Only, Layer: p.view.Layer, Zoom: 1, System: p.work.System, Load: p.view.Load,
		Measured: p.view.Measured, Repairs: p.view.Repairs, Up: p.view.Up, From: p.view.From, Turned: p.view.Turned}
	if p.showsBark() {
		p.known().Need(pipeline.Drawing)
		v.Flat = p.known().Drawing()
	}
	p.picture.Print(view.Draw(p.work.Canoe(), v, onsheet.Wide))
}

func (p *page) listenPicture() {
	p.on(js.Global(), "resize", func(js.Value) { p.draw() })
	p.on(js.Global(), "beforeprint", func(js.Value) {
		p.printing = true
		if data(p.root(), "paper") != "" { // sheets, and nothing of the page
			return
		}
		p.printPicture()
		p.unfoldForPaper()
		p.asksForPaper()
		p.chartDays(true)
	})
	p.on(js.Global(), "afterprint", func(js.Value) {
		p.printing = false
		p.chartDays(false)
		p.draw()
	})
	p.listenHands()
	p.on(p.id("hit"), "keydown", p.pictureKey)
}

// touch marks a part in the picture and in the tables, and reads it out.
func (p *page) touch(name string) {
	if name == p.view.Touched {
		return
	}
	p.view.Touched = name
	p.readOut("polite")
	p.markRows()
	p.draw()
}

// readOut says of the part touched what it is now. It is spoken where the part is
// new, and only shown where the boat or the units are.
func (p *page) readOut(live string) {
	text := p.hands.Readout(p.work, p.view)
	if text == p.readout.text {
		return
	}
	p.readout.live(live)
	p.readout.set(text)
}

func (p *page) markRows() {
	each(p.document, "tr[aria-selected]", func(r js.Value) { r.Call("removeAttribute", "aria-selected") })
	if p.view.Touched == "" {
		return
	}
	each(p.document, `tr[data-part="`+p.view.Touched+`"]`, func(r js.Value) {
		r.Call("setAttribute",
			"aria-selected", "true")
	})
}

func (p *page) rowTouched(e js.Value) {
	row := e.Get("target").Call("closest", partRow)
	if !row.IsNull() {
		p.touch(row.Get("dataset").Get("part").String())
	}
}

// look zooms or moves the picture by a named step.
func (p *page) look(step string) {
	p.view = view.Look(p.work.Canoe(), p.view, step, p.picture.Size())
	p.draw()
}

func (p *page) pictureKey(e js.Value) {
	if step, ok := scene.LookOfKey(e.Get("key").String()); ok && !e.Get("ctrlKey").Bool() && !e.Get("metaKey").Bool() {
		e.Call("preventDefault")
		p.look(step)
	}
}
