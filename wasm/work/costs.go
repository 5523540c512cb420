package work

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/weigh"
	"barkwright/wasm/pipeline"
)

// Costs is what differs between the boat held and the one in hand.
type Costs struct {
	// Against is the name of the boat held.
	Against string
	// Before tells that the boat in hand cannot be built: it is the last one that could be.
	Before   bool
	Controls []weigh.Control
	// Rows are the numbers and checks that differ, Most the places of the largest.
	Rows   []weigh.Row
	Most   []int
	Pieces []weigh.Pieces
	// Shared tells that the rows say what came from what; where too many controls moved they do
	// only when asked.
	Shared bool
}

// mostOfAll is how many rows stand above the others.
const mostOfAll = 5

// Costs compares the boat held with the one in hand, and reports false where none is held.
// stepByStep asks for what came from what, however many controls moved.
func (w *Work) Costs(stepByStep bool) (Costs, bool) {
	held, ok := w.HeldCanoe()
	if !ok || w.None {
		return Costs{}, false
	}
	now := w.Canoe()
	moved, followers := weigh.Moved(held.Design, now.Design, w.order)
	c := Costs{Against: w.held.Name, Before: len(w.Faults) > 0 && !w.OnlyTexts(),
		Shared:   stepByStep || len(moved) <= weigh.MostShared,
		Controls: weigh.Controls(held.Design, now.Design, moved, followers, w.System),
		Pieces:   weigh.PieceByPiece(held, now, w.System)}
	season, _, done := w.progress()
	hours := func(c core.Canoe) []answer.Number { return answer.Hours(c, season, done) }
	var steps []weigh.Step
	if c.Shared {
		steps = weigh.Path(held, now, moved)
		for i := range steps {
			steps[i].More = hours(steps[i].Canoe)
		}
	}
	was, is := weigh.Of(held), weigh.Of(now)
	was.Numbers, is.Numbers = append(was.Numbers, hours(held)...), append(is.Numbers, hours(now)...)
	if known := w.Known(); known.Known(pipeline.Water) {
		water, _ := known.Water()
		is.Numbers = append(is.Numbers, answer.Water(now, water)...)
		was.Numbers = append(was.Numbers, answer.Water(held, known.WaterAgainst())...)
	}
	c.Rows = weigh.Compare(was, is, steps, w.System)
	c.Most = weigh.Most(c.Rows, mostOfAll)
	return c, true
}
