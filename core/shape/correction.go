package shape

import "math"

// Correction is a local change of a curve along the gunwale: By, metres, at the place
// At, falling to zero at From inboard of it and at To outboard. Places are shares of
// the half gunwale along x. At 0 and at 1 the curve keeps its own height or breadth,
// and the correction puts the curve beside it back where it was.
type Correction struct{ At, From, To, By float64 }

// at returns the change at a share t of the half gunwale. Its slope and curvature are
// zero at all three places, so that a curve stays as smooth as it was.
func (c Correction) at(t float64) float64 {
	width := c.To - c.At
	if t < c.At {
		width = c.At - c.From
	}
	u := math.Abs(t - c.At)
	switch {
	case u == 0:
		return c.By
	case u >= width:
		return 0
	}
	// The quintic with no slope and no curvature at 0 and 1.
	u /= width
	return c.By * (1 - u*u*u*(10-15*u+6*u*u))
}

// bend returns the first and second derivative of at by t.
func (c Correction) bend(t float64) (first, second float64) {
	width := c.To - c.At
	if t < c.At {
		width = c.From - c.At
	}
	if width == 0 {
		return 0, 0
	}
	u := (t - c.At) / width
	if u >= 1 {
		return 0, 0
	}
	return -30 * c.By * u * u * (1 - u) * (1 - u) / width, -60 * c.By * u * (1 - u) * (1 - 2*u) / (width * width)
}

// MostCorrections is how many corrections a curve takes: one amidships, one at each
// thwart, one at the gunwale's end and some between.
const MostCorrections = 8

// Corrections are those of one curve; those past Count are zero, so that equal lists
// are ==.
type Corrections struct {
	Count int
	Each  [MostCorrections]Correction
}

// List returns the corrections that count.
func (c *Corrections) List() []Correction { return c.Each[:max(0, min(c.Count, MostCorrections))] }

// At is what they change at a share t of the half gunwale.
func (c *Corrections) At(t float64) float64 {
	sum := 0.0
	for _, each := range c.List() {
		sum += each.at(t)
	}
	return sum
}

// Bend returns the first and second derivative of At by t.
func (c *Corrections) Bend(t float64) (first, second float64) {
	for _, each := range c.List() {
		slope, bend := each.bend(t)
		first, second = first+slope, second+bend
	}
	return first, second
}

// Of is the sum of those at one place.
func (c *Corrections) Of(at float64) float64 {
	sum := 0.0
	for _, each := range c.List() {
		if each.At == at {
			sum += each.By
		}
	}
	return sum
}

// Add returns the list with a correction added to the one of the same places, or after
// the others; false where the list is full.
func (c Corrections) Add(add Correction) (Corrections, bool) {
	for i, each := range c.List() {
		if each.At == add.At && each.From == add.From && each.To == add.To {
			c.Each[i].By += add.By
			return c, true
		}
	}
	if c.Count >= MostCorrections {
		return c, false
	}
	c.Each[c.Count] = add
	c.Count++
	return c, true
}

// Scaled returns the list for a boat k times the size.
func (c Corrections) Scaled(k float64) Corrections {
	for i := range c.Each {
		c.Each[i].By *= k
	}
	return c
}
