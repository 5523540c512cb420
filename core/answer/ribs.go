package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// hardestRib is the rib with the least radius over thickness among those that are
// not broken at the centre, or the middle one where all are: its verdict is the boat's.
func hardestRib(c core.Canoe) frame.Rib {
	return leastWhole(c.Frame.Ribs, func(r frame.Rib) float64 { return r.Bend.Ratio })
}

// tightestRib is the one of them with the least radius: toward the ends ribs are thinner,
// and one bent tighter may strain less.
func tightestRib(c core.Canoe) frame.Rib {
	return leastWhole(c.Frame.Ribs, func(r frame.Rib) float64 { return r.Bend.Radius })
}

func leastWhole(ribs []frame.Rib, of func(frame.Rib) float64) frame.Rib {
	best := ribs[0]
	for _, r := range ribs {
		if !r.Broken && (best.Broken || of(r) < of(best)) {
			best = r
		}
	}
	return best
}

func longestRib(c core.Canoe) frame.Rib {
	best := c.Frame.Ribs[0]
	for _, r := range c.Frame.Ribs {
		if r.Length > best.Length {
			best = r
		}
	}
	return best
}

func brokenRibs(c core.Canoe) int {
	n := 0
	for _, r := range c.Frame.Ribs {
		if r.Broken {
			n++
		}
	}
	return n
}

func ribNumbers(c core.Canoe) []Number {
	d := c.Design
	ribs := c.Frame.Ribs
	least, most := ribs[0].Spacing, ribs[0].Spacing
	for _, r := range ribs {
		least, most = min(least, r.Spacing), max(most, r.Spacing)
	}
	long, tight, hard := longestRib(c), tightestRib(c), hardestRib(c)
	spacing := number(Ribs, "ribs.spacing", "From rib to rib along the gunwale", units.SmallLength, (least+most)/2, fromShape,
		working("equal inside each bay between thwarts, # to #; # ribs in all", small(least), small(most), count(d.Ribs)))
	spacing.Low, spacing.High = least, most
	return []Number{
		number(Ribs, "ribs.count", "Ribs", units.Count, float64(d.Ribs), fromBuilders,
			working("# as set or about one to # of gunwale; # an end are broken at the centre", count(d.Ribs), small(design.RibEvery), count(brokenRibs(c)))).by(CommonPractice),
		spacing,
		number(Ribs, "ribs.longest", "Longest rib, tip to tip on its outer face", units.Length, long.Length, fromShape,
			working("girth # there, less the turn of the bark # and sheathing # inside it, less # of tuck at each tip",
				length(2*c.Hull.ColumnSection(c.Hull.ColumnAtEdge(long.X)).HalfGirth()), thin(d.BarkThickness), small(d.SheathingThickness), small(d.RibTuck))),
		number(Ribs, "ribs.minRadius", "Tightest bend of a rib that bends whole", units.SmallLength, tight.Bend.Radius, fromShape,
			working("rib #, at the middle of its #; # an end are broken at the centre and not counted", count(tight.Number), small(tight.Thickness), count(brokenRibs(c)))).in(radiusWord(tight.Bend)),
		number(Ribs, "ribs.verdict", "Will the ribs take their bends?", units.Count, float64(hard.Bend.Verdict), fromBending,
			bendWorking("of rib # ", hard.Bend, d.RibStock, count(hard.Number))).in(verdictWord(hard.Bend)).by(Estimate),
		blankRule(c),
	}
}

// blankRule says where the published rule for a rib's blank falls short.
func blankRule(c core.Canoe) Number {
	short, first := 0, 0
	worst := 0.0
	for _, r := range c.Frame.Ribs {
		if gap := r.Length - r.Blank; gap > 0 {
			if short == 0 {
				first = r.Number
			}
			short++
			worst = max(worst, gap)
		}
	}
	n := number(Ribs, "ribs.blankShort", "Rule of twice the nearest thwart falls short by up to", units.Length, worst, fromAdney+", p. 92",
		working("a blank twice the nearest thwart is long enough as far as rib #; from there outward # ribs an end are longer", count(first), count(short))).by(Published)
	if short == 0 {
		n.Working = working("a blank twice the nearest thwart is longer than every one of the # ribs", count(c.Design.Ribs))
		return n.in("never")
	}
	return n
}

func ribState(r frame.Rib) string {
	if r.Broken {
		return "broken at the centre"
	}
	return verdictWord(r.Bend)
}

func ribsTable(c core.Canoe) Table {
	t := Table{
		Key: "ribs", Title: "Ribs from the middle outward", Group: Ribs,
		Note: "Each number is a pair of mates, one toward either end. Lengths are on the outer face, tip to tip, the long side of the 45-degree bevels. They go in from the ends, each end in turn, the middle last.",
		Columns: []Column{{"rib", "Rib", units.Count}, {"length", "Cut length", units.Length}, {"order", "Goes in", units.Count}, {"run", "Along the gunwale", units.Length}, {"station", "From amidships", units.Length},
			{"inner", "Inner face", units.Length}, {"width", "Width", units.SmallLength}, {"thickness", "Thickness", units.SmallLength}, {"radius", "Tightest radius", units.SmallLength}, {"ratio", "Radius over thickness", units.Ratio},
			{"state", "Bend", units.Count}, {"blank", "Twice the nearest thwart", units.Length}},
	}
	for _, r := range c.Frame.Ribs {
		name := strconv.Itoa(r.Number)
		order := units.Count.Format(float64(r.Order), units.Metric)
		if r.Alone() {
			name = "middle"
		} else {
			order += " and " + strconv.Itoa(r.Order+1)
		}
		radius, rt := num(r.Bend.Radius), num(r.Bend.Ratio)
		if w := radiusWord(r.Bend); w != "" {
			radius.Text, rt.Text = w, w
		}
		t.Rows = append(t.Rows, Row{Part: RibPart(r.Number), Cells: []Cell{words(name), num(r.Length), words(order), num(r.Run), num(r.X), num(r.Inner),
			num(r.Width), num(r.Thickness), radius, rt, words(ribState(r)), num(r.Blank)}})
	}
	return t
}

// bendState is the state of a bend on the scale of checks.
func bendState(b wood.Bend) State { return [...]State{Within, Near, Beyond, NotChecked}[b.Verdict] }
