//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/markup"
)

// showWords writes the words of the trade in the shed, and sizes in them in the units in
// use wherever they stand.
func (p *page) showWords() {
	p.fill("words-list", markup.Words(stage.Words(), p.work.System))
	for _, w := range stage.Words() {
		if w.Sized() {
			each(p.document, `[data-sense="`+w.Term+`"]`, func(at js.Value) { setText(at, w.Sense(p.work.System)) })
		}
	}
}
