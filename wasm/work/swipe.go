package work

import "math"

// Swipe tells what a finger that came down on a control wants: to change it, or to
// scroll the page with the control under it.
type Swipe struct {
	x, y float64
	way  Way
}

// Way is which way a finger has gone.
type Way int

// The ways: a finger has not gone anywhere as long as it may only be unsteady.
const (
	Nowhere Way = iota
	Sideways
	UpOrDown
)

// unsteady is how far a finger goes before its way counts, CSS pixels: under what
// browsers let one stray before they take it for a scroll, about 15.
const unsteady = 8

// SwipeFrom begins where the finger came down, CSS pixels of the page.
func SwipeFrom(x, y float64) Swipe { return Swipe{x: x, y: y} }

// To takes the finger to a place and tells which way it has gone since it came down.
// Once it has gone one way it is held to that.
func (s *Swipe) To(x, y float64) Way {
	dx, dy := math.Abs(x-s.x), math.Abs(y-s.y)
	if s.way == Nowhere && max(dx, dy) >= unsteady {
		s.way = UpOrDown
		if dx > dy {
			s.way = Sideways
		}
	}
	return s.way
}

// Way is the way the finger has gone so far.
func (s *Swipe) Way() Way { return s.way }
