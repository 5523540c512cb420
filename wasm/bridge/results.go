//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// output is where one result shows: its headline and its row.
type output struct {
	numbers  []*numberAt
	changes  []*changeAt
	label    *slot
	home     *standing // of the row
	working  js.Value  // the fold with its working
	unfolded bool
}

// numberAt is one place of a number, with its value and its basis.
type numberAt struct {
	*standing
	text         slot
	value, basis mark
}

// changeAt is one place of its change.
type changeAt struct {
	*standing
	slot
}

// findHeadline takes hold of the numbers that are always in sight.
func (p *page) findHeadline() {
	p.headChecks = filling{at: p.id("head-checks")}
	p.findOutputs(p.id("headline"))
	p.findOutputs(p.id("cells"))
	p.findPlaces()
}

// buildResults writes the results' frame; numbers are filled in afterwards.
func (p *page) buildResults() {
	p.id("tables").Set("innerHTML", markup.Results(p.work.Canoe(), p.work.System))
	p.findOutputs(p.id("tables"))
	each(p.id("tables"), "[data-checks]", func(e js.Value) {
		p.checksAt[stage.Key(data(e, "checks"))] = &filling{at: e}
	})
	p.findFolds()
	p.listenResults()
	p.listenWater()
}

// findOutputs takes hold of every place in an element where a result shows.
func (p *page) findOutputs(in js.Value) {
	find := func(name string, act func(*output, js.Value)) {
		each(in, "[data-"+name+"]", func(v js.Value) {
			key := data(v, name)
			if p.outputs[key] == nil {
				p.outputs[key] = &output{}
			}
			act(p.outputs[key], v)
		})
	}
	find("result", func(o *output, v js.Value) {
		o.numbers = append(o.numbers, &numberAt{p.places.standing(v), slotAt(v), markOf(v, "value"), markOf(v, "basis")})
	})
	find("change", func(o *output, v js.Value) {
		o.changes = append(o.changes, &changeAt{p.places.standing(v), emptySlot(v)})
	})
	find("number", func(o *output, v js.Value) {
		label := slotAt(v.Call("querySelector", "[data-label]"))
		o.working, o.label = v.Call("querySelector", ".working"), &label
		o.home = p.places.standing(v)
	})
}

func (p *page) listenResults() {
	results := p.id("results")
	p.onCapture(results, "toggle", func(e js.Value) {
		fold := e.Get("target")
		if data(fold, "number") != "" {
			p.outputs[data(fold, "number")].unfolded = fold.Get("open").Bool()
		}
		p.showWordsMet(fold)
		p.showWorkings(p.numbers.Shown)
		p.showTables()
		p.showWorkings(p.work.Water())
		p.showCurves()
	})
	p.on(results, "click", p.rowTouched)
	p.on(results, "focusin", p.rowTouched)
	p.on(results, "keydown", p.rowKey)
	p.on(results, "pointerover", func(e js.Value) {
		if e.Get("pointerType").String() == "mouse" {
			p.rowTouched(e)
		}
	})
}

// showNumbers writes every number in sight that changed, and how.
func (p *page) showNumbers() { p.showThese(p.numbers.Update(p.work)) }

func (p *page) showThese(shown []work.Shown) {
	writes.together(func() { p.writeThese(shown) })
	p.showWorkings(shown)
}

func (p *page) writeThese(shown []work.Shown) {
	for i := range shown {
		n := &shown[i]
		o := p.outputs[n.Key]
		if o == nil || p.opening && n.NotYet() {
			continue // its place is not built yet, or shows what it is about to be
		}
		if o.label != nil && o.home.shows {
			o.label.set(n.Name())
		}
		for _, at := range o.numbers {
			if at.shows {
				at.text.set(n.Text())
				at.value.put(n.SI())
				at.basis.put(string(n.Basis))
			}
		}
		for _, c := range o.changes {
			if c.shows {
				c.set(n.Change())
			}
		}
	}
}

// showWorkings fills the workings that are unfolded.
func (p *page) showWorkings(shown []work.Shown) {
	for i := range shown {
		n := shown[i].Number
		if o := p.outputs[n.Key]; o != nil && o.unfolded {
			setHTML(o.working, markup.Working(*n, p.work.System))
		}
	}
}

// showChecks writes every check in its group, and beside the headline.
func (p *page) showChecks() {
	if p.opening {
		return // they follow the bark laid flat
	}
	checks := p.work.Checks()
	p.showVerdicts(checks)
	head, at := markup.Checks(checks, p.work.System)
	p.headChecks.set(head)
	for group, place := range p.checksAt {
		place.set(at[group])
	}
}
