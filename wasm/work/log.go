package work

import "barkwright/core/tally"

// Tick adds to the log that a row of a step, or all of it where row is empty, was done on a
// day, or is not done after all. It is one step of undo; a tick that changes nothing is none.
func (w *Work) Tick(step, row, day string, done bool) {
	w.setLog(w.Notebook.Log.Tick(step, row, day, done))
}

// Note adds a note to a step or a stage in one step of undo; blank text adds nothing.
func (w *Work) Note(step, day, text string) {
	w.setLog(w.Notebook.Log.Note(step, day, text))
}

// setLog replaces the log where the new one has an entry more.
func (w *Work) setLog(l tally.Log) {
	if len(l) == len(w.Notebook.Log) {
		return
	}
	n := *w.Notebook
	n.Log = l
	w.setNotebook(n)
}
