package whatif

import (
	"math"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/weigh"
)

// leastUnits is the least height of a curve's picture, in changes that make a builder act: what
// hardly moves lies flat.
const leastUnits = 8

// Curve is one result over the values of a control, all in SI.
type Curve struct {
	// Number is the result at the present boat.
	Number answer.Number
	// Points are where the boat can be built and the result has a number.
	Points []Point
	// Whole tells that the control is a count or a choice: there is nothing between points.
	Whole bool
	// Low and High bound the picture's height.
	Low, High float64
	// Hardly tells that the result moves by less than a change that makes a builder act.
	Hardly bool
	// Bands are what the check that judges the result says along the range; where one ends and
	// the next begins its word turns.
	Bands []Band
	// Says stands in place of a curve of which no point has a number.
	Says string
}

// Point is a place of a curve.
type Point struct {
	At, Value float64
	// Gap tells that no line goes to it from the point before: the curve jumps, or boats
	// between cannot be built.
	Gap bool
}

// Wall is where boats can no longer be built.
type Wall struct {
	At    float64
	Fault *design.Fault
}

// Walls are the ends of what can be built inside what was tried.
func (w *Sweep) Walls() []Wall {
	var out []Wall
	for i, s := range w.Samples {
		if s.Fault == nil {
			continue
		}
		if i > 0 && w.Samples[i-1].Fault == nil {
			out = append(out, Wall{w.Samples[i-1].At, s.Fault})
		}
		if i+1 < len(w.Samples) && w.Samples[i+1].Fault == nil {
			out = append(out, Wall{w.Samples[i+1].At, s.Fault})
		}
	}
	return out
}

// Present is the control's value in the boat that was asked about.
func (w *Sweep) Present() float64 { return w.Param.Get(&w.from) }

// Curves are the results watched, as far as they are worked out.
func (w *Sweep) Curves() []Curve {
	out := make([]Curve, 0, len(w.Keys))
	here, ok := w.place(w.Present())
	if !ok || w.Samples[here].Fault != nil {
		return nil
	}
	for k := range w.Keys {
		out = append(out, w.curve(k, w.Samples[here].Numbers[k]))
	}
	return out
}

func (w *Sweep) curve(k int, now answer.Number) Curve {
	c := Curve{Number: now, Whole: w.Param.Whole() || w.Param.Options != nil, Low: math.Inf(1), High: math.Inf(-1)}
	gap := true
	for _, s := range w.Samples {
		if s.Fault != nil || s.Numbers[k].Absent {
			gap = true
			continue
		}
		v := s.Numbers[k].Value
		c.Points = append(c.Points, Point{s.At, v, gap})
		c.Low, c.High, gap = min(c.Low, v), max(c.High, v), false
	}
	if len(c.Points) == 0 {
		c.Says = now.Text(w.System)
		return c
	}
	unit := weigh.Unit(now)
	moves := c.High - c.Low
	c.Hardly = moves < unit
	if room := leastUnits*unit - moves; room > 0 {
		c.Low, c.High = c.Low-room/2, c.High+room/2
	}
	w.jumps(&c)
	c.Bands = w.bands(checkOf(now.Key))
	return c
}

// jumps marks where the curve goes up or down at once: between two values a step apart, by a
// good part of its height and much more steeply than on either side.
func (w *Sweep) jumps(c *Curve) {
	if c.Whole {
		return
	}
	const steeper = 3
	slope := func(i int) float64 {
		if i < 1 || i >= len(c.Points) {
			return 0
		}
		a, b := c.Points[i-1], c.Points[i]
		return math.Abs(b.Value-a.Value) / (b.At - a.At)
	}
	for i := 1; i < len(c.Points); i++ {
		run, height := c.Points[i].At-c.Points[i-1].At, c.High-c.Low
		if run < 1.5*w.step() && slope(i)*run > 2*bentShare*height && slope(i) > steeper*max(slope(i-1), slope(i+1)) {
			c.Points[i].Gap = true
		}
	}
}

// refine tries more values where a curve bends or jumps, and reports whether there were any.
func (w *Sweep) refine() bool {
	here, ok := w.place(w.Present())
	if !ok || w.Samples[here].Fault != nil {
		return false
	}
	for k := range w.Keys {
		c := w.curve(k, w.Samples[here].Numbers[k])
		for i := 1; i+1 < len(c.Points); i++ {
			a, b, d := c.Points[i-1], c.Points[i], c.Points[i+1]
			chord := a.Value + (d.Value-a.Value)*(b.At-a.At)/(d.At-a.At)
			if math.Abs(b.Value-chord) <= bentShare*(c.High-c.Low) {
				continue
			}
			for _, end := range []Point{b, d} {
				if j, there := w.place(end.At); there && j > 0 && w.apart(j) && w.halve(j) {
					return true
				}
			}
		}
	}
	return false
}

// Nearest is the value of the control that a place in the picture stands for: on its step, and
// inside what can be built.
func (w *Sweep) Nearest(v float64) float64 {
	return max(w.Low, min(w.High, w.snapped(v)))
}
