//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/design"
	"barkwright/wasm/markup"
)

// repeatPaddlers makes the folds of the other paddlers from the first one's: the
// page's file is smaller by them.
func (p *page) repeatPaddlers() {
	first := p.document.Call("querySelector", `[data-paddler="1"]`)
	first.Call("insertAdjacentHTML", "afterend", markup.Paddlers(first.Get("outerHTML").String()))
}

// showThwarts hides the places of thwarts that the boat does not have.
func (p *page) showThwarts() {
	for i, key := range design.ThwartKeys() {
		p.controls[key].lacking.put(i >= p.work.Entered.OuterThwarts())
	}
}

// showCrew shows the folds of the paddlers aboard and hides the others.
func (p *page) showCrew() {
	aboard := p.work.Entered.Paddlers
	if p.aboard != nil && *p.aboard == aboard {
		return
	}
	p.aboard = &aboard
	each(p.document, "[data-paddler]", func(fold js.Value) {
		n, _ := whole(data(fold, "paddler"))
		fold.Set("hidden", n > aboard)
	})
}
