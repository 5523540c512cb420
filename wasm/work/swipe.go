package work

import "math"

// Swipe decides what a finger that came down on a control is doing: changing the
// control, or scrolling the page.
type Swipe struct {
	x, y float64
	way  Way
	from float64 // along x, where its way began to count
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
			s.from = s.x + math.Copysign(unsteady, x-s.x)
		}
	}
	return s.way
}

// Way returns the direction so far.
func (s *Swipe) Way() Way { return s.way }

// Along is how far a finger at x has gone sideways since its way began to count, CSS
// pixels. A busy browser tells of a finger rarely: it is the same however often it does.
func (s *Swipe) Along(x float64) float64 {
	if s.way != Sideways {
		return 0
	}
	return x - s.from
}
