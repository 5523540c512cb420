package answer

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/crew"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// The methods on the water, each with what it leaves out.
const (
	fromFloating = "volume of the stations under the water plane, free to sink and trim; calm water and a rigid " +
		"load. A teaching estimate and no rating: none of the US, EU and ISO loading rules we read covers canoes"
	fromStanding = "righting arm of a rigid load, free to sink and trim. People move, and shifting weight is what " +
		"capsizes most canoes; water in the boat takes its stiffness away. A teaching estimate and no rating"
)

// waterNumbers are those that follow every step of a slider.
func waterNumbers(c core.Canoe) []*Number {
	a, f := c.Afloat, c.Afloat.Floated
	up := f.Upright
	if f.State == afloat.Overloaded || f.State == afloat.NotConverged {
		up.State = f.State
	}
	lies := func(key, label string, k units.Kind, v float64, source string, how func(units.System) string) *Number {
		n := printed(stage.Pitch, key, label, k, v, source, how).by(known.Estimate)
		if up.State != afloat.Floats {
			n = n.absent(f.State.String())
			n.Working = floatCheck(c).Text // what there is to say of a boat that does not lie so
			return n
		}
		return n
	}
	out := []*Number{
		lies("afloat.draught", "Draught", units.Length, up.Draught, fromFloating,
			working("# in all: the boat #, crew and cargo", mass(a.Load.Mass).rough(), mass(a.Boat.Mass).rough())),
		lies("afloat.freeboard", "Least freeboard", units.Length, up.Freeboard, fromFloating,
			working("to the top of the inwale at its lowest over the water, as the boat trims")).short("Freeboard"),
		lies("afloat.freeboardAt", "Where it is least, forward of amidships", units.Offset, up.FreeboardAt.X,
			fromFloating,
			working("the sheer is # over the bottom there", length(up.FreeboardAt.Z).rough())),
		lies("afloat.trim", "Trim, bow down", units.Angle, up.Trim, fromFloating,
			working("the middle of all the weight stands # forward of amidships, and so does that of the water "+
				"pushed aside", offset(a.Load.Centre.X).rough())),
		printed(stage.Pitch, "afloat.displacement", "All that the water carries", units.Mass, a.Load.Mass, fromFloating,
			working("boat #, # together # and cargo #", mass(a.Boat.Mass).rough(), many(len(a.Crew), "paddler",
				"paddlers"), mass(crewMass(a)).rough(), mass(a.Cargo.Mass).rough())).by(known.Estimate),
		lies("afloat.gm", "Stiffness upright, GM", units.Length, f.GM, fromStanding,
			working("how fast the righting arm grows as the boat begins to lean; less than nothing, and it will "+
				"not stay upright")).short("Stiffness, GM"),
		lies("afloat.gmLow", "GM at the low end of what is not known", units.Length, a.GMLow, spreadSource,
			working("the ribs come to rest # narrower round the half girth and harder at the bilge, the crew's "+
				"weight # higher", small(design.GirthSpread), small(crew.PostureSpread).rough())),
		lies("afloat.gmHigh", "GM at the high end", units.Length, a.GMHigh, spreadSource,
			working("the half girth # longer and the bilge easier, the crew's weight # lower",
				small(design.GirthSpread), small(crew.PostureSpread).rough())),
		lies("afloat.gmHigher", "GM with the crew # higher", units.Length, a.GMCrewHigher, fromStanding,
			working("# of people raised #", mass(crewMass(a)).rough(),
				small(afloat.CrewHeightStep))).naming(small(afloat.CrewHeightStep)),
		lies("afloat.gmLower", "GM with the crew # lower", units.Length, a.GMCrewLower, fromStanding,
			working("# of people lowered #", mass(crewMass(a)).rough(),
				small(afloat.CrewHeightStep))).naming(small(afloat.CrewHeightStep)),
		lollNumber(f, lies),
	}
	freeboards := afloat.MarkedFreeboards()
	for i, carried := range a.Carries {
		n := printed(stage.Pitch, loadKeys[i], "Load that leaves # of freeboard", units.Mass, carried.Payload,
			fromFloating,
			working("floated level, # with the boat's own #", mass(carried.Total).rough(),
				mass(a.Boat.Mass).rough())).naming(small(freeboards[i])).by(known.Estimate)
		if !carried.Possible {
			n = n.absent(NoLoad)
		}
		out = append(out, n)
	}
	return out
}

// NoLoad stands for the load at a freeboard that the boat does not have even when empty.
const NoLoad = "no load leaves that freeboard"

// loadKeys are the loads' keys, in the order of afloat.MarkedFreeboards.
var loadKeys = [...]string{"afloat.loadAtThreeInches", "afloat.loadAtFourInches", "afloat.loadAtSixInches",
	"afloat.loadAtEightInches"}

func crewMass(a core.Afloat) float64 { return afloat.Total(a.Crew...).Mass }

// lollNumber is the lean that a boat too tender to stay upright falls to.
func lollNumber(f afloat.Floated, lies func(string, string, units.Kind, float64, string,
	func(units.System) string) *Number) *Number {
	n := lies("afloat.loll", "Lean it comes to rest at", units.Angle, f.Rest.Waterplane.Heel, fromStanding,
		working("where the righting arm is nothing and grows on leaning farther"))
	if f.State == afloat.CapsizesUpright && f.Rest.State != afloat.Floats {
		return n.absent("none: it goes over")
	}
	return n
}

// floatCheck names how the boat lies and what would mend it.
func floatCheck(c core.Canoe) Warning {
	f := c.Afloat.Floated
	w := Warning{Key: "afloat.state", Label: "Load", Home: stage.Pitch, State: Beyond, Word: f.State.String()}
	switch {
	case f.State == afloat.Overloaded:
		w.Text = working("about # too much: water would come over the gunwale. Take less, or build deeper or longer",
			mass(f.Excess).rough())
	case f.State == afloat.Swamped:
		x, toward := f.Upright.FreeboardAt.X, "forward"
		if x < 0 {
			x, toward = -x, "aft"
		}
		w.Text = working("water comes over the gunwale # "+toward+" of amidships: place the load nearer the middle, "+
			"or take less", length(x).rough())
	case f.State == afloat.NotConverged:
		w.Word = "will not balance"
		x, toward, end, back := c.Afloat.Load.Centre.X, "forward", "bow", "aft"
		if x < 0 {
			x, toward, end, back = -x, "aft", "stern", "forward"
		}
		w.Text = working("its middle is # "+toward+"; the "+end+" would go under. Move it "+back, length(x))
	case f.Upright.Freeboard < afloat.CustomaryFreeboard:
		w.State, w.Word = Near, "little freeboard"
		short := working("# of freeboard: by custom an open canoe keeps #", length(f.Upright.Freeboard).rough(),
			length(afloat.CustomaryFreeboard))
		scarce := working("a little under the # of freeboard that by custom an open canoe keeps",
			length(afloat.CustomaryFreeboard))
		w.Text = func(s units.System) string {
			if units.Length.RoughValue(f.Upright.Freeboard, s) >= afloat.CustomaryFreeboard-design.Rounding {
				return scarce(s) // as shown the two are the same
			}
			return short(s)
		}
	default:
		// How upright it stays is the steadiness's to say.
		w.State, w.Word = Within, afloat.Floats.String()
		w.Text = working("# of freeboard in calm water", length(f.Upright.Freeboard).rough())
	}
	return w
}
