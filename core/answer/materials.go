package answer

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/gather"
	"barkwright/core/units"
)

const (
	fromRiving  = "solid geometry of a round bolt without its heart and sapwood, split from end to end into quarters or finer and by halving on faces along the bark (" + fromAdney + ", pp. 17-19); how much larger pieces are split than finished and the spares are estimates"
	fromWeights = "every piece's volume times its density at the moisture of a boat in use: specific gravities of the USDA Wood Handbook (maple's from memory); bark, root, pitch and moisture are estimates. Four printed weights are met within their own range"
)

func materialNumbers(c core.Canoe) []Number {
	g := c.Gather
	return []Number{
		number(Materials, "weight.total", "Weight of the finished canoe", units.Mass, g.Weight.Typical, fromWeights,
			working("wood #, bark # and # of it doubled under the gunwales, root #, pitch #", mass(woodMass(g)).rough(), mass(g.Bark.Mass.Typical).rough(),
				mass(g.Bark.Doubled.Typical).rough(), mass(g.Root.Mass.Typical).rough(), mass(g.Pitch.Typical).rough())).between(g.Weight.Low, g.Weight.High),
		boltsNumber(c),
		number(Materials, "materials.billets", "Billets for ribs", units.Count, float64(g.Billets), fromAdney+", p. 18",
			working("a billet two thick and two wide gives four; # ribs and spares", count(c.Design.Ribs))).by(Published),
		number(Materials, "materials.pitch", "Pitch", units.Mass, g.Pitch.Typical, fromOwnChoice,
			working("by # of seam, payed inside and outside in a band of 1 1/2 in (38 mm); no source prints an amount", run(seamLength(c)).rough())).between(g.Pitch.Low, g.Pitch.High),
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
func boltsNumber(c core.Canoe) Number {
	d, g := c.Design, c.Gather
	bolts, state := 0, gather.Found
	for _, n := range g.Bolts {
		bolts += n.Bolts
		state = max(state, n.State)
	}
	n := number(Materials, "logs.bolts", "Bolts to split, for all the wood", units.Count, float64(bolts), fromRiving,
		working("from trunks # through at the small end inside the bark, # of heart and # of sapwood discarded; cut from # of # clear",
			small(d.CedarDiameter), small(d.CedarHeart), small(d.CedarSapwood), many(g.Logs, "trunk", "trunks"), length(d.CedarClear))).by(Estimate)
	switch state {
	case gather.TooThin:
		return n.absent("the trunk is too thin")
	case gather.TooShort:
		return n.absent("the trunk is too short")
	}
	return n
}

func logsTable(c core.Canoe) Table {
	d := c.Design
	t := Table{
		Key: "logs", Title: "Bolts, bark and root to bring in", Group: Materials,
		Note: "Bolts are counted from the trunk you set, whose diameter is inside the bark at the small end; their length has an allowance to trim. Several short bolts may come from one trunk. Look for straight bark, no twist and no knots; ask before you cut.",
		Columns: []Column{{"what", "For", units.Count}, {"wood", "Of", units.Count}, {"count", "How many", units.Count}, {"clear", "Clear length", units.Length},
			{"girth", "Girth by tape", units.Length}, {"diameter", "Diameter", units.SmallLength}, {"left", "Left of the last bolt", units.Percent}},
	}
	for _, n := range c.Gather.Bolts {
		how, left := whole(n.Bolts), about(n.Left)
		if w := boltWord(n.State); w != "" {
			how, left = words(w), words("–")
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{words("a bolt each: " + n.Log.String()), words(n.Wood), how, atLeast(n.Length), atLeast(math.Pi * d.CedarDiameter), atLeast(d.CedarDiameter), left}})
	}
	b := c.Gather.Bark
	tree := bark.NewStanding(sheetWanted(c), c.Design)
	t.Rows = append(t.Rows,
		Row{Cells: []Cell{words("a sheet of bark each"), words("paper birch"), whole(c.Gather.Bark.Sheets), atLeast(b.Tree.Clear), atLeast(tree.Girth), atLeast(tree.Diameter), words("–")}},
		Row{Cells: []Cell{words("root, as it grows"), words("black spruce"), rootsCell(c), num(d.RootLength), words("–"), words("a pencil"), words("–")}})
	return t
}

func boltWord(s gather.BoltState) string {
	return [...]string{gather.Found: "", gather.TooShort: "none: too short", gather.TooThin: "none: too thin"}[s]
}

// rivingTable says how each piece is split out, and what one trunk gives of it.
func rivingTable(c core.Canoe) Table {
	t := Table{
		Key: "riving", Title: "How the bolts are split", Group: Materials,
		Note: "Split from end to end into so many sectors, each by halving on faces along the bark; the layers are from the heart outward. Pieces are split a quarter thicker and 1/4 in (6 mm) wider than finished. The last columns are the other way about: what one trunk gives if all of it goes to that piece.",
		Columns: []Column{{"piece", "Piece", units.Count}, {"need", "With spares", units.Count}, {"sectors", "Bolt split into", units.Count}, {"layers", "In the layers of one", units.Count},
			{"bolt", "From one bolt", units.Count}, {"take", "Sectors needed", units.Count}, {"spare", "Over", units.Count},
			{"bolts", "Bolts from one trunk", units.Count}, {"trunk", "Pieces from one trunk", units.Count}},
	}
	trunk := gather.TrunkOf(c.Design)
	for _, n := range c.Gather.Bolts {
		for _, u := range n.Uses {
			p, r := u.Piece, u.Riving
			need := p.Count + p.Spares
			if r.Count() == 0 {
				t.Rows = append(t.Rows, Row{Cells: append([]Cell{words(p.Name), whole(need)}, dashes(boltWord(gather.TooThin), 7)...)})
				continue
			}
			bolts, pieces := trunk.FromOneLog(p)
			t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Name), whole(need), whole(r.Sectors), words(layerWords(r.Across)), whole(r.Count()),
				whole(u.Sectors), whole(u.Sectors*r.Each() - need), whole(bolts), whole(pieces)}})
		}
	}
	return t
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
	g := c.Gather
	t := Table{
		Key: "pieces", Title: "Pieces to get out", Group: Materials,
		Note:    "Width and thickness are finished sizes; the length is in the rough, with what is to be trimmed. Spares are estimates by how hard each piece is bent. The weights add up to the boat's.",
		Columns: []Column{{"piece", "Piece", units.Count}, {"count", "In the boat", units.Count}, {"spares", "Spares", units.Count}, {"length", "Length, rough", units.Length}, {"width", "Finished width", units.SmallLength}, {"thickness", "Finished thickness", units.SmallLength}, {"mass", "Weight in the boat", units.Mass}, {"log", "From", units.Count}},
	}
	for _, p := range g.Pieces {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Name), whole(p.Count), whole(p.Spares), atLeast(p.Length), num(p.Width), num(p.Thickness), num(p.Mass.Typical), words(p.Log.String())}})
	}
	rest := func(name string, n Cell, mass float64, from string) {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(name), n, words("–"), words("–"), words("–"), words("–"), num(mass), words(from)}})
	}
	rest("bark of the skin, with its laps", words("–"), g.Bark.Mass.Typical, "birch bark")
	rest("bark doubled under the gunwales", words("–"), g.Bark.Doubled.Typical, "birch bark")
	rest("root", words("–"), g.Root.Mass.Typical, "spruce root")
	rest("pitch", words("–"), g.Pitch.Typical, "spruce gum")
	pegs := Row{Cells: []Cell{words("pegs, outwales and caps"), whole(g.Pegs.Outwales + g.Pegs.Caps), words("–"), words("–"), words("–"), words("–"), words("–"), words("hardwood")}}
	all := Row{Cells: []Cell{words("the whole boat"), words("–"), words("–"), words("–"), words("–"), words("–"), num(g.Weight.Typical), words("–")}}
	t.Rows = append(t.Rows, pegs, all)
	return t
}

