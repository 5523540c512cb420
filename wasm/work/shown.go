package work

import (
	"strconv"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
)

// Shown is a result as the page shows it. Its words are written where they are asked for:
// of all results, a stage shows a few.
type Shown struct {
	*answer.Number
	before *answer.Number
	system units.System
	none   bool // no boat could be built
}

// Name returns what the result is called.
func (s Shown) Name() string { return s.Label(s.system) }

// Text returns the result as shown.
func (s Shown) Text() string {
	if s.none {
		return noBoat
	}
	return s.Number.Text(s.system)
}

// SI returns its value in SI units, or "" where it has none.
func (s Shown) SI() string {
	if s.none || s.Absent {
		return ""
	}
	return strconv.FormatFloat(s.Value, 'g', 12, 64)
}

// Change returns its change since the control in hand was taken up, or from the boat held.
func (s Shown) Change() string { return answer.Change(*s.before, *s.Number, s.system) }

// noBoat stands in place of a number where no boat could be built.
const noBoat = "–"

// Numbers holds the results of the boat in hand beside those of the boat compared with.
// It keeps the latter from one step to the next.
type Numbers struct {
	Shown []Shown // as they were last brought up to date

	before []answer.Number
	of     design.Design
	laid   bool // whether its bark was laid flat
}

// Update brings every result up to date and returns them.
func (n *Numbers) Update(w *Work) []Shown {
	against := w.Against()
	if laid := against.Skin != nil; n.before == nil || against.Design != n.of || laid != n.laid {
		n.before, n.of, n.laid = answer.All(against), against.Design, laid
	}
	n.Shown = w.beside(answer.All(w.Canoe()), n.before)
	return n.Shown
}

// Water returns the results on the water, or nil where they are not known.
func (w *Work) Water() []Shown {
	known := w.Known()
	if !known.Known(pipeline.Water) {
		return nil
	}
	now, _ := known.Water()
	return w.beside(answer.Water(w.Canoe(), now), answer.Water(w.Against(), known.WaterAgainst()))
}

// Planned returns the results of the plan of the work; until it is known they follow.
func (w *Work) Planned() []Shown {
	now, known := w.Known().Outlook()
	if !known {
		now = nil
	}
	return w.beside(answer.Planned(now), answer.Planned(w.boat.OutlookBefore()))
}

// beside returns results with their changes from others of the same keys.
func (w *Work) beside(now, before []answer.Number) []Shown {
	shown := make([]Shown, len(now))
	for i := range now {
		shown[i] = Shown{Number: &now[i], before: &before[i], system: w.System, none: w.None}
	}
	return shown
}

// Checks returns those of the boat in hand. There are none where no boat could be built.
func (w *Work) Checks() []answer.Warning {
	if w.None {
		return nil
	}
	return answer.Checks(w.Canoe())
}
