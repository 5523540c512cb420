//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/scene"
	"barkwright/wasm/work"
)

// places is what the page shows of the stages: where the user is, how the picture was left
// elsewhere, and the elements that come and go.
type places struct {
	at       work.Place
	looked   map[work.Place]scene.View
	entered  entrance
	verdicts []verdict
	chips    []chip
	// standings are what stands at the same places, by the places' names.
	standings map[string]*standing
}

// standing tells whether what stands at some places shows now. What does not is written
// once it does.
type standing struct{ shows bool }

// standing is that of an element. Before the page stands at a place all shows.
func (p *places) standing(of js.Value) *standing {
	at := ""
	if home := of.Call("closest", "[data-place]"); !home.IsNull() {
		at = data(home, "place")
	}
	s := p.standings[at]
	if s == nil {
		s = &standing{at == "" || p.at == "" || p.at.Shows(at)}
		p.standings[at] = s
	}
	return s
}

// chip shows a control of another stage.
type chip struct {
	*standing
	param design.Param
	text  slot
}

// verdict is a cell that shows a check.
type verdict struct {
	key   string
	text  slot
	state mark
}

func (p *page) findPlaces() {
	p.places.verdicts, p.places.chips = nil, nil
	each(p.document, "[data-verdict]", func(e js.Value) {
		p.places.verdicts = append(p.places.verdicts, verdict{data(e, "verdict"), slotAt(e), markOf(e, "state")})
	})
	each(p.document, "[data-chip]", func(e js.Value) {
		if param, ok := design.Lookup(data(e, "chip")); ok {
			p.places.chips = append(p.places.chips, chip{p.places.standing(e), param, slotAt(e)})
		}
	})
}

// openingPlace is the one of the address, or where the user was, or the first stage.
func (p *page) openingPlace() work.Place {
	if at := js.Global().Call("placeInAddress").String(); at != "" {
		return work.PlaceOf(at)
	}
	return p.desk.Place()
}

func (p *page) listenPlaces() {
	p.on(p.document, "keydown", p.placeKey)
	p.on(js.Global(), "popstate", func(js.Value) {
		if at := js.Global().Call("placeOfHistory").String(); at != "" {
			p.goPlace(work.PlaceOf(at), false)
		}
	})
	p.on(p.id("look"), "click", func(js.Value) { p.showTools(data(p.root(), "tools") == "") })
	letters := p.id("letters")
	letters.Set("checked", p.desk.Letters())
	p.on(letters, "change", func(js.Value) { p.desk.SetLetters(letters.Get("checked").Bool()) })
}

func (p *page) turnStage(by string) {
	n, _ := strconv.Atoi(by)
	p.goPlace(p.places.at.Turned(n), true)
}

// pressedNotch goes to a place. Where the notches have no room side by side, the one
// pressed first shows them all.
func (p *page) pressedNotch(name string) {
	list := p.id("notches")
	open := list.Call("hasAttribute", "data-open").Bool()
	if at := work.PlaceOf(name); at != p.places.at {
		p.goPlace(at, true)
		open = true
	}
	list.Call("toggleAttribute", "data-open", !open)
}

// sees tells whether what is at home at a place shows where the page is.
func (p *page) sees(at work.Place) bool { return p.places.at.Shows(string(at)) }

// goPlace shows what stands at a place. As a step of the history it can be gone back from.
func (p *page) goPlace(at work.Place, step bool) {
	came := at != p.places.at
	p.places.looked[p.places.at] = p.view
	p.places.at = at
	js.Global().Call("showAt", string(at))
	p.say("hand-place", at.Short())
	for at, s := range p.places.standings {
		s.shows = at == "" || p.places.at.Shows(at)
	}
	p.showThese(p.numbers.Shown)
	p.showThese(p.work.Water())
	if !came {
		return
	}
	// What had the focus may have gone with the other place: Tab goes on from the notch.
	if active := p.document.Get("activeElement"); active.Call("getClientRects").Length() == 0 {
		p.document.Call("querySelector", "#notches [aria-current=true]").Call("focus", map[string]any{"preventScroll": true})
	}
	p.desk.SetPlace(at)
	p.reply(p.desk.DropAwaited())
	if !p.sees(work.Lessons) {
		p.wall(false)
	}
	js.Global().Call("showPlace", string(at), step)
	js.Global().Call("scrollTo", 0, 0)
	if pane := p.id("controls"); !pane.IsNull() {
		pane.Set("scrollTop", 0)
	}
	p.lookAt(at)
	p.takeInHand(at.First())
	each(p.id("jumps"), "button", func(b js.Value) { b.Set("hidden", p.jumpsTo(data(b, "jump")).IsNull()) })
	if p.showsPlan() {
		p.showSeason()
		p.restSoon()
	}
	p.say("status", at.Name())
	p.showTables()
	p.firstSoon()
	p.showAsked()
	p.turnIn(0)
}

