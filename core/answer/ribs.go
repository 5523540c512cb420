package answer

import (
	"math"
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/known"
	"barkwright/core/stage"
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

// publishedGap is how much stays open between ribs under birch bark: Adney and Chapelle 1964, pp. 62, 104, 112,
// 132, read.
var publishedGap = [2]float64{1 * units.Inch, 2 * units.Inch}

func ribNumbers(c core.Canoe) []*Number {
	d := c.Design
	ribs := c.Frame.Ribs
	least, most := ribs[0].Spacing, ribs[0].Spacing
	for _, r := range ribs {
		least, most = min(least, r.Spacing), max(most, r.Spacing)
	}
	long, tight, hard := longestRib(c), tightestRib(c), hardestRib(c)
	spacing := printed(stage.Gunwales, "ribs.spacing", "From rib to rib along the gunwale", units.SmallLength,
		(least+most)/2, fromShape,
		working("equal inside each bay between thwarts, # to #; # ribs in all. Amidships # stays open between two; "+
			"published boats have # to #", small(least), small(most), count(d.Ribs),
			small(ribs[0].Spacing-d.RibWidthMid), small(publishedGap[0]), small(publishedGap[1]))).short("Rib to rib")
	spacing.Low, spacing.High = least, most
	return []*Number{
		printed(stage.Gunwales, "ribs.count", "Ribs", units.Count, float64(d.Ribs), fromBuilders,
			working("# as set or about one to # of gunwale", count(d.Ribs),
				small(design.RibEvery))).by(known.CommonPractice).short("Ribs"),
		spacing,
		printed(stage.Rib, "ribs.broken", "Ribs broken at the centre, each end", units.Count, float64(brokenRibs(c)),
			fromAdney+", p. 104 and fig. 116: the last three",
			working("# as set: the last toward either end, too sharp to bend whole",
				count(d.RibsBroken))).by(known.Published),
		printed(stage.Rib, "ribs.longest", "Longest rib, finished, tip to tip on its outer face", units.Length,
			long.Length, fromShape,
			working("girth # there, less the turn of the bark # and sheathing # inside it, less # of tuck at each tip",
				length(2*long.Cut(c.Hull).HalfGirth()), thin(d.BarkThickness), small(d.SheathingThickness),
				small(d.RibTuck))).short("Longest rib"),
		printed(stage.Rib, "ribs.minRadius", "Tightest bend of a rib that bends whole", units.SmallLength,
			tight.Bend.Radius, fromShape,
			working("rib #, at the middle of its #; # an end are broken at the centre and not counted",
				count(tight.Number), small(tight.Thickness),
				count(brokenRibs(c)))).short("Rib radius").in(radiusWord(tight.Bend)),
		number(stage.Rib, "ribs.verdict", "Will the ribs take their bends?", units.Count,
			float64(hard.Bend.Rib(d.RibStock)), fromRibs,
			working("rib # bends to # times its thickness, its own bounds being # and # for "+
				""+d.RibStock.Species.Name()+", "+d.RibStock.Condition.String()+", "+d.RibStock.Grain.String()+". "+
				""+publishedRibs,
				append([]term{count(hard.Number), ratio(max(0, hard.Bend.Ratio)), ratio(hard.Bend.Limit),
					ratio(hard.Bend.Safe)}, publishedTerms()...)...)).in(ribWord(hard.Bend,
			d.RibStock)).by(known.Estimate),
		lastLean(c),
		blankRule(c),
	}
}

// lastLean is how the last rib leans, with the spread of the drawn boats at its foot.
func lastLean(c core.Canoe) *Number {
	r, b := c.Frame.Ribs[len(c.Frame.Ribs)-1], c.Frame.Headboard
	height := c.Hull.TopEdge(r.X) - c.Hull.Floor(r.FootX)
	lean := func(out float64) float64 { return math.Atan2(r.FootX-r.X+out, height) }
	n := number(stage.Rib, "ribs.lastLean", "Last rib off plumb, its foot outward", units.Angle, r.Lean,
		fromDrawn+"; square to the bottom: "+fromAdney+", pp. 105-106",
		working("square to the bottom at its foot, past the heel to the heel's slope, and its outer edge # inboard "+
			"of the headboard's foot; the feet of the last # of the drawn boats stand # farther in to # farther "+
			"out than so",
			small(b.FootX-r.FootX-r.Width/2), count(frame.SpreadRibs), small(frame.FootSpreadIn),
			small(frame.FootSpreadOut)))
	return n.between(lean(-frame.FootSpreadIn), lean(frame.FootSpreadOut))
}

// blankRule says where the published rule for a rib's blank falls short.
func blankRule(c core.Canoe) *Number {
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
	n := number(stage.Rib, "ribs.blankShort", "The rule of thumb, twice the nearest thwart, is too short by",
		units.Length, worst, "the rule: "+fromAdney+", p. 92; the shortfall: the ribs of this shape",
		working("a blank twice the nearest thwart is too short at # an end, rib # the first of them from the middle",
			many(short, "rib", "ribs"), count(first)))
	if short == 0 {
		n.Working = working("a blank twice the nearest thwart is longer than every one of the # ribs",
			count(c.Design.Ribs))
		return n.in("never")
	}
	return n
}

const (
	fromRibs = "radii of ribs measured by this project off " + fromAdney +
		", figs. 31, 52, 104, good to a quarter, and drawn midsections of eight boats with ribs of 3/8 in (10 mm); no bend " +
		"test on white cedar was found. A trial piece decides"
	// publishedRibs says what published ribs do; its terms are publishedTerms.
	publishedRibs = "Published ribs measure # to # times their thickness; boats drawn, with ribs of 3/8 in (10 mm), come " +
		"to # to #, so the lower edge is soft"
)

func publishedTerms() []term {
	return []term{ratio(wood.PublishedRibsTightest), ratio(wood.PublishedRibsEasiest), ratio(wood.DrawnRibsTightest),
		ratio(wood.DrawnRibsEasiest)}
}

func ribsTable(c core.Canoe) Table {
	t := Table{
		Key: "ribs", Title: "Ribs from the middle outward", Home: stage.Rib, Open: true, OnPaper: true,
		Blanks: []string{"As built, fore", "aft"},
		Note: "Each number is a pair of mates, one toward either end: bend the two together, one inside the other, a " +
			"little past the shape, and tie them across until they are dry. Finished length is on the outer face, tip to " +
			"tip, the long side of the 45-degree bevels; split and bend them at the rough length, " +
			units.SmallLength.Both(gather.RibTrim) + " longer at each tip, and cut when they have been tried. Where it " +
			"is bent hardest and where the taper begins are measured from the rib's middle. They go in from the ends, " +
			"each end in turn, the middle last; where along the gunwale each stands is with the gunwale marks. Toward " +
			"the ends their feet stand square to the bottom, outboard of their marks. The rule of thumb of twice the " +
			"nearest thwart is no length to cut by.",
	}
	return fill(t, refs(c.Frame.Ribs),
		col("rib", "Rib", units.Words,
			func(r *frame.Rib) Cell { return words(strconv.Itoa(r.Number)).saying(wordIf(r.Alone(), "middle")) }),
		col("length", "Finished length", units.Length, func(r *frame.Rib) Cell { return num(r.Length) }),
		col("rough", "Rough length", units.Length,
			func(r *frame.Rib) Cell { return atLeast(r.Length + 2*gather.RibTrim) }),
		text("order", "Goes in", fittingOrder),
		col("run", "Along the gunwale", units.Length, func(r *frame.Rib) Cell { return num(r.Run) }).screenOnly(),
		col("station", "From amidships", units.Length, func(r *frame.Rib) Cell { return num(r.X) }).screenOnly(),
		col("foot", "Its foot, from amidships", units.Length,
			func(r *frame.Rib) Cell { return num(r.FootX) }).screenOnly(),
		col("lean", "Off plumb, foot outward", units.Angle,
			func(r *frame.Rib) Cell { return about(r.Lean) }).screenOnly(),
		col("inner", "Inner face", units.Length, func(r *frame.Rib) Cell { return num(r.Inner) }).screenOnly(),
		col("width", "Width", units.SmallLength, func(r *frame.Rib) Cell { return num(r.Width) }),
		col("thickness", "Thickness", units.SmallLength, func(r *frame.Rib) Cell { return num(r.Thickness) }),
		col("bend", "Bent hardest at", units.SmallLength, func(r *frame.Rib) Cell { return num(r.BendFrom(c.Hull)) }),
		col("taper", "Taper begins at", units.SmallLength,
			func(r *frame.Rib) Cell { return num(r.Length/2 - r.Taper(c.Design).Length) }),
		col("radius", "Tightest radius", units.SmallLength,
			func(r *frame.Rib) Cell { return num(r.Bend.Radius).saying(radiusWord(r.Bend)) }).screenOnly(),
		col("ratio", "Radius over thickness", units.Ratio,
			func(r *frame.Rib) Cell { return num(r.Bend.Ratio).saying(radiusWord(r.Bend)) }).screenOnly(),
		text("state", "Bend", func(r *frame.Rib) string { return RibWord(c, *r) }).screenOnly(),
	).parts(func(i int) string { return RibPart(c.Frame.Ribs[i].Number) })
}

// fittingOrder is when a rib goes in, its mate next.
func fittingOrder(r *frame.Rib) string {
	order := strconv.Itoa(r.Order)
	if !r.Alone() {
		order += " and " + strconv.Itoa(r.Order+1)
	}
	return order
}
