//go:build js

package bridge

import (
	"strconv"
	"syscall/js"
)

// showCrew shows the folds of the paddlers aboard and hides the others.
func (p *page) showCrew() {
	if aboard := p.work.Entered.Paddlers; aboard != p.aboard {
		p.aboard = aboard
		each(p.document, "[data-paddler]", func(fold js.Value) {
			n, _ := strconv.Atoi(fold.Get("dataset").Get("paddler").String())
			fold.Set("hidden", n > aboard)
		})
	}
}
