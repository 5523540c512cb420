//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

func (p *page) listenWater() {
	p.heel = markup.FirstHeel * units.Degree
	p.on(p.id("heel"), "input", func(e js.Value) {
		p.heel = e.Get("target").Get("valueAsNumber").Float() * units.Degree
		p.showHeeled()
	})
	p.on(js.Global(), "resize", func(js.Value) { p.restSoon() })
}

// waterLate says that the curves shown are those of the boat as it was last at rest.
func (p *page) waterLate() {
	if at := p.id("water-numbers"); !p.waterIsLate && !at.IsNull() && p.work.Canoe().Design != p.waterOf {
		at.Call("setAttribute", "aria-busy", "true")
		p.waterIsLate = true
	}
}

// showWater brings the numbers of the boat heeled and moving up to date, where they are
// known; its curves are left to showCurves.
func (p *page) showWater() {
	if shown := p.work.Water(); shown != nil {
		p.showThese(shown)
		p.waterOf = p.work.Canoe().Design
		p.id("water-numbers").Call("removeAttribute", "aria-busy")
		p.waterIsLate = false
	}
}

// showCurves draws the charts and the section that are unfolded.
func (p *page) showCurves() {
	w, ok := p.known().Water()
	if !ok {
		return
	}
	curves := markup.CurvesOf(p.work.Canoe(), w, p.work.System)
	each(p.document, "[data-curve][open]", func(at js.Value) {
		figure, key := at.Call("querySelector", "figure"), data(at, "curve")
		if key == markup.HeeledKey {
			p.showHeeled()
			return
		}
		setHTML(figure, curves.Figure(key, figure.Get("clientWidth").Float(), p.palette))
		if at.Call("querySelector", ".twin").Get("open").Bool() {
			setHTML(at.Call("querySelector", ".scroll"), curves.Table(key))
		}
	})
}

func (p *page) showHeeled() {
	figure := p.document.Call("querySelector", `[data-curve="`+markup.HeeledKey+`"] figure`)
	var held *core.Canoe
	if c, ok := p.work.HeldCanoe(); ok {
		held = &c
	}
	setHTML(figure, markup.Heeled(p.work.Canoe(), held, p.heel, figure.Get("clientWidth").Float(), p.work.System, p.palette))
	p.say("heel-shown", units.Angle.Format(p.heel, p.work.System))
}
