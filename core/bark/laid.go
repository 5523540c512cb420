package bark

import (
	"barkwright/core/design"
	"barkwright/core/units"
)

// Sheet is a sheet of bark, m: Width round the tree, Length up it.
type Sheet = design.Sheet

// Wanting stands for the number of a sheet that is not there.
const Wanting = -1

// Laid is a piece of bark cut and laid along the boat.
type Laid struct {
	// Name is B and a number for a piece on the bed, P and S for one sewn to the port
	// and to the starboard side, each counted from the bow.
	Name string
	Side Side
	// Sheet is the number of the sheet it is cut from, or Wanting.
	Sheet    int
	From     Source
	Aft, Bow float64 // where it lies along the flat bark, m forward of amidships
	Width    float64 // across, with the lap it is fitted with and the bark to trim, m
	// Longer is how much longer a strip is cut than it lies, m: its panel, laid flat, leans on it
	// or is longer at the top than at the seam.
	Longer float64
	Cut    OnSheet // where on its sheet it is cut
	// Inside tells of a strip that it is sewn to the inside of the bark on the bed.
	Inside bool
}

// Side is where a piece of bark is laid.
type Side int

// The sides, each with the letter its pieces are named by.
const (
	OnBed Side = iota
	Port
	Starboard
)

func (s Side) letter() string { return [...]string{"B", "P", "S"}[s] }

// Length is how long it is cut, m.
func (l Laid) Length() float64 { return l.Bow - l.Aft + l.Longer }

// Wanting tells whether there is no bark for it.
func (l Laid) Wanting() bool { return l.Sheet == Wanting }

// Source is the part of a sheet that a piece is cut from.
type Source int

const (
	// FromSheet is a sheet of which no other piece is laid on the bed.
	FromSheet Source = iota
	// FromEnd is what a sheet on the bed is longer than its place.
	FromEnd
	// FromSide is what a sheet on the bed is wider than the boat.
	FromSide
)

// String is the source in words.
func (s Source) String() string {
	return [...]string{"the sheet", "what is cut off its end", "what is cut off its side"}[s]
}

// Butt is where two strips of one side panel meet.
type Butt struct {
	Along  float64 // m forward of amidships
	Port   bool
	Length float64 // of the seam, m
}

// Reach is where a strip covers its side: as far as the butts to the strips beside it, which lie in the middle of
// the laps.
func (l *Layout) Reach(s Laid) (aft, bow float64) {
	aft, bow = s.Aft, s.Bow
	for _, b := range l.Butts {
		if b.Port != (s.Side == Port) || b.Along <= s.Aft || b.Along >= s.Bow {
			continue
		}
		if b.Along < (s.Aft+s.Bow)/2 {
			aft = b.Along
		} else {
			bow = b.Along
		}
	}
	return aft, bow
}

// Scant is a stretch where the bark falls short by so little of the boat's length
// that no piece is laid there.
type Scant struct {
	Aft, Bow float64 // along the flat bark, m forward of amidships
	Lack     float64 // what the edge lacks, the bark to trim included, m
	Trim     bool    // no more is lacking than was left to trim
}

// Choices of this project, but for the hand, in which builders measure.
const (
	// Hand is how far joints, butts and gores keep apart, 4 in: bark between two cuts
	// closer than that tears out.
	Hand = 4 * units.Inch
	// leastPiece is the shortest piece worth sewing in, a foot.
	leastPiece = 1 * units.Foot
	// pastThwart is how far past the first thwarts a middle panel ends ("not much
	// past": Adney and Chapelle 1964, p. 43).
	pastThwart = 2 * units.Inch
)

// fitLap is the lap that strips are cut with.
func fitLap(d *design.Design) float64 { return max(d.PanelLap, d.SeamLap) }
