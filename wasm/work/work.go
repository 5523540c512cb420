package work

import (
	"maps"
	"slices"
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
)

// Work is one design being changed.
type Work struct {
	// System is how numbers are read and shown.
	System units.System
	// Entered is what the form holds, which may have faults.
	Entered design.Design
	Faults  []design.Fault
	// None tells that no design of this boat could be built so far: the canoe is then
	// that of the default and nothing of it is this boat's.
	None bool
	// Typed is what stands half typed, by the field; never changed in place.
	Typed map[string]string
	// Notebook is what was measured beside the design; it is never changed in place.
	Notebook *record.Notebook
	// Moved lists the numbers that stand elsewhere than when an older page wrote the boat,
	// until that was said.
	Moved []design.Move

	boat       *pipeline.Boat
	hand       string // the key of the control in hand
	start      state
	undo, redo []state
}

// state is all that one step of undo goes back to.
type state struct {
	design   design.Design
	notebook *record.Notebook
}

// mostUndo bounds the changes remembered; each is under a kilobyte but for notes.
const mostUndo = 200

// New starts with a design that has no fault.
func New(d design.Design, s units.System) *Work {
	return &Work{System: s, Entered: d, Notebook: &record.Notebook{}, boat: pipeline.New(core.Evaluate(d), s)}
}

// Open starts with a boat as it was kept, faults and all.
func Open(b file.Boat, s units.System) *Work {
	w := &Work{System: s, Notebook: &b.Notebook, None: true, Moved: b.Moved}
	w.enter(b.Design)
	if w.None && b.Built != nil {
		if c, faults := core.Try(*b.Built); len(faults) == 0 {
			w.boat, w.None = pipeline.New(c, s), false
		}
	}
	if w.None {
		w.boat = pipeline.New(core.Evaluate(design.Default()), s)
	}
	return w
}

// Boat is the boat in hand as it is kept.
func (w *Work) Boat() file.Boat {
	b := file.Boat{Design: w.Entered, Notebook: *w.Notebook}
	if len(w.Faults) > 0 && !w.None {
		built := w.Canoe().Design
		built.Notes = ""
		b.Built = &built
	}
	return b
}

// SetTyped remembers what stands half typed in a field; nothing forgets it.
func (w *Work) SetTyped(field, text string) {
	if w.Typed[field] == text {
		return
	}
	typed := maps.Clone(w.Typed)
	if typed == nil {
		typed = map[string]string{}
	}
	typed[field] = text
	if text == "" {
		delete(typed, field)
	}
	w.Typed = typed
}

// TakeUp marks the control whose changes follow: a change of control starts a new
// comparison and a new step of undo.
func (w *Work) TakeUp(key string) {
	if w.hand == key {
		return
	}
	w.Commit()
	w.hand, w.start = key, w.state()
	w.boat.Compare(w.Canoe())
}

// Commit ends the change in hand: what it did is one step of undo. The
// comparison stands until another control is taken up.
func (w *Work) Commit() {
	if w.changing() {
		w.remember(w.start)
	}
	w.hand = ""
}

// Snapshot is all of a work at one time, to go back to after a fault of the program.
type Snapshot struct {
	of            *Work
	was           Work
	canoe, before core.Canoe
}

// Snapshot takes one.
func (w *Work) Snapshot() Snapshot {
	s := Snapshot{w, *w, w.Canoe(), w.Before()}
	s.was.undo, s.was.redo = slices.Clone(w.undo), slices.Clone(w.redo)
	return s
}

// Of tells whether the snapshot is of a work.
func (s Snapshot) Of(w *Work) bool { return s.of == w && w != nil }

// Restore puts the work back as it was.
func (s Snapshot) Restore() {
	s.was.System = s.of.System
	*s.of = s.was
	s.of.hand = ""
	s.of.boat = pipeline.New(s.canoe, s.was.System)
	s.of.boat.Compare(s.before)
}

// Cancel puts back what the control in hand has changed, as if it had not been taken
// up.
func (w *Work) Cancel() {
	if w.changing() {
		w.Notebook = w.start.notebook
		w.enter(w.start.design)
	}
	w.hand = ""
}

func (w *Work) state() state { return state{w.Entered, w.Notebook} }

func (w *Work) remember(s state) {
	w.undo = append(w.undo, s)
	if len(w.undo) > mostUndo {
		w.undo = w.undo[len(w.undo)-mostUndo:]
	}
	w.redo = nil
}

