//go:build js

package bridge

import (
	"strings"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// firstDelay is how long the page has stood still before what it shows is kept and the program's memory is
// collected, ms. The boat herself is kept before that.
const firstDelay = 1000

// firstSoon keeps, once the page has stood still for a while, what is to stand at the next
// opening before the program is awake, and collects the program's memory.
func (p *page) firstSoon() {
	p.firsts++
	n := p.firsts
	p.later(firstDelay, func() {
		if n == p.firsts {
			p.keepFirst()
			collect()
		}
	})
}

func (p *page) keepFirst() {
	id, stamp, stands := p.desk.Shelf.AsKept()
	if !stands || p.work.None || p.printing {
		return
	}
	v := openingView
	v.System, v.Load, v.Repairs, v.Held, v.Measured = p.view.System, p.view.Load, p.view.Repairs, p.view.Held, p.view.Measured
	size := p.picture.Size()
	if v = p.comeTo(p.places.at, v, size); showsBark(v) {
		if v.Flat = p.known().Drawing(); v.Flat == nil {
			return
		}
	}
	// However the place is looked at now, the page opens with it as it is come to.
	list := view.Draw(p.work.Canoe(), v, size)
	var picture strings.Builder
	if err := (draw.SVG{Palette: p.palette, ID: "first", Hasty: true}).Write(&picture, list); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	held, _ := p.work.Held(p.places.at.First())
	js.Global().Call("keepFirst", id, stamp, p.desk.Shelf.Line(), work.UnitsID(p.work.System), held.Name, held.Value,
		keyText(list), picture.String())
}
