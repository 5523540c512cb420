package pipeline

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/lines"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// lay lays the bark flat into f, from the last result there.
func (b *Boat) lay(f *bark.Flat, c core.Canoe, res bark.Resolution) {
	warm := f
	if len(f.Sheet.Places) == 0 {
		warm = nil
	}
	if laid := core.LayFlat(c, res, warm, &b.memory); laid.State != geom.CutOff {
		*f = laid
	}
}

// fit finds what the sheets on hand make; what was found before stays where it is cut off.
func (b *Boat) fit(c core.Canoe, pause func() bool) {
	whole := true
	if pause != nil {
		b.memory.Pause = func() bool {
			whole = pause()
			return whole
		}
	}
	if made := c.WithMakes(&b.memory); whole {
		b.makes = made
	}
}

// draw works out the points of the curve of stretch that are not there yet.
func (b *Boat) draw(c core.Canoe) {
	if !Curve.sameFor(b.of[Curve], c.Design) || b.done[Curve] {
		b.curve, b.of[Curve], b.done[Curve] = nil, c.Design, false
	}
	for len(b.curve) <= core.MostCurved {
		p := bark.StretchAt(c.Hull, c.Bark, len(b.curve), bark.ForCurve, &b.memory)
		if p.State == geom.CutOff {
			return
		}
		b.curve = append(b.curve, p)
	}
}

// plan plans the work on c. What the log says of a step that goes row by row counts by the
// rows of its table.
func (b *Boat) plan(c core.Canoe, pause func() bool) {
	of := func(step string) int { return len(lines.Keys(c, stage.TableOf(step))) }
	if o, ok := core.PlanWork(c, b.notebook.Planned(), b.notebook.Log, b.today, of, pause); ok {
		o.Dates = b.dates
		b.outlook, b.done[Sooner] = o, false
	}
}

// fitted is the boat found from the record of a notebook.
type fitted struct {
	of     *record.Notebook
	system units.System
	found  refit.Fitted
}

// Fitted is what the record gives by itself, whatever the boat in hand: the boat,
// its contradictions and what the rules held.
func (b *Boat) Fitted() refit.Fitted {
	if b.fitted.of != b.notebook || b.fitted.system != b.system {
		b.fitted = fitted{b.notebook, b.system, refit.Fit(b.record())}
	}
	return b.fitted.found
}

// record is that of the notebook, its messages in the units shown.
func (b *Boat) record() record.Record {
	r := b.notebook.Record
	r.System = b.system
	return r
}

// stand stands a design beside the record. What disagrees with the rest of the record
// is marked whatever the boat.
func (b *Boat) stand(d design.Design) []refit.Row {
	rows := refit.Measure(d, b.record())
	for i, r := range b.Fitted().Rows {
		rows[i].Disagrees, rows[i].Unfollowed, rows[i].Others = r.Disagrees, r.Unfollowed, r.Others
	}
	return rows
}

// waters are the curves on the water of the canoes last worked out.
type waters []struct {
	design design.Design
	water  core.Water
}

// mostWaters is enough for the boat in hand, the one compared with and one undone.
const mostWaters = 3

func (w waters) of(d design.Design) (core.Water, bool) {
	for _, k := range w {
		if k.design == d {
			return k.water, true
		}
	}
	return core.Water{}, false
}

func (w *waters) keep(d design.Design, water core.Water) {
	*w = append(*w, struct {
		design design.Design
		water  core.Water
	}{d, water})
	*w = (*w)[max(0, len(*w)-mostWaters):]
}
