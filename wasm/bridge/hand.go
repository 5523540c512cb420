//go:build js

package bridge

import (
	"strconv"
	"syscall/js"
	"unicode/utf8"

	"barkwright/wasm/pipeline"
)

// hand is the line that shows the control in hand, its value and what it was, and moves
// it by a step: a second grip, whatever stands on the page.
type hand struct {
	key              string
	name, value, was slot
	steps            []js.Value // one more and one less
	empty            bool       // there is none, as last shown
	long             bool       // its value is in words, as last shown
}

// longest is how many letters of a value stand on one line of the hand on a phone.
const longest = 13

func (p *page) findHand() {
	each(p.id("hand"), "[data-hand]:not(#held)", func(b js.Value) { p.hand.steps = append(p.hand.steps, b) })
	p.hand.name.at, p.hand.value.at, p.hand.was.at = p.id("held-name"), p.id("held-value"), p.id("held-was")
}

// takeInHand takes a control in hand; none where key is empty.
func (p *page) takeInHand(key string) {
	if key != p.work.InHand() {
		p.work.Commit()
	}
	if key != p.hand.key && p.started && p.asking.strips {
		p.turnIn(pipeline.RestDelay)
	}
	p.hand.key = key
	p.showHand()
}

func (p *page) showHand() {
	if key := p.work.InHand(); key != "" {
		p.hand.key = key
	}
	h, ok := p.work.Held(p.hand.key)
	p.hand.name.set(h.Name)
	p.hand.value.set(h.Value)
	p.hand.was.set(h.Was)
	if long := utf8.RuneCountInString(h.Value) > longest; long != p.hand.long {
		p.hand.long = long
		p.id("held").Call("toggleAttribute", "data-long", long)
	}
	if empty := !ok; empty != p.hand.empty {
		p.hand.empty = empty
		p.hide("held", empty)
		for _, b := range p.hand.steps {
			b.Set("hidden", empty)
		}
	}
	for i := range p.places.chips {
		if c := &p.places.chips[i]; c.shows {
			c.text.set(p.work.Reads(c.param))
		}
	}
}

// pressedHand moves the control in hand by a step, or goes to it.
func (p *page) pressedHand(what string) {
	if what == "go" {
		p.goTo(p.hand.key)
		return
	}
	if c := p.controls[p.hand.key]; c != nil {
		n, _ := strconv.Atoi(what)
		p.readAgain(c)
		p.work.Step(p.hand.key, n)
		p.refresh()
	}
}
