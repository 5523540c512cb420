package answer

import (
	"barkwright/core/stage"
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/known"
	"barkwright/core/units"
)

const (
	fromRiving = "solid geometry of a round bolt without its heart and sapwood, split from end to end into " +
		"quarters or finer and by halving on faces along the bark (" + fromAdney +
		", pp. 17-19); how much larger pieces are split than finished and the spares are estimates"
	fromWeights = "every piece's volume times its density at the moisture of a boat in use: specific gravities of " +
		"the USDA Wood Handbook (maple's from memory); bark, root, pitch and moisture are estimates. Four printed " +
		"weights are met within their own range"
)

func materialNumbers(c core.Canoe) []*Number {
	g := c.Gather
	return []*Number{
		printed(stage.Choose, "weight.total", "Weight of the finished canoe", units.Mass, g.Weight.Typical, fromWeights,
			working("wood #, bark # and # of it doubled under the gunwales, root #, pitch #",
				mass(woodMass(g)).rough(), mass(g.Bark.Mass.Typical).rough(),
				mass(g.Bark.Doubled.Typical).rough(), mass(g.Root.Mass.Typical).rough(),
				mass(g.Pitch.Typical).rough())).short("Weight").between(g.Weight.Low, g.Weight.High).on(stage.Choose),
		boltsNumber(c),
		printed(stage.Gather, "materials.billets", "Billets for ribs", units.Count, float64(g.Billets), fromAdney+", p. 18",
			working("a billet two thick and two wide gives #; # ribs and spares", count(gather.RibsPerBillet),
				count(c.Design.Ribs))).by(known.Published),
		printed(stage.Pitch, "materials.pitch", "Pitch", units.Mass, g.Pitch.Typical, fromOwnChoice,
			working("by # of seam, payed inside and outside in a band of #; no source prints an amount",
				run(seamLength(c)).rough(), small(gather.PitchBand))).
			short("Pitch").between(g.Pitch.Low, g.Pitch.High).on(stage.Gather),
	}
}

func woodMass(g gather.List) float64 {
	sum := 0.0
	for _, p := range g.Pieces {
		sum += p.Mass.Typical
	}
	return sum
}

// boltsNumber is how many bolts the wood is split from.
func boltsNumber(c core.Canoe) *Number {
	d, g := c.Design, c.Gather
	bolts, state := 0, gather.Found
	for _, n := range g.Bolts {
		bolts += n.Bolts
		state = max(state, n.State)
	}
	n := printed(stage.Gather, "logs.bolts", "Bolts to split, for all the wood", units.Count, float64(bolts), fromRiving,
		working("from trunks # through at the small end inside the bark, # of heart and # of sapwood discarded; "+
			"cut from # of # clear",
			small(d.CedarDiameter), small(d.CedarHeart), small(d.CedarSapwood), many(g.Logs, "trunk", "trunks"),
			length(d.CedarClear))).short("Bolts").by(known.Estimate)
	switch state {
	case gather.TooThin:
		return n.absent("the trunk is too thin")
	case gather.TooShort:
		return n.absent("the trunk is too short")
	}
	return n
}

func logsTable(c core.Canoe) Table {
	t := Table{
		Key: "logs", Title: "Bolts, bark and root to bring in", Home: stage.Gather, Open: true, OnPaper: true,
		Blanks: []string{"Found"},
		Note: "Bolts are counted from the trunk you set, whose diameter is inside the bark at the small end; their " +
			"length has an allowance to trim. Several short bolts may come from one trunk. Look for straight bark, " +
			"no twist and no knots; ask before you cut.",
	}
	return fill(t, refs(toBring(c)),
		text("what", "For", func(b *bring) string { return b.what }),
		text("wood", "Of", func(b *bring) string { return b.wood }),
		col("count", "How many", units.Count, func(b *bring) Cell { return b.count }),
		col("clear", "Clear length", units.Length, func(b *bring) Cell { return b.clear }),
		col("girth", "Girth by tape", units.Length, func(b *bring) Cell { return b.girth }),
		col("diameter", "Diameter", units.SmallLength, func(b *bring) Cell { return b.diameter }),
		col("left", "Left of the last bolt", units.Percent, func(b *bring) Cell { return b.left }),
	)
}

// bring is something to bring in from the woods.
type bring struct {
	what, wood                          string
	count, clear, girth, diameter, left Cell
}

