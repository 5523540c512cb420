package answer

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

func goresTable(c core.Canoe) Table {
	t := Table{
		Key: "gores", Title: "Gores", Group: BarkAndFrame,
		Note: "Each side, from the middle forward; the same aft. Depth is along the finished hull from the foot to the edge. Width at the edge, angle and the lengths of the two edges are on the bark laid flat, where you cut.",
		Columns: []Column{{"gore", "Gore", units.Count}, {"run", "Along the gunwale", units.Length}, {"station", "From amidships", units.Length}, {"foot", "Foot from the centre line", units.Length},
			{"depth", "Depth", units.Length}, {"width", "Width at the edge", units.SmallLength}, {"angle", "Angle", units.Angle},
			{"after", "After edge", units.Length}, {"fore", "Fore edge", units.Length}, {"edges", "Edges", units.Count}, {"state", "State", units.Count}},
	}
	i := 0
	for n, g := range c.Bark.Gores {
		if g.X < -1e-9 {
			continue
		}
		r := Row{Part: GorePart(i), Cells: []Cell{whole(i), num(g.Run), num(g.X), num(g.FootGirth), num(g.Depth)}}
		r.Cells = append(r.Cells, flatGore(c.Skin, n, g.State)...)
		t.Rows = append(t.Rows, r)
		i++
	}
	return t.orNone("none")
}

// flatGore is what the sheet laid flat tells of gore n.
func flatGore(s *core.Skin, n int, planned bark.GoreState) []Cell {
	if s == nil || s.Flat.State != geom.Converged {
		return append(dashes("–", 5), words(planned.String()))
	}
	g := s.Flat.Gores[n]
	if g.State != bark.GoreCut && g.State != bark.GoreLetIn {
		return append(dashes("–", 5), words(g.State.String()))
	}
	return []Cell{num(g.Width), num(g.Angle), num(g.AfterLength), num(g.ForeLength), yes(g.Unequal, "unequal"), words(g.State.String())}
}

// dashes are n cells of which the first says first.
func dashes(first string, n int) []Cell {
	out := []Cell{words(first)}
	for len(out) < n {
		out = append(out, words("–"))
	}
	return out
}

func panelsTable(c core.Canoe) Table {
	d := c.Design
	t := Table{
		Key: "panels", Title: "Side panels", Group: BarkAndFrame,
		Note:    "Where half a sheet falls short of the edge. The strip is what a panel is cut from, with the lap at its seam and the bark to trim; its length is laid flat, with a lap at each end. Two alike, one each side, or four.",
		Columns: []Column{{"panel", "Panel", units.Count}, {"count", "How many", units.Count}, {"from", "From", units.Offset}, {"to", "To", units.Offset}, {"seam", "Seam", units.Length}, {"length", "Strip, length", units.Length}, {"width", "Strip, width", units.Length}},
	}
	if c.Bark.Listed {
		t.Note = "Where half of the sheet that lies there falls short of the edge. The strip is what a panel is cut from, with the lap at its seam and the bark to trim; its length is along the bed. What each is cut from stands with the sheets on hand. The picture, the outline and the ends of the gores are for the narrowest sheet on the bed."
		for i, b := range c.Bark.Beside {
			t.Rows = append(t.Rows, Row{Cells: []Cell{whole(i + 1), whole(2), num(b.From), num(b.To), num(b.Seam), num(b.Bow - b.Aft), num(b.Width)}})
		}
		return t.orNone("none: the sheets are wide enough")
	}
	for i, p := range c.Bark.Panels {
		if len(p.Seam) == 0 {
			continue
		}
		from, to, n, seam := p.Seam[0].X, p.Seam[len(p.Seam)-1].X, 4, p.Length
		if p.Amidships() {
			from, n, seam = -to, 2, 2*p.Length
		}
		// Where a panel is only bark to trim it has no shape laid flat, and is as
		// long as its seam.
		strip := max(seam, stripLength(c, i)) + 2*d.SeamLap
		t.Rows = append(t.Rows, Row{Part: PanelPart(i), Cells: []Cell{whole(i + 1), whole(n), num(from), num(to), num(seam), num(strip), num(p.Width)}})
	}
	return t.orNone("none: the sheet is wide enough")
}

// orNone is the table, or one row that says so where it has none.
func (t Table) orNone(text string) Table {
	if len(t.Rows) == 0 {
		t.Rows = []Row{{Cells: dashes(text, len(t.Columns))}}
	}
	return t
}

// stripLength is how far a panel laid flat reaches along the boat, 0 until that is
// known.
func stripLength(c core.Canoe, panel int) float64 {
	if c.Skin == nil {
		return 0
	}
	low, high := 0.0, 0.0
	for _, p := range c.Skin.Flat.Panels {
		if p.Panel != panel {
			continue
		}
		for _, q := range p.Points {
			if high == 0 {
				low, high = q.X, q.X
			}
			low, high = min(low, q.X), max(high, q.X)
		}
	}
	if c.Bark.Panels[panel].Amidships() {
		return 2 * high
	}
	return high - low
}
