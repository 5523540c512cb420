package answer

import (
	"slices"
	"strconv"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/units"
)

const fromCovering = "the bark laid flat, covered from the bow aft by as few of the widest sheets as reach, each lapped toward the stern (" + fromAdney + ", p. 147); panels from what is left. A plain rule of this calculator: a good eye may find a better cut"

// noList stands where no sheet on hand is listed.
const noList = "no sheets listed"

// onHandNumbers say what the listed sheets make; without a list, that there is none.
func onHandNumbers(c core.Canoe) []Number {
	s := c.Skin
	if s == nil {
		s = &core.Skin{}
	}
	laid := func(n Number, ready bool) Number {
		switch {
		case c.Design.OnHand.Count == 0:
			n.Working = working("list your sheets under Bark on hand and this is worked out")
			return n.absent(noList)
		case !ready:
			return n.absent(notYet)
		}
		return n
	}
	short, longest, widest := 0.0, 0.0, 0.0
	for _, w := range s.Coverage.Short {
		short += w.Length() * w.Width
		longest, widest = max(longest, w.Length()), max(widest, w.Width)
	}
	lack := laid(number(BarkAndFrame, "bark.short", "Bark wanting to the sheets on hand", units.Area, short, fromCovering,
		working("in # pieces, the longest # and the widest #: see the table of sheets", count(len(s.Coverage.Short)), length(longest), length(widest))).by(Estimate), c.Skin != nil)
	if !lack.Absent && s.Coverage.Covers() {
		lack = lack.in("none: they cover this boat")
		lack.Working = working("# sheets on the bed and # strips for the sides", count(len(s.Coverage.Bed)), count(len(s.Coverage.Port)+len(s.Coverage.Star)))
	}
	return []Number{
		lack,
		makesNumber("bark.largest", "Longest boat of these proportions they make", s.Makes, "the hull and its frame scaled as a whole until the sheets just cover it; timbers stay as they are", laid),
		makesNumber("bark.largestNarrower", "The same if every sheet comes # narrower", s.Narrower,
			"each sheet narrower by #: an edge split, or a smaller tree", laid, small(bark.NarrowerBy)),
	}
}

func makesNumber(key, label string, made *bark.Outcome, how string, laid func(Number, bool) Number, by ...term) Number {
	at := bark.Outcome{}
	if made != nil {
		at = *made
	}
	n := laid(number(BarkAndFrame, key, label, units.Length, at.Length, fromCovering,
		working(how+": # times this size", append(slices.Clone(by), ratio(at.Largest))...)).naming(by...).by(Estimate), made != nil)
	if !n.Absent && at.Length == 0 {
		return n.absent("none: too little for any")
	}
	return n
}

// onHandTable says which sheet lies where, what is cut from it and what is wanting.
func onHandTable(c core.Canoe) Table {
	t := Table{
		Key: "onhand", Title: "Sheets laid over the boat", Group: BarkAndFrame,
		Note:    "From the bow aft; places are along the bed, forward of amidships. Each sheet on the bed laps outside the one aft of it, so that joints face the stern. The tree is the least that gives a sheet as wide. Joints are sewn where these sheets meet, and side panels where they are too narrow.",
		Columns: []Column{{"sheet", "Sheet", units.Count}, {"use", "Lies", units.Count}, {"from", "From", units.Offset}, {"to", "To", units.Offset}, {"width", "Width taken", units.Length}, {"tree", "Tree, diameter", units.SmallLength}},
	}
	if c.Skin == nil {
		t.Rows = []Row{{Cells: dashes(notYet, len(t.Columns))}}
		return t
	}
	s := c.Skin
	used := map[int]bool{}
	lay := func(use string, all []bark.Laid) {
		for _, l := range all {
			used[l.Sheet] = true
			tree := bark.NewTree(s.Sheets[l.Sheet].Width, s.Sheets[l.Sheet].Length)
			t.Rows = append(t.Rows, Row{Cells: []Cell{words(sheetName(c, l.Sheet)), words(use), num(l.Bow), num(l.Aft), num(l.Width), num(tree.Diameter)}})
		}
	}
	lay("on the bed", s.Coverage.Bed)
	lay("side panel, port", s.Coverage.Port)
	lay("side panel, starboard", s.Coverage.Star)
	for _, w := range s.Coverage.Short {
		what, tree := "wanting on the bed", num(bark.NewTree(w.Width, w.Length()).Diameter)
		if w.Panel {
			what, tree = "wanting at a side", words("–")
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{words("–"), words(what), num(w.Bow), num(w.Aft), num(w.Width), tree}})
	}
	for i, sheet := range s.Sheets {
		if !used[i] {
			t.Rows = append(t.Rows, Row{Cells: []Cell{words(sheetName(c, i)), words("not needed"), words("–"), words("–"), num(sheet.Width), num(bark.NewTree(sheet.Width, sheet.Length).Diameter)}})
		}
	}
	return t
}

// sheetName is a sheet's number in the list, or says that it is one of the design's.
func sheetName(c core.Canoe, i int) string {
	if c.Design.OnHand.Count == 0 {
		return "as set, " + strconv.Itoa(i+1)
	}
	return strconv.Itoa(i + 1)
}
