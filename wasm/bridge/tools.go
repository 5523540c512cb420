//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// listenTools answers the buttons around the picture and over the form.
func (p *page) listenTools() {
	presses := map[string]func(string){
		"view": p.chooseState, "look": p.look, "go": p.goTo, "keep": p.keep, "do": p.do, "measured": p.record,
		"paper": p.paper, "print": p.printStage, "at": p.pressedNotch, "turn": p.turnStage, "why": p.goNumber,
		"check": p.goCheck, "hold": p.takeInHand, "hand": p.pressedHand, "picture": p.setPicture,
		"only": p.nextOnly, "layer": p.nextLayer,
		"table": p.goTable, "minute": p.firstMinute,
		"bench": p.atBench, "turnsSun": p.turnSun,
		"raise": p.pressRaise, "round": p.pressRound,
		"jot": p.jot, "cure": p.cure, "jump": p.jump, "read": p.readTape, "trace": p.trace,
		"season": p.season, "mend": p.mend,
	}
	p.on(p.document, "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		for name, press := range presses {
			if what := data(b, name); what != "" {
				press(what)
				return
			}
		}
	})
	p.on(p.id("units"), "change", func(e js.Value) {
		n, _ := number(e.Get("target"))
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

func (p *page) chooseState(name string) {
	p.view = p.view.In(scene.StateOf(name))
	p.showState()
	p.showTools(false)
}

// nextOnly shows the next of a state's drawings, whole.
func (p *page) nextOnly(string) {
	p.view = p.view.NextOnly()
	p.id("only").Set("textContent", p.view.OnlyName())
	p.look("fit")
}

// nextLayer letters the picture with the next layer.
func (p *page) nextLayer(string) {
	p.view.Layer = p.view.Layer.Next()
	p.id("layer").Set("textContent", p.view.Layer.String())
	p.draw()
}

func (p *page) do(what string) {
	r := p.desk.Do(what)
	p.dropEntries()
	p.reply(r)
}
