package pipeline

import (
	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/core/sure"
	"barkwright/core/whatif"
)

// Asked is what is worked out only while the page shows it.
type Asked struct {
	// Control is the key of the control whose strips are shown, empty for none, and Whole tells
	// that they run over its whole range.
	Control string
	Whole   bool
	// Spreads and Inches tell that the tables of them are shown.
	Spreads, Inches bool
	// Lesson is the key of the lesson that is open, empty for none, and On the boat that its steps
	// start from.
	Lesson string
	On     design.Design
}

func (a Asked) wants(p Piece) bool {
	switch p {
	case Strips:
		return a.Control != "" && len(whatif.Watched(a.Control)) > 0
	case Spreads:
		return a.Spreads
	case Inches:
		return a.Inches
	}
	return a.Lesson != ""
}

// Strips tells whether there are strips of the control asked for.
func (a Asked) Strips() bool { return a.wants(Strips) }

// found is what was asked for and is worked out.
type found struct {
	sweep   *whatif.Sweep
	spreads *sure.Spreads
	inches  *whatif.Costs
	run     *lesson.Run
}

// Ask says what the page shows. What was asked for last comes next.
func (b *Boat) Ask(a Asked) {
	if a.Control != b.asked.Control || a.Whole != b.asked.Whole {
		b.forget(Strips)
	}
	if a.Lesson != b.asked.Lesson || a.On != b.asked.On {
		b.forget(Taught)
		b.found.run, b.teaches = nil, core.Canoe{}
		if a.Lesson != "" {
			b.teaches = core.Evaluate(a.On)
		}
	}
	b.asked = a
}

// Strips returns the control tried at other values, nil where it is not known.
func (b *Boat) Strips() *whatif.Sweep {
	if !b.Known(Strips) {
		return nil
	}
	return b.found.sweep
}

// Spreads returns how far figures may be off, nil where it is not known.
func (b *Boat) Spreads() *sure.Spreads {
	if !b.Known(Spreads) {
		return nil
	}
	return b.found.spreads
}

// Inches returns what an inch of each length costs, nil where it is not known.
func (b *Boat) Inches() *whatif.Costs {
	if !b.Known(Inches) {
		return nil
	}
	return b.found.inches
}

// Taught returns the lesson that is open, worked out on the boat asked for; nil where it is not known.
func (b *Boat) Taught() *lesson.Run {
	if !b.Known(Taught) {
		return nil
	}
	return b.found.run
}

// find works out what was asked for.
func (b *Boat) find(p Piece, c core.Canoe, pause func() bool) {
	step := func(next func() bool) bool {
		for next() {
			if pause != nil && !pause() {
				return false
			}
		}
		return true
	}
	switch p {
	case Strips:
		w, ok := whatif.NewSweep(c.Design, b.asked.Control, b.system, b.asked.Whole)
		if !ok {
			b.found.sweep = nil
		} else if w.Run(pause) {
			b.found.sweep = w
		}
	case Spreads:
		if s := sure.WithGores(c, pause); step(s.Next) && s.Known() {
			b.found.spreads = s
		}
	case Inches:
		if i := whatif.NewCosts(c.Design); step(i.Next) {
			b.found.inches = i
		}
	case Taught:
		l, _, _ := lesson.Lookup(b.asked.Lesson)
		c.Skin = nil
		if r := lesson.NewRun(l, c, pause); step(r.Next) {
			b.found.run = r
		}
	}
}
