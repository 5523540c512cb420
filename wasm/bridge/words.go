//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
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

// showWordsMet fills a fold of the words met at a stage.
func (p *page) showWordsMet(fold js.Value) {
	st, _, ok := stage.Lookup(stage.Key(data(fold, "words")))
	if ok && fold.Get("open").Bool() {
		p.known().Need(pipeline.Water)
		w, _ := p.known().Water()
		setHTML(fold.Call("querySelector", "dl"), markup.WordsMet(st, p.work.Canoe(), w, p.work.System))
	}
}

// firstMinute closes what the page says first, for good, or shows it again.
func (p *page) firstMinute(what string) {
	close := what == "close"
	p.root().Call("toggleAttribute", "data-met", close)
	p.desk.Met(close)
	js.Global().Call("measureRoom")
	if close {
		p.id("held").Call("focus")
		return
	}
	js.Global().Call("scrollTo", 0, 0)
	p.goPlace(work.AtStage(stage.Choose), true)
	p.document.Call("querySelector", "#first-minute [data-minute]").Call("focus")
}
