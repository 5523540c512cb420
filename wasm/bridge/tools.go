//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// listenTools answers the buttons around the picture and over the form.
func (p *page) listenTools() {
	p.on(p.document, "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		data := b.Get("dataset")
		switch {
		case data.Get("view").Truthy():
			p.showState(b)
		case data.Get("look").Truthy():
			p.look(data.Get("look").String())
		case data.Get("go").Truthy():
			p.goTo(data.Get("go").String())
		case data.Get("keep").Truthy():
			p.keep(data.Get("keep").String())
		case data.Get("do").Truthy():
			p.do(data.Get("do").String())
		}
	})
	p.on(p.id("units"), "change", func(e js.Value) {
		n, _ := strconv.Atoi(e.Get("target").Get("value").String())
		p.setSystem(units.System(n))
	})
	p.on(p.document, "keydown", p.undoKey)
}

// undoKey answers the usual keys of undo and redo, but in a text being typed.
func (p *page) undoKey(e js.Value) {
	if !e.Get("ctrlKey").Bool() && !e.Get("metaKey").Bool() {
		return
	}
	if kind := e.Get("target").Get("type"); kind.Type() == js.TypeString && (kind.String() == "text" || kind.String() == "textarea") {
		return
	}
	switch key := e.Get("key").String(); {
	case key == "z" && !e.Get("shiftKey").Bool():
		p.do("undo")
	case key == "y", key == "z", key == "Z":
		p.do("redo")
	default:
		return
	}
	e.Call("preventDefault")
}

func (p *page) showState(button js.Value) {
	each(p.document, "button[data-view]", func(b js.Value) {
		b.Call("setAttribute", "aria-pressed", strconv.FormatBool(b.Equal(button)))
	})
	p.view.State = scene.StateOf(button.Get("dataset").Get("view").String())
	p.id("raise").Set("hidden", p.view.State != scene.SidesUp)
	p.touch("")
	p.draw()
}

func (p *page) do(what string) {
	switch what {
	case "undo":
		p.work.Undo()
	case "redo":
		p.work.Redo()
	case "reset":
		d, was := design.Default(), p.work.Entered
		d.Name, d.Notes, d.OnHand = was.Name, was.Notes, was.OnHand
		p.replace(d)
		gone := ""
		if !was.Corrected.None() {
			gone = ", and the corrections from readings are taken off"
		}
		p.did("Every dimension stands at its start" + gone + ". The name, the notes, the bark on hand and what was measured are kept. Undo takes it back.")
		return
	default:
		return
	}
	p.did("")
	p.dropEntries()
	p.refresh()
	p.save()
}