func toBring(c core.Canoe) []bring {
	d := c.Design
	var all []bring
	for _, n := range c.Gather.Bolts {
		w := boltWord(n.State)
		all = append(all, bring{"a bolt each: " + n.Log.String(), n.Wood, whole(n.Bolts).saying(w), atLeast(n.Length),
			atLeast(math.Pi * d.CedarDiameter), atLeast(d.CedarDiameter), when(w == "", about(n.Left))})
	}
	b, tree := c.Gather.Bark, bark.NewStanding(sheetWanted(c), d)
	return append(all,
		bring{"a sheet of bark each", "paper birch", whole(b.Sheets), atLeast(b.Tree.Clear), atLeast(tree.Girth),
			atLeast(tree.Diameter), dash},
		bring{"root, as it grows", "black spruce", rootsCell(c), num(d.RootLength), dash, words("a pencil"), dash})
}

func boltWord(s gather.BoltState) string {
	return [...]string{gather.Found: "", gather.TooShort: "none: too short", gather.TooThin: "none: too thin"}[s]
}

// rivingTable says how each piece is split out, and what one trunk gives of it.
func rivingTable(c core.Canoe) Table {
	t := Table{
		Key: "riving", Title: "How the bolts are split", Home: stage.Gather, OnPaper: true,
		Note: "Split from end to end into so many sectors, each by halving on faces along the bark; the layers are " +
			"from the heart outward. Pieces are split " +
			units.Percent.Format(gather.SplitThicker, units.Metric) + " thicker and " +
			units.SmallLength.Both(gather.SplitWider) + " wider than finished. The " +
			"last columns are the other way about: what one trunk gives if all of it goes to that piece.",
	}
	trunk := gather.TrunkOf(c.Design)
	var uses []riven
	for _, n := range c.Gather.Bolts {
		for _, u := range n.Uses {
			r := riven{BoltUse: u, need: u.Piece.Count + u.Piece.Spares, thin: u.Riving.Count() == 0}
			if !r.thin {
				r.bolts, r.pieces = trunk.FromOneLog(u.Piece)
			}
			uses = append(uses, r)
		}
	}
	number := func(of func(*riven) int) func(*riven) Cell {
		return func(r *riven) Cell { return when(!r.thin, whole(of(r))) }
	}
	return fill(t, refs(uses),
		text("piece", "Piece", func(r *riven) string { return r.Piece.Name }),
		col("need", "With spares", units.Count, func(r *riven) Cell { return whole(r.need) }),
		col("sectors", "Bolt split into", units.Count, func(r *riven) Cell {
			return whole(r.Riving.Sectors).saying(wordIf(r.thin, boltWord(gather.TooThin)))
		}),
		text("layers", "In the layers of one", func(r *riven) string {
			return wordIf(!r.thin,
				layerWords(r.Riving.Across))
		}),
		col("bolt", "From one bolt", units.Count, number(func(r *riven) int { return r.Riving.Count() })),
		col("take", "Sectors needed", units.Count, number(func(r *riven) int { return r.Sectors })),
		col("spare", "Over", units.Count,
			number(func(r *riven) int { return r.Sectors*r.Riving.Each() - r.need })).screenOnly(),
		col("bolts", "Bolts from one trunk", units.Count, number(func(r *riven) int { return r.bolts })).screenOnly(),
		col("trunk", "Pieces from one trunk", units.Count, number(func(r *riven) int { return r.pieces })).screenOnly(),
	)
}

// riven is a piece as it is split out; thin tells that the trunk gives none of it.
type riven struct {
	gather.BoltUse
	need          int
	thin          bool
	bolts, pieces int // of one trunk
}

func layerWords(across []int) string {
	var all []string
	for _, n := range across {
		all = append(all, strconv.Itoa(n))
	}
	return strings.Join(all, " + ")
}

// piecesTable lists the finished pieces, and adds up to the boat's weight.
func piecesTable(c core.Canoe) Table {
	t := Table{
		Key: "pieces", Title: "Pieces to get out", Home: stage.Gather, OnPaper: true, Blanks: []string{"Ready"},
		Note: "Width and thickness are finished sizes; the length is in the rough, with what is to be trimmed. " +
			"Spares are estimates by how hard each piece is bent. The weights are estimates and add up to the boat's but " +
			"for their rounding.",
	}
	return fill(t, refs(finished(c.Gather)),
		text("piece", "Piece", func(p *part) string { return p.name }),
		col("count", "In the boat", units.Count, func(p *part) Cell { return p.count }),
		col("spares", "Spares", units.Count, func(p *part) Cell { return p.spares }),
		col("length", "Length, rough", units.Length, func(p *part) Cell { return p.length }),
		col("width", "Finished width", units.SmallLength, func(p *part) Cell { return p.width }),
		col("thickness", "Finished thickness", units.SmallLength, func(p *part) Cell { return p.thickness }),
		col("mass", "Weight in the boat", units.Mass, func(p *part) Cell { return p.mass }).screenOnly(),
		text("log", "From", func(p *part) string { return p.from }).screenOnly(),
	)
}