// gearTable is what the work needs beside what stays in the boat.
func gearTable(c core.Canoe) Table {
	t := Table{
		Key: "gear", Title: "Gear for the bed, to make or borrow", Group: Materials,
		Note:    "None of it stays in the boat.",
		Columns: []Column{{"gear", "What", units.Count}, {"count", "How many", units.Count}, {"low", "Length", units.Length}, {"high", "to", units.Length}, {"width", "Width", units.SmallLength}, {"thickness", "Thickness", units.SmallLength}, {"from", "From", units.Count}},
	}
	orDash := func(v float64, cell func(float64) Cell) Cell {
		if v == 0 {
			return words("–")
		}
		return cell(v)
	}
	for _, g := range c.Gather.Gear {
		high := g.High
		if g.High == g.Low {
			high = 0
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(g.Name), whole(g.Count), orDash(g.Low, num), orDash(high, num), orDash(g.Width, num), orDash(g.Thickness, num), words(g.From)}})
	}
	return t
}

func sheathingTable(c core.Canoe) Table {
	t := Table{
		Key: "sheathing", Title: "Sheathing", Group: Ribs,
		Note:    "Finished lengths with the lap at the ends; leave an inch until they lie. The centre strip goes in first; strips are tapered toward the ends of the boat and their butts feathered (" + fromAdney + ", pp. 50-52).",
		Columns: []Column{{"region", "Length of boat", units.Count}, {"from", "From", units.Offset}, {"to", "To", units.Offset}, {"strips", "Strips", units.Count}, {"length", "Strip", units.Length}},
	}
	for i, r := range c.Frame.Sheathing.Regions {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(strconv.Itoa(i + 1)), num(r.From), num(r.To), whole(r.Strips), about(r.Length)}})
	}
	return t
}

func seamLength(c core.Canoe) float64 {
	sum := 0.0
	for _, seam := range c.Bark.Seams {
		sum += seam.Length
	}
	return sum
}