// Set puts a parameter at a value in SI. An unknown key changes nothing.
func (w *Work) Set(key string, v float64) {
	if p, ok := design.Lookup(key); ok {
		w.TakeUp(key)
		w.enter(p.Set(w.Entered, v))
	}
}

// SetText puts the name or the notes.
func (w *Work) SetText(key, text string) {
	w.TakeUp(key)
	d := w.Entered
	switch key {
	case "name":
		d.Name = text
	case "notes":
		d.Notes = text
	}
	w.enter(d)
}

// SetOnHand changes the list of sheets on hand in one step of undo.
func (w *Work) SetOnHand(o design.OnHand) {
	w.TakeUp("onHand")
	d := w.Entered
	d.OnHand = o
	w.enter(d)
	w.Commit()
}

// Step moves a parameter by n of its steps, held inside its range. From a value
// between two steps it goes to the next one in that direction.
func (w *Work) Step(key string, n int) {
	p, ok := design.Lookup(key)
	if !ok {
		return
	}
	w.Set(key, p.Stepped(p.Get(&w.Entered), n, w.System))
}

// Reset puts a parameter back to its default and ties it again where it follows.
func (w *Work) Reset(key string) {
	if p, ok := design.Lookup(key); ok {
		w.TakeUp(key)
		w.enter(p.Reset(w.Entered))
		w.Commit()
	}
}

// Replace changes the whole design in one step of undo.
func (w *Work) Replace(d design.Design) {
	w.Commit()
	if d == w.Entered {
		return
	}
	w.remember(w.state())
	w.boat.Compare(w.Canoe())
	w.enter(d)
}

// Undo takes the last change back and tells whether there was one.
func (w *Work) Undo() bool {
	w.Commit()
	return w.swap(&w.undo, &w.redo)
}

// Redo makes the change again that was last taken back.
func (w *Work) Redo() bool {
	w.Commit()
	return w.swap(&w.redo, &w.undo)
}

// CanUndo and CanRedo tell whether there is something to take back or make again.
func (w *Work) CanUndo() bool { return len(w.undo) > 0 || w.changing() }
func (w *Work) CanRedo() bool { return len(w.redo) > 0 && !w.changing() }

// changing tells whether the control in hand has changed anything.
func (w *Work) changing() bool { return w.hand != "" && w.state() != w.start }

func (w *Work) swap(from, to *[]state) bool {
	n := len(*from)
	if n == 0 {
		return false
	}
	*to = append(*to, w.state())
	s := (*from)[n-1]
	*from = (*from)[:n-1]
	w.boat.Compare(w.Canoe())
	w.Notebook = s.notebook
	w.enter(s.design)
	return true
}

// enter makes d what the form holds and, where it has no fault, the canoe. A name or
// notes that are at fault keep no boat from being built: they are cut.
func (w *Work) enter(d design.Design) {
	w.Entered = d
	var c core.Canoe
	if c, w.Faults = core.Try(d); len(w.Faults) > 0 {
		for i, f := range w.Faults {
			w.Faults[i] = f.At(w.hand)
		}
		if !w.OnlyTexts() {
			return
		}
		d.Name, d.Notes = cut(d.Name, design.MaxName), cut(d.Notes, design.MaxNotes)
		c = core.Evaluate(d)
	}
	if w.None {
		w.boat, w.None = pipeline.New(c, w.System), false
		return
	}
	w.boat.Take(c)
}

// Canoe is the last of this boat's designs without a fault, with all that is known of
// it; Before the canoe as it was when the control in hand was taken up.
func (w *Work) Canoe() core.Canoe  { return w.boat.Canoe() }
func (w *Work) Before() core.Canoe { return w.boat.Before() }

// Known is what is known of the boat beyond its canoe, and works out the rest.
func (w *Work) Known() *pipeline.Boat {
	w.boat.Measure(w.Notebook, w.System)
	return w.boat
}

// OnlyTexts tells whether only the name and the notes are at fault.
func (w *Work) OnlyTexts() bool {
	for _, f := range w.Faults {
		if f.Key != "name" && f.Key != "notes" {
			return false
		}
	}
	return len(w.Faults) > 0
}

// cut is the start of a text, readable and at most so many characters.
func cut(text string, most int) string {
	r := []rune(strings.ToValidUTF8(text, "\uFFFD"))
	return string(r[:min(len(r), most)])
}

// Fault is the first fault at a control, and whether there is one.
func (w *Work) Fault(key string) (design.Fault, bool) {
	for _, f := range w.Faults {
		if f.Key == key {
			return f, true
		}
	}
	return design.Fault{}, false
}
