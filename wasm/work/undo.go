package work

import (
	"slices"

	"barkwright/core"
	"barkwright/wasm/pipeline"
)

// Commit ends the change in hand, which becomes one step of undo. The comparison stays
// until another control is taken up.
func (w *Work) Commit() {
	if w.changing() {
		w.remember(w.start)
	}
	w.hand = ""
}

// Snapshot is the state of a work at one time. It is restored after a fault of the
// program.
type Snapshot struct {
	of            *Work
	was           Work
	canoe, before core.Canoe
}

// Snapshot returns the work's state now.
func (w *Work) Snapshot() Snapshot {
	s := Snapshot{w, *w, w.Canoe(), w.Before()}
	s.was.undo, s.was.redo = slices.Clone(w.undo), slices.Clone(w.redo)
	return s
}

// Of reports whether the snapshot is of w.
func (s Snapshot) Of(w *Work) bool { return s.of == w && w != nil }

// Restore sets the work back to the snapshot.
func (s Snapshot) Restore() {
	s.was.System = s.of.System
	*s.of = s.was
	s.of.hand = ""
	s.of.boat = pipeline.New(s.canoe, s.was.System)
	s.of.boat.Compare(s.before)
	s.of.setHeld(s.was.held)
}

// Cancel undoes what the control in hand has changed, as if it had not been taken up.
func (w *Work) Cancel() {
	if w.changing() {
		w.Notebook = w.start.notebook
		w.enter(w.start.design)
	}
	w.hand = ""
}

func (w *Work) state() state { return state{w.Entered, w.Notebook} }

func (w *Work) remember(s state) { w.rememberChange(change{state: s}) }

func (w *Work) rememberChange(c change) {
	w.undo = append(w.undo, c)
	if len(w.undo) > mostUndo {
		w.undo = w.undo[len(w.undo)-mostUndo:]
	}
	w.redo = nil
}

// Undo undoes the last change and reports whether there was one.
func (w *Work) Undo() bool {
	w.Commit()
	return w.swap(&w.undo, &w.redo)
}

// Redo makes the change again that was undone last, and reports whether there was one.
func (w *Work) Redo() bool {
	w.Commit()
	return w.swap(&w.redo, &w.undo)
}

// CanUndo and CanRedo report whether there is a change to undo or to make again.
func (w *Work) CanUndo() bool { return len(w.undo) > 0 || w.changing() }
func (w *Work) CanRedo() bool { return len(w.redo) > 0 && !w.changing() }

// changing reports whether the control in hand has changed anything.
func (w *Work) changing() bool { return w.hand != "" && w.state() != w.start }

func (w *Work) swap(from, to *[]change) bool {
	n := len(*from)
	if n == 0 {
		return false
	}
	s := (*from)[n-1]
	*from = (*from)[:n-1]
	*to = append(*to, change{w.state(), w.held, s.holding})
	if s.holding {
		w.setHeld(s.held)
		return true
	}
	w.boat.Compare(w.Canoe())
	w.Notebook = s.notebook
	w.enter(s.design)
	return true
}
