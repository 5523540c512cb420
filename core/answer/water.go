package answer

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/units"
)

const (
	fromFloating = "volume of the stations under the water plane, free to sink and trim; a teaching estimate and no rating"
	// noNumber stands where a boat in another state has no such number.
	noNumber = "no number"
)

func waterNumbers(c core.Canoe) []Number {
	a, f := c.Afloat, c.Afloat.Floated
	up := f.Upright
	word := ""
	if up.State != afloat.Floats || f.State == afloat.Overloaded || f.State == afloat.NotConverged {
		word = f.State.String()
	}
	out := []Number{
		number(OnTheWater, "afloat.draught", "Draught", units.Length, up.Draught, fromFloating,
			working("# in all: the boat #, her crew and cargo", mass(a.Load.Mass), mass(a.Boat.Mass))).by(Estimate).in(word),
		number(OnTheWater, "afloat.freeboard", "Least freeboard", units.Length, up.Freeboard, fromFloating,
			working("to the lowest point of the sheer, # from amidships, as trimmed", length(abs(up.FreeboardAt.X)))).by(Estimate).in(word),
		number(OnTheWater, "afloat.trim", "Trim, by the bow", units.Angle, up.Trim, fromFloating,
			working("the load's middle stands over the water's")).by(Estimate).in(word),
		number(OnTheWater, "afloat.displacement", "All that the water carries", units.Mass, a.Load.Mass, fromFloating,
			working("boat #, # paddlers of # and cargo #", mass(a.Boat.Mass), count(c.Design.Paddlers), mass(c.Design.PaddlerMass), mass(c.Design.Cargo))).by(Estimate),
		stiffness("afloat.gm", "Stiffness upright, GM", f.GM, word, "the slope of the righting arm upright"),
		stiffness("afloat.gmHigher", "GM with the crew 2 in higher", a.GMLow, word, "the crew raised 2 in"),
		stiffness("afloat.gmLower", "GM with the crew 2 in lower", a.GMHigh, word, "the crew lowered 2 in"),
	}
	for i, carried := range a.Carries {
		key, label := loadKeys[i], loadLabels[i]
		n := number(OnTheWater, key, label, units.Mass, carried.Payload, fromFloating,
			working("floated level, # in all less the boat #", mass(carried.Total), mass(a.Boat.Mass))).by(Estimate)
		if carried.State != afloat.Floats {
			n = n.in(carried.State.String())
		}
		out = append(out, n)
	}
	return out
}

var (
	loadKeys   = [...]string{"afloat.loadAtThreeInches", "afloat.loadAtFourInches", "afloat.loadAtSixInches", "afloat.loadAtEightInches"}
	loadLabels = [...]string{"Load that leaves 3 in of freeboard", "Load that leaves 4 in of freeboard", "Load that leaves 6 in of freeboard", "Load that leaves 8 in of freeboard"}
)

func stiffness(key, label string, v float64, word, how string) Number {
	return number(OnTheWater, key, label, units.Length, max(0, v), fromFloating, working(how)).by(Estimate).in(gmWord(v, word))
}

func gmWord(v float64, word string) string {
	if word == "" && v < 0 {
		return "negative: will not stay upright"
	}
	return word
}

func abs(v float64) float64 { return max(v, -v) }
