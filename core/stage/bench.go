package stage

// Bench is a list of what is made one after another at a stage: each row of a table is a
// line of it, or several where the row stands for several pieces.
type Bench struct {
	// Name says what the list is of. Table is the key of its table, Step that of the step
	// whose rows it ticks.
	Name, Table, Step string
	// Order is the column whose leading number the lines go by, or empty for the table's own order.
	Order string
	// What names a line: words with {column} where the cell of that column stands.
	What string
	// Figures are what a line may show large: the first of them that its row has.
	Figures []Figure
	// Also are what else a line tells: the key of a column, shown with its label; one that
	// ends in * for every column that begins so; or words with {column} in them.
	Also []string
	// Pieces is how many pieces a row stands for. Middle is the column that is zero
	// amidships, where there are half as many. Apart tells that each is made by itself and
	// has its own line.
	Pieces Pieces
	Middle string
	Apart  bool
	// Reads is the id of the kind of measurement that the figure is one of, or empty.
	Reads string
}

// Figure is the column that is shown large, and what it is measured from.
type Figure struct{ Column, From string }

// Pieces is how many pieces one row of a table stands for.
type Pieces int

const (
	// Single is one piece, or several at one place.
	Single Pieces = iota
	// TwoEnds is one toward either end.
	TwoEnds
	// FourQuarters is one on either side toward either end.
	FourQuarters
)

// ribList and the others below are lists of one table, whose pieces are told apart in the
// same way in each.
func ribList(name, step, order, from, column string, also ...string) Bench {
	return Bench{Name: name, Table: "ribs", Step: step, Order: order, What: "Rib {rib}",
		Figures: []Figure{{column, from}}, Also: also, Pieces: TwoEnds, Middle: "station", Apart: true}
}

func postList(name, step, column, from, reads string, also ...string) Bench {
	return Bench{Name: name, Table: "posts", Step: step, What: "{under}", Figures: []Figure{{column, from}}, Also: also,
		Pieces: FourQuarters, Middle: "station", Reads: reads}
}

func holeList(name, step string) Bench {
	return Bench{Name: name, Table: "holes", Step: step, What: "Group {group}",
		Figures: []Figure{{"hole1", "first hole, along the gunwale from the middle mark"}}, Also: []string{"hole*"},
		Pieces: FourQuarters, Middle: "group", Apart: true}
}

func seamList(name, step, from string, also ...string) Bench {
	return Bench{Name: name, Table: "seams", Step: step, What: "{seam}", Figures: []Figure{{"length", from}}, Also: also}
}

var gatherLists = []Bench{
	{Name: "Trees", Table: "trees", Step: "gather.trees", What: "For {sheet}",
		Figures: []Figure{{"girth", "round the trunk at breast height, by tape, at the least"}},
		Also:    []string{"least", "most", "diameter", "at", "there", "width", "length"}},
	{Name: "Roots to cut", Table: "roots", Step: "gather.split", What: "Root {root}, {half}",
		Figures: []Figure{{"cut", "first cut, from the thick end, then again for each group"}, {"sewn", "whole, for seams"}},
		Also:    []string{"groups", "last", "seams", "sewn", "left"}},
	{Name: "Bolts and roots", Table: "logs", Step: "gather.bolts", What: "{what}, {wood}",
		Figures: []Figure{{"clear", "clear length, by tape"}}, Also: []string{"count", "girth", "diameter"}},
	{Name: "Gear", Table: "gear", Step: "gather.gear", What: "{gear}",
		Figures: []Figure{{"low", "length, or the shortest of them"}, {"count", "how many"}},
		Also:    []string{"high", "count", "width", "thickness"}},
}

var gunwaleLists = []Bench{
	{Name: "Gunwale marks", Table: "marks", Step: "gunwales.marks", What: "{mark}",
		Figures: []Figure{{"run", "along the gunwale, from the middle mark"}}, Also: []string{"holes", "{peg} here", "station"},
		Pieces: FourQuarters, Middle: "run"},
	{Name: "Thwarts", Table: "thwarts", Step: "gunwales.thwarts", What: "Thwart {thwart} from the middle",
		Figures: []Figure{{"shoulder", "clear length, shoulder to shoulder"}},
		Also:    []string{"ends", "longest", "plan", "flare", "run"}, Pieces: TwoEnds, Middle: "station", Reads: "clearWidth"},
}

