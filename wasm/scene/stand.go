package scene

import "math"

// Stand is from where the boat is looked at in the round: how far round from the starboard
// beam toward the bow, and how high over the water, in radians.
type Stand struct{ Round, High float64 }

// From names one of the places from which the boat is looked at in the round.
type From int

// The places.
const (
	BowQuarter From = iota
	Ahead
	Above
)

var stands = [...]struct {
	id, words   string
	round, high float64 // degrees
}{
	BowQuarter: {"quarter", "from the bow quarter", 38, 24},
	Ahead:      {"ahead", "from ahead", 72, 24},
	Above:      {"above", "from above", 8, 62},
}

// String returns the place in words.
func (f From) String() string { return stands[f].words }

// FromOf returns the place that a button of the page names by its id. It panics for an id
// that no place has.
func FromOf(id string) From {
	for f, row := range stands {
		if row.id == id {
			return From(f)
		}
	}
	panic("scene: no place to look from " + id)
}

// Stand returns from where the view looks at the boat in the round: its place, and round from
// there as far as the boat has been turned.
func (v View) Stand() Stand {
	s := stands[v.From]
	return Stand{Round: s.round*math.Pi/180 + 2*math.Pi*v.Turned, High: s.high * math.Pi / 180}
}
