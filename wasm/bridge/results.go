//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// output is where one result shows: its headline and its row.
type output struct {
	texts, changes []*slot
	values, bases  []*mark
	label          *slot
	working        js.Value // the fold with its working
	unfolded       bool
}

// buildHeadline writes the frame of the numbers that are always in sight.
func (p *page) buildHeadline() {
	p.id("headline").Set("innerHTML", markup.Headline(p.work.Canoe()))
	p.findOutputs(p.id("headline"))
	p.findOutputs(p.id("cells"))
	p.findPlaces()
}

// buildResults writes the results' frame; numbers are filled in afterwards.
func (p *page) buildResults() {
	p.known().Need(pipeline.Water)
	w, _ := p.known().Water()
	p.id("tables").Set("innerHTML", markup.Results(p.work.Canoe(), w, p.work.System))
	p.findOutputs(p.id("tables"))
	each(p.id("tables"), "[data-checks]", func(e js.Value) {
		p.checksAt[stage.Key(data(e, "checks"))] = e
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
		value, basis := markOf(v, "value"), markOf(v, "basis")
		o.texts, o.values, o.bases = append(o.texts, &slot{at: v}), append(o.values, &value), append(o.bases, &basis)
	})
	find("change", func(o *output, v js.Value) { o.changes = append(o.changes, &slot{at: v, known: true}) })
	find("number", func(o *output, v js.Value) {
		o.working, o.label = v.Call("querySelector", ".working"), &slot{at: v.Call("querySelector", "[data-label]")}
	})
}

func (p *page) listenResults() {
	results := p.id("results")
	p.onCapture(results, "toggle", func(e js.Value) {
		if fold := e.Get("target"); data(fold, "number") != "" {
			p.outputs[data(fold, "number")].unfolded = fold.Get("open").Bool()
		}
		p.showWorkings(p.numbers.Shown)
		p.showTables(true)
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

// showNumbers writes every number that changed, and how.
func (p *page) showNumbers() { p.showThese(p.numbers.Update(p.work)) }

func (p *page) showThese(shown []work.Shown) {
	for i := range shown {
		n := &shown[i]
		o := p.outputs[n.Key]
		if o == nil {
			continue // its place is not built yet
		}
		if o.label != nil {
			o.label.set(n.Name)
		}
		for i := range o.texts {
			o.texts[i].set(n.Text)
			o.values[i].put(n.SI)
			o.bases[i].put(string(n.Basis))
		}
		for _, c := range o.changes {
			c.set(n.Change)
		}
	}
	p.showWorkings(shown)
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
	checks := p.work.Checks()
	p.showVerdicts(checks)
	head, at := markup.Checks(checks, p.work.System)
	p.fill("head-checks", head)
	for group, place := range p.checksAt {
		setHTML(place, at[group])
	}
}
