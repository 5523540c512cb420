package answer

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

func goresTable(c core.Canoe) Table {
	t := Table{
		Key: "gores", Title: "Gores", Group: BarkAndFrame,
		Note: "Each side, from the middle forward; the same aft. Slash first, straight from the edge in to the foot, and turn the sides up; then about so much rides over at the edge. Trim it after turning up and fairing, edge to edge or to a lap (AC, pp. 41, 46). Where under 1/8 in (3 mm) rides over it stays a slit. Where a sheet joint stands, the joint takes the gore's place. Depth is along the finished hull; what rides over, its angle and the two edges are on the bark laid flat.",
		Columns: []Column{{"gore", "Gore", units.Count}, {"run", "Along the gunwale", units.Length}, {"station", "From amidships", units.Length}, {"foot", "Foot from the centre line", units.Length},
			{"depth", "Slash, how far in", units.Length}, {"width", "Expect to ride over", units.SmallLength}, {"angle", "Angle", units.Angle},
			{"after", "After edge", units.Length}, {"fore", "Fore edge", units.Length}, {"edges", "Edges", units.Count}, {"state", "State", units.Count}},
	}
	i := 0
	for n, g := range c.Bark.Gores {
		if g.X < -1e-9 {
			continue
		}
		r := Row{Part: GorePart(i), Cells: []Cell{whole(i), num(g.Run), num(g.X), num(g.FootGirth), num(g.Depth)}}
		r.Cells = append(r.Cells, flatGore(c.Skin, n, g.State)...)
		if ends := jointsOn(c.Bark, g); ends != "" {
			r.Cells[len(r.Cells)-1] = words(r.Cells[len(r.Cells)-1].Text + "; " + ends)
		}
		t.Rows = append(t.Rows, r)
		i++
	}
	return t.orNone("none")
}

// jointsOn says where a joint of the bed takes the place of a gore or of its mate aft.
func jointsOn(l bark.Layout, g bark.Gore) string {
	fore, aft := false, false
	for _, j := range l.Joints {
		if j.OnGore {
			fore = fore || math.Abs(j.Along-g.Along) < 1e-6
			aft = aft || math.Abs(j.Along+g.Along) < 1e-6
		}
	}
	switch {
	case fore && aft:
		return "a joint takes its place"
	case fore:
		return "a joint takes its place forward"
	case aft:
		return "a joint takes its place aft"
	}
	return ""
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

// orNone is the table, or one row that says so where it has none.
func (t Table) orNone(text string) Table {
	if len(t.Rows) == 0 {
		t.Rows = []Row{{Cells: dashes(text, len(t.Columns))}}
	}
	return t
}
