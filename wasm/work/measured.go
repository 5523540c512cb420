package work

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// List is one of a notebook's two lists of measurements.
type List int

// The lists.
const (
	Recorded List = iota // of the boat that is followed
	AsBuilt              // of this boat, as it is built
)

// Measurements returns one of the lists. It must not be changed in place.
func (w *Work) Measurements(l List) []record.Datum { return *listOf(w.Notebook, l) }

func listOf(n *record.Notebook, l List) *[]record.Datum {
	if l == AsBuilt {
		return &n.Readings
	}
	return &n.Record.Data
}

// PutMeasurement replaces measurement i of a list, or appends it where i is the list's
// length, as one step of undo. It does nothing for any other i, for a full list and
// where nothing changes.
func (w *Work) PutMeasurement(l List, i int, d record.Datum) {
	was := w.Measurements(l)
	if i < 0 || i > len(was) || i == record.MostData || i < len(was) && was[i] == d {
		return
	}
	// What is typed over what was read off a picture follows its point no more.
	if typed := d; i < len(was) && d.Mark > 0 {
		typed.Locked, typed.Note = was[i].Locked, was[i].Note
		if typed != was[i] {
			d.Mark = 0
		}
	}
	list := append(slices.Clone(was[:i]), d)
	if i < len(was) {
		list = append(list, was[i+1:]...)
	}
	w.setList(l, list)
}

// DropMeasurement removes measurement i of a list as one step of undo.
func (w *Work) DropMeasurement(l List, i int) {
	if was := w.Measurements(l); i >= 0 && i < len(was) {
		w.setList(l, slices.Delete(slices.Clone(was), i, i+1))
	}
}

func (w *Work) setList(l List, data []record.Datum) {
	n := *w.Notebook
	*listOf(&n, l) = data
	w.setNotebook(n)
}

// SetRecord replaces the record as one step of undo.
func (w *Work) SetRecord(name string, data []record.Datum) {
	n := *w.Notebook
	if n.Record.Name == name && slices.Equal(n.Record.Data, data) {
		return
	}
	n.Record.Name, n.Record.Data = name, data
	w.setNotebook(n)
}

// Trace puts what is pressed on a picture in the place of what was, and the rows read off it
// follow. With more to come, all of it until Commit is one step of undo.
func (w *Work) Trace(t record.Tracing, more bool) {
	w.TakeUp("tracing")
	n := w.Notebook.Traced(t)
	w.Notebook = &n
	if !more {
		w.Commit()
	}
}

func (w *Work) setNotebook(n record.Notebook) {
	w.TakeUp("notebook")
	w.Notebook = &n
	w.Commit()
}

// Record returns the notebook's record, with its messages in the units shown.
func (w *Work) Record() record.Record {
	r := w.Notebook.Record
	r.System = w.System
	return r
}

// Fitted returns what the record gives by itself, independent of the boat in hand: a
// boat, the contradictions and what was held by rules.
func (w *Work) Fitted() refit.Fitted { return w.Known().Fitted() }

// Measured compares the boat in hand with its record. It is empty where the boat as
// entered cannot be built, and until the comparison is worked out.
func (w *Work) Measured() []refit.Row {
	if len(w.Notebook.Record.Data) == 0 || len(w.Faults) > 0 && !w.OnlyTexts() {
		return nil
	}
	rows, _ := w.Known().Rows()
	return rows
}

// FindBoat finds the boat that rebuilds the record in hand. It returns a sentence on how
// that boat meets the record and where it is kept, or "" without a record. The first
// time, the boat is put beside the one in hand, which hands its record over; after undo
// both have the record. Later the boat found before is changed in place, in one step of
// undo, and keeps what no record tells.
func (s *Shelf) FindBoat() string {
	w := s.InHand()
	if len(w.Notebook.Record.Data) == 0 {
		return ""
	}
	f := w.Fitted()
	if w.Notebook.Found {
		w.Replace(f.Over(w.Entered))
		return found(f) + "; this design was brought to it: undo takes that back."
	}
	d := f.Design
	if w.Notebook.Record.Name == "" {
		d.Name = "From a record"
	}
	n := *w.Notebook
	n.Found, n.Readings = true, nil
	w.setNotebook(record.Notebook{Readings: w.Notebook.Readings})
	typed := w.Typed
	w.Typed = nil
	s.add(Open(file.Boat{Design: d, Notebook: n}, w.System))
	s.InHand().Typed = typed
	return found(f) + "; kept as a new design, with the one before it among the designs."
}

// found returns a sentence on how many measurements of the record the boat meets.
func found(f refit.Fitted) string {
	inside, aside := 0, 0
	for _, r := range f.Rows {
		switch r.State {
		case refit.InsideTolerance:
			inside++
		case refit.SetAside:
			aside++
		}
	}
	said := fmt.Sprintf("%d of %d inside tolerance", inside, len(f.Rows))
	if aside > 0 {
		said += fmt.Sprintf(", %d left out for the reason at its row", aside)
	}
	return said
}

// Rebuilt is a boat brought to its tape readings.
type Rebuilt struct {
	refit.Rebuilt
	Before, After core.Canoe
	// Builds is false where the readings ask for a boat that cannot be built. After is then
	// the boat as it was.
	Builds bool
}

// BringToReadings changes the boat in hand to meet its readings, as one step of undo.
func (w *Work) BringToReadings() Rebuilt {
	before := w.Canoe()
	r := refit.AsBuilt(before.Design, w.Notebook.Readings, w.System)
	w.Replace(r.Design)
	return Rebuilt{r, before, w.Canoe(), len(w.Faults) == 0}
}

// Corrections returns a sentence on what readings have changed of the boat's curves and
// where. It is empty where they changed nothing.
func (w *Work) Corrections() string {
	d := w.Entered
	if d.Corrected.None() {
		return ""
	}
	var said []string
	for _, curve := range d.Corrected.Curves() {
		for _, c := range curve.List.List() {
			sign := "+"
			if c.By < 0 {
				sign = "−"
			}
			at := record.Datum{Kind: record.SheerHeight, At: record.Place{Distance: c.At * d.HalfGunwale()}}
			by := units.Length.Format(math.Abs(c.By)*curve.Times, w.System)
			said = append(said, curve.Read+" "+sign+by+" "+at.Where(w.System))
		}
	}
	return "Corrected where a tape read otherwise: " + strings.Join(said, "; ") + "."
}

// DropCorrections removes the corrections as one step of undo.
func (w *Work) DropCorrections() {
	d := w.Entered
	d.Corrected = design.Corrections{}
	w.Replace(d)
}
