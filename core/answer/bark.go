package answer

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/stage"
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
	if wanting := wantingOnBed(c); d.OnHand.Count > 0 && wanting > 0 {
		sheets = working("# of the # on hand and # wanting, along # of bark on the bed, lapped #",
			count(n.Sheets-wanting), count(d.OnHand.Count), count(wanting), length(n.Length), small(d.SeamLap))
	}
	return append([]*Number{
		printed(stage.Gather, "bark.width", "Width of bark for one sheet with no side panels", units.Length, n.Width,
			fromShape,
			working("twice the greatest half girth, on the bed or finished, # and # to trim at the gunwale",
				length(n.Width/2-d.GunwaleTurn), small(d.GunwaleTurn))).upward().short("Bark width"),
		number(stage.Gather, "bark.treeDiameter", "Tree for a sheet that wide, diameter where it is taken",
			units.SmallLength, n.TreeWidth.Diameter, fromGeometry+"; the grain runs round the tree ("+fromAdney+", p. 15)",
			working("width # over 3.1416, with nothing allowed for torn edges or the trunk's taper",
				length(n.Width))).up(),
		number(stage.Gather, "bark.treeGirth", "That tree, by a tape round it there", units.Length, n.TreeWidth.Girth,
			fromGeometry,
			working("the sheet's width goes round the tree: #", length(n.Width))).up(),
		number(stage.Gather, "bark.sheetTree", "Tree for the narrowest sheet laid out, diameter where it is taken",
			units.SmallLength, n.TreeSheet.Diameter, fromGeometry,
			working("width # over 3.1416, with # of clear trunk", length(c.Bark.SheetWidth),
				length(n.TreeSheet.Clear))).up(),
		printed(stage.Gather, "bark.sheets", "Sheets end to end", units.Count, float64(n.Sheets), fromShape,
			sheets).by(known.Estimate),
		printed(stage.Gather, "bark.area", "Bark, laps and trim included", units.Area, n.Area, fromShape,
			working("finished skin # with the laps of panels and joints and the bark to trim", area(n.SkinArea))),
		frameNumber(c),
	}, layoutNumbers(c)...)
}

// wantingOnBed is how many of the sheets on the bed there are not.
func wantingOnBed(c core.Canoe) int {
	n := 0
	for _, p := range c.Bark.Bed {
		if p.Wanting() {
			n++
		}
	}
	return n
}

func frameNumber(c core.Canoe) *Number {
	d := c.Design
	if d.BuiltOn == design.OnGunwales {
		return printed(stage.Bed, "frame.width", "Gunwale frame, out to out", units.Length,
			2*c.Hull.FrameHalfBreadth(0), fromShape,
			working("# between the inwales and both of them", length(d.Beam))).short("Frame, width")
	}
	return printed(stage.Bed, "frame.width", "Building frame, out to out", units.Length, d.FrameWidth, fromShape,
		working("# as set", length(d.FrameWidth))).short("Frame, width")
}

// seamNames are the results of each kind of seam.
var seamNames = [...]struct {
	home      stage.Key
	key, name string
}{
	bark.GoreSeams:  {stage.Bark, "seams.gores", "Gores"},
	bark.PanelSeams: {stage.Bark, "seams.panels", "Side panels"},
	bark.JointSeams: {stage.Bark, "seams.joints", "End-to-end joints"},
	bark.EndSeams:   {stage.Ends, "seams.ends", "Ends"},
}

func seamNumbers(c core.Canoe) []*Number {
	b := c.Bark
	total := 0.0
	var out []*Number
	for _, s := range b.Seams {
		total += s.Length
		n := seamNames[s.Kind]
		out = append(out, number(n.home, n.key, n.name+", length of seam", units.Run, s.Length, fromShape,
			working("#, along the finished hull", many(s.Count, "seam", "seams"))))
	}
	out = append([]*Number{printed(stage.Bark, "seams.total", "All seams in the bark", units.Run, total, fromShape,
		working("gores #, side panels #, joints #, ends #", run(b.Seams[0].Length), run(b.Seams[1].Length),
			run(b.Seams[2].Length), run(b.Seams[3].Length))).short("Seams")}, out...)
	r := c.Gather.Root
	out = append(out,
		printed(stage.Bark, "root.seams", "Split root for the seams, before waste", units.Run, b.Root.Split,
			fromAdney+", pp. 43-48",
			working("#: over and over takes the bite, the slant and two thicknesses; two strands take twice the "+
				"stitch and the thickness", many(stitches(b), "stitch", "stitches"))).by(known.Estimate),
		number(stage.Bark, "root.seamsWaste", "Split root for the seams, with waste", units.Run, b.Root.WithWaste,
			fromBuilders,
			working("# and # of it for waste", run(b.Root.Split).rough(), percent(c.Design.RootWaste))).up(),
		printed(stage.Gather, "root.total", "Split root in all, with waste", units.Run, r.WithWaste, fromBuilders,
			working("lacing # and seams #, each with its waste", run(c.Frame.Lacing.WithWaste).atLeast(),
				run(b.Root.WithWaste).atLeast())).up().short("Split root"),
		printed(stage.Gather, "root.dug", "Root to dig", units.Run, r.Dug, fromAdney+", pp. 42-43",
			working("half of #: each root is split in two", run(r.WithWaste).atLeast())).short("Root to dig").up(),
		number(stage.Gather, "root.lengths", "The same if every root were of full length", units.Count, float64(r.Whole),
			fromAdney+", p. 16",
			working("# to dig, from roots up to # long; nothing is lost to odd lengths", run(r.Dug).atLeast(),
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
		Key: "seams", Title: "Seams and the root they take", Home: stage.Bark, Open: true, OnPaper: true,
		Note: "Before waste. Lacing of the gunwales is apart.",
	}
	return fill(t, refs(c.Bark.Seams[:]),
		text("seam", "Seam", func(s *bark.Seam) string { return seamNames[s.Kind].name }),
		col("count", "How many", units.Count, func(s *bark.Seam) Cell { return whole(s.Count) }),
		col("length", "Length", units.Run, func(s *bark.Seam) Cell { return num(s.Length) }),
		text("stitch", "Sewn", func(s *bark.Seam) string { return s.Sewing.Stitching.String() }),
		col("stitches", "Stitches", units.Count, func(s *bark.Seam) Cell { return whole(s.Stitches) }),
		col("holes", "Holes", units.Count, func(s *bark.Seam) Cell { return whole(s.Holes) }).screenOnly(),
		col("each", "Root in a stitch", units.SmallLength,
			func(s *bark.Seam) Cell { return about(s.Sewing.PerStitch()) }).screenOnly(),
		col("root", "Split root, about", units.Run, func(s *bark.Seam) Cell { return about(s.Root) }),
	)
}
