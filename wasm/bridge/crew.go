//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/design"
)

// repeatPaddlers makes the folds of the other paddlers from the first one's: the
// page's file is smaller by them.
func (p *page) repeatPaddlers() {
	first := p.document.Call("querySelector", `[data-paddler="1"]`)
	html := first.Get("outerHTML").String()
	for n := design.MostPaddlers; n > 1; n-- {
		as := strconv.Itoa(n)
		first.Call("insertAdjacentHTML", "afterend", strings.NewReplacer(
			"paddler1", "paddler"+as, "Paddler 1", "Paddler "+as, `data-paddler="1"`, `data-paddler="`+as+`"`).Replace(html))
	}
}

// showThwarts hides the places of thwarts that the boat does not have.
func (p *page) showThwarts() {
	for i, key := range design.ThwartKeys() {
		p.controls[key].box.Set("hidden", i >= p.work.Entered.OuterThwarts())
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
		n, _ := strconv.Atoi(fold.Get("dataset").Get("paddler").String())
		fold.Set("hidden", n > aboard)
	})
}
