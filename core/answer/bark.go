package answer

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/units"
)

func barkNumbers(c core.Canoe) []*Number {
	d, n := c.Design, c.Bark.Needs
	sheets := working("about # of bark on the bed from sheets of #, lapped #", length(n.Length),
		length(d.SheetLength), small(d.SeamLap))
	if d.OnHand.Count > 0 {
		sheets = working("of the # on hand, those that reach along # of bark on the bed, lapped #, and leave least "+
			"to sew", count(d.OnHand.Count), length(n.Length), small(d.SeamLap))
	}
	return append([]*Number{
		printed(HomeBark, "bark.width", "Width of bark for one sheet with no side panels", units.Length, n.Width,
			fromShape,
			working("twice the greatest half girth, on the bed or finished, # and # to trim at the gunwale",
				length(n.Width/2-d.GunwaleTurn), small(d.GunwaleTurn))).short("Bark width"),
		number(HomeBark, "bark.treeDiameter", "Tree for a sheet that wide, diameter where it is taken",
			units.SmallLength, n.TreeWidth.Diameter, fromGeometry+"; the grain runs round the tree (AC, p. 15)",
			working("width # over 3.1416, with nothing allowed for torn edges or the trunk's taper",
				length(n.Width))).up(),
		number(HomeBark, "bark.treeGirth", "That tree, by a tape round it there", units.Length, n.TreeWidth.Girth,
			fromGeometry,
			working("the sheet's width goes round the tree: #", length(n.Width))).up(),
		number(HomeBark, "bark.sheetTree", "Tree for the narrowest sheet laid out, diameter where it is taken",
			units.SmallLength, n.TreeSheet.Diameter, fromGeometry,
			working("width # over 3.1416, with # of clear trunk", length(c.Bark.SheetWidth),
				length(n.TreeSheet.Clear))).up(),
		printed(HomeBark, "bark.sheets", "Sheets end to end", units.Count, float64(n.Sheets), fromShape,
			sheets).by(known.Estimate),
		printed(HomeBark, "bark.area", "Bark, laps and trim included", units.Area, n.Area, fromShape,
			working("finished skin # with the laps of panels and joints and the bark to trim", area(n.SkinArea))),
		frameNumber(c),
	}, layoutNumbers(c)...)
}

func frameNumber(c core.Canoe) *Number {
	d := c.Design
	if d.BuiltOn == design.OnGunwales {
		return printed(HomeFrame, "frame.width", "Gunwale frame, out to out", units.Length,
			2*c.Hull.FrameHalfBreadth(0), fromShape,
			working("# between the inwales and both of them", length(d.Beam)))
	}
	return printed(HomeFrame, "frame.width", "Building frame, out to out", units.Length, d.FrameWidth, fromShape,
		working("# as set", length(d.FrameWidth)))
}

// seamKeys are the results' keys by kind of seam.
var seamKeys = map[bark.Kind]string{bark.GoreSeams: "seams.gores", bark.PanelSeams: "seams.panels",
	bark.JointSeams: "seams.joints", bark.EndSeams: "seams.ends"}

var seamLabels = map[bark.Kind]string{bark.GoreSeams: "Gores", bark.PanelSeams: "Side panels",
	bark.JointSeams: "End-to-end joints", bark.EndSeams: "Ends"}

func seamNumbers(c core.Canoe) []*Number {
	b := c.Bark
	total := 0.0
	var out []*Number
	for _, s := range b.Seams {
		total += s.Length
		out = append(out, number(HomeRoot, seamKeys[s.Kind], seamLabels[s.Kind]+", length of seam", units.Run,
			s.Length, fromShape,
			working("#, along the finished hull", many(s.Count, "seam", "seams"))))
	}
	out = append([]*Number{printed(HomeRoot, "seams.total", "All seams in the bark", units.Run, total, fromShape,
		working("gores #, side panels #, joints #, ends #", run(b.Seams[0].Length), run(b.Seams[1].Length),
			run(b.Seams[2].Length), run(b.Seams[3].Length))).short("Seams")}, out...)
	r := c.Gather.Root
	out = append(out,
		printed(HomeRoot, "root.seams", "Split root for the seams, before waste", units.Run, b.Root.Split,
			fromAdney+", pp. 43-48",
			working("#: over and over takes the bite, the slant and two thicknesses; two strands take twice the "+
				"pitch and the thickness", many(stitches(b), "stitch", "stitches"))).by(known.Estimate),
		number(HomeRoot, "root.seamsWaste", "Split root for the seams, with waste", units.Run, b.Root.WithWaste,
			fromBuilders,
			working("# and # of it for waste", run(b.Root.Split).rough(), percent(c.Design.RootWaste))).up(),
		printed(HomeRoot, "root.total", "Split root in all, with waste", units.Run, r.WithWaste, fromBuilders,
			working("lacing # and seams #, each with its waste", run(c.Frame.Lacing.WithWaste).rough(),
				run(b.Root.WithWaste).rough())).up().short("Split root"),
		printed(HomeRoot, "root.dug", "Root to dig", units.Run, r.Dug, fromAdney+", pp. 42-43",
			working("half of #: each root is split in two", run(r.WithWaste).rough())).up(),
		number(HomeRoot, "root.lengths", "The same if every root were of full length", units.Count, float64(r.Whole),
			fromAdney+", p. 16",
			working("# to dig, from roots up to # long; nothing is lost to odd lengths", run(r.Dug).rough(),
				run(bark.RootGrows))).by(known.Published),
	)
	return append(out, rootNumbers(c)...)
}

func stitches(b bark.Layout) int {
	n := 0
	for _, s := range b.Seams {
		n += s.Stitches
	}
	return n
}

func seamsTable(c core.Canoe) Table {
	t := Table{
		Key: "seams", Title: "Seams and the root they take", Home: HomeRoot, Open: true, OnPaper: true,
		Note: "Before waste. Lacing of the gunwales is apart.",
	}
	return fill(t, refs(c.Bark.Seams[:]),
		text("seam", "Seam", func(s *bark.Seam) string { return seamLabels[s.Kind] }),
		col("count", "How many", units.Count, func(s *bark.Seam) Cell { return whole(s.Count) }),
		col("length", "Length", units.Run, func(s *bark.Seam) Cell { return num(s.Length) }),
		text("stitch", "Sewn", func(s *bark.Seam) string { return s.Sewing.Stitching.String() }),
		col("stitches", "Stitches", units.Count, func(s *bark.Seam) Cell { return whole(s.Stitches) }),
		col("holes", "Holes", units.Count, func(s *bark.Seam) Cell { return whole(s.Holes) }).screenOnly(),
		col("each", "Root in a stitch", units.SmallLength,
			func(s *bark.Seam) Cell { return num(s.Sewing.PerStitch()) }).screenOnly(),
		col("root", "Split root", units.Run, func(s *bark.Seam) Cell { return num(s.Root) }),
	)
}
