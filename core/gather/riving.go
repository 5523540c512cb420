package gather

import (
	"math"

	"barkwright/core/units"
)

// Trunk is the wood to be had: metres. Diameter is inside the bark at the small end,
// Clear the length free of knots. Heart is what is discarded at the middle, across,
// and Sapwood what is discarded outside.
type Trunk struct{ Diameter, Clear, Heart, Sapwood float64 }

// Riving is how sticks of one size are split out of a bolt: the bolt into Sectors
// alike, each by halving on faces parallel to the bark into layers, and each layer by
// halving into as many as Across says, from the heart outward.
type Riving struct {
	Sectors int
	Across  []int
	// Thick is the thickness of a layer, m.
	Thick float64
}

const (
	// SplitThicker is how much thicker a stick is split than finished, as a share of its
	// thickness, and SplitWider how much wider, in metres. A knife takes the rest. Estimates.
	SplitThicker = 0.25
	SplitWider   = 0.25 * units.Inch
)

// sectors are the ways a bolt is halved from end to end: quarters, eighths and
// sixteenths. In fewer the broad faces would no longer lie along the bark.
var sectors = [...]int{4, 8, 16}

// Each is how many sticks one sector gives, and Count how many the bolt does.
func (r Riving) Each() int {
	n := 0
	for _, k := range r.Across {
		n += k
	}
	return n
}

// Count is how many sticks the bolt gives.
func (r Riving) Count() int { return r.Sectors * r.Each() }

// Rive splits a bolt of the trunk into sticks of a finished width and thickness, the
// way that gives the most. It gives no stick where the trunk is too thin.
//
// Wide faces lie parallel to the bark and pieces are split in half and half again, so
// that each split has as much wood on either side: a billet two ribs thick and two wide
// gives four (Adney and Chapelle 1964, p. 18). Solid geometry: a wedge of sound wood
// between the heart and the sapwood, cut square.
func (t Trunk) Rive(width, thickness float64) Riving {
	var best Riving
	for _, n := range sectors {
		if r := t.rive(n, width+SplitWider, thickness*(1+SplitThicker)); r.Count() > best.Count() {
			best = r
		}
	}
	return best
}

// rive splits a bolt in n sectors into sticks of the size they are split to.
func (t Trunk) rive(n int, width, thickness float64) Riving {
	sound := t.Diameter/2 - t.Sapwood
	slope := math.Tan(math.Pi / float64(n))
	// A layer lies between two planes square to the sector's middle. It is as wide as
	// the sector at its inner face and as the circle of sound wood at its outer one.
	from := max(t.Heart/2, width/2/slope)
	outer := sound*sound - width*width/4
	if outer <= 0 {
		return Riving{}
	}
	layers := halvings((math.Sqrt(outer) - from) / thickness)
	if layers == 0 {
		return Riving{}
	}
	r := Riving{Sectors: n, Thick: (math.Sqrt(outer) - from) / float64(layers)}
	for i := range layers {
		inner := from + r.Thick*float64(i)
		outside := inner + r.Thick
		wide := min(2*inner*slope, 2*math.Sqrt(max(0, sound*sound-outside*outside)))
		r.Across = append(r.Across, halvings(wide/width))
	}
	return r
}

// halvings returns how many equal parts of at least the size of one halving gives:
// 1, 2, 4 and so on, or 0.
func halvings(parts float64) int {
	const slack = 1e-9 // a part meant to be just as wide is
	n := 0
	for k := 1; float64(k) <= parts+slack; k *= 2 {
		n = k
	}
	return n
}
