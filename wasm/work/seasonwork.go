package work

import (
	"fmt"
	"strings"

	"barkwright/core/bark"
	"barkwright/core/plan"
	"barkwright/core/units"
)

// AddWork enters in the log how much is done of a task on a day, in what the reader counts it by, and the
// hours it took practised hands and learners. It returns what is wrong, by "task", "done", "hours" or "learners",
// or "says" for what is of no field, and then enters nothing.
func (w *Work) AddWork(task, day, done, hours, learners string) plan.Fault {
	id, ok := plan.Lookup(task)
	if !ok {
		return plan.Fault{Key: "task", Text: "Choose a task."}
	}
	n, wrong := readUnits(id, strings.TrimSpace(done), w.System)
	switch {
	case wrong != "":
		return plan.Fault{Key: "done", Text: wrong}
	case n < 0:
		return plan.Fault{Key: "done", Text: "No less than nothing. Undo takes an entry back."}
	case n == 0:
		return plan.Fault{Key: "done", Text: "How many were done? Hours alone teach nothing of the time of one."}
	case n > plan.MostUnits:
		return plan.Fault{Key: "done", Text: w.outside(plan.Fault{Key: plan.HaveKey(id)})}
	}
	var spent [2]float64
	for i, f := range []plan.Fault{{Key: "hours", Text: hours}, {Key: "learners", Text: learners}} {
		v, err := readNumber(strings.TrimSpace(f.Text))
		if err != nil || v < 0 || v > mostHours {
			return plan.Fault{Key: f.Key,
				Text: fmt.Sprintf("Hours, such as 2.5, or nothing; no more than %d at a time.", mostHours)}
		}
		spent[i] = v
	}
	was := len(w.Notebook.Log)
	w.setLog(w.Notebook.Log.Work(task, day, n, spent[0], spent[1]))
	if len(w.Notebook.Log) == was {
		return plan.Fault{Key: "says", Text: "The log is full: nothing was entered."}
	}
	return plan.Fault{}
}

// mostHours bounds the hours of one entry: the largest crew's longest day is 42 times 14.
const mostHours = 1000

// nextSeason is what the plan of another boat begins with: the crew, and the times as the log has
// shown them; nil where nothing is set.
func (w *Work) nextSeason() *plan.Season {
	if w.None {
		return w.Notebook.Season
	}
	s, asks, done := w.progress()
	next := s.Next(asks, done)
	if next == plan.NewSeason() {
		return nil
	}
	return &next
}

// RootLeft is the split root at hand and what is still to be sewn and laced asks for, m: what the
// log and the plan say is split, less what is sewn in already. Root that was never said to be
// split counts as none: split is false then.
func (w *Work) RootLeft() (have, wanted float64, split bool) {
	s, asks, done := w.progress()
	for root, sewn := range w.sewnWith() {
		all := s.Asked(asks, root) * units.Foot
		ready := (s.Have[root] + done.Units[root]) * units.Foot
		split = split || ready > 0
		left := 0.0
		for task, share := range sewn {
			if of := s.Asked(asks, task); of > 0 {
				left += share * max(0, of-s.Have[task]-done.Units[task]) / of
			}
		}
		wanted += all * left
		have += ready - all*(1-left)
	}
	return have, wanted, split
}

// sewnWith tells, by the task that splits root, which tasks use it up and the share of it that each takes.
func (w *Work) sewnWith() map[plan.ID]map[plan.ID]float64 {
	seams, ends := 0.0, 0.0
	for _, seam := range w.Canoe().Bark.Seams {
		if seam.Kind == bark.EndSeams {
			ends += seam.Root
		} else {
			seams += seam.Root
		}
	}
	all := seams + ends
	if all == 0 {
		all = 1
	}
	return map[plan.ID]map[plan.ID]float64{plan.SplitLacingRoot: {plan.Lace: 1},
		plan.SplitSeamRoot: {plan.SewSeams: seams / all, plan.SewEnds: ends / all}}
}

// BarkLeft is the sheets of bark taken and not yet laid, and what is still to be laid asks for: what
// the log and the plan say is taken, less the share that is laid already. Bark that is laid was
// taken. Where none was ever said to be, taken is false.
func (w *Work) BarkLeft() (have, wanted float64, taken bool) {
	s, asks, done := w.progress()
	all := s.Asked(asks, plan.TakeBark)
	laid := 0.0
	if of := s.Asked(asks, plan.LayBark); of > 0 {
		laid = min(1, (s.Have[plan.LayBark]+done.Units[plan.LayBark])/of)
	}
	got := max(s.Have[plan.TakeBark]+done.Units[plan.TakeBark], all*laid)
	return got - all*laid, all * (1 - laid), got > 0
}

// LearnedMinutes are the likely times of one unit of each task as the log has shown them, minutes,
// 0 for a task of which no hours are logged or whose hours are not taken.
func (w *Work) LearnedMinutes() (likely [plan.Tasks]float64) {
	s, asks, done := w.progress()
	for id, rate := range s.Rates(asks, done) {
		if done.Timed[id] > 0 && !s.Suspect(done, plan.ID(id)) {
			likely[id] = rate.Likely
		}
	}
	return likely
}

// progress is what is set for the plan, what the boat asks for, and what of it the log says is done.
func (w *Work) progress() (s plan.Season, asks plan.Counts, done plan.Progress) {
	s, asks = w.Season(), w.Canoe().Asks()
	return s, asks, s.Read(asks, w.Notebook.Log, w.rowsOfStep)
}

// rowsOfStep is how many rows a step goes by, 0 for one that goes by none.
func (w *Work) rowsOfStep(step string) int { return len(w.rowsOf(step)) }