var bedLists = []Bench{
	{Name: "Crosspieces", Table: "frame", Step: "bed.tie", What: "Crosspiece {piece}",
		Figures: []Figure{{"out", "out to out of the battens"}}, Also: []string{"clear", "station"},
		Pieces: TwoEnds, Middle: "station"},
	{Name: "Stakes", Table: "stakes", Step: "bed.stakes", What: "Stakes, pair {stake}",
		Figures: []Figure{{"station", "from amidships, along the centre line"}}, Also: []string{"out", "where"},
		Pieces: FourQuarters, Middle: "station"},
	postList("Posts to cut", "bed.posts", "length", "length of the post, standing on the bark", "", "sheer", "bed", "station"),
}

var barkLists = []Bench{
	{Name: "Bark to cut", Table: "cutting", Step: "bark.unroll", What: "{piece}, {use}",
		Figures: []Figure{{"length", "length of the piece, along the boat"}}, Also: []string{"width", "from", "bow", "aft"}},
	{Name: "Gores", Table: "gores", Step: "bark.slash", What: "Gore {gore}",
		Figures: []Figure{{"run", "along the gunwale, from amidships"}},
		Also:    []string{"station", "depth", "foot", "width", "state"},
		Pieces:  FourQuarters, Middle: "run"},
	{Name: "Side panels", Table: "panels", Step: "bark.panels", What: "Panel {panel}, {side}",
		Figures: []Figure{{"length", "length of the strip"}}, Also: []string{"width", "bow", "aft", "trim"}},
	seamList("Seams to sew", "bark.sew", "seam, in all", "count", "stitch", "stitches", "holes", "each", "root"),
}

var laceLists = []Bench{
	holeList("Lacing", "lace.lace"),
	holeList("Holes", "lace.holes"),
	postList("Posts to set", "lace.posts", "length", "length of the post, standing on the bark", "", "sheer", "bed", "station"),
	postList("Sheer heights", "lace.lift", "sheer", "top of the inwale, over the bottom amidships", "sheerHeight",
		"length", "bed", "station"),
}

var endLists = []Bench{
	{Name: "Stem splits", Table: "laminations", Step: "ends.split", What: "Split {lamination} of the stem",
		Figures: []Figure{{"split", "from the outer face, never from layer to layer; stop at the solid heel"}},
		Also:    []string{"both stems alike"}},
	{Name: "Headboards", Table: "headboard", Step: "ends.boards", What: "{what}",
		Figures: []Figure{{"size", "on both boards alike"}}},
	{Name: "Closing", Table: "closing", Step: "ends.sew", What: "{step}",
		Figures: []Figure{{"from", "where it begins"}}, Also: []string{"to", "count", "apart", "off", "how"}},
}

var ribLists = []Bench{
	ribList("Ribs to fit", "rib.drive", "order", "tip to tip over the outer face; leave it long until it is tried", "length",
		"rough", "width", "thickness", "bend", "run", "foot", "lean", "state"),
	ribList("Ribs to shave", "rib.shave", "", "rough length", "rough", "width", "thickness", "length", "taper"),
	{Name: "Pairs to bend", Table: "pairs", Step: "rib.bend", What: "Pair {pair}: ribs {ribs}",
		Figures: []Figure{{"bend", "from the middle of the strip, either way: bent hardest"}},
		Also: []string{"apart", "radius", "rough", "width", "thickness", "state",
			"one inside the other, a little past the shape"}},
	{Name: "Sheathing", Table: "sheathing", Step: "rib.sheathe", What: "Length {region} of the boat",
		Figures: []Figure{{"length", "length of the longest strips"}}, Also: []string{"shortest", "strips", "from", "to"}},
}

var pitchLists = []Bench{
	seamList("Seams to pitch", "pitch.outside", "seam to pitch, in all", "count"),
}
