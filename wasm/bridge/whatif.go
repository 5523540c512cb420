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
	p.asking = asking{drawn: filling{at: p.id("strips")}, table: filling{at: p.id("strips-table")}, told: filling{at: p.id("sure-table")},
		inchesAt: filling{at: p.id("inches")}, list: filling{at: p.id("lesson-list")}, lesson: filling{at: p.id("lesson")},
		beside: filling{at: p.id("beside")}, choices: filling{at: p.id("beside-choice")}, ranks: filling{at: p.id("rank")},
		of: slot{at: p.id("whatif-of")}, chosen: map[int]bool{}}
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
			p.asking.drawn.set("<p class=\"help\">No result that is drawn here moves much with it.</p>")
			p.asking.table.set("")
		}
		return
	}
	p.id("strips").Call("removeAttribute", "aria-busy")
	p.asking.drawn.set(s.Figures(stripWidth, p.palette))
	p.asking.table.set(s.Table())
}

// stripWidth is the breadth of a strip, CSS pixels.
const stripWidth = 230

// pressedStrip sets the control in hand to what was touched in a strip.
func (p *page) pressedStrip(e js.Value) {
	at := e.Get("target").Call("closest", "[data-strip]")
	s := p.strips()
	if at.IsNull() || s.Sweep == nil {
		return
	}
	box := at.Call("getBoundingClientRect")
	x := e.Get("clientX").Float() - box.Get("left").Float()
	if c := p.controls[s.Sweep.Param.Key]; c != nil {
		p.readAgain(c)
	}
	p.work.Set(s.Sweep.Param.Key, s.ValueAt(x, box.Get("width").Float()))
	p.work.Commit()
	p.refresh()
	p.save()
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