// part is something the finished boat is made of.
type part struct {
	name                                          string
	count, spares, length, width, thickness, mass Cell
	from                                          string
}

// finished lists the parts of the boat, and the whole of it last.
func finished(g gather.List) []part {
	var parts []part
	for _, p := range g.Pieces {
		parts = append(parts, part{p.Name, whole(p.Count), whole(p.Spares), atLeast(p.Length), num(p.Width),
			num(p.Thickness), about(p.Mass.Typical), p.Log.String()})
	}
	rest := func(name string, count, mass Cell, from string) {
		parts = append(parts, part{name, count, dash, dash, dash, dash, mass, from})
	}
	rest("bark of the skin, with its laps", dash, about(g.Bark.Mass.Typical), "birch bark")
	rest("bark doubled under the gunwales", dash, about(g.Bark.Doubled.Typical), "birch bark")
	rest("root", dash, about(g.Root.Mass.Typical), "spruce root")
	rest("pitch", dash, about(g.Pitch.Typical), "spruce gum")
	rest("pegs of outwales, caps and thwarts", whole(g.Pegs.All()), dash, "hardwood")
	rest("the whole boat", dash, about(g.Weight.Typical), "")
	return parts
}

// gearTable is what the work needs beside what stays in the boat.
func gearTable(c core.Canoe) Table {
	t := Table{
		Key: "gear", Title: "Gear for the bed, to make or borrow", Home: stage.Gather, OnPaper: true,
		Blanks: []string{"Ready"},
		Note:   "None of it stays in the boat.",
	}
	size := func(of func(*gather.Gear) float64) func(*gather.Gear) Cell {
		return func(g *gather.Gear) Cell { return when(of(g) != 0, num(of(g))) }
	}
	return fill(t, refs(c.Gather.Gear),
		text("gear", "What", func(g *gather.Gear) string { return g.Name }),
		col("count", "How many", units.Count, func(g *gather.Gear) Cell { return whole(g.Count) }),
		col("low", "Length", units.Length, size(func(g *gather.Gear) float64 { return g.Low })),
		col("high", "to", units.Length, func(g *gather.Gear) Cell {
			return when(g.High != 0 && g.High != g.Low,
				num(g.High))
		}),
		col("width", "Width", units.SmallLength, size(func(g *gather.Gear) float64 { return g.Width })),
		col("thickness", "Thickness", units.SmallLength, size(func(g *gather.Gear) float64 { return g.Thickness })),
		text("from", "From", func(g *gather.Gear) string { return g.From }).screenOnly(),
	)
}

func sheathingTable(c core.Canoe) Table {
	t := Table{
		Key: "sheathing", Title: "Sheathing", Home: stage.Rib, OnPaper: true, Blanks: []string{"Ready"},
		Note: "Finished lengths along the skin with the lap at the ends: the strips under the gunwales are mostly the longest, " +
			"those on the bottom the shortest. Leave about 1 in (25 mm) until they lie. The centre strip goes in first; strips " +
			"are tapered toward the ends of the boat and their butts feathered (" + fromAdney + ", pp. 50-52).",
	}
	return fill(t, refs(c.Frame.Sheathing.Regions),
		ordinal[*frame.SheathingRegion]("region", "Length of boat", 1),
		col("from", "From", units.Offset, func(r *frame.SheathingRegion) Cell { return num(r.From) }),
		col("to", "To", units.Offset, func(r *frame.SheathingRegion) Cell { return num(r.To) }),
		col("strips", "Strips", units.Count, func(r *frame.SheathingRegion) Cell { return whole(r.Strips) }),
		col("shortest", "Shortest strip", units.Length, func(r *frame.SheathingRegion) Cell { return atLeast(r.Shortest) }),
		col("length", "Longest strip", units.Length, func(r *frame.SheathingRegion) Cell { return atLeast(r.Length) }),
	)
}

func seamLength(c core.Canoe) float64 {
	sum := 0.0
	for _, seam := range c.Bark.Seams {
		sum += seam.Length
	}
	return sum
}
