package pipeline

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Boat is the boat in hand, the one it is compared with and its record.
type Boat struct {
	canoe, before core.Canoe
	held          core.Canoe // where holds
	heldFlat      bark.Flat
	heldWater     *core.Water
	holds         bool
	notebook      *record.Notebook
	system        units.System
	wantsDrawing  bool
	wantsPlan     bool
	planFirst     bool
	followed      bool // since the last step

	// of is the design that each piece was last worked out for, where done.
	of   [pieces]design.Design
	done [pieces]bool
	// failed marks a piece that ended in a panic: it is not tried again for this canoe.
	failed [pieces]bool

	drawing, figures bark.Flat
	curve            []bark.CurvePoint
	makes            core.Canoe // whose Skin has what the sheets on hand make
	waters           waters
	rows             []refit.Row
	outlook          *core.Outlook
	outlookBefore    *core.Outlook
	today            string // as the plan was last asked for
	dates            tally.Dates
	fitted           fitted
	asked            Asked
	found            found
	teaches          core.Canoe // the boat that the lesson is worked out on
	memory           geom.FlattenWorkspace
	task             *task
}

// New is a boat of which only the canoe is known.
func New(c core.Canoe, s units.System) *Boat {
	return &Boat{canoe: c, before: c, system: s, notebook: &record.Notebook{}}
}

// Take puts a step's canoe in hand. What still holds of the last one stays known,
// and a piece being worked out that the step makes stale is cut off.
func (b *Boat) Take(c core.Canoe) {
	c.Skin = nil
	b.canoe = c
	b.failed = [pieces]bool{}
	if b.task != nil && b.task.piece != Held && b.task.piece != Taught && !b.task.piece.sameFor(b.task.of, c.Design) {
		b.cut()
	}
	b.dress()
}

// Compare sets the canoe that numbers are compared with.
func (b *Boat) Compare(c core.Canoe) {
	b.before, b.outlookBefore = c, nil
	if b.Known(Season) && c.Design == b.canoe.Design {
		b.outlookBefore = b.outlook
	}
	b.dress()
}

// Measure sets the record that stands beside the boat and the units that its messages
// and the strips are in.
func (b *Boat) Measure(n *record.Notebook, s units.System) {
	if n == b.notebook && s == b.system {
		return
	}
	if s != b.system {
		b.forget(Strips)
	}
	b.notebook, b.system = n, s
	b.forget(Beside, Season, Sooner)
}

// Want says whether the picture is of the bark laid flat.
func (b *Boat) Want(drawing bool) { b.wantsDrawing = drawing }

// WriteDates says how the days of plans made from now on are written.
func (b *Boat) WriteDates(d tally.Dates) { b.dates = d }

// WantPlan says whether the page shows the plan of the work, whether little else, so that it comes
// before what is looked at elsewhere, and which day it is.
func (b *Boat) WantPlan(shown, first bool, today string) {
	b.wantsPlan, b.planFirst = shown, first
	if today != b.today {
		b.today = today
		if b.outlook != nil && b.outlook.Today != "" {
			b.forget(Season, Sooner)
		}
	}
}

// Outlook is the plan of the boat in hand as it was last worked out, nil before the first, and
// whether it is of the boat as it stands.
func (b *Boat) Outlook() (o *core.Outlook, known bool) { return b.outlook, b.Known(Season) }

// OutlookBefore is the plan of the boat compared with, nil where it was not known.
func (b *Boat) OutlookBefore() *core.Outlook { return b.outlookBefore }

// Canoe returns the canoe in hand with all that is known of its bark.
func (b *Boat) Canoe() core.Canoe { return b.canoe }

// Before returns the canoe compared with; its bark is known where it is the same.
func (b *Boat) Before() core.Canoe { return b.before }

// Drawing returns the bark laid flat for the picture, nil where it is not known.
func (b *Boat) Drawing() *bark.Flat {
	if !b.Known(Drawing) {
		return nil
	}
	return &b.drawing
}

// Water returns the boat on the water, and whether it is known.
func (b *Boat) Water() (core.Water, bool) { return b.waters.of(b.canoe.Design) }

// waterBefore returns the boat before the control in hand was taken up, on the water. It was in
// hand then, so that it is known but after a long time or a fault.
func (b *Boat) waterBefore() core.Water {
	w, ok := b.waters.of(b.before.Design)
	if !ok {
		w = core.OnWater(b.before)
		b.waters.keep(b.before.Design, w)
	}
	return w
}

// Rows returns the record stood beside the boat, and whether that is known.
func (b *Boat) Rows() ([]refit.Row, bool) { return b.rows, b.Known(Beside) }

// Known tells whether a piece is worked out for the canoe in hand.
func (b *Boat) Known(p Piece) bool {
	if p == Water {
		_, ok := b.Water()
		return ok
	}
	if p == Held {
		return b.holds && b.held.Skin != nil
	}
	if p == Taught {
		return b.found.run != nil && b.found.run.Lesson.Key == b.asked.Lesson && b.done[p] && b.of[p] == b.teaches.Design
	}
	return b.done[p] && p.sameFor(b.of[p], b.canoe.Design)
}

// forget makes pieces stale.
func (b *Boat) forget(all ...Piece) {
	for _, p := range all {
		b.done[p], b.failed[p] = false, false
		if b.task != nil && b.task.piece == p {
			b.cut()
		}
	}
}

// dress gives the canoes what is known of their bark.
func (b *Boat) dress() {
	if b.canoe.Skin == nil && b.Known(Figures) {
		b.canoe = b.canoe.WithFlat(b.figures)
	}
	if s := b.canoe.Skin; s != nil {
		if len(s.Curve) == 0 && b.Known(Curve) {
			b.canoe = b.canoe.WithCurve(b.curve)
		}
		if s.Makes == nil && b.Known(Makes) {
			b.canoe = b.canoe.WithOutcomes(b.makes)
		}
	}
	if b.holds && b.held.Skin == nil && b.canoe.Skin != nil && core.SameSkin(b.held.Design, b.canoe.Design) {
		b.held = b.held.WithFlat(b.canoe.Skin.Flat)
	}
	if b.before.Skin == nil && b.canoe.Skin != nil && core.SameSkin(b.before.Design, b.canoe.Design) {
		b.before = b.before.WithFlat(b.figures)
	}
}
