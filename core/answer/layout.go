package answer

import (
	"barkwright/core/stage"
	"slices"
	"strconv"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/known"
	"barkwright/core/units"
	"barkwright/core/wood"
)

const (
	fromLaying = "the bark laid flat, covered from the bow aft and each sheet lapped toward the stern (" + fromAdney +
		", p. 147), joints on a gore or a hand off; panels from what is left, the middle one inside and the next " +
		"outside (pp. 43, 45). A plain rule of this calculator: a good eye may find a better cut"
	fromTaper = "width by 3.1416 and the taper of paper birch worked out from Li, Weiskittel and others, Northern " +
		"Journal of Applied Forestry 29, 2012 (citation from memory, coefficients read); the range is that of " +
		"trees of form class 66 to 86"
)

// layoutNumbers tell of the pieces that the bark is made of.
func layoutNumbers(c core.Canoe) []*Number {
	l, d := c.Bark, c.Design
	pieces := l.Pieces()
	missing := len(l.Wanting())
	gap := printed(stage.Bark, "bark.joinGap", "Joints stand clear of gores and of each other by", units.SmallLength,
		l.Gap, fromLaying,
		working("# across the bed and # between strips; the least distance along the bed, from gores that a joint "+
			"does not take the place of", many(len(l.Joints), "joint", "joints"), many(len(l.Butts), "butt", "butts")))
	switch {
	case len(l.Joints)+len(l.Butts) == 0:
		gap = gap.absent("no joint")
	case !l.Apart:
		gap = gap.absent("nothing stands near")
	}
	tree := bark.NewStanding(sheetWanted(c), d)
	price := func(key, label string, v float64) *Number {
		n := number(stage.Gather, key, label, units.Run, v, fromShape,
			working("# of seam with side panels, against # from sheets # wide, whose gores are longer",
				run(seamLength(c)), run(seamLength(c)-l.Wide.Seam), length(l.Needs.Width).atLeast()))
		switch {
		case len(l.Beside) == 0:
			return n.absent("none: no side panels")
		case v <= 0:
			return n.absent("none: longer gores take as much or more")
		}
		return n
	}
	return []*Number{
		printed(stage.Gather, "bark.verdict", "Can it be built from this bark?", units.Count, float64(l.Verdict()),
			fromLaying, barkText(c)).in(verdictOfBark(c)),
		printed(stage.Bark, "bark.pieces", "Pieces of bark", units.Count, float64(len(pieces)), fromLaying,
			working("# on the bed and # for the sides, # of them wanting", count(len(l.Bed)),
				count(len(l.Port)+len(l.Star)), count(missing))).short("Pieces of bark"),
		gap,
		price("bark.narrowSeam", "Narrow bark costs, more seam", l.Wide.Seam),
		price("bark.narrowRoot", "Narrow bark costs, more split root", l.Wide.Root).by(known.Estimate),
		printed(stage.Gather, "tree.girth", "Tree for a sheet as set, round it at breast height", units.Length,
			tree.Girth, fromTaper,
			working("the full width "+d.TreeRule.String()+", # up the trunk: # with # for torn edges; # up a usual "+
				"trunk is # round there, rounded up to the next #", length(tree.At), length(tree.AtGirth),
				small(d.TreeAllowance), length(wood.BreastHeight), length(tree.Girth), small(bark.TreeStep))).short("Tree, girth").
			between(tree.Low, tree.High).on(stage.Choose),
		printed(stage.Gather, "tree.diameter", "That tree, diameter at breast height", units.SmallLength, tree.Diameter,
			fromTaper,
			working("# over 3.1416, rounded up to the next #", length(tree.Girth), small(bark.TreeStep))).by(known.Estimate),
	}
}

// sheetWanted is the sheet that is gathered: of the size set, no longer than the boat takes.
func sheetWanted(c core.Canoe) bark.Sheet {
	return bark.Sheet{Width: c.Design.SheetWidth, Length: min(c.Design.SheetLength, c.Bark.Needs.Length)}
}

