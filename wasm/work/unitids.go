package work

import "barkwright/core/units"

// unitIDs name the units for good.
var unitIDs = [...]string{units.Imperial16: "in16", units.Imperial8: "in8", units.Metric: "mm"}

// UnitsID names units where they are kept.
func UnitsID(s units.System) string { return unitIDs[s] }

// UnitsOf are the units of a name; the first ones where it names none.
func UnitsOf(id string) units.System {
	for s, own := range unitIDs {
		if own == id {
			return units.System(s)
		}
	}
	return units.Imperial16
}
