package pipeline

import (
	"iter"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
)

// task is a piece being worked out, a coroutine that is resumed slice by slice.
type task struct {
	piece  Piece
	of     design.Design
	resume func() (struct{}, bool)
	stop   func()
}

// Waiting returns the piece that comes next, and whether there is one.
func (b *Boat) Waiting() (Piece, bool) {
	if b.planFirst && b.wantsPlan && b.Known(Figures) && b.Known(Water) {
		for _, p := range [2]Piece{Season, Sooner} {
			if !b.Known(p) && !b.failed[p] {
				return p, true
			}
		}
	}
	for p := range pieces {
		if b.wants(p) && !b.Known(p) && !b.failed[p] {
			return p, true
		}
	}
	return 0, false
}

// wants tells whether a piece is to be worked out at all.
func (b *Boat) wants(p Piece) bool {
	switch p {
	case Drawing:
		return b.wantsDrawing
	case Beside:
		return len(b.notebook.Record.Data) > 0
	case Season, Sooner:
		return b.wantsPlan
	case Strips, Spreads, Inches, Taught:
		return b.asked.wants(p)
	case Makes:
		return b.canoe.Design.OnHand.Count > 0
	case Held:
		return b.holds && b.held.Skin == nil
	}
	return true
}

// Next does one slice of what comes next. finished tells that the slice ended a piece,
// which is then known; where nothing is left to do, it reports false for both.
//
// A panic in the working out passes through to the caller. The piece is then left
// out until another canoe is taken, and all else stays as it was.
func (b *Boat) Next() (p Piece, finished, worked bool) {
	p, waits := b.Waiting()
	if !waits {
		return 0, false, false
	}
	if b.task == nil || b.task.piece != p {
		b.cut()
		b.start(p)
	}
	t := b.task
	sound := false
	defer func() {
		if !sound {
			b.task, b.failed[p], b.memory = nil, true, geom.FlattenWorkspace{}
		}
	}()
	_, more := t.resume()
	sound = true
	if more {
		return p, false, true
	}
	b.task = nil
	b.of[p], b.done[p] = t.of, true
	if p == Held {
		b.held = b.held.WithFlat(b.heldFlat)
	}
	b.dress()
	return p, true, true
}

// Need works a piece out at once, whatever comes before it, for whoever cannot wait,
// such as paper.
func (b *Boat) Need(p Piece) {
	if b.Known(p) {
		return
	}
	b.cut()
	c := b.canoe
	if p == Taught {
		c = b.teaches
	}
	b.run(p, c, nil)
	b.of[p], b.done[p] = c.Design, true
	b.dress()
}

// Hurry works at what comes next until a piece is known, for no longer than so many ms of a clock, and tells
// whether it is.
func (b *Boat) Hurry(p Piece, now func() float64, most float64) bool {
	for until := now() + most; !b.Known(p) && now() < until; {
		if _, _, worked := b.Next(); !worked {
			break
		}
	}
	return b.Known(p)
}

// Rest lets go of the memory that working out takes, while another boat is in hand.
func (b *Boat) Rest() {
	b.cut()
	b.memory = geom.FlattenWorkspace{}
}

// cut ends the piece being worked out, if there is one.
func (b *Boat) cut() {
	if b.task != nil {
		b.task.stop()
		b.task = nil
	}
}

// start begins a piece. What it finds is put into the boat when it is whole: one that
// is cut off leaves nothing, but for the points of the curve that stand.
func (b *Boat) start(p Piece) {
	c := b.canoe
	switch p {
	case Held:
		c = b.held
	case Taught:
		c = b.teaches
	}
	resume, stop := iter.Pull(func(yield func(struct{}) bool) {
		b.run(p, c, func() bool { return yield(struct{}{}) })
	})
	b.task = &task{p, c.Design, resume, stop}
}

// run works a piece out for c; where pause returns false it returns at once.
func (b *Boat) run(p Piece, c core.Canoe, pause func() bool) {
	b.memory.Pause = pause
	switch p {
	case Drawing:
		b.lay(&b.drawing, c, bark.ForPicture)
	case Figures:
		b.lay(&b.figures, c, bark.ForFigures)
	case Water:
		b.waters.keep(c.Design, core.OnWater(c))
	case Beside:
		b.rows = b.stand(c.Design)
	case Season:
		b.plan(c, pause)
	case Sooner:
		if o, ok := b.outlook.WithHelp(c, pause); ok {
			b.outlook = o
		}
	case Curve:
		b.draw(c)
	case Strips, Spreads, Inches, Taught:
		b.find(p, c, pause)
	case Makes:
		b.fit(c, pause)
	case Held:
		b.lay(&b.heldFlat, c, bark.ForFigures)
	}
}
