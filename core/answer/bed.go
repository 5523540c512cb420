package answer

import (
	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

func bedNumbers(c core.Canoe) []*Number {
	d, b := c.Design, c.Frame.Bed
	first, last := b.Posts[0], b.Posts[len(b.Posts)-1]
	return []*Number{
		printed(stage.Lace, "sheer.amidships", "Sheer amidships", units.Length, c.Hull.Sheer(0), fromShape,
			working("depth # from the outside of the bark to the top of the inwale", length(d.Depth))),
		printed(stage.Lace, "sheer.end", "Sheer at the gunwale ends", units.Length, c.Hull.Sheer(c.Hull.GunwaleX),
			fromShape,
			working("# as set, over the bottom amidships", length(d.GunwaleEndHeight))).short("Sheer, ends"),
		number(stage.Lace, "post.middle", "Post under the middle thwart", units.SmallLength, first.Length, fromShape,
			postWorking(c, first)).short("Post, middle"),
		number(stage.Lace, "post.end", "Post under the gunwale ends", units.SmallLength, last.Length, fromShape,
			postWorking(c, last)).short("Post, ends"),
		printed(stage.Bed, "bed.length", "Building bed, length", units.Length, d.BedLength, fromOwnChoice,
			working("# as set, crowned # in the middle", length(d.BedLength), length(d.BedCrown))),
		printed(stage.Bed, "bed.breadth", "Building bed, breadth", units.Length, b.Breadth, fromAdney+", pp. 38-40",
			working("# of frame out to out and # for the stakes on both sides: a published bed is about # "+
				"broad under gunwales of #", length(b.Breadth-frame.BedBroader), length(frame.BedBroader),
				length(33*units.Inch+frame.BedBroader), length(33*units.Inch))).by(known.Published),
		printed(stage.Bed, "bed.crown", "Crown of the bed", units.SmallLength, d.BedCrown, fromOwnChoice,
			working("# as set, higher in the middle than at its ends", small(d.BedCrown))),
		printed(stage.Bed, "bed.stakes", "Stakes round the bed", units.Count, float64(b.StakeCount),
			fromAdney+", pp. 40-41, whose own boat has 34",
			working("pairs no more than about # apart, none at a thwart, one pair at each end of the frame and two "+
				"beyond: # pairs each side of the middle", length(frame.StakeSpacing),
				count(len(b.Stakes)))).short("Stakes").by(known.Published),
		printed(stage.Bed, "bed.slack", "Bark longer on the bed than on the finished bottom", units.Offset, b.Slack,
			fromOwnChoice,
			working("length over a bed crowned # and blocked # between the heels, less the bottom's with its "+
				"rocker of #", length(d.BedCrown), length(d.EndBlocking),
				length(d.Rocker))).short("Bark over").by(known.Estimate),
	}
}

func postWorking(c core.Canoe, p frame.Post) func(units.System) string {
	d := c.Design
	x := p.X
	_, inwale := frame.InwaleAt(c.Hull, c.Hull.RunTo(x))
	return working("sheer # less inwale # and bark #, less the bed # there, plus # that the bed under the heels "+
		"lifts the boat by",
		length(c.Hull.Sheer(x)), small(inwale), thin(d.BarkThickness), length(frame.BedHeight(c.Hull, x)),
		length(frame.BedHeight(c.Hull, c.Hull.HeelX)-c.Hull.Bottom(c.Hull.HeelX)))
}

func postsTable(c core.Canoe) Table {
	t := Table{
		Key: "posts", Title: "Posts for the sheer", Home: stage.Lace, Open: true, OnPaper: true,
		Blanks: []string{"As built"},
		Note:   "Each stands on the bark, under the inwale. The boat is the same toward both ends.",
	}
	return fill(t, refs(c.Frame.Bed.Posts),
		text("under", "Under", func(p *frame.Post) string { return p.Under }),
		col("station", "From amidships", units.Length, func(p *frame.Post) Cell { return num(p.X) }),
		col("length", "Post", units.SmallLength, func(p *frame.Post) Cell { return num(p.Length) }),
		col("bed", "Bed there", units.Length, func(p *frame.Post) Cell { return num(frame.BedHeight(c.Hull, p.X)) }),
		col("sheer", "Top of the inwale, finished", units.Length,
			func(p *frame.Post) Cell { return num(c.Hull.Sheer(p.X)) }),
	).parts(PostPart)
}

// postStep is how far apart the stations of the table of posts stand, metres.
const postStep = units.Foot

// stationPosts are posts at even stations, for any that a builder wants between.
func stationPosts(c core.Canoe) Table {
	t := Table{
		Key: "stationposts", Title: "Posts, foot by foot", Home: stage.Lace,
		Note: "Between the thwarts a post may stand wherever the gunwale wants holding: these are its lengths. The " +
			"boat is the same toward both ends.",
	}
	var stations []float64
	for i := 0; float64(i)*postStep <= c.Hull.GunwaleX; i++ {
		stations = append(stations, float64(i)*postStep)
	}
	return fill(t, stations,
		col("station", "From amidships", units.Length, num),
		col("length", "Post", units.SmallLength, func(x float64) Cell { return num(frame.PostLength(c.Hull, x)) }),
		col("bed", "Bed there", units.Length, func(x float64) Cell { return num(frame.BedHeight(c.Hull, x)) }),
		col("sheer", "Top of the inwale, finished", units.Length, func(x float64) Cell { return num(c.Hull.Sheer(x)) }),
	)
}

func frameTable(c core.Canoe) Table {
	between := "Between the battens"
	t := Table{
		Key: "frame", Title: "Building frame", Home: stage.Bed, Open: true, OnPaper: true, Blanks: []string{"As built"},
		Note: "Crosspieces hold the two long battens; the middle one is single, the others stand fore and aft.",
	}
	if c.Design.BuiltOn == design.OnGunwales {
		between = "Between the inwales"
		t.Title = "Gunwale frame on the bed"
		t.Note = "The boat is built on its gunwales: the crosspieces are the thwarts, fitted and lashed before the " +
			"bark is laid; the middle one is single, the others stand fore and aft."
	}
	return fill(t, refs(c.Frame.Bed.Crosspieces),
		ordinal[*frame.Crosspiece]("piece", "Crosspiece", 0),
		col("station", "From amidships", units.Length, func(p *frame.Crosspiece) Cell { return num(p.X) }),
		col("out", "Out to out", units.Length, func(p *frame.Crosspiece) Cell { return num(p.OutToOut) }),
		col("clear", between, units.Length, func(p *frame.Crosspiece) Cell {
			return num(p.Clear).saying(wordIf(p.Clear == 0, "nothing: they meet"))
		}),
	).parts(CrosspiecePart)
}

func stakesTable(c core.Canoe) Table {
	t := Table{
		Key: "stakes", Title: "Stakes", Home: stage.Bed, OnPaper: true,
		Note: "Each line is four stakes: to port and starboard, fore and aft.",
	}
	return fill(t, refs(c.Frame.Bed.Stakes),
		ordinal[*frame.Stake]("stake", "Pair", 1),
		col("station", "From amidships", units.Length, func(s *frame.Stake) Cell { return about(s.X) }),
		col("out", "From the centre line", units.Length, func(s *frame.Stake) Cell { return about(s.Y) }),
		text("where", "Where", func(s *frame.Stake) string {
			if s.Beyond {
				return "beyond the frame"
			}
			return "outside the frame"
		}),
	).parts(StakePart)
}

// spread is the ends of n equal spaces from amidships to end.
func spread(end float64, n int) []float64 {
	out := make([]float64, n+1)
	for i := range out {
		out[i] = end * float64(i) / float64(n)
	}
	return out
}
