package work

import "math"

// Swipe decides what a finger that came down on a control is doing: changing the
// control, or scrolling the page.
type Swipe struct {
	x, y float64
	way  Way
}

// Way is the direction in which a finger has moved.
type Way int

// The ways. A finger that may only be unsteady has none yet.
const (
	Nowhere Way = iota
	Sideways
	UpOrDown
)

// unsteady is how far a finger moves before its direction counts, in CSS pixels. It is
// less than the 15 or so at which browsers begin to scroll.
const unsteady = 8

// SwipeFrom returns a swipe that begins at a place on the page, in CSS pixels.
func SwipeFrom(x, y float64) Swipe { return Swipe{x: x, y: y} }

// To moves the finger to a place and returns its direction since it came down. Once it
// has a direction it keeps it.
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

// Way returns the direction so far.
func (s *Swipe) Way() Way { return s.way }