// placeKey answers the page's keys of one letter, outside fields and what covers the page.
func (p *page) placeKey(e js.Value) {
	target, key := e.Get("target"), e.Get("key").String()
	if e.Get("ctrlKey").Bool() || e.Get("metaKey").Bool() || e.Get("altKey").Bool() ||
		target.Call("matches", "input:not([type=range], [type=checkbox]), textarea, select").Bool() ||
		!target.Call("closest", "dialog").IsNull() || p.desk.BenchOpen() {
		return
	}
	if key != "Escape" && !p.desk.Letters() {
		return
	}
	switch key {
	case "[":
		p.goPlace(p.places.at.Turned(-1), true)
	case "]":
		p.goPlace(p.places.at.Turned(1), true)
	case "/":
		e.Call("preventDefault")
		p.openFind(true)
	case "?":
		p.goInto(p.id("letters-help"), p.id("letters"))
	case "h", "H":
		p.hold(p.desk.Hold("turn", clock()))
	case "w", "W":
		p.atBench("open:" + string(p.places.at))
	case "b", "B":
		p.setPicture("big")
	case "f", "F":
		p.setPicture("fold")
	case "Escape":
		if data(p.root(), "big") != "" {
			p.setPicture("big")
		}
	}
}

// setPicture fills the window with the picture or folds it away, and back.
func (p *page) setPicture(what string) {
	p.wall(false)
	other := map[string]string{"big": "fold", "fold": "big"}[what]
	dataset := p.root().Get("dataset")
	on := data(p.root(), what) == ""
	dataset.Delete(other)
	dataset.Delete(what)
	if on {
		dataset.Set(what, "true")
	}
	each(p.document, "[data-picture]", func(b js.Value) {
		b.Call("setAttribute", "aria-pressed", strconv.FormatBool(on && data(b, "picture") == what))
	})
	js.Global().Call("measureRoom")
}

// showTools shows the picture's buttons where they have no room of their own.
func (p *page) showTools(on bool) {
	if on {
		p.root().Get("dataset").Set("tools", "true")
		p.id("sight").Call("scrollIntoView", map[string]any{"block": "nearest"})
	} else {
		p.root().Get("dataset").Delete("tools")
	}
	p.id("look").Call("setAttribute", "aria-expanded", strconv.FormatBool(on))
}

// goNumber shows how a number was worked out, where it is at home.
func (p *page) goNumber(key string) {
	fold := p.document.Call("querySelector", `[data-number="`+key+`"]`)
	if fold.IsNull() {
		return
	}
	fold.Set("open", true)
	p.goInto(fold, fold.Call("querySelector", "summary"))
}

// goCheck shows what a check found; of the worst of all, the whole list. What the first boat's
// checks found is not on the page before its bark is laid flat: it is shown then.
func (p *page) goCheck(key string) {
	switch {
	case key == stage.WorstOfAll:
		p.goInto(p.id("head"), p.id("head"))
		return
	case p.opening:
		p.checkAwaited = key
		return
	}
	if at := p.document.Call("querySelector", `.step [data-warning="`+key+`"]`); !at.IsNull() {
		p.goInto(at, at)
	}
}

// goInto brings an element into sight at the place where it is at home, with the focus.
func (p *page) goInto(element, focus js.Value) {
	if home := element.Call("closest", "[data-place]"); !home.IsNull() && !p.places.at.Shows(data(home, "place")) {
		first, _, _ := strings.Cut(data(home, "place"), " ")
		p.goPlace(work.PlaceOf(first), true)
	}
	if focus.Get("tabIndex").Int() < 0 {
		focus.Call("setAttribute", "tabindex", "-1")
	}
	block := "center"
	if element.Get("tagName").String() == "DETAILS" {
		block = "start" // it may be longer than the window
	}
	element.Call("scrollIntoView", map[string]any{"block": block})
	focus.Call("focus", map[string]any{"preventScroll": true})
}

// jumpsTo is the first of what a selector names at this stage, or null.
func (p *page) jumpsTo(what string) js.Value {
	return p.document.Call("querySelector", "#at-"+string(p.places.at)+" "+what)
}

// jump goes to the first of what a selector names at this stage: its bench, which opens,
// or a fold, which unfolds.
func (p *page) jump(what string) {
	at := p.jumpsTo(what)
	switch {
	case at.IsNull():
	case at.Get("tagName").String() == "BUTTON":
		at.Call("click")
	default:
		p.openAt(at, at.Call("querySelector", "summary"))
	}
}

// openAt opens a fold and brings it into sight with the focus.
func (p *page) openAt(fold, focus js.Value) {
	fold.Set("open", true)
	p.goInto(fold, focus)
}

// cure sets what a check's button names, in one step of undo.
func (p *page) cure(what string) {
	key, value, _ := strings.Cut(what, "=")
	v, err := strconv.ParseFloat(value, 64)
	if c := p.controls[key]; c != nil && err == nil {
		p.readAgain(c)
		p.work.Set(key, v)
		p.work.Commit()
		p.refresh()
		p.save()
		p.id("held").Call("focus")
	}
}

// showVerdicts writes the checks that stand in cells.
func (p *page) showVerdicts(checks []answer.Warning) {
	for i := range p.places.verdicts {
		v := &p.places.verdicts[i]
		state, text := work.Verdict(checks, v.key, p.work.System)
		v.text.set(text)
		v.state.put(markup.StateName(state))
	}
}
