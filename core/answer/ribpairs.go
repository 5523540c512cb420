package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// pairsTable is the ribs as they are bent: mates together, from the ends to the middle.
func pairsTable(c core.Canoe) Table {
	t := Table{
		Key: "pairs", Title: "Ribs to bend, pair by pair", Home: stage.Rib, OnPaper: true, Blanks: []string{"Bent"},
		Note: "From the ends to the middle, as they go in. Mates are alike: heat the two together and bend them one inside " +
			"the other, a little past the shape, tied across the tips until they are dry (" + fromAdney + ", pp. 51, 92). " +
			"How far past, and how long in boiling water, only a trial piece of the same wood tells. The marks are measured " +
			"from the middle of the strip, so that they hold whatever is left at its tips.",
	}
	ribs := c.Frame.Ribs
	outermost := make([]*frame.Rib, len(ribs))
	for i := range ribs {
		outermost[len(ribs)-1-i] = &ribs[i]
	}
	bends := func(r *frame.Rib, v float64) Cell { return num(v).saying(radiusWord(r.Bend)) }
	return fill(t, outermost,
		ordinal[*frame.Rib]("pair", "Pair", 1),
		text("ribs", "Ribs", func(r *frame.Rib) string {
			if r.Alone() {
				return "the middle one, alone"
			}
			n := units.Count.Format(float64(r.Number), units.Metric)
			return n + " fore and aft"
		}),
		col("rough", "Rough length", units.Length, func(r *frame.Rib) Cell { return atLeast(r.Length + 2*gather.RibTrim) }),
		col("width", "Width", units.SmallLength, func(r *frame.Rib) Cell { return num(r.Width) }),
		col("thickness", "Thickness", units.SmallLength, func(r *frame.Rib) Cell { return num(r.Thickness) }),
		col("bend", "Bent hardest at", units.SmallLength, func(r *frame.Rib) Cell {
			return num(r.BendFrom(c.Hull)).saying(wordIf(r.Broken, "broken at the centre"))
		}),
		col("apart", "The two bends apart", units.SmallLength, func(r *frame.Rib) Cell {
			return when(!r.Broken, num(2*r.BendFrom(c.Hull)))
		}),
		col("radius", "Tightest radius", units.SmallLength, func(r *frame.Rib) Cell {
			return when(!r.Broken, bends(r, r.Bend.Radius))
		}),
		text("state", "Bend", func(r *frame.Rib) string { return RibWord(c, *r) }).screenOnly(),
	).parts(func(i int) string { return RibPart(outermost[i].Number) })
}
