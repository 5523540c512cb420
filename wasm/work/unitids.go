package work

import "barkwright/core/units"

// unitIDs are the names of units in stores and files. They never change.
var unitIDs = [...]string{units.Imperial16: "in16", units.Imperial8: "in8", units.Metric: "mm"}

// UnitsID returns the name under which units are kept.
func UnitsID(s units.System) string { return unitIDs[s] }

// UnitsOf returns the units of a name, or the first ones for an unknown name.
func UnitsOf(id string) units.System {
	for s, own := range unitIDs {
		if own == id {
			return units.System(s)
		}
	}
	return units.Imperial16
}