// treesTable says which trees give the sheet set, and one wide enough.
func treesTable(c core.Canoe) Table {
	t := Table{
		Key: "trees", Title: "Trees to look for", Home: stage.Gather, Open: true, OnPaper: true, Blanks: []string{"Found"},
		Note: "By a tape round the standing trunk at breast height, " + units.Length.Both(wood.BreastHeight) + " up, " +
			"rounded up to the next " + units.SmallLength.Both(bark.TreeStep) +
			"; the allowance you set is in it. Trees taper differently: a full-bodied one may " +
			"be as small as the first figure, one that thins quickly must be as large as the last. The trunk has to be " +
			"clear from " + units.Length.Both(bark.StumpHeight) + " up for the sheet's length.",
	}
	type tree struct {
		name          string
		width, length Cell
		bark.Standing
	}
	var trees []tree
	add := func(name string, s bark.Sheet) {
		trees = append(trees, tree{name, atLeast(s.Width), num(s.Length), bark.NewStanding(s, c.Design)})
	}
	add("a sheet as set", sheetWanted(c))
	trees[0].width = num(c.Design.SheetWidth)
	add("one that needs no side panels", bark.Sheet{Width: c.Bark.Needs.Width, Length: sheetWanted(c).Length})
	for i, p := range c.Bark.Wanting() {
		if p.Side == bark.OnBed {
			add("what is wanting, "+strconv.Itoa(i+1), bark.Sheet{Width: p.Width, Length: p.Length()})
		}
	}
	return fill(t, refs(trees),
		text("sheet", "For", func(t *tree) string { return t.name }),
		col("width", "Sheet, width", units.Length, func(t *tree) Cell { return t.width }),
		col("length", "Sheet, length", units.Length, func(t *tree) Cell { return t.length }),
		col("at", "Full width up the trunk", units.Length, func(t *tree) Cell { return num(t.At) }).screenOnly(),
		col("there", "Round it there", units.Length, func(t *tree) Cell { return atLeast(t.AtGirth) }).screenOnly(),
		col("girth", "Round it at breast height", units.Length, func(t *tree) Cell { return atLeast(t.Girth) }),
		col("least", "If it hardly thins", units.Length, func(t *tree) Cell { return atLeast(t.Low) }),
		col("most", "If it thins quickly", units.Length, func(t *tree) Cell { return atLeast(t.High) }),
		col("diameter", "Diameter there", units.SmallLength, func(t *tree) Cell { return atLeast(t.Diameter) }),
	)
}

// sheetName is a sheet's number in the list, or says that it is one of those set.
func sheetName(c core.Canoe, i int) string {
	switch {
	case i == bark.Wanting:
		return "wanting"
	case c.Bark.Listed:
		return "sheet " + strconv.Itoa(i+1)
	}
	return "sheet " + strconv.Itoa(i+1) + ", as set"
}

// lies says where a piece lies.
func lies(p bark.Laid) string {
	side := [...]string{bark.OnBed: "on the bed", bark.Port: "port side", bark.Starboard: "starboard side"}[p.Side]
	switch {
	case p.Side == bark.OnBed:
		return side
	case p.Inside:
		return side + ", inside"
	}
	return side + ", outside"
}

// cutFrom says what a piece is cut from.
func cutFrom(c core.Canoe, p bark.Laid) string {
	if p.Wanting() {
		return "wanting"
	}
	if p.From == bark.FromSheet {
		return sheetName(c, p.Sheet)
	}
	return sheetName(c, p.Sheet) + ", " + p.From.String()
}

