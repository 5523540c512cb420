package answer

import (
	"barkwright/core/stage"
	"math"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/units"
)

// bottomHeight is how far over the bottom its breadth is read: where the drawn
// midsections were first read too.
const bottomHeight = 3 * units.Inch

const fromSection = fromShape + "; the rule from midsections drawn in " + fromAdney + ", measured by this project"

// sectionNumbers are the finished section amidships and what it makes of the bark on
// the bed.
func sectionNumbers(c core.Canoe) []*Number {
	d, s := c.Design, c.Hull.Section(0)
	return []*Number{
		printed(stage.Rib, "hull.halfGirth", "Half girth amidships, finished", units.SmallLength, s.HalfGirth(),
			fromSection, girthWorking(c)).short("Half girth"),
		number(stage.Rib, "hull.ease", "Half girth that the ribs take up", units.Offset, d.EaseLeft(), fromSection,
			working("# on the bed less # finished", small(d.HalfGirthOnBed()), small(s.HalfGirth()))),
		number(stage.Rib, "hull.bottomBreadth", "Breadth of the bottom amidships, # up", units.Length,
			2*s.HalfBreadthAt(min(bottomHeight, d.Depth)), fromSection,
			working("across the outside of the bark, # over the bottom, with a turn of the bilge of # and the turn "+
				"line # broad", small(bottomHeight), ratio(d.Bilge), length(c.Hull.TurnWidth()))).
			naming(small(bottomHeight)),
		printed(stage.Rib, "frame.turnWidth", "Breadth of the turn line amidships", units.Length, c.Hull.TurnWidth(),
			fromSection, turnWorking(c)),
	}
}

// girthWorking says what the finished half girth comes from.
func girthWorking(c core.Canoe) func(units.System) string {
	d := c.Design
	switch {
	case d.Bulges():
		return working("along the section that a greatest breadth of bark of # asks for", length(d.GreatestBeam))
	case d.BuiltOn == design.OnGunwales:
		return working("built on the gunwale frame the bark on the bed is a box, # from the middle to the side and "+
			"# up: all of it goes round", length(d.OutsideBreadth()/2), length(d.Depth))
	case d.TurnSet():
		return working("along the section whose turn line is # broad, as set", length(d.TurnWidth))
	}
	half, fold := d.OutsideBreadth()/2, d.FrameWidth/2
	return working("on the bed # from the middle to the edge of the frame and # from there to the gunwale, less # "+
		"that the ribs take up",
		length(fold), small(math.Hypot(half-fold, d.Depth)), small(d.Ease))
}

func turnWorking(c core.Canoe) func(units.System) string {
	d := c.Design
	switch {
	case d.Bulges():
		return working("where bottom and side would meet to give a greatest breadth of bark of #",
			length(d.GreatestBeam))
	case d.TurnSet():
		return working("# as set", length(d.TurnWidth))
	}
	return working("where bottom and side would meet so that # of bark goes round half the boat", small(d.HalfGirth()))
}

// girthCheck holds the finished section against the bark on the bed.
func girthCheck(c core.Canoe) Warning {
	d := c.Design
	w := Warning{Key: "hull.ease", Label: "Frame and section", Home: stage.Bed, State: Within, Word: "agree"}
	onBed, finished := small(d.HalfGirthOnBed()), small(d.HalfGirth())
	switch {
	case d.GirthsAgree():
		w.Text = working("# of bark on the bed goes round # of the finished half boat: drawn boats differ by as much",
			onBed, finished)
	case d.EaseLeft() > 0:
		w.State, w.Word = Near, "the frame and the section do not agree"
		w.Text = working("# of bark on the bed for # of the finished half boat: ribs take up # at most; narrow the "+
			"frame, or let the turn line follow", onBed, finished, small(design.MostEase))
	case d.BuiltOn == design.OnGunwales:
		w.State, w.Word = Near, "the frame and the section do not agree"
		w.Text = working("# of bark on the bed for # of the finished half boat: let the turn line follow, or lessen the "+
			"greatest breadth. A published boat built on its gunwales (fig. 31) has this too, by the same reckoning",
			onBed, finished)
	default:
		w.State, w.Word = Near, "the frame and the section do not agree"
		w.Text = working("# of bark on the bed for # of the finished half boat: bark does not stretch so far; "+
			"widen the frame, or let the turn line follow", onBed, finished)
	}
	return w
}

// girthStations is how many spaces the table of girths divides half the frame into.
const girthStations = 10

func girthsTable(c core.Canoe) Table {
	t := Table{
		Key: "girths", Title: "Half girths, on the bed and finished", Home: stage.Rib,
		Note: "It is one piece of bark: on the bed it stands over its finished edge by the last column, or is " +
			"drawn down to it where that is less than zero. " +
			"Where that is no more than the bark left to trim it is no fault: trim after lacing.",
	}
	h := c.Hull
	bed, finished := h.HalfGirthOnBed, func(x float64) float64 { return h.Section(x).HalfGirth() }
	return fill(t, spread(min(h.FrameEnd(), h.HeelX), girthStations),
		col("station", "From amidships", units.Length, num),
		col("bed", "On the bed", units.SmallLength, func(x float64) Cell { return num(bed(x)) }),
		col("finished", "Finished", units.SmallLength, func(x float64) Cell { return num(finished(x)) }),
		col("over", "Over", units.Offset, func(x float64) Cell { return num(bed(x) - finished(x)) }),
	)
}
