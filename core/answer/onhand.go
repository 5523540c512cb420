package answer

import (
	"barkwright/core/stage"
	"slices"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/known"
	"barkwright/core/onhand"
	"barkwright/core/units"
)

// noList stands where no sheet on hand is listed.
const noList = "no sheets listed"

// onHandNumbers returns what the listed sheets make. Without a list it says that there
// is none.
func onHandNumbers(c core.Canoe) []*Number {
	s := c.Skin
	if s == nil {
		s = &core.Skin{}
	}
	laid := func(n *Number, ready bool) *Number {
		switch {
		case !c.Bark.Listed:
			n.Working = working("list your sheets under Bark on hand and this is worked out")
			return n.absent(noList)
		case !ready:
			return n.later()
		}
		return n
	}
	lack := laid(number(stage.Gather, "bark.short", "Bark still missing", units.Area, c.Bark.Short,
		fromLaying,
		working("in #: see the cutting list", many(len(c.Bark.Wanting()), "piece", "pieces"))).by(known.Estimate), true)
	if !lack.Absent && c.Bark.Short == 0 {
		lack = lack.in("none: they cover this boat")
		lack.Working = working("# on the bed and # for the sides", many(len(c.Bark.Bed), "sheet", "sheets"),
			many(len(c.Bark.Port)+len(c.Bark.Star), "strip", "strips"))
	}
	return []*Number{
		lack,
		makesNumber("bark.largest", "Longest boat of this shape from your bark", s.Makes,
			"the hull and its frame scaled as a whole until the sheets just cover it; timbers stay as they are", laid),
		makesNumber("bark.largestNarrower", "The same if every sheet comes # narrower", s.Narrower,
			"each sheet narrower by #: an edge split, or a smaller tree", laid, small(onhand.NarrowerBy)),
	}
}

func makesNumber(key, label string, made *onhand.Outcome, how string, laid func(*Number, bool) *Number,
	by ...term) *Number {
	at := onhand.Outcome{}
	if made != nil {
		at = *made
	}
	n := laid(number(stage.Gather, key, label, units.Length, at.Length, fromLaying,
		working(how+": # times this size", append(slices.Clone(by),
			ratio(at.Largest))...)).naming(by...).by(known.Estimate), made != nil)
	if !n.Absent && at.Length == 0 {
		return n.absent("none: too little for any")
	}
	return n
}

// onHandTable says what is cut from each sheet.
func onHandTable(c core.Canoe) Table {
	t := Table{
		Key: "onhand", Title: "Sheets and what is cut from them", Home: stage.Gather,
		Note: "Pieces by their names in the cutting list: B on the bed, P port, S starboard, from the bow aft. " +
			"Length is up the tree and along the boat, width round the tree.",
	}
	from := map[int]string{}
	for _, p := range c.Bark.Pieces() {
		if from[p.Sheet] != "" {
			from[p.Sheet] += ", "
		}
		from[p.Sheet] += p.Name
		if p.Side == bark.OnBed {
			from[p.Sheet] += " on the bed"
		}
	}
	type sheet struct {
		name          string
		width, length Cell
		pieces        string
	}
	var sheets []sheet
	for i, s := range c.Bark.Sheets {
		cut := from[i]
		if cut == "" {
			cut = "not needed"
		}
		sheets = append(sheets, sheet{sheetName(c, i), num(s.Width), num(s.Length), cut})
	}
	if cut := from[bark.Wanting]; cut != "" {
		sheets = append(sheets, sheet{"wanting", dash, dash, cut})
	}
	return fill(t, refs(sheets),
		text("sheet", "Sheet", func(s *sheet) string { return s.name }),
		col("width", "Width", units.Length, func(s *sheet) Cell { return s.width }),
		col("length", "Length", units.Length, func(s *sheet) Cell { return s.length }),
		text("pieces", "Cut from it", func(s *sheet) string { return s.pieces }),
	)
}
