package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

func closingNumbers(c core.Canoe) []*Number {
	d, k := c.Design, c.Frame.Closing
	return []*Number{
		printed(stage.Ends, "closing.trim", "Bark's end, trimmed from the heel to the stem head", units.Length,
			k.Trim.Length(), fromShape,
			working("along the end's curve, the bark's thickness # outside the stem-piece; leave # past it until "+
				"the stem-piece is tried in: estimate", thin(d.BarkThickness), small(k.Leave))),
		printed(stage.Ends, "closing.stitches", "Stitches through the stem-piece, one end", units.Count,
			float64(k.ThroughStem()), fromAdney+", pp. 43, 49",
			working("# of seam at no more than # make # stitches # apart; # of them stand where the stem-piece is",
				length(k.Trim.Length()), small(d.EndStitch), count(k.Stitches()), small(k.Spacing),
				count(k.ThroughStem()))),
		printed(stage.Ends, "closing.lashing", "Innermost lashing of the outwales, from the stem head",
			units.SmallLength, k.Lashings[2].Along, fromAdney+", pp. 49-50; "+fromOwnChoice,
			working("about # inboard of the one at the middle of the bark flap, which is taken to reach from the "+
				"stem head to the gunwales' end: #",
				small(frame.LastLashing), small(k.Lashings[1].Along))).by(known.Estimate),
	}
}

// closingTable is how an end is closed, in the order of the work.
func closingTable(c core.Canoe) Table {
	t := Table{
		Key: "closing", Title: "Closing an end", Home: stage.Ends, OnPaper: true,
		Note: "Both ends alike. The trim line and the stitches are measured along the end's curve from the heel, " +
			"where the bark leaves the bottom; the lashings along the outwale from the stem head. " +
			"Each stitch goes through both barks and the stem-piece and back round the edge, over a band of split " +
			"root (" + fromAdney + ", pp. 43, 49); others sew in groups of long and short stitches or cross " +
			"them: the person teaching you comes first. " +
			"Published are three lashings, inboard of the stem, at mid flap and about " +
			units.SmallLength.Both(frame.LastLashing) + " farther in, and " +
			"how far head and outwale stand past one another; where the flap lies and the first lashing's " +
			"place are estimates.",
	}
	type step struct {
		name                   string
		from, to, count, apart Cell
		off                    Cell
		how, page              string
	}
	k, j := c.Frame.Closing, frame.NewJoinery(c.Design)
	steps := []step{{"trim the bark", num(0), num(k.Trim.Length()), whole(1), dash, num(k.Leave),
		"by the pattern, before it is sewn; so much is left past it until the stem-piece is tried in", "49"}}
	for _, g := range k.Groups {
		steps = append(steps, step{"stitch " + throughWords[g.Through], num(g.From), num(g.To), whole(g.Stitches),
			num(k.Spacing), num(k.HoleIn), "holes so far in from the trim line", "43, 49"})
	}
	for i, l := range k.Lashings {
		steps = append(steps, step{"lash the outwales " + lashingWords[i], about(l.Along), dash, whole(1), dash, dash,
			"along the outwale from the stem head", "49-50"})
	}
	steps = append(steps,
		step{"stem head over the outwale", num(j.HeadOver[0]), num(j.HeadOver[1]), whole(1), dash, dash,
			"from the one to the other", "49"},
		step{"outwales past the stem", num(j.OutwalePast[0]), num(j.OutwalePast[1]), whole(2), dash, dash,
			"from the one to the other", "49"})
	return fill(t, refs(steps),
		text("step", "What", func(s *step) string { return s.name }),
		col("from", "From", units.Length, func(s *step) Cell { return s.from }),
		col("to", "To", units.Length, func(s *step) Cell { return s.to }),
		col("count", "How many", units.Count, func(s *step) Cell { return s.count }),
		col("apart", "Apart", units.SmallLength, func(s *step) Cell { return s.apart }),
		col("off", "Off the trim line", units.SmallLength, func(s *step) Cell { return s.off }),
		text("how", "How", func(s *step) string { return s.how }),
		text("page", "Page", func(s *step) string { return s.page }),
	).parts(func(int) string { return StemPart })
}

var lashingWords = [...]string{"inboard of the stem", "at the middle of the flap", "farther in"}

var throughWords = [...]string{
	frame.BarkAlone: "through the bark alone", frame.SolidHeel: "through the solid heel",
	frame.Laminated: "through the laminations",
}
