package refit

import (
	"fmt"
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
)

// State is how the fitted boat stands to one measurement.
type State int

// The states.
const (
	InsideTolerance State = iota
	OutsideTolerance
	// SetAside had no part in the fit: see Conflicts.
	SetAside
)

var stateWords = [...]string{"inside tolerance", "outside tolerance", "set aside"}

// String is the state as the table says it.
func (s State) String() string { return stateWords[s] }

// Row is one measurement beside the fitted boat's. Values are in metres or a count.
type Row struct {
	record.Datum
	// Model is what the fitted boat measures, Difference that less the datum.
	Model, Difference float64
	State             State
	// Disagrees tells that the other measurements fit together much better without
	// this one. Others is then the value that they predict. It keeps its part in the fit.
	Disagrees bool
	// Unfollowed tells the same of the measurement farthest out. It may be true of a boat
	// whose end lifts as this shape cannot.
	Unfollowed bool
	Others     float64
	// X is where a placed measurement was taken, metres from amidships.
	X float64
}

// Fitted is a boat found from a record.
type Fitted struct {
	Design design.Design
	// Rows stand in the order of the record.
	Rows []Row
	// Held are the parameters that the record is silent on, with their rules.
	Held      []Held
	Conflicts []Conflict
	// EndsDiffer says where forward and aft are recorded differently, which a boat
	// the same at both ends cannot show.
	EndsDiffer []string
}

// Fit finds the design that rebuilds a recorded boat, by bounded least squares. Each
// measurement is weighed by its tolerance; beam and depth take part in the fits of
// their curves. A parameter that one measurement states alone is taken as it stands.
// The result follows from the record alone. It may not be buildable: design's faults
// say so.
func Fit(rec record.Record) Fitted {
	b := build(read(rec.Data, rec.System))
	if rec.Name != "" {
		b.design.Name = rec.Name
	}
	f := Fitted{Design: b.design, Conflicts: b.ev.conflicts, Held: held(b.design, b.settled), EndsDiffer: b.endsDiffer()}
	f.Rows = b.rows()
	for _, k := range b.disagreeing() {
		row := &f.Rows[k.index]
		row.Disagrees, row.Unfollowed, row.Others = !k.last, k.last, k.others
	}
	f.Conflicts = append(f.Conflicts, notKept(f.Rows, rec.System)...)
	return f
}

// keptWithin is how nearly a locked measurement is kept: to what a tape shows.
const keptWithin = units.Inch / 16

// notKept names the locked measurements that no boat drawn here keeps together with
// the rest. None is set aside.
func notKept(rows []Row, s units.System) []Conflict {
	var list []Conflict
	for i, r := range rows {
		if r.Locked && r.State != SetAside && !r.Kept() {
			list = append(list, Conflict{Data: []int{i}, Message: fmt.Sprintf(
				"%v is to be kept at %s, but the nearest boat that keeps the others has %s: this shape cannot have both. "+
					"Measure again, or do not keep one of them.",
				r.Named(s), r.Shown(s), valued(r.Datum, r.Model).Shown(s))})
		}
	}
	return list
}

// Kept tells whether the boat has a locked measurement to the sixteenth.
func (r Row) Kept() bool { return math.Abs(r.Difference) <= keptWithin }

func valued(d record.Datum, v float64) record.Datum {
	d.Value = v
	return d
}

// Over returns a design with the parameters that a record can tell as the fitted boat
// has them, and everything else as it was.
func (f Fitted) Over(d design.Design) design.Design {
	d.Corrected = f.Design.Corrected
	for _, key := range append([]string{"builtOn"}, spoken...) {
		p := parameter(key)
		p.Put(&d, p.Get(&f.Design))
		if p.Owned(f.Design) {
			p.Claim(&d)
		} else {
			p.Release(&d)
		}
	}
	return design.Follow(d)
}

func (b *boat) rows() []Row {
	h := finished(b.design)
	h.Design.GreatestBeam = b.design.GreatestBeam
	if b.says(record.HalfGirth) || b.says(record.HalfBreadth) {
		h = hull.New(b.design)
	}
	rows := make([]Row, len(b.ev.data))
	for i, d := range b.ev.data {
		rows[i] = Row{Datum: d, State: SetAside}
		if b.ev.aside[i] {
			continue
		}
		model := b.measure(h, d)
		rows[i].Model, rows[i].Difference = model, model-d.Value
		if d.Placed() {
			rows[i].X, _ = b.ev.stations.where(d)
		}
		rows[i].State = InsideTolerance
		if math.Abs(model-d.Value) > d.Within()+design.Rounding {
			rows[i].State = OutsideTolerance
		}
	}
	return rows
}

// measure returns what the boat measures for a datum whose station is known.
func (b *boat) measure(h *hull.Hull, d record.Datum) float64 {
	if !d.Placed() {
		return overall(h, b.ev.stations, d)
	}
	x, _ := b.ev.stations.where(d)
	return along(h, d, x)
}

// saidOf is how a note names the end of what is not aft.
var saidOf = [...]string{record.BothEnds: "of both ends", record.Forward: "forward"}

// endsDiffer compares each measurement forward with the same one aft.
func (b *boat) endsDiffer() []string {
	var list []string
	for i, fore := range b.ev.data {
		what := fore
		what.At.Side = record.BothEnds
		for j, aft := range b.ev.data {
			if fore.Kind != aft.Kind || fore.Aft() || !aft.Aft() || b.ev.aside[i] || b.ev.aside[j] ||
				fore.Number != aft.Number || fore.At.From != aft.At.From || fore.At.Height != aft.At.Height ||
				fore.Placed() && fore.At.Distance != aft.At.Distance || fore.Value == aft.Value {
				continue
			}
			list = append(list, fmt.Sprintf("%v: %s %s, %s aft. A boat the same at both ends shows neither; the fit stands "+
				"between them.", what.Named(b.ev.system), fore.Shown(b.ev.system), saidOf[fore.At.Side], aft.Shown(b.ev.system)))
		}
	}
	return list
}

// Measure compares a design with a record, as Fit does with the boat it finds, without
// fitting. It shows how a boat changed afterwards stands to what was measured.
func Measure(d design.Design, rec record.Record) []Row {
	b := &boat{ev: read(rec.Data, rec.System), design: d}
	return b.rows()
}