// cuttingTable is every piece of bark in the order it is cut and laid.
func cuttingTable(c core.Canoe) Table {
	t := Table{
		Key: "cutting", Title: "Bark to cut, in order", Home: stage.Bark, OnPaper: true, Blanks: []string{"Cut"},
		Note: "B lies on the bed, P is sewn to the port side and S to the starboard side, each numbered from the " +
			"bow aft. Places are along the bed: forward of amidships, and with a minus aft. Each sheet on the bed " +
			"laps outside the next one aft. Strips are cut with the lap they are fitted with, trimmed once they " +
			"fit; the middle one goes inside the bark on the bed and the next ones outside.",
	}
	type piece struct {
		name, lies, from, part string
		length, width          Cell
		bow, aft               float64
	}
	var pieces []piece
	for _, p := range c.Bark.Pieces() {
		pieces = append(pieces, piece{p.Name, lies(p), cutFrom(c, p), StripPart(c, p), atLeast(p.Length()),
			atLeast(p.Width), p.Bow, p.Aft})
	}
	for _, s := range c.Bark.Scant {
		pieces = append(pieces, piece{"none", "the edge, both sides", scantWords(s, c.Design.GunwaleTurn), "", dash,
			dash, s.Bow, s.Aft})
	}
	return fill(t, refs(pieces),
		text("piece", "Piece", func(p *piece) string { return p.name }),
		text("use", "Lies", func(p *piece) string { return p.lies }),
		text("from", "Cut from", func(p *piece) string { return p.from }),
		col("length", "Length", units.Length, func(p *piece) Cell { return p.length }),
		col("width", "Width", units.Length, func(p *piece) Cell { return p.width }),
		col("bow", "Bow end at", units.Offset, func(p *piece) Cell { return about(p.bow) }),
		col("aft", "Stern end at", units.Offset, func(p *piece) Cell { return about(p.aft) }),
	).parts(func(i int) string { return pieces[i].part })
}

// scantWords say what to do where a piece would be shorter than a foot.
func scantWords(s bark.Scant, trim float64) string {
	if s.Trim {
		return "no piece: less is left to trim"
	}
	lower := units.SmallLength.Format(s.Lack-trim, units.Imperial16)
	return "no piece under a foot: lower the stem head by " + lower + " (" + units.SmallLength.Format(s.Lack-trim,
		units.Metric) + ")"
}

// StripPart is the part of the picture that a strip is; empty for a piece on the bed
// and where the quarter that is drawn has no panel.
func StripPart(c core.Canoe, p bark.Laid) string {
	if p.Side == bark.OnBed {
		return ""
	}
	middle := (p.Aft + p.Bow) / 2
	if p.Aft < 0 && p.Bow > 0 {
		middle = 0
	}
	place := c.Bark.PlaceAt(c.Hull, middle)
	for i, panel := range c.Bark.Panels {
		if place >= panel.From && place <= panel.To {
			return PanelPart(i)
		}
	}
	return ""
}

func panelsTable(c core.Canoe) Table {
	t := Table{
		Key: "panels", Title: "Side panels", Home: stage.Bark,
		Note: "Where half of the sheet that lies there falls short of the edge. Length and width are what each " +
			"strip is cut to: with the lap it is fitted with and the bark to trim. The middle one goes inside the " +
			"bark on the bed, the next ones outside, lapped about 2 in (51 mm); trim the lap to the seam's when it " +
			"fits. Exposed edges look toward the stern in the topsides, up amidships and down at the ends (" +
			fromAdney + ", pp. 42, 45).",
	}
	strips := slices.Concat(c.Bark.Port, c.Bark.Star)
	return fill(t, refs(strips),
		text("panel", "Panel", func(p *bark.Laid) string { return p.Name }),
		text("side", "Goes", func(p *bark.Laid) string {
			if p.Inside {
				return "inside"
			}
			return "outside"
		}),
		col("bow", "Bow end at", units.Offset, func(p *bark.Laid) Cell { return about(p.Bow) }),
		col("aft", "Stern end at", units.Offset, func(p *bark.Laid) Cell { return about(p.Aft) }),
		col("length", "Strip, length", units.Length, func(p *bark.Laid) Cell { return atLeast(p.Length()) }),
		col("width", "Strip, width", units.Length, func(p *bark.Laid) Cell { return atLeast(p.Width) }),
		col("trim", "Lap, trimmed to", units.SmallLength, func(*bark.Laid) Cell { return num(c.Design.SeamLap) }),
	).parts(func(i int) string { return StripPart(c, strips[i]) }).orNone("none: the sheets are wide enough")
}
