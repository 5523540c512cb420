package answer

import (
	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// willNotFit is the state of a bend that leaves the piece no radius.
const willNotFit = "will not fit"

// verdictWord is a bend's verdict in words.
func verdictWord(b wood.Bend) string {
	if b.WillNotFit {
		return willNotFit
	}
	return b.Verdict.String()
}

// radiusWord returns the word shown in place of a radius that does not exist.
func radiusWord(b wood.Bend) string {
	switch {
	case b.WillNotFit:
		return willNotFit
	case b.Radius > straightRadius:
		return "straight"
	}
	return ""
}

// straightRadius is the radius over which a piece is shown as straight, metres.
const straightRadius = 1000

func endNumbers(c core.Canoe) []*Number { return append(stemNumbers(c), closingNumbers(c)...) }

// springback names how far a bent stem opens, as many times its radius.
const springback = "Springback: the curve may open to so many times its radius"

func stemNumbers(c core.Canoe) []*Number {
	d, s, b := c.Design, c.Frame.Stem, c.Frame.Headboard
	in := s.Innermost()
	splits := printed(stage.Ends, "stem.splitsNeeded", "Laminations that would be within guide", units.Count,
		float64(s.Within.Laminations), fromBending,
		working("the fewest whose innermost is within guide; by halving, # after #", count(s.Within.Halved),
			many(s.Within.Rounds, "round", "rounds"))).by(known.Estimate)
	if !s.WithinOK {
		splits = splits.absent("no splitting is enough")
		splits.Working = working("up to # laminations were tried", count(wood.MaxSplits))
	}
	var back *Number
	switch {
	case in.WillNotFit:
		back = printed(stage.Ends, "stem.springback", springback, units.Ratio, 0,
			fromBending, working("the stem-piece leaves no radius to bend to")).absent(willNotFit)
	case s.Springback.FullyStraight:
		back = printed(stage.Ends, "stem.springback", springback, units.Ratio, 1, fromBending,
			working("a single strip bent to # times its thickness stays elastic",
				ratio(in.Ratio))).in("may spring straight: dry it in the form").by(known.Estimate)
	default:
		back = printed(stage.Ends, "stem.springback", springback, units.Ratio,
			(s.Springback.Low+s.Springback.High)/2, fromBending,
			working("a single strip bent to # times its thickness; laminations lashed and not glued spring back "+
				"each alone", ratio(in.Ratio))).between(s.Springback.Low, s.Springback.High)
	}
	return []*Number{
		printed(stage.Ends, "stem.height", "Stem-head height", units.Length, d.EndHeight, fromShape,
			working("# as set, over the bottom amidships", length(d.EndHeight))),
		printed(stage.Ends, "stem.curve", "Stem along its outer face, heel to head", units.Length, s.Curve, fromShape,
			working("from the heel's inboard end, # inboard of the headboard's foot, along the bottom and the "+
				"end's curve to a head # high",
				small(c.Frame.Headboard.FootX-s.SolidFrom), length(d.EndHeight))),
		number(stage.Ends, "stem.solidEnd", "End of the stem's solid heel, from amidships", units.Length, s.SolidEnd,
			fromDrawn+"; "+fromAdney+", pp. 48-50",
			working("the solid begins # from amidships, at the last rib's outer edge and at most # inboard of the "+
				"headboard's foot, and runs # along the profile; there the laminations begin",
				length(s.SolidFrom), small(design.HeelInboard), small(s.Solid))),
		printed(stage.Ends, "stem.blank", "Stem blank to split out", units.Length, s.Blank, fromDrawn+"; "+fromOwnChoice,
			working("curve # and # to trim; a published billet for a boat of # is # long", length(s.Curve),
				small(frame.StemTrim), length(19*units.Foot), small(36*units.Inch))).short("Stem blank").up(),
		stockNumber(c),
		printed(stage.Ends, "stem.minRadius", "Tightest bend of the stem", units.SmallLength, in.Radius, fromShape,
			working("the end curve's tightest radius past the solid heel #, inside the bark # and the stem-piece "+
				"#, at the middle of the innermost lamination",
				small(s.Radius), thin(d.BarkThickness), small(d.StemDepth))).in(radiusWord(in)).short("Stem " +
			"radius"),
		printed(stage.Ends, "stem.laminationThickness", "Thickness of one lamination", units.Thickness, s.Lamination,
			fromGeometry,
			working("stem-piece # split into #", small(d.StemDepth), count(d.StemLaminations))).short("Lamination"),
		number(stage.Ends, "stem.strain", "Strain at its faces", units.Percent, in.Strain, "beam theory",
			working("thickness # over twice the radius #", thin(in.Thickness), small(max(0,
				in.Radius)))).in(wordIf(in.WillNotFit, willNotFit)),
		printed(stage.Ends, "stem.ratio", "Radius over thickness", units.Ratio, in.Ratio, "beam theory",
			working("radius # over thickness #", small(max(0, in.Radius)),
				thin(in.Thickness))).in(wordIf(in.WillNotFit, willNotFit)),
		number(stage.Ends, "stem.verdict", "Will the stem take its bend?", units.Count, float64(in.Verdict), fromBending,
			bendWorking("", in, d.StemStock)).in(verdictWord(in)).by(known.Estimate),
		splits,
		back,
		formNumber(c),
		number(stage.Ends, "headboard.height", "Headboard, from its foot to the top of the inwale", units.SmallLength,
			b.Height, fromShape+"; "+fromDrawn,
			working("top of the inwale # high at its mark, less a floor # high, the bark # and half the "+
				"stem-piece's depth, #: the foot comes down that far beside the heel",
				length(b.Top.Y), small(c.Hull.Floor(b.FootX)), thin(d.BarkThickness), small(d.StemDepth/2))),
		number(stage.Ends, "headboard.width", "Headboard where it is broadest", units.SmallLength, b.Width,
			fromShape+"; "+fromDrawn,
			working("the skin cut across there, less bark # and sheathing # on either side; about # is a "+
				"published boat's that bulges, those that do not draw # to #",
				thin(d.BarkThickness), small(d.SheathingThickness), small(4*units.Inch), small(1.5*units.Inch),
				small(3.25*units.Inch))),
		number(stage.Ends, "headboard.foot", "Headboard's foot, from amidships", units.Length, b.FootX, fromDrawn,
			working("its mark is # along the gunwale, # from amidships; the foot stands # farther out", length(b.Run),
				length(b.X), small(b.FootX-b.X))),
	}
}

// stockNumber is how deep the billet is to be where the heel is sawn.
func stockNumber(c core.Canoe) *Number {
	d, s := c.Design, c.Frame.Stem
	rule := "stem-piece # and the # that the solid heel's curve stands off its chord: it is sawn to the curve and " +
		"not bent"
	terms := []term{small(d.StemDepth), small(s.Sagitta)}
	if s.SolidTightest {
		rule += "; the end's tightest curve, radius #, lies in it"
		terms = append(terms, small(s.SolidRadius))
	}
	return number(stage.Ends, "stem.stock", "Stem blank, depth at its heel", units.SmallLength, s.Stock, fromGeometry,
		working(rule, terms...))
}

// formNumber is the radius of the bending form at the tightest place.
func formNumber(c core.Canoe) *Number {
	d, s := c.Design, c.Frame.Stem
	n := number(stage.Ends, "stem.formRadius", "Bending form, tightest radius", units.SmallLength, s.FormRadius,
		"a trial piece of your own; every radius of a strip that opens grows by the same share", nil)
	switch {
	case s.Innermost().WillNotFit:
		n.Working = working("the stem-piece leaves no radius to bend to")
		return n.absent(willNotFit)
	case !frame.Tried(d):
		n.Working = working("the stem's inner face is # at its tightest; how far the form must be tighter only a "+
			"trial piece of this wood tells: bend one, let it dry, let it go and enter by how much its radius grew",
			small(max(0, s.Radius-d.BarkThickness-d.StemDepth)))
		return n.absent("test first")
	}
	n.Working = working("the stem's inner face, # at its tightest, over 1 + #",
		small(s.Radius-d.BarkThickness-d.StemDepth), percent(d.StemOpening))
	return n.by(known.Estimate)
}

// bendWorking says how a bend is judged and how sure the guide is.
func bendWorking(what string, b wood.Bend, stock wood.Stock, terms ...term) func(units.System) string {
	guide := stock.Condition.Guide()
	return working(what+"radius over thickness is #; within guide from #, too tight under #, for "+
		""+stock.Species.Name()+", "+stock.Condition.String()+", "+stock.Grain.String()+
		". How sure: "+guide.Uncertainty+". From: "+guide.SafeBasis+"; limit: "+guide.LimitBasis,
		append(terms, ratio(b.Ratio), ratio(b.Safe), ratio(b.Limit))...)
}

func wordIf(yes bool, word string) string {
	if yes {
		return word
	}
	return ""
}

func laminationsTable(c core.Canoe) Table {
	t := Table{
		Key: "laminations", Title: "Laminations of the stem", Home: stage.Ends, Open: true, OnPaper: true,
		Note: "At the tightest place of the curve, from the outside in. The lines to split along are all measured from " +
			"the outer face: measured one from the other, errors add up.",
	}
	type layer struct {
		wood.Bend
		inner float64 // its inner face, from the outer face of the stem-piece, m
	}
	s := c.Frame.Stem
	layers := make([]layer, len(s.Laminations))
	for i, b := range s.Laminations {
		layers[i] = layer{b, float64(i+1) * s.Lamination}
	}
	bent := func(of func(wood.Bend) float64) func(*layer) Cell {
		return func(l *layer) Cell { return num(of(l.Bend)).saying(radiusWord(l.Bend)) }
	}
	last := &layers[len(layers)-1]
	return fill(t, refs(layers),
		ordinal[*layer]("lamination", "From the outside", 1),
		col("split", "Split under it, from the outer face", units.Thickness,
			func(l *layer) Cell { return when(l != last, num(l.inner)) }),
		col("radius", "Radius", units.SmallLength, bent(func(b wood.Bend) float64 { return b.Radius })),
		col("ratio", "Radius over thickness", units.Ratio, bent(func(b wood.Bend) float64 { return b.Ratio })),
		col("strain", "Strain", units.Percent, bent(func(b wood.Bend) float64 { return b.Strain })),
		text("verdict", "Verdict", func(l *layer) string { return verdictWord(l.Bend) }),
	).parts(func(int) string { return StemPart })
}

func headboardTable(c core.Canoe) Table {
	t := Table{
		Key: "headboard", Title: "Headboards", Home: stage.Ends, OnPaper: true, Blanks: []string{"As built"},
		Note: "Two alike, of cedar. The foot is notched over the heel of the stem-piece, just clear of its " +
			"laminations, and stands on the sheathing beside it; the neck goes up between the inwales as a tenon. " +
			"Cut them to the length sprung, try them, and shave the edges to the lining as they go in.",
	}
	b := c.Frame.Headboard
	notch := func(size float64) Cell { return num(size).saying(wordIf(!b.Notched, noNotch)) }
	return fill(t, refs([]boardSize{
		{"its mark, from amidships", num(b.X)}, {"its mark, along the gunwale", num(b.Run)},
		{"its foot, from amidships", num(b.FootX)},
		{"height, from the foot to the top of the inwale", num(b.Height)}, {"length, sprung", num(b.Sprung)},
		{"greatest width", num(b.Width)}, {"width " + units.SmallLength.Both(frame.FootHeight) + " up", num(b.Foot)},
		{"thickness", num(frame.HeadboardThickness)},
		{"tenon, broad", num(b.Neck)}, {"tenon, high", num(b.Tenon)},
		{"notch over the heel, broad", notch(b.NotchWidth)}, {"notch over the heel, deep", notch(b.NotchDepth)},
	}),
		text("what", "What", func(s *boardSize) string { return s.what }),
		col("size", "Size", units.Length, func(s *boardSize) Cell { return s.size }),
	).parts(func(int) string { return HeadboardPart })
}

// boardSize is one measure of a headboard.
type boardSize struct {
	what string
	size Cell
}

// noNotch is said of a board with no wood beside the heel.
const noNotch = "none: square over the heel"

func thwartsTable(c core.Canoe) Table {
	t := Table{
		Key: "thwarts", Title: "Thwarts", Home: stage.Gunwales, OnPaper: true, Blanks: []string{"As built"},
		Note: "Clear length is from shoulder to shoulder, between the inwales; the tenons go through both inwales. " +
			"Finished lengths: leave the tenons 1/2 in (13 mm) long and trim them when the gunwales stand. " +
			"The middle one is single, the others stand fore and aft.",
	}
	return fill(t, refs(c.Frame.Thwarts),
		ordinal[*frame.Thwart]("thwart", "Thwart from the middle", 0),
		col("run", "Along the gunwale", units.Length, func(w *frame.Thwart) Cell { return num(w.Run) }),
		col("station", "From amidships", units.Length, func(w *frame.Thwart) Cell { return num(w.X) }).screenOnly(),
		col("shoulder", "Clear length", units.Length, func(w *frame.Thwart) Cell { return num(w.Shoulder) }),
		col("ends", "End to end", units.Length, func(w *frame.Thwart) Cell { return num(w.EndToEnd) }),
		col("longest", "Longest edge", units.Length, func(w *frame.Thwart) Cell { return num(w.Longest) }),
		col("plan", "Shoulders off square", units.Angle, func(w *frame.Thwart) Cell { return num(w.PlanAngle) }),
		col("flare", "Gunwale off upright", units.Angle, func(w *frame.Thwart) Cell { return num(w.Flare) }),
	).parts(ThwartPart)
}
