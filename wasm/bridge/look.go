//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// entrance is the look that a stage was come to with, and the view that it gave at a size.
type entrance struct {
	look stage.Look
	view scene.View
	size draw.Size
}

// lookAt shows the picture as it was left at a place, or as the place is come to for the first time.
func (p *page) lookAt(at work.Place) {
	p.places.entered = entrance{}
	left, been := p.places.looked[at]
	switch st, ok := at.Stage(); {
	case been:
		p.view = p.view.As(left)
	case ok:
		p.enter(st.Look, p.picture.Size())
	default:
		p.view = p.comeTo(at, p.view, p.picture.Size())
	}
	p.showState()
}

// openingView is how the page looks at the boat before it stands at a place.
var openingView = scene.View{Zoom: 1, Handles: true, State: scene.Finished}

// comeTo is a view with which a place is come to for the first time.
func (p *page) comeTo(at work.Place, v scene.View, size draw.Size) scene.View {
	st, ok := at.Stage()
	if !ok {
		v.Only, v.Zoom, v.PanX, v.PanY = scene.Both, 1, 0, 0
		return v
	}
	return p.comeWith(st.Look, v, size)
}

func (p *page) comeWith(l stage.Look, v scene.View, size draw.Size) scene.View {
	if p.work.None {
		l.Near = nil
	}
	return view.Enter(p.work.Canoe(), v, l, size)
}

func (p *page) enter(l stage.Look, size draw.Size) {
	p.view = p.comeWith(l, p.view, size)
	p.places.entered = entrance{l, p.view, size}
}

// enterAnew lets the picture follow the window while it is looked at as the stage was come to.
func (p *page) enterAnew(size draw.Size) {
	if e := p.places.entered; len(e.look.Near) > 0 && e.size != size && !p.printing && p.view.Stays(e.view) {
		p.enter(e.look, size)
	}
}

// showState shows the buttons of the picture's state, and the picture with no part touched.
func (p *page) showState() {
	each(p.document, "button[data-view]", func(b js.Value) {
		b.Call("setAttribute", "aria-pressed", data(b, "view") == p.view.State.ID())
	})
	p.stopMotion()
	p.hide("raise", p.view.State != scene.SidesUp)
	p.hide("round", p.view.State != scene.InTheRound)
	p.hide("only", !p.view.Choice())
	p.id("only").Set("textContent", p.view.OnlyName())
	p.hide("layer", !p.view.State.Plain())
	p.touch("")
	p.draw()
}
