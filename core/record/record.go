package record

import (
	"fmt"
	"math"

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

// Place is a station: a distance in metres from an origin, level, along the
// centre line. Aft tells that it lies in the after half.
type Place struct {
	From     Origin
	Distance float64
	Aft      bool
}

// Datum is one measurement.
type Datum struct {
	Kind
	// Number counts thwarts from the middle one, 0, outward; less than zero aft.
	// It tells where a placed measurement was taken, or, with ThwartPosition and
	// Bay, of what thwart it is.
	Number int
	// At is where a placed measurement was taken if Number is 0. Of a position
	// only At.From counts: the distance is the value.
	At Place
	// Value and Tolerance in metres, or a count. A tolerance of 0 is the kind's usual one.
	Value, Tolerance float64
	// Locked asks that the fit keep the measurement as it is recorded, whatever
	// the others say.
	Locked bool
	// Note says where the measurement came from.
	Note string
}

// Within is the tolerance of the datum, metres or a count; never 0.
func (d Datum) Within() float64 {
	if d.Tolerance > 0 {
		return d.Tolerance
	}
	return d.UsualTolerance()
}

// lockedTolerance is what a locked measurement may miss by; a choice of this
// project, under what a tape shows.
const lockedTolerance = units.Inch / 64

// weight is one over the tolerance the fit goes by.
func (d Datum) weight() float64 {
	if d.Locked {
		return 1 / math.Min(lockedTolerance, d.Within())
	}
	return 1 / d.Within()
}

// Aft tells whether the datum lies in the after half.
func (d Datum) Aft() bool { return d.Number < 0 || d.At.Aft }

// Where says in words where the datum was taken; "" where that goes without saying.
func (d Datum) Where() string {
	side := ""
	if d.Aft() {
		side = ", aft"
	}
	n := max(d.Number, -d.Number)
	switch {
	case d.Kind == Bay:
		return fmt.Sprintf("%d from the middle%s", n, side)
	case d.Kind == ThwartPosition:
		return fmt.Sprintf("thwart %d, %s%s", n, d.At.From, side)
	case d.Kind == HeadboardPosition:
		return d.At.From.String() + side
	case !d.Placed():
		return ""
	case n > 0:
		return fmt.Sprintf("at thwart %d%s", n, side)
	case d.At == Place{}:
		return "amidships"
	}
	return units.Length.Format(d.At.Distance, units.Imperial16) + " " + d.At.From.String() + side
}

// String names the datum: what it is of and where it was taken.
func (d Datum) String() string {
	if where := d.Where(); where != "" {
		return d.Kind.String() + ", " + where
	}
	return d.Kind.String()
}

// Record is what was measured of one boat.
type Record struct {
	Name, Source string
	Data         []Datum
}
