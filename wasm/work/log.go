package work

import (
	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/core/tally"
)

// Tick adds to the log that a row of a step, or all of it where row is empty, was done on a
// day, or is not done after all. It is one step of undo; a tick that changes nothing is none.
//
// A row taken back of a step that is ticked as a whole leaves its other rows ticked, and a
// whole step taken back that was ticked row by row takes all of them back.
func (w *Work) Tick(step, row, day string, done bool) {
	log := w.Notebook.Log
	when, whole := log.Done(step, "")
	if !done && (row != "") == whole {
		log = log.Tick(step, "", day, false)
		for _, key := range w.rowsOf(step) {
			if key != row {
				log = log.Tick(step, key, when, whole)
			}
		}
	}
	w.setLog(log.Tick(step, row, day, done))
}

// rowsOf are the keys of the rows that a step is done by, none for a step done at once.
func (w *Work) rowsOf(step string) []string {
	return lines.Keys(w.Canoe(), stage.TableOf(step))
}

// Note adds a note to a step or a stage in one step of undo; blank text adds nothing.
func (w *Work) Note(step, day, text string) {
	w.setLog(w.Notebook.Log.Note(step, day, text))
}

// NoteKey is the name of a stage's note among what is half typed.
func NoteKey(stage string) string { return "note." + stage }

// setLog replaces the log where the new one has more entries or fewer.
func (w *Work) setLog(l tally.Log) {
	if len(l) == len(w.Notebook.Log) {
		return
	}
	n := *w.Notebook
	n.Log = l
	w.setNotebook(n)
}

// Repair enters a repair of the boat in the log, one step of undo; it reports false where no more fit.
func (w *Work) Repair(step, day string, d tally.Damage) bool {
	was := len(w.Notebook.Log)
	w.setLog(w.Notebook.Log.Repair(step, day, d))
	return len(w.Notebook.Log) > was
}

// StrikeRepair takes a repair off the log, counted from 0, one step of undo.
func (w *Work) StrikeRepair(n int) { w.setLog(w.Notebook.Log.Struck(n)) }
