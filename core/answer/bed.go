package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/units"
)

func bedNumbers(c core.Canoe) []Number {
	d, b := c.Design, c.Frame.Bed
	first, last := b.Posts[0], b.Posts[len(b.Posts)-1]
	return []Number{
		number(BedAndSheer, "sheer.amidships", "Sheer amidships", units.Length, c.Hull.Sheer(0), fromShape,
			working("depth # from the outside of the bark to the top of the inwale", length(d.Depth))),
		number(BedAndSheer, "sheer.end", "Sheer at the gunwale ends", units.Length, c.Hull.Sheer(c.Hull.GunwaleX), fromShape,
			working("# as set, over the bottom amidships", length(d.GunwaleEndHeight))),
		number(BedAndSheer, "post.middle", "Post under the middle thwart", units.SmallLength, first.Length, fromShape, postWorking(c, first)),
		number(BedAndSheer, "post.end", "Post under the gunwale ends", units.SmallLength, last.Length, fromShape, postWorking(c, last)),
		number(BedAndSheer, "bed.stakes", "Stakes round the bed", units.Count, float64(b.StakeCount), fromAdney+", pp. 40-41, whose own boat has 34",
			working("pairs no more than about # apart, none at a thwart, one pair at each end of the frame and two beyond: # pairs each side of the middle", length(frame.StakeSpacing), count(len(b.Stakes)))).by(Published),
		number(BedAndSheer, "bed.slack", "Bark longer on the bed than on the finished bottom", units.Offset, b.Slack, fromOwnChoice,
			working("length over a bed crowned # and blocked # between the heels, less the bottom's with its rocker of #", length(d.BedCrown), length(d.EndBlocking), length(d.Rocker))).by(Estimate),
	}
}

func postWorking(c core.Canoe, p frame.Post) func(units.System) string {
	d := c.Design
	x := p.X
	return working("sheer # less inwale # and bark #, less the bed # there, and up with the bed under the heels #",
		length(c.Hull.Sheer(x)), small(d.InwaleDepth), thin(d.BarkThickness), length(frame.BedHeight(c.Hull, x)),
		length(frame.BedHeight(c.Hull, c.Hull.HeelX)-c.Hull.Bottom(c.Hull.HeelX)))
}

func postsTable(c core.Canoe) Table {
	t := Table{
		Key: "posts", Title: "Posts for the sheer", Group: BedAndSheer,
		Note: "Each stands on the bark, under the inwale. The boat is the same toward both ends.",
		Columns: []Column{{"under", "Under", units.Count}, {"station", "From amidships", units.Length}, {"length", "Post", units.SmallLength},
			{"bed", "Bed there", units.Length}, {"sheer", "Top of the inwale, finished", units.Length}},
	}
	for i, p := range c.Frame.Bed.Posts {
		t.Rows = append(t.Rows, Row{Part: PostPart(i), Cells: []Cell{words(p.Under), num(p.X), num(p.Length), num(frame.BedHeight(c.Hull, p.X)), num(c.Hull.Sheer(p.X))}})
	}
	return t
}

// postStep is how far apart the stations of the table of posts stand, metres.
const postStep = units.Foot

// stationPosts are posts at even stations, for any that a builder wants between.
func stationPosts(c core.Canoe) Table {
	t := Table{
		Key: "stationposts", Title: "Posts at every foot", Group: BedAndSheer,
		Note:    "Between the thwarts a post may stand wherever the gunwale wants holding: these are its lengths. The boat is the same toward both ends.",
		Columns: []Column{{"station", "From amidships", units.Length}, {"length", "Post", units.SmallLength}, {"bed", "Bed there", units.Length}, {"sheer", "Top of the inwale, finished", units.Length}},
	}
	for i := 0; float64(i)*postStep <= c.Hull.GunwaleX; i++ {
		x := float64(i) * postStep
		t.Rows = append(t.Rows, Row{Cells: []Cell{num(x), num(frame.PostLength(c.Hull, x)), num(frame.BedHeight(c.Hull, x)), num(c.Hull.Sheer(x))}})
	}
	return t
}

func frameTable(c core.Canoe) Table {
	t := Table{
		Key: "frame", Title: "Building frame", Group: BarkAndFrame,
		Note: "Crosspieces hold the two long battens; the middle one is single, the others stand fore and aft.",
		Columns: []Column{{"piece", "Crosspiece", units.Count}, {"station", "From amidships", units.Length},
			{"out", "Out to out", units.Length}, {"clear", "Between the battens", units.Length}},
	}
	if c.Design.BuiltOn == design.OnGunwales {
		t.Title = "Gunwale frame on the bed"
		t.Note = "The boat is built on its gunwales: the crosspieces are the thwarts, fitted and lashed before the bark is laid; the middle one is single, the others stand fore and aft."
		t.Columns[3].Label = "Between the inwales"
	}
	for i, p := range c.Frame.Bed.Crosspieces {
		t.Rows = append(t.Rows, Row{Part: "crosspiece." + strconv.Itoa(i), Cells: []Cell{whole(i), num(p.X), num(p.OutToOut), num(p.Clear)}})
	}
	return t
}

func stakesTable(c core.Canoe) Table {
	t := Table{
		Key: "stakes", Title: "Stakes", Group: BedAndSheer,
		Note:    "Each line is four stakes: to port and starboard, fore and aft.",
		Columns: []Column{{"stake", "Pair", units.Count}, {"station", "From amidships", units.Length}, {"out", "From the centre line", units.Length}, {"where", "Where", units.Count}},
	}
	for i, s := range c.Frame.Bed.Stakes {
		where := "outside the frame"
		if s.Beyond {
			where = "beyond the frame"
		}
		t.Rows = append(t.Rows, Row{Part: "stake." + strconv.Itoa(i), Cells: []Cell{whole(i + 1), about(s.X), about(s.Y), words(where)}})
	}
	return t
}

// offsetStations is how many spaces the table of offsets divides half the boat into.
const offsetStations = 12

func offsetsTable(c core.Canoe) Table {
	h := c.Hull
	t := Table{
		Key: "offsets", Title: "Shape at stations", Group: BedAndSheer,
		Note: "Heights over the outside of the bark on the bottom amidships; breadths are half ones from the centre line.",
		Columns: []Column{{"station", "From amidships", units.Length}, {"gunwale", "Inside the gunwale", units.Length}, {"bark", "Bark at the edge", units.Length},
			{"turn", "Turn line", units.Length}, {"frame", "Building frame", units.Length}, {"sheer", "Top of inwale", units.Length}, {"bottom", "Bottom", units.Length}, {"girth", "Half girth", units.Length}},
	}
	end := min(h.GunwaleX, h.HeelX)
	for i := range offsetStations + 1 {
		x := end * float64(i) / offsetStations
		t.Rows = append(t.Rows, Row{Cells: []Cell{num(x), num(h.HalfBeam(x)), num(h.SkinHalfBreadth(x)), num(h.Turn(x)),
			num(h.FrameHalfBreadth(x)), num(h.Sheer(x)), num(h.Bottom(x)), num(h.Section(x).HalfGirth())}})
	}
	return t
}
