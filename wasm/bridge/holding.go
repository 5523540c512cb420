//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// holding is what the page shows of the boat that is held.
type holding struct {
	name, button slot
	wide         slot // the button where there is room for a line of its own
	held         bool // as last shown
	steps        bool // what came from what is asked for
	costs        filling
	choices      filling
}

func (p *page) listenHolding() {
	p.id("hold-fields").Set("innerHTML", markup.Fields(markup.HoldFields))
	p.holding.name, p.holding.button = slotAt(p.id("against-name")), slotAt(p.id("hold"))
	p.holding.wide = slotAt(p.id("hold-wide"))
	p.holding.costs, p.holding.choices = filling{at: p.id("costs")}, filling{at: p.id("hold-other")}
	p.on(p.document, "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "[data-held], [data-costs]")
		switch {
		case b.IsNull():
		case data(b, "costs") != "":
			p.holding.steps = true
			p.showCosts()
		case data(b, "held") == "costs":
			p.goPlace(work.Compare, true)
			p.showCosts()
		case data(b, "held") == "print":
			p.reply(p.desk.PrintCosts(today()))
		default:
			p.hold(p.desk.Hold(data(b, "held"), clock()))
		}
	})
	other := p.id("hold-other")
	p.on(other, "change", func(js.Value) {
		p.hold(p.desk.Hold(other.Get("value").String(), clock()))
		other.Set("value", "")
	})
	still := p.id("still")
	p.on(still, "change", func(js.Value) { p.reply(p.desk.Still(p.hand.key, still.Get("checked").Bool())) })
}

// hold carries out what came of holding or letting go.
func (p *page) hold(r desk.Reply) {
	p.holding.steps = false
	p.reply(r)
	p.showCosts()
}

// showHolding writes what is held beside the control in hand.
func (p *page) showHolding() {
	h := p.work.HeldBoat()
	if held := h != nil; held != p.holding.held {
		p.holding.held = held
		p.hide("against-costs", !held)
		p.id("against").Call("toggleAttribute", "data-none", !held)
		for _, id := range []string{"hold", "hold-wide"} {
			p.id(id).Call("setAttribute", "aria-pressed", held)
		}
	}
	button, against := desk.Against(h)
	p.holding.button.set(button)
	p.holding.wide.set(button)
	p.holding.name.set(against)
}

// showCosts writes what differs from the boat held, where the page shows it.
func (p *page) showCosts() {
	if !p.sees(work.Compare) {
		return
	}
	p.holding.costs.set(p.desk.Costs(p.holding.steps))
	p.holding.choices.set(p.desk.HoldChoices())
	p.id("still").Set("checked", p.work.Stilled())
	p.showBeside()
	p.showInches()
}

// clock is the time of day as the user reads it.
func clock() string {
	d := js.Global().Get("Date").New()
	return desk.Clock(d.Call("getHours").Int(), d.Call("getMinutes").Int())
}
