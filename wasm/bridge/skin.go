//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
)

// showsBark tells whether the picture is one of the bark laid flat.
func (p *page) showsBark() bool {
	return p.view.State == scene.LaidFlat || p.view.State == scene.SidesUp
}

const (
	// restDelay is how long a control must be still before what takes longer is worked
	// out, ms.
	restDelay = 40
	// turnLength is how long it is worked at before the browser has its turn, ms: a step
	// that comes meanwhile waits for no more.
	turnLength = 5
)

// restSoon puts off what need not follow every step until the control has been still;
// the bark laid flat that the picture waits for is not put off.
func (p *page) restSoon() {
	p.followed = false
	p.root().Get("dataset").Set("rest", "waiting")
	delay := restDelay
	if next, waits := p.known().Waiting(); waits && next == pipeline.Drawing {
		delay = 0
	}
	p.turnIn(delay)
}

func (p *page) turnIn(ms int) {
	if p.turnFunc.IsUndefined() {
		p.turnFunc = p.callback(func([]js.Value) { p.turn() })
	}
	if !p.resting.IsUndefined() {
		js.Global().Call("clearTimeout", p.resting)
	}
	p.resting = js.Global().Call("setTimeout", p.turnFunc, ms)
}

// turn works at what is not known yet for a moment and shows what has become known. What
// stands further down the page follows once the bark and the water are.
func (p *page) turn() {
	known := p.known()
	for until := now() + turnLength; ; {
		next, waits := known.Waiting()
		if !p.followed && (!waits || next > pipeline.Water) {
			p.followed = true
			p.follow()
			p.root().Get("dataset").Set("rest", "")
			break
		}
		// The picture under a slider in hand is not cut off: it would never come.
		if now() >= until && next != pipeline.Drawing {
			break
		}
		piece, finished, worked := known.Next()
		if !worked {
			p.root().Get("dataset").Set("skin", "")
			return
		}
		if finished {
			p.showPiece(piece)
			if piece == pipeline.Drawing {
				p.turnIn(restDelay)
				return
			}
		}
	}
	p.turnIn(0)
}

// showPiece brings to the page what has become known.
func (p *page) showPiece(piece pipeline.Piece) {
	switch piece {
	case pipeline.Drawing:
		p.draw()
	case pipeline.Figures:
		p.showNumbers()
		p.showChecks()
		if p.showsBark() {
			p.draw()
		}
	case pipeline.Water:
		p.showWater()
	case pipeline.Beside:
		p.showRecord()
	default:
		p.showNumbers()
		p.showChecks()
		p.showTables(true)
		p.showTables(false)
		if p.showsBark() {
			p.draw()
		}
	}
}

// known is what is known of the boat in hand, told what the picture is of.
func (p *page) known() *pipeline.Boat {
	b := p.work.Known()
	b.Want(p.showsBark())
	return b
}

// listenRaise turns the sides up as the slider under the picture is moved.
func (p *page) listenRaise() {
	slider := p.id("up")
	p.on(slider, "input", func(js.Value) {
		p.view.Up = slider.Get("valueAsNumber").Float() / 100
		slider.Call("setAttribute", "aria-valuetext", raise.UpWords(p.view.Up))
		p.draw()
	})
}
