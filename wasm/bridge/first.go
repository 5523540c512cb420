//go:build js

package bridge

import (
	"strings"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/work"
)

// firstDelay is how long the page has stood still before what it shows is kept, ms. The
// boat herself is kept before that.
const firstDelay = 1000

// firstSoon keeps, once the page has stood still for a while, what is to stand at the next
// opening before the program is awake.
func (p *page) firstSoon() {
	p.firsts++
	n := p.firsts
	p.later(firstDelay, func() {
		if n == p.firsts {
			p.keepFirst()
		}
	})
}

func (p *page) keepFirst() {
	id, stamp, stands := p.desk.Shelf.AsKept()
	if !stands || len(p.list.Ops) == 0 || p.view.Touched != "" || !p.looksAsComeTo() {
		return
	}
	var picture strings.Builder
	if err := (draw.SVG{Palette: p.palette, ID: "first", Hasty: true}).Write(&picture, p.list); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	held, _ := p.work.Held(p.places.at.First())
	js.Global().Call("keepFirst", id, stamp, p.desk.Shelf.Line(), work.UnitsID(p.work.System), held.Name, held.Value,
		picture.String())
}
