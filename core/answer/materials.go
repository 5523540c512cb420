package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/units"
)

func materialNumbers(c core.Canoe) []Number {
	g := c.Gather
	return []Number{
		number(Materials, "weight.total", "Weight of the finished canoe", units.Mass, g.Weight.Typical, "volume by density; densities of the Wood Handbook for wood, estimates for bark, root and pitch",
			working("every piece's volume times its density, # of it bark", mass(g.Bark.Mass.Typical))).between(g.Weight.Low, g.Weight.High),
		number(Materials, "materials.billets", "Billets for ribs", units.Count, float64(g.Billets), fromAdney+", p. 18",
			working("a billet two thick and two wide gives four; # ribs and spares", count(c.Design.Ribs))).by(Estimate),
		number(Materials, "materials.pitch", "Pitch", units.Mass, g.Pitch.Typical, fromOwnChoice,
			working("by # of seam; no source prints an amount", run(seamLength(c)))).between(g.Pitch.Low, g.Pitch.High),
	}
}

func logsTable(c core.Canoe) Table {
	t := Table{
		Key: "logs", Title: "Logs, bark and root to bring in", Group: Materials,
		Note:    "Girths are estimates: about a third of a log's section gives clear heartwood. Take more where the tree is knotty.",
		Columns: []Column{{"what", "What", units.Count}, {"wood", "Of", units.Count}, {"count", "How many", units.Count}, {"clear", "Clear length", units.Length}, {"girth", "Girth by tape", units.Length}, {"diameter", "Diameter", units.SmallLength}},
	}
	for _, l := range c.Gather.Logs {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(l.Log.String()), words(l.Log.Wood(c.Design)), whole(1), num(l.Clear), num(l.Girth), num(l.Diameter)}})
	}
	b := c.Gather.Bark
	t.Rows = append(t.Rows,
		Row{Cells: []Cell{words("a sheet of bark each"), words("paper birch"), whole(sheetsToBring(c)), num(b.Tree.Clear), num(b.Tree.Girth), num(b.Tree.Diameter)}},
		Row{Cells: []Cell{words("root, as it grows"), words("black spruce"), whole(c.Gather.Root.Whole), num(bark.RootGrows), words("–"), words("a pencil")}})
	return t
}

func piecesTable(c core.Canoe) Table {
	t := Table{
		Key: "pieces", Title: "Pieces to get out", Group: Materials, Note: "Lengths in the rough with what is trimmed. Spares are estimates by how hard each piece is bent.",
		Columns: []Column{{"piece", "Piece", units.Count}, {"count", "In the boat", units.Count}, {"spares", "Spares", units.Count}, {"length", "Length", units.Length}, {"width", "Width", units.SmallLength}, {"thickness", "Thickness", units.SmallLength}, {"mass", "Weight in the boat", units.Mass}, {"log", "From", units.Count}},
	}
	for _, p := range c.Gather.Pieces {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(p.Name), whole(p.Count), whole(p.Spares), num(p.Length), num(p.Width), num(p.Thickness), num(p.Mass.Typical), words(p.Log.String())}})
	}
	t.Rows = append(t.Rows, Row{Cells: []Cell{words("pegs"), whole(c.Gather.Pegs), words("–"), words("–"), words("–"), words("–"), words("–"), words("hardwood")}})
	return t
}

func sheathingTable(c core.Canoe) Table {
	t := Table{
		Key: "sheathing", Title: "Sheathing", Group: Ribs, Note: "Strips side by side over each length, from the stern forward, each lapped over the next.",
		Columns: []Column{{"region", "Length of boat", units.Count}, {"from", "From", units.Offset}, {"to", "To", units.Offset}, {"strips", "Strips", units.Count}, {"length", "Strip", units.Length}},
	}
	for i, r := range c.Frame.Sheathing.Regions {
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(strconv.Itoa(i + 1)), num(r.From), num(r.To), whole(r.Strips), num(r.Length)}})
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

// sheetsToBring counts the sheets of the size set that the bark on the bed and its
// side panels are cut from; until the bark is laid flat, those on the bed alone.
func sheetsToBring(c core.Canoe) int {
	if c.Skin == nil || c.Design.OnHand.Count > 0 {
		return c.Gather.Bark.Sheets
	}
	return max(c.Gather.Bark.Sheets, len(c.Skin.Sheets))
}
