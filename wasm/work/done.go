package work

import (
	"strconv"

	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// StepShown is how a step stands: whether all of it is ticked and on which day, and of one
// that goes row by row how many rows are.
type StepShown struct {
	Key, Text string
	Done      bool
	Says      string
}

// Steps are how a stage's steps stand. A step that goes row by row is done once it is
// ticked as a whole, or every row of it is.
func (w *Work) Steps(k stage.Key) []StepShown {
	s, _, ok := stage.Lookup(k)
	if !ok {
		return nil
	}
	log := w.Notebook.Log
	out := make([]StepShown, len(s.Steps))
	for i, step := range s.Steps {
		day, done := log.Done(step.Key, "")
		shown := StepShown{Key: step.Key, Text: step.Text(w.System), Done: done}
		if done {
			shown.Says = "done " + w.Dates.Written(day)
		} else if rows := log.Rows(step.Key); rows > 0 {
			of := max(rows, len(w.rowsOf(step.Key)))
			shown.Done = rows == of
			shown.Says = units.Count.Format(float64(rows), w.System) + " of " + units.Count.Format(float64(of), w.System)
		}
		out[i] = shown
	}
	return out
}

// Done is how many of steps are done.
func Done(steps []StepShown) int {
	n := 0
	for _, s := range steps {
		if s.Done {
			n++
		}
	}
	return n
}

// Counted says how many of a stage's steps are done.
func Counted(done, of int) string { return strconv.Itoa(done) + " of " + strconv.Itoa(of) + " done" }

// Noted are the notes of a stage, the newest first.
func (w *Work) Noted(k stage.Key) []tally.Entry {
	notes := w.Notebook.Log.Notes(string(k))
	out := make([]tally.Entry, len(notes))
	for i, e := range notes {
		out[len(notes)-1-i] = e
	}
	return out
}
