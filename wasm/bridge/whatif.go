//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/stage"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// asking is what the page shows that is worked out only then.
type asking struct {
	strips, whole, sure          bool
	shown                        markup.Strips // as last drawn
	drawn, table, told, inchesAt filling
	of                           slot
	list, lesson                 filling
	beside                       filling
	chosen                       map[int]bool // boats of the shelf to stand side by side
	choices                      filling
	ranks                        filling
}

// asked is what the page wants worked out now.
func (p *page) asked() pipeline.Asked {
	a := pipeline.Asked{Whole: p.asking.whole, Spreads: p.asking.sure, Inches: p.sees(work.Compare)}
	if p.asking.strips {
		a.Control = p.hand.key
	}
	if p.sees(work.Lessons) {
		a.Lesson, a.On = p.desk.OpenLesson(), p.desk.LessonBase()
	}
	return a
}

func (p *page) listenWhatIf() {
	p.id("rank-fields").Set("innerHTML", markup.Fields(markup.RankFields))
	p.asking = asking{drawn: filling{at: p.id("strips")}, table: filling{at: p.id("strips-table")}, told: filling{at: p.id("sure-table")},
		inchesAt: filling{at: p.id("inches")}, list: filling{at: p.id("lesson-list")}, lesson: filling{at: p.id("lesson")},
		beside: filling{at: p.id("beside")}, choices: filling{at: p.id("beside-choice")}, ranks: filling{at: p.id("rank")},
		of: slotAt(p.id("whatif-of")), chosen: map[int]bool{}}
	fold := p.id("whatif")
	p.onCapture(fold, "toggle", func(e js.Value) {
		if e.Get("target").Equal(fold) {
			p.asking.strips = fold.Get("open").Bool()
			p.showStrips()
			p.turnIn(0)
		}
	})
	whole := p.id("whatif-whole")
	p.on(whole, "change", func(js.Value) {
		p.asking.whole = whole.Get("checked").Bool()
		p.showStrips()
		p.turnIn(0)
	})
	p.on(p.id("strips"), "click", p.pressedStrip)
	p.on(p.id("strips"), "keydown", p.stripKey)
	sure := p.id("sure")
	p.on(sure, "toggle", func(js.Value) {
		p.asking.sure = sure.Get("open").Bool()
		p.showSure()
		p.turnIn(0)
	})
	p.on(p.id("rank"), "change", func(js.Value) { p.showInches() })
	p.on(p.id("beside-choice"), "change", func(e js.Value) {
		if i, err := strconv.Atoi(data(e.Get("target"), "beside")); err == nil {
			p.asking.chosen[i] = e.Get("target").Get("checked").Bool()
			p.showBeside()
		}
	})
}

// showAsked brings to the page what is shown of comparing, trying and teaching.
func (p *page) showAsked() {
	p.showStrips()
	p.showSure()
	p.showCosts()
	p.showLessons()
}

// strips are those of the control in hand, as far as they are known.
func (p *page) strips() markup.Strips {
	s := markup.Strips{Sweep: p.known().Strips()}
	if held, ok := p.work.HeldCanoe(); ok && s.Sweep != nil {
		s.Held, s.At = answer.All(held), s.Sweep.Param.Get(&held.Design)
	}
	return s
}

// showStrips draws the strips where they are unfolded.
func (p *page) showStrips() {
	h, ok := p.work.Held(p.hand.key)
	if !ok {
		h.Name = "take a control in hand"
	}
	p.asking.of.set(h.Name)
	if !p.asking.strips {
		return
	}
	s := p.strips()
	if s.Sweep == nil {
		p.id("strips").Call("setAttribute", "aria-busy", "true")
		if !p.asked().Strips() {
			p.asking.shown = s
			p.asking.drawn.set("<p class=\"help\">No result that is drawn here moves much with it.</p>")
			p.asking.table.set("")
		}
		return
	}
	p.id("strips").Call("removeAttribute", "aria-busy")
	p.asking.shown = s
	at := data(p.document.Get("activeElement"), "strip")
	p.asking.drawn.set(s.Figures(stripWidth, p.palette))
	if at != "" {
		// Drawn anew, the strip that is being set by keys is gone to again.
		if again := p.id("strips").Call("querySelector", `[data-strip="`+at+`"]`); !again.IsNull() {
			again.Call("focus", map[string]any{"preventScroll": true})
		}
	}
	p.asking.table.set(s.Table())
}

// stripWidth is the breadth of a strip, CSS pixels.
const stripWidth = 230

// setBy is what is drawn of the control in hand: while it is worked out anew, as it was last drawn.
func (p *page) setBy() (markup.Strips, bool) {
	s := p.asking.shown
	return s, s.Sweep != nil && s.Sweep.Param.Key == p.hand.key
}

// pressedStrip sets the control in hand to what was touched in a strip.
func (p *page) pressedStrip(e js.Value) {
	at := e.Get("target").Call("closest", "[data-strip]")
	s, ok := p.setBy()
	if at.IsNull() || !ok {
		return
	}
	box := at.Call("getBoundingClientRect")
	x := e.Get("clientX").Float() - box.Get("left").Float()
	p.setByStrip(s.ValueAt(x, box.Get("width").Float()))
	p.work.Commit()
	p.save()
}

// stripKey moves the control in hand by a key pressed in a strip.
func (p *page) stripKey(e js.Value) {
	at := e.Get("target").Call("closest", "[data-strip]")
	s, ok := p.setBy()
	if at.IsNull() || !ok || e.Get("ctrlKey").Bool() || e.Get("altKey").Bool() || e.Get("metaKey").Bool() {
		return
	}
	v, moves := s.KeyTo(e.Get("key").String(), s.Sweep.Param.Get(&p.work.Entered))
	if !moves {
		return
	}
	e.Call("preventDefault")
	p.setByStrip(v)
	// Until they are drawn anew it is said how the control stands, and what it makes of the result.
	each(p.id("strips"), "[data-strip]", func(strip js.Value) {
		strip.Call("setAttribute", "aria-valuenow", v)
		strip.Call("setAttribute", "aria-valuetext", s.ValueText(data(strip, "strip"), v))
	})
}

func (p *page) setByStrip(v float64) {
	if c := p.controls[p.hand.key]; c != nil {
		p.readAgain(c)
	}
	p.work.Set(p.hand.key, v)
	p.refresh()
}

// showSure writes how far figures may be off, where it is unfolded.
func (p *page) showSure() {
	if !p.asking.sure {
		return
	}
	at := stage.Key("")
	if s, ok := p.places.at.Stage(); ok {
		at = s.Key
	}
	p.asking.told.set(markup.Sure(p.work.Canoe(), p.known().Spreads(), at, p.work.System))
}

// showInches writes what an inch of each length costs.
func (p *page) showInches() {
	if p.sees(work.Compare) {
		// In other units the list is filled anew, and keeps what was chosen.
		rank := p.id("rank")
		by := rank.Get("value").String()
		p.asking.ranks.set(markup.Ranks(p.work.Canoe(), p.work.System))
		rank.Set("value", by)
		p.asking.inchesAt.set(markup.Inches(p.work.Canoe(), p.known().Inches(), by, p.work.System))
	}
}

// showBeside writes boats of the shelf side by side.
func (p *page) showBeside() {
	if !p.sees(work.Compare) {
		return
	}
	choices, beside := p.desk.Beside(p.asking.chosen, p.palette)
	p.asking.choices.set(choices)
	p.asking.beside.set(beside)
}
