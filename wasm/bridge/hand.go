//go:build js

package bridge

import (
	"strconv"
)

// hand is the line that shows the control in hand, its value and what it was, and moves
// it by a step: a second grip, whatever stands on the page.
type hand struct {
	key              string
	name, value, was slot
}

func (p *page) findHand() {
	p.hand.name.at, p.hand.value.at, p.hand.was.at = p.id("held-name"), p.id("held-value"), p.id("held-was")
}

// takeInHand takes a control in hand; none where key is empty.
func (p *page) takeInHand(key string) {
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
	p.hide("held", !ok)
	for key, chip := range p.places.chips {
		if h, ok := p.work.Held(key); ok {
			chip.set(h.Value)
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
