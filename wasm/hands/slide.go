package hands

import "barkwright/wasm/work"

// Slide is a finger on a slider. Browsers would move the slider to where the finger
// comes down, and on as it scrolls the page: instead it moves by how far the finger
// has gone sideways.
type Slide struct {
	Start float64 // what the slider stood at

	swipe work.Swipe
	pixel float64 // what a pixel of its way changes
}

// SlideFrom begins where the finger came down, CSS pixels of the page, on a slider of a
// range and a width in CSS pixels that stands at a value.
func SlideFrom(x, y, value, least, most, width float64) Slide {
	return Slide{Start: value, swipe: work.SwipeFrom(x, y), pixel: (most - least) / width}
}

// To takes the finger to a place and returns what the slider stands at then, and whether
// the finger moves it. Begun tells that it does so for the first time.
func (s *Slide) To(x, y float64) (value float64, moves, begun bool) {
	begun = s.swipe.Way() == work.Nowhere
	if s.swipe.To(x, y) != work.Sideways {
		return s.Start, false, false
	}
	return s.Start + s.pixel*s.swipe.Along(x), true, begun
}

// Moved tells whether the finger has moved the slider.
func (s *Slide) Moved() bool { return s.swipe.Way() == work.Sideways }
