package record

import (
	"slices"

	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Origin is where a station is counted from.
type Origin int

// The origins.
const (
	FromMiddle Origin = iota
	// FromGunwaleEnd and FromEnd count inboard from the end of the gunwales and
	// from the foremost point of the bark.
	FromGunwaleEnd
	FromEnd
)

var originWords = [...]string{"from the middle", "from the end of the gunwales", "from the end"}

// String is the origin as a row says it.
func (o Origin) String() string { return originWords[o] }

// Side is the half of the boat that a measurement was taken in.
type Side int

// The sides. BothEnds is one of a boat taken to be the same at both, or one that
// the record does not say the end of.
const (
	BothEnds Side = iota
	Forward
	Aft
)

var sideWords = [...]string{"", "forward", "aft"}

// String is the side as a row says it, empty for both ends.
func (s Side) String() string { return sideWords[s] }

// Place is a station: a distance in metres from an origin, level, along the
// centre line, in a half of the boat.
type Place struct {
	From     Origin
	Distance float64
	Side     Side
	// Height is over the base line through the lowest point of the bottom, metres; 0 for
	// what is not taken at one.
	Height float64
}

// Datum is one measurement.
type Datum struct {
	Kind
	// Number counts thwarts from the middle one, 0, outward, in the half At.Side.
	// It tells where a placed measurement was taken, or, with ThwartPosition and
	// Bay, of what thwart it is.
	Number int
	// At is where a placed measurement was taken if Number is 0; its height counts at a
	// thwart too. Of a position
	// At.From and At.Side count: the distance is the value.
	At Place
	// Value and Tolerance in metres, or a count. A tolerance of 0 is the kind's usual one.
	Value, Tolerance float64
	// Locked asks that the fit keep the measurement as it is recorded, whatever
	// the others say.
	Locked bool
	// Note says where the measurement came from.
	Note string
	// Mark is the number of the point, or of the mark, of a tracing that it is read at, 0 for
	// what was typed.
	Mark int
}

// Within is the tolerance of the datum, metres or a count; never 0.
func (d Datum) Within() float64 {
	if d.Tolerance > 0 {
		return d.Tolerance
	}
	return d.UsualTolerance()
}

// Shown returns the datum's value as text.
func (d Datum) Shown(s units.System) string {
	if d.Counted() {
		return units.Count.Format(d.Value, s)
	}
	return units.Length.Format(d.Value, s)
}

// Aft tells whether the datum lies in the after half.
func (d Datum) Aft() bool { return d.At.Side == Aft }

// MostData is how many measurements one record may hold: it bounds the time of a fit.
const MostData = 400

// Record is what was measured of one boat.
type Record struct {
	Name string
	Data []Datum
	// System is what messages about it show lengths in.
	System units.System
}

// Notebook is what is kept beside a design. It is never changed in place, so that
// an earlier one can be gone back to.
type Notebook struct {
	// Record is of the boat that this one follows, Readings are what a tape reads
	// of this one as it is built.
	Record   Record
	Readings []Datum
	// Found tells that the design came from the record.
	Found bool
	// Log is what was done of the work, and noted.
	Log tally.Log
	// Tracing is what was pressed on a picture that the record is read off, nil for none.
	Tracing *Tracing
	// Season is what is set for the plan of the work; nil where nothing is. It is never changed
	// in place.
	Season *plan.Season
}

// Traced returns the notebook with another tracing. The rows that were read off it follow:
// those of points that are gone go too, those of new ones are added as far as there is room.
// A row keeps its note, and whether it is locked.
func (n Notebook) Traced(t Tracing) Notebook {
	t.Marks = slices.Clone(t.Marks)
	r := t.Read()
	found, numbers := map[int]Datum{}, map[int]bool{}
	var fresh []Datum
	for i, m := range t.Marks {
		numbers[m.ID] = true
		m.Points = slices.Clone(m.Points)
		t.Marks[i].Points = m.Points
		data, _ := r.Data(i)
		for _, d := range data {
			found[d.Mark] = d
			entered := &t.Marks[i].Entered
			for k := range m.Points {
				if m.Points[k].ID == d.Mark {
					entered = &m.Points[k].Entered
				}
			}
			if !*entered && len(n.Record.Data)+len(fresh) < MostData {
				fresh = append(fresh, d)
				*entered = true
			}
		}
		for _, p := range m.Points {
			numbers[p.ID] = true
		}
	}
	var data []Datum
	for _, d := range n.Record.Data {
		is, ok := found[d.Mark]
		switch {
		case d.Mark == 0:
		case ok && is.Kind == d.Kind:
			is.Locked, is.Note = d.Locked, d.Note
			d = is
		case !numbers[d.Mark] && n.had(d.Mark, t):
			continue
		}
		data = append(data, d)
	}
	n.Record.Data, n.Tracing = append(data, fresh...), &t
	return n
}

// had tells whether the tracing so far has a point or a mark of a number, and is of the same
// picture as another. What was read off an earlier picture stays.
func (n *Notebook) had(number int, other Tracing) bool {
	if n.Tracing == nil || n.Tracing.Width != other.Width || n.Tracing.Height != other.Height {
		return false
	}
	for _, m := range n.Tracing.Marks {
		if m.ID == number || slices.ContainsFunc(m.Points, func(p Pressed) bool { return p.ID == number }) {
			return true
		}
	}
	return false
}

// LastMark is the highest number that a row or the tracing goes by.
func (n *Notebook) LastMark() int {
	last := 0
	if n.Tracing != nil {
		last = n.Tracing.Last
	}
	for _, d := range n.Record.Data {
		last = max(last, d.Mark)
	}
	return last
}

// Planned is what is set for the plan of the work.
func (n Notebook) Planned() plan.Season {
	if n.Season == nil {
		return plan.NewSeason()
	}
	return *n.Season
}
