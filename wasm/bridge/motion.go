//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/wasm/hands"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
)

// How long the pictures that move by themselves take, s. Choices of this project.
const (
	raiseSeconds = 14
	turnSeconds  = 24
)

// stillTurn is how far a press turns the boat for a user who asks for no motion, in turns.
const stillTurn = 1.0 / 12

// motions are the pictures that move by themselves: the boat raised, and turned round.
type motions struct {
	raise, turn hands.Motion
	frame       js.Func // draws the next picture of what moves
	spoken      string  // the words of the raising that were spoken last
}

// still tells whether the user asks for no motion.
func still() bool {
	return js.Global().Call("matchMedia", "(prefers-reduced-motion: reduce)").Get("matches").Bool()
}

// listenMotion answers the slider of the raising and what stops a motion. No frame is asked for
// but by a press on Play or Turn.
func (p *page) listenMotion() {
	p.motions.raise.Seconds, p.motions.turn.Seconds = raiseSeconds, turnSeconds
	p.motions.frame = p.callback(func([]js.Value) { p.moveOn() })
	slider := p.id("up")
	p.on(slider, "input", func(js.Value) { p.raiseTo(slider.Get("valueAsNumber").Float() / 100) })
	// A press of the button itself, by a pointer or a key, is answered as one.
	own := func(e js.Value) bool { return !e.Get("target").Call("closest", "#play, #turn").IsNull() }
	p.on(p.document, "pointerdown", func(e js.Value) {
		if !own(e) {
			p.stopMotion()
		}
	})
	p.on(p.document, "keydown", func(e js.Value) {
		if key := e.Get("key").String(); !own(e) || (key != "Enter" && key != " ") {
			p.stopMotion()
		}
	})
	p.nameMotion()
}

// pressRaise plays or holds the raising, or goes to the still picture before or after.
func (p *page) pressRaise(what string) {
	switch {
	case what == "back":
		p.raiseTo(raise.Next(p.work.Canoe(), p.view.Up, -1))
	case what == "on" || still():
		p.raiseTo(raise.Next(p.work.Canoe(), p.view.Up, 1))
	default:
		p.motions.raise.Press(now(), p.view.Up)
		p.moveOn()
	}
}

// raiseTo shows the raising at a share of its way. Each moment's words are spoken once.
func (p *page) raiseTo(up float64) {
	p.view.Up = up
	slider, words := p.id("up"), raise.Words(p.work.Canoe(), up)
	slider.Set("value", strconv.Itoa(int(100*up+0.5)))
	slider.Call("setAttribute", "aria-valuetext", words)
	if words != p.motions.spoken {
		p.motions.spoken = words
		p.say("moment", words)
	}
	p.draw()
}

// pressRound looks at the boat in the round from another place, or turns it.
func (p *page) pressRound(what string) {
	switch {
	case what != "turn":
		p.stopMotion()
		p.view.From, p.view.Turned = scene.FromOf(what), 0
	case still():
		p.view.Turned += stillTurn
		if p.view.Turned > 1-stillTurn/2 {
			p.view.Turned = 0
		}
	default:
		p.motions.turn.Press(now(), p.view.Turned)
		p.moveOn()
		return
	}
	p.showRound()
	p.draw()
}

// showRound says by its button from where the boat is seen.
func (p *page) showRound() {
	each(p.document, "button[data-round]", func(b js.Value) {
		if from := data(b, "round"); from != "turn" {
			b.Call("setAttribute", "aria-pressed", p.view.Turned == 0 && scene.FromOf(from) == p.view.From)
		}
	})
}

// moveOn draws the next picture of what moves, and asks for another as long as it does.
func (p *page) moveOn() {
	m := &p.motions
	if m.raise.Running() {
		p.raiseTo(m.raise.At(now()))
	}
	if m.turn.Running() {
		if p.view.Turned = m.turn.At(now()); p.view.Turned == 1 {
			p.view.Turned = 0
		}
		p.showRound()
		p.draw()
	}
	if m.raise.Running() || m.turn.Running() {
		js.Global().Call("requestAnimationFrame", m.frame)
	}
	p.nameMotion()
}

// stopMotion holds what moves where it is.
func (p *page) stopMotion() {
	p.motions.raise.Stop()
	p.motions.turn.Stop()
	p.nameMotion()
}

// nameMotion says what the buttons of the motions do now.
func (p *page) nameMotion() {
	name := func(running bool, starts, stops, steps string) string {
		switch {
		case still():
			return steps
		case running:
			return stops
		}
		return starts
	}
	p.say("play", name(p.motions.raise.Running(), "Play", "Pause", "Next"))
	p.say("turn", name(p.motions.turn.Running(), "Turn round", "Hold", "Turn a step"))
}
