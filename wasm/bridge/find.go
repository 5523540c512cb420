//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/stage"
	"barkwright/wasm/find"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// finder is the box that finds: the combobox with a list of the W3C's ARIA Authoring
// Practices. The focus stays in the field, and the line that Enter goes to is named by it.
type finder struct {
	lines []string // where each goes
	at    int
	from  js.Value // what had the focus
	// entered tells that Enter is down.
	entered bool
}

func (p *page) listenFind() {
	field := p.id("find-field")
	p.on(p.id("find-open"), "click", func(js.Value) { p.openFind(p.id("find").Get("hidden").Bool()) })
	p.on(field, "input", func(js.Value) { p.lookUp() })
	p.on(field, "keydown", func(e js.Value) {
		switch key := e.Get("key").String(); key {
		case "Escape":
			p.openFind(false)
		case "Enter":
			p.finder.entered = true
		case "ArrowDown", "ArrowUp":
			n := len(p.finder.lines)
			if n == 0 {
				return
			}
			by := map[string]int{"ArrowDown": 1, "ArrowUp": n - 1}[key]
			p.pointAt((p.finder.at + by) % n)
		default:
			return
		}
		e.Call("preventDefault")
		e.Call("stopPropagation")
	})
	// Where the focus goes must not meet the key that brought it there: a fold would close.
	p.on(field, "keyup", func(e js.Value) {
		if e.Get("key").String() == "Enter" && p.finder.entered && p.finder.at < len(p.finder.lines) {
			p.goFound(p.finder.lines[p.finder.at])
		}
		p.finder.entered = false
	})
	p.on(p.id("found"), "click", func(e js.Value) {
		if line := e.Get("target").Call("closest", "[data-found]"); !line.IsNull() {
			p.goFound(data(line, "found"))
		}
	})
	p.on(p.id("find"), "focusout", func(e js.Value) {
		if to := e.Get("relatedTarget"); !to.IsNull() && !p.id("find").Call("contains", to).Bool() && !p.id("find").Get("hidden").Bool() {
			p.finder.from = js.Null()
			p.openFind(false)
		}
	})
}

// openFind opens the box, or closes it and gives the focus back.
func (p *page) openFind(open bool) {
	if open {
		p.finder.from = p.document.Get("activeElement")
	}
	p.hide("find", !open)
	p.id("find-open").Call("setAttribute", "aria-expanded", strconv.FormatBool(open))
	if open {
		p.id("find-field").Call("focus")
		p.id("find-field").Call("select")
		p.lookUp()
		return
	}
	if from := p.finder.from; from.Truthy() {
		from.Call("focus", map[string]any{"preventScroll": true})
	}
}

// lookUp lists what answers what stands in the field.
func (p *page) lookUp() {
	question := p.text("find-field")
	lines := p.work.Find(question)
	p.finder.lines = p.finder.lines[:0]
	for _, line := range lines {
		p.finder.lines = append(p.finder.lines, line.Go)
	}
	p.fill("found", markup.Found(lines))
	p.hide("found", len(lines) == 0)
	p.id("find-field").Call("setAttribute", "aria-expanded", strconv.FormatBool(len(lines) > 0))
	p.say("find-said", work.FoundSays(question, len(lines)))
	p.pointAt(0)
}

// pointAt makes a line the one that Enter goes to.
func (p *page) pointAt(at int) {
	p.finder.at = at
	field := p.id("find-field")
	if len(p.finder.lines) == 0 {
		field.Call("removeAttribute", "aria-activedescendant")
		return
	}
	field.Call("setAttribute", "aria-activedescendant", "found-"+strconv.Itoa(at))
	for i := range p.finder.lines {
		line := p.id("found-" + strconv.Itoa(i))
		line.Call("setAttribute", "aria-selected", strconv.FormatBool(i == at))
		if i == at {
			line.Call("scrollIntoView", map[string]any{"block": "nearest"})
		}
	}
}

// goFound goes where a line of the list leads.
func (p *page) goFound(line string) {
	p.finder.from = js.Null()
	p.openFind(false)
	kind, key, _ := strings.Cut(line, ":")
	switch find.Kind(kind) {
	case find.Control:
		p.goTo(key)
	case find.Number:
		p.goNumber(key)
	case find.Check:
		p.goCheck(key)
	case find.Table:
		p.goTable(key)
	case find.Step:
		p.goStep(key)
	case find.Word:
		p.goWord(key)
	case find.Place:
		p.goNamed(key)
	case find.Lesson:
		p.goPlace(work.Lessons, true)
		p.lesson("open:" + key)
		p.goInto(p.id("lesson"), p.id("lesson-title"))
	case find.Bench:
		at, _, _ := strings.Cut(key, "|")
		p.goPlace(work.PlaceOf(at), true)
		p.atBench("open:" + key)
	}
}

// goTable unfolds a table where it is at home.
func (p *page) goTable(key string) {
	fold := p.document.Call("querySelector", `[data-fold="`+key+`"], [data-curve="`+key+`"]`)
	if !fold.IsNull() {
		fold.Set("open", true)
		p.goInto(fold, fold.Call("querySelector", "summary"))
	}
}

func (p *page) goStep(key string) {
	if tick := p.document.Call("querySelector", `[data-tick="`+key+`"]`); !tick.IsNull() {
		tick.Call("closest", "details").Set("open", true)
		p.goInto(tick.Call("closest", "li"), tick)
	}
}

// goWord goes to a word in the list of them all.
func (p *page) goWord(term string) {
	each(p.id("words-list"), "dt", func(at js.Value) {
		if at.Get("textContent").String() == term {
			p.goInto(at, at)
		}
	})
}

// goNamed goes to a stage, or to a part of the page by its id after a #.
func (p *page) goNamed(key string) {
	if id, ok := strings.CutPrefix(key, "#"); ok {
		part := opened(p.id(id))
		p.goInto(part, part)
		return
	}
	if _, _, ok := stage.Lookup(stage.Key(key)); ok {
		p.goPlace(work.PlaceOf(key), true)
		title := p.document.Call("querySelector", "#at-"+key+" h2")
		p.goInto(title, title)
	}
}
