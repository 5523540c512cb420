package design

import (
	"math"

	"barkwright/core/units"
)

// SliderUnit is the SI value of one on the parameter's slider in a system: an inch
// or a millimetre for lengths, a pound or a kilogram, a hundredth for shares, and
// one for the rest.
func SliderUnit(p Param, s units.System) float64 {
	metric := s == units.Metric
	switch p.Kind {
	case units.Length, units.SmallLength, units.Thickness, units.Offset:
		if metric {
			return units.Millimetre
		}
		return units.Inch
	case units.Mass:
		if metric {
			return 1
		}
		return units.Pound
	case units.Percent, units.Strain:
		return 0.01
	}
	return 1
}

// Stepped returns the value n steps from v in a system, held inside the range: from
// between two steps it goes to the next one in that direction.
func (p Param) Stepped(v float64, n int, s units.System) float64 {
	step := p.Step(s)
	// On a step but for its last bits is on it.
	const nearly = 1e-6
	at := (v - p.Min) / step
	if n > 0 {
		at = math.Floor(at+nearly) + float64(n)
	} else {
		at = math.Ceil(at-nearly) + float64(n)
	}
	return max(p.Min, min(p.Max, p.Min+at*step))
}
