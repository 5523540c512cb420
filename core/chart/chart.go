package chart

import (
	"math"
	"strconv"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// Chart is lines over two axes, all in SI, with labels that keep off one another.
// Its numbers stand in a table beside it.
type Chart struct {
	// Key names it on the page; Title and Description are its text alternative.
	Key, Title, Description string
	// Empty says why there is no curve to draw, or is "".
	Empty string
	X, Y  Axis
	Bands []Band
	Lines []Line
	Marks []Mark
}

// Axis is one axis, from Low to High in the SI unit of its kind.
type Axis struct {
	Label     string
	Kind      units.Kind
	System    units.System
	Low, High float64

	step float64 // between ticks, in the axis's unit; set by widened
}

// Band is the room between two lines over the same places.
type Band struct{ Low, High []geom.Vec2 }

// Line is a line; what is not firm is dashed. Label stands near its last point.
type Line struct {
	Points []geom.Vec2
	Dashed bool
	Label  string
}

// Mark is a point with a name.
type Mark struct {
	At    geom.Vec2
	Shape MarkShape
	Label string
}

// MarkShape tells marks apart without colour.
type MarkShape int

// The shapes: a filled disc for where the boat is now, a ring for what is worth
// knowing, a cross for where something ends.
const (
	Here MarkShape = iota
	Ring
	Cross
)

// one is the SI value of one of the axis's unit.
func (a Axis) one() float64 { return a.Kind.One(a.System) }

// title is the label with its unit, where it has both.
func (a Axis) title() string {
	if a.Kind == units.Angle {
		return a.Label + ", degrees"
	}
	unit := a.Kind.Unit(a.System)
	if a.Label == "" || unit == "" {
		return a.Label + unit
	}
	return a.Label + ", " + unit
}

// steps are the ticks' distances offered, times powers of ten.
var steps = [...]float64{1, 2, 5, 10, 20}

// widened chooses steps, at most most of them, and moves the ends of the axis out to
// whole ones.
func (a Axis) widened(most int) Axis {
	one := a.one()
	low, high := a.Low/one, a.High/one
	if !(high > low) {
		high = low + 1
	}
	ten := math.Pow(10, math.Floor(math.Log10((high-low)/float64(most))))
	for _, s := range steps {
		if a.step = s * ten; a.Kind == units.Count && a.step < 1 {
			continue
		}
		from, to := geom.Floor(low/a.step), geom.Ceil(high/a.step)
		if to-from <= float64(most) {
			a.Low, a.High = from*a.step*one, to*a.step*one
			break
		}
	}
	return a
}

// tick is a numbered place of an axis.
type tick struct {
	at   float64
	text string
}

// ticks are the steps of a widened axis.
func (a Axis) ticks() []tick {
	places := max(0, -int(geom.Floor(math.Log10(a.step))))
	var out []tick
	from, to := math.Round(a.Low/a.one()/a.step), math.Round(a.High/a.one()/a.step)
	for i := from; i <= to; i++ {
		text := strconv.FormatFloat(math.Abs(i*a.step), 'f', places, 64)
		if i < 0 {
			text = "−" + text
		}
		out = append(out, tick{i * a.step * a.one(), text})
	}
	return out
}
