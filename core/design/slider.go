package design

import "barkwright/core/units"

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
	case units.Percent:
		return 0.01
	}
	return 1
}
