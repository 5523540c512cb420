//go:build js

package bridge

import (
	"strings"
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
)

// listenPaper fills the lists of what can be printed and handed over, and answers
// their buttons.
func (p *page) listenPaper() {
	sheets, cards, patterns, drawings, tables := desk.PaperLists(p.work.Canoe())
	p.id("paper-sheets").Call("insertAdjacentHTML", "beforeend", sheets)
	p.id("paper-cards").Call("insertAdjacentHTML", "beforeend", cards)
	p.id("paper-patterns").Call("insertAdjacentHTML", "beforeend", patterns)
	p.document.Call("querySelector", `input[name=pattern][value=sections]`).Call("closest",
		"label").Call("after", p.id("section-choice"))
	p.id("drawing").Set("innerHTML", drawings)
	p.id("table").Set("innerHTML", tables)
	p.id("model-scale").Set("innerHTML", desk.Models())
	for _, id := range []string{"model-scale", "model-panels"} {
		p.on(p.id(id), "change", func(js.Value) { p.paper("model-count") })
	}
	p.on(p.id("paper-form"), "submit", func(e js.Value) { e.Call("preventDefault") })
	p.on(p.id("paper-form"), "change", func(js.Value) { p.showPaper() })
	seen := p.callback(func(args []js.Value) {
		p.paperInSight = args[0].Index(0).Get("isIntersecting").Bool()
		p.showPaper()
	})
	js.Global().Get("IntersectionObserver").New(seen).Call("observe", p.id("paper-form"))
	p.onEnter("measured", func() { p.paper("check") })
	p.on(p.id("section-ribs"), "change", func(js.Value) { p.reply(p.desk.Ribs(p.text("section-ribs"))) })
	p.on(js.Global(), "afterprint", func(js.Value) {
		p.root().Get("dataset").Delete("paper")
		p.id("print").Set("innerHTML", "")
	})
}

// showPaper brings the form to the boat in hand and to what is chosen.
func (p *page) showPaper() { p.reply(p.desk.ShowPaper(p.paperForm())) }

func (p *page) paper(what string) {
	if what == "all" || what == "none" {
		each(p.id("paper-form"), "input[name]", func(c js.Value) { c.Set("checked", what == "all") })
		p.showPaper()
		return
	}
	p.reply(p.desk.Paper(what, p.paperForm()))
}

// printStage prints the sheet of one stage, or its lists as cards.
func (p *page) printStage(what string) {
	form := p.paperForm()
	form.Sheets, form.Cards, form.Patterns = nil, nil, nil
	if key, cards := strings.CutPrefix(what, markup.AsCards); cards {
		form.Cards = []stage.Key{stage.Key(key)}
	} else {
		form.Sheets = []stage.Key{stage.Key(key)}
	}
	p.reply(p.desk.Paper("print", form))
}

func (p *page) paperForm() desk.PaperForm {
	chosen := func(name string) (keys []string) {
		each(p.id("paper-form"), `input[name="`+name+`"]:checked`, func(c js.Value) {
			keys = append(keys,
				c.Get("value").String())
		})
		return keys
	}
	stages := func(name string) (keys []stage.Key) {
		for _, key := range chosen(name) {
			keys = append(keys, stage.Key(key))
		}
		return keys
	}
	return desk.PaperForm{Sheets: stages("sheet"), Cards: stages("card"), Patterns: chosen("pattern"), Drawing: p.text("drawing"),
		Table: p.text("table"),
		Ribs:  p.text("section-ribs"), Bar: p.id("bar").Get("selectedIndex").Int(), Measured: p.text("measured"),
		Day: today(), InSight: p.paperInSight, Model: p.text("model-scale"),
		ModelPanels: p.id("model-panels").Get("checked").Bool()}
}
