package design

import (
	"math"

	"barkwright/core/units"
)

// Version is that of boats as they are written: the mark of a line, a file's own, and
// what a printed sheet names. It rises when an older page would misread a boat, or would
// let what follows stand elsewhere.
const Version = 3

// oldDefaults are the defaults of each version where those of the one after it are others. What a
// boat left out of a line stood at its own version's.
var oldDefaults = map[int]map[string]float64{
	1: {"bilge": 0.72, "heelLength": 20 * units.Inch, "stemSolid": 6 * units.Inch},
	2: {"capThickness": 0.375 * units.Inch, "sheathingLap": 1.5 * units.Inch},
}

// follows1 are the rules of version 1 that are others now. The heel followed no rule
// then: its place was always set.
var follows1 = map[string]func(Design) float64{
	"frameWidth": func(d Design) float64 { return 0.76 * d.Beam },
	"turnWidth":  func(d Design) float64 { return d.FrameWidth },
}

// DefaultOf is the boat of which a line or a file of a version leaves everything out.
func DefaultOf(version int) Design {
	d := Default()
	for v := Version - 1; v >= version; v-- {
		for key, value := range oldDefaults[v] {
			p, _ := Lookup(key)
			p.Put(&d, value)
			p.Claim(&d)
		}
	}
	return FollowAs(version, d)
}

// FollowAs is Follow by the rules of a version.
func FollowAs(version int, d Design) Design {
	if version >= 2 {
		return Follow(d)
	}
	d = Follow(d)
	// In the order of the table, in which the one follows the other.
	for _, p := range table {
		rule, other := follows1[p.Key]
		if !other || p.Owned(d) {
			continue
		}
		p.follow, p.exact = rule, false
		p.bring(&d)
	}
	return d
}

// Move is a number that stands elsewhere than when its boat was written, in SI.
type Move struct {
	Key      string
	Was, Now float64
}

// Since brings a boat of a version up to today: what followed follows today's rules and
// what was set stays set, at its nearest where it is no longer taken. It lists what moved.
func Since(version int, d Design) (Design, []Move) {
	was := FollowAs(version, d)
	if version < 2 {
		p, _ := Lookup("bilge")
		// Ranges that are narrower now.
		if v := p.Get(&d); v >= 0.42 {
			p.Put(&d, max(v, p.Min))
		}
	}
	now := Follow(d)
	var moves []Move
	for _, p := range table {
		const same = 1e-9
		if a, b := p.Get(&was), p.Get(&now); math.Abs(a-b) > same {
			moves = append(moves, Move{p.Key, a, b})
		}
	}
	return now, moves
}
