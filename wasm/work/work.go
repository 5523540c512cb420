package work

import (
	"maps"
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/record"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
)

// Work is one design being changed.
type Work struct {
	// System is how numbers are read and shown.
	System units.System
	// Dates is how the log's days are written.
	Dates tally.Dates
	// Entered is what the form holds, which may have faults.
	Entered design.Design
	Faults  []design.Fault
	// None says that no design of this boat could be built so far. The canoe is then that of
	// the default design, and nothing of it is this boat's.
	None bool
	// Typed is half-typed text by field. It is never changed in place.
	Typed map[string]string
	// Notebook is what was measured beside the design; it is never changed in place.
	Notebook *record.Notebook
	// Moved lists the numbers that differ from those of the older page that wrote the boat,
	// until the user was told.
	Moved []design.Move

	boat       *pipeline.Boat
	hand       string // the key of the control in hand
	start      state
	undo, redo []change
	mended     mended
	holding
}

// state is everything that one step of undo restores.
type state struct {
	design   design.Design
	notebook *record.Notebook
}

// change is one step of undo. One of what is held leaves the boat as it is.
type change struct {
	state
	held    *Holding
	holding bool
}

// mostUndo bounds the changes remembered. Apart from notes each takes less than a
// kilobyte.
const mostUndo = 200

// New returns work on a design without faults.
func New(d design.Design, s units.System) *Work {
	w := &Work{System: s, Entered: d, Notebook: &record.Notebook{}, boat: pipeline.New(core.Evaluate(d), s)}
	w.opened = d
	return w
}

// Open returns work on a boat as it was kept, with its faults.
func Open(b file.Boat, s units.System) *Work {
	w := &Work{System: s, Notebook: &b.Notebook, None: true, Moved: b.Moved}
	w.opened = b.Design
	w.enter(b.Design)
	if w.None && b.Built != nil {
		if c, faults := core.Try(*b.Built); len(faults) == 0 {
			w.boat, w.None = pipeline.New(c, s), false
		}
	}
	if w.None {
		w.boat = pipeline.New(core.Evaluate(design.Default()), s)
	}
	if b.Held != nil {
		w.setHeld(&Holding{Name: b.Held.Name, Design: b.Held.Design})
	}
	return w
}

// Boat returns the boat in hand as it is to be kept.
func (w *Work) Boat() file.Boat {
	b := file.Boat{Design: w.Entered, Notebook: *w.Notebook}
	if len(w.Faults) > 0 && !w.None {
		built := w.Canoe().Design
		built.Notes = ""
		b.Built = &built
	}
	if w.held != nil {
		b.Held = &file.Held{Name: w.held.Name, Design: w.held.Design}
	}
	return b
}

// SetTyped remembers half-typed text of a field. An empty text removes it.
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

// TypeControl remembers what is being typed at a control, where it is not what stands there.
func (w *Work) TypeControl(p design.Param, text string) {
	if text == w.Format(p) {
		text = ""
	}
	w.SetTyped(p.Key, text)
}

// TakeUp names the control whose changes follow. Another control than before starts a
// new comparison and a new step of undo.
func (w *Work) TakeUp(key string) {
	if w.hand == key {
		return
	}
	w.Commit()
	w.takenUp(key)
	w.hand, w.start = key, w.state()
	w.boat.Compare(w.Canoe())
}

// InHand is the key of the control whose changes follow, or empty.
func (w *Work) InHand() string { return w.hand }

// Set sets a parameter to a value in SI units. An unknown key changes nothing.
func (w *Work) Set(key string, v float64) {
	if p, ok := design.Lookup(key); ok {
		w.TakeUp(key)
		w.enter(p.Set(w.Entered, v))
	}
}

// SetText sets the name or the notes.
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

// Step moves a parameter by n of its steps, within its range. From a value between two
// steps it first moves to the next step in that direction.
func (w *Work) Step(key string, n int) {
	p, ok := design.Lookup(key)
	if !ok {
		return
	}
	w.Set(key, p.Stepped(p.Get(&w.Entered), n, w.System))
}

// Reset sets a parameter to its default. One that follows others follows them again.
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

// enter makes d what the form holds and, where it has no fault, the canoe. A faulty name
// or notes do not stop a boat from being built: they are shortened.
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
		w.setHeld(w.held)
		return
	}
	w.boat.Take(c)
}

// Canoe returns the last of this boat's designs without a fault, with everything known
// of it. Before returns the canoe as it was when the control in hand was taken up.
func (w *Work) Canoe() core.Canoe  { return w.boat.Canoe() }
func (w *Work) Before() core.Canoe { return w.boat.Before() }

// Known is what is known of the boat beyond its canoe, and works out the rest.
func (w *Work) Known() *pipeline.Boat {
	w.boat.Measure(w.Notebook, w.System)
	return w.boat
}

// OnlyTexts reports whether only the name or the notes are at fault.
func (w *Work) OnlyTexts() bool {
	for _, f := range w.Faults {
		if f.Key != "name" && f.Key != "notes" {
			return false
		}
	}
	return len(w.Faults) > 0
}

// cut returns the valid start of a text, at most so many characters long.
func cut(text string, most int) string {
	r := []rune(strings.ToValidUTF8(text, "\uFFFD"))
	return string(r[:min(len(r), most)])
}

// Fault returns the first fault at a control, and whether there is one.
func (w *Work) Fault(key string) (design.Fault, bool) {
	for _, f := range w.Faults {
		if f.Key == key {
			return f, true
		}
	}
	return design.Fault{}, false
}

// ResetAll puts every dimension at its default in one step of undo, and says what stays.
func (w *Work) ResetAll() string {
	d, was := design.Default(), w.Entered
	d.Name, d.Notes, d.OnHand = was.Name, was.Notes, was.OnHand
	w.Replace(d)
	gone := ""
	if !was.Corrected.None() {
		gone = ", and the corrections from readings are taken off"
	}
	return "Every dimension stands at its start" + gone +
		". The name, the notes, the bark on hand and what was measured are kept. Undo takes it back."
}
