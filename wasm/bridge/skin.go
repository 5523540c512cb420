//go:build js

package bridge

import (
	"slices"
	"syscall/js"
	"time"

	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene"
	"barkwright/wasm/work"
)

// showsBark tells whether the picture is one of the bark laid flat.
func (p *page) showsBark() bool { return showsBark(p.view) }

func showsBark(v scene.View) bool { return v.State == scene.LaidFlat || v.State == scene.SidesUp }

// restSoon puts off what need not follow every step until the control has been still.
func (p *page) restSoon() {
	p.rest.put("waiting")
	b := p.work.Known()
	b.Want(p.showsBark())
	p.turnIn(b.Stepped())
}

// turnIn has the next turn come in so many ms, and not before. A timer that stands already is let
// run out first: setting one anew at every step takes longer.
func (p *page) turnIn(ms int) {
	due := time.Now().Add(time.Duration(ms) * time.Millisecond)
	if p.turns.stands && !p.turns.at.After(due) {
		p.turns.due = due
		return
	}
	if p.turns.stands {
		js.Global().Call("clearTimeout", p.turns.timer)
	}
	p.turns.due = due
	p.turnTimer(ms)
}

func (p *page) turnTimer(ms int) {
	t := &p.turns
	if t.callback.IsUndefined() {
		t.callback = p.callback(func([]js.Value) {
			t.stands = false
			if left := time.Until(t.due); left > 0 {
				p.turnTimer(int((left + time.Millisecond - 1) / time.Millisecond))
				return
			}
			p.turn()
		})
	}
	t.stands, t.at = true, time.Now().Add(time.Duration(ms)*time.Millisecond)
	t.timer = js.Global().Call("setTimeout", t.callback, ms)
}

// turns is when the next turn comes.
type turns struct {
	due      time.Time
	stands   bool      // a timer does
	at       time.Time // when it runs out
	timer    js.Value
	callback js.Func
}

// turn works at what is not known yet for a moment and shows what has become known.
func (p *page) turn() {
	t := p.known().Turn(now)
	// The picture alone is also drawn between two steps.
	if t.Follow || slices.ContainsFunc(t.Became, func(piece pipeline.Piece) bool { return piece != pipeline.Drawing }) {
		js.Global().Call("layOut")
	}
	for _, piece := range t.Became {
		p.opening = p.opening && piece < pipeline.Figures
		p.showPiece(piece)
	}
	if t.Follow {
		p.follow()
		p.rest.put("")
	}
	if next, waits := p.known().Waiting(); !waits || next >= pipeline.Season {
		p.skin.put("")
	}
	if t.Done {
		if p.opening { // the bark could not be laid flat
			p.opening = false
			p.showNumbers()
			p.showChecks()
		}
		p.firstSoon()
	} else {
		p.turnIn(t.Wait)
	}
	if !p.opening && p.checkAwaited != "" {
		p.goCheck(p.checkAwaited)
		p.checkAwaited = ""
	}
}

// showPiece brings to the page what has become known.
func (p *page) showPiece(piece pipeline.Piece) {
	switch piece {
	case pipeline.Drawing:
		p.draw()
	case pipeline.Figures:
		p.showNumbers()
		p.showChecks()
		p.showPaper()
		if p.showsBark() {
			p.draw()
		}
	case pipeline.Water:
		p.showWater()
	case pipeline.Strips:
		p.showStrips()
	case pipeline.Spreads:
		p.showSure()
	case pipeline.Inches:
		p.showInches()
	case pipeline.Taught:
		p.showLessons()
	case pipeline.Held:
		p.showNumbers()
		p.showCosts()
		if p.showsBark() {
			p.draw()
		}
	case pipeline.Beside:
		p.showRecord()
	case pipeline.Season:
		p.showSeason()
	case pipeline.Sooner:
		p.showSeason()
		if p.desk.AwaitsPlan() {
			p.reply(p.desk.SeasonFollows(p.paperForm(), time.Now().UTC()))
		}
	default:
		p.showNumbers()
		p.showChecks()
		p.showTables()
		if p.showsBark() {
			p.draw()
		}
	}
}

// known is what is known of the boat in hand, told what the picture is of.
func (p *page) known() *pipeline.Boat {
	b := p.work.Known()
	b.Want(p.showsBark())
	b.WriteDates(p.work.Dates)
	awaits := p.desk.AwaitsPlan()
	b.WantPlan(awaits || p.seesPlan(), awaits || p.places.at == work.Season, today())
	b.Ask(p.asked())
	return b
}
