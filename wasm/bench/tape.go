package bench

import (
	"math"

	"barkwright/core"
	"barkwright/core/lines"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// Tape is a reading set by wheels: feet, inches and parts of an inch, or tens and ones of
// millimetres. It is a whole number of the smallest.
type Tape struct {
	steps, says int
	system      units.System
}

// Wheel is one wheel: its name, what stands on it and how many of the smallest a turn is.
type Wheel struct {
	Name, Value string
	Turn        int
}

// step is the smallest step of a system, m.
func step(s units.System) float64 {
	if s == units.Metric {
		return units.Millimetre
	}
	return s.Step()
}

// SetTape begins a reading of the line in hand, at what the line says.
func (b *Bench) SetTape(w *work.Work) {
	if p, ok := b.current(w); ok && taped(p.line()) {
		n := int(math.Round(p.line().Value / step(w.System)))
		b.Tape, b.said = &Tape{n, n, w.System}, Said{}
	}
}

// Turn turns it by so many of the smallest steps; a tape reads nothing below zero.
func (t *Tape) Turn(n int) { t.steps = max(t.steps+n, 0) }

// Reset sets it to what the line says.
func (t *Tape) Reset() { t.steps = t.says }

// Value is the reading, m.
func (t *Tape) Value() float64 { return float64(t.steps) * step(t.system) }

// Wheels are its wheels, the largest first.
func (t *Tape) Wheels() []Wheel {
	part := func(n int) string { return units.Count.Format(float64(n), t.system) }
	if t.system == units.Metric {
		return []Wheel{{"tens of mm", part(t.steps / 10), 10}, {"mm", part(t.steps % 10), 1}}
	}
	inch := int(math.Round(units.Inch / step(t.system)))
	name := map[int]string{16: "sixteenths", 8: "eighths"}[inch]
	return []Wheel{{"feet", part(t.steps / (12 * inch)), 12 * inch}, {"inches", part(t.steps / inch % 12), inch},
		{name, part(t.steps % inch), 1}}
}

// Said is what came of a reading: a sentence, whether the boat can be brought to it, and
// what would change then.
type Said struct {
	Text   string
	Offers bool
	Lists  []Changes
}

// Changes are how many lines of a list would change, the most by how much, and each as it
// was and would be.
type Changes struct {
	Text string
	Each []string
}

// offeredFrom is how far off a reading is when bringing the boat to it is offered, m: the
// half inch that the survey's drawings are good to. An estimate.
const offeredFrom = units.Inch / 2

// Save keeps the reading: among those of the boat as built where a record has such a kind,
// else as a note of the line's step.
func (b *Bench) Save(w *work.Work, day string) {
	p, ok := b.current(w)
	if !ok || b.Tape == nil {
		return
	}
	line, v := p.line(), b.Tape.Value()
	b.Tape = nil
	text := units.Offset.Format(v, w.System)
	off := units.Offset.Difference(line.Value, v, w.System)
	says := "The tape reads " + text + ", as the line says."
	if off != "" {
		says = "The tape reads " + text + ", " + off + " off the line."
	}
	if line.Reading == nil {
		w.Note(p.Step, day, line.What+": the tape reads "+text+", the line says "+line.Figure)
		b.said = Said{Text: says + " It is noted."}
		return
	}
	d := *line.Reading
	d.Value = v
	w.PutMeasurement(work.AsBuilt, sameReading(w.Measurements(work.AsBuilt), d), d)
	b.said = Said{Text: says + " It is kept among the readings."}
	if math.Abs(v-line.Value) > offeredFrom {
		b.offer(w)
	}
}

// sameReading is the place of an earlier reading of the same, or that after the last.
func sameReading(list []record.Datum, d record.Datum) int {
	for i, r := range list {
		if r.Kind == d.Kind && r.Number == d.Number && r.At == d.At {
			return i
		}
	}
	return len(list)
}

// offer says what bringing the boat to its readings would change of what is still to be
// made. Nothing is changed.
func (b *Bench) offer(w *work.Work) {
	before := w.Canoe()
	r := refit.AsBuilt(before.Design, w.Measurements(work.AsBuilt), w.System)
	after, faults := core.Try(r.Design)
	if len(faults) > 0 {
		b.said.Text += " The boat cannot be brought to it: " + faults[0].Message(w.System)
		return
	}
	b.said.Offers = true
	for _, c := range lines.Changed(before, after, b.stage.Key, w.Notebook.Log, w.System) {
		b.said.Lists = append(b.said.Lists, Changes{c.Text(w.System), c.Each})
	}
	b.said.Text += " Bring the boat to it?"
	if len(b.said.Lists) == 0 {
		b.said.Text += " Nothing still to be made changes by as much as a tape shows."
	} else {
		b.said.Text += " Of what is still to be made, these change:"
	}
}

// Brought says that the boat was brought to its readings.
func (b *Bench) Brought() {
	b.said = Said{Text: "The boat is brought to the readings. Undo takes it back."}
}
