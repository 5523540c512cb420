package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/units"
)

func gunwaleNumbers(c core.Canoe) []Number {
	d, f := c.Design, c.Frame
	l, g := f.Lacing, f.Gunwales
	return []Number{
		number(Gunwales, "gunwale.length", "Gunwale along its curve, end to end, finished", units.Length, g.Inwale, fromShape,
			working("twice # from the middle to the end, along the curve of the plan and the sheer; leave 2 in (5 cm) at each end until the ends are tied", length(g.Run))),
		number(Gunwales, "gunwale.outwale", "Outwale and cap, to the stem heads, finished", units.Length, g.Outwale, fromShape,
			working("# of gunwale and the bark's top edge on to both stem heads", length(g.Inwale))),
		number(Gunwales, "lacing.groups", "Groups of lacing, both sides", units.Count, float64(l.Count), fromBuilders,
			working("one between ribs and one outside each end rib a side: # ribs", count(d.Ribs))).by(CommonPractice),
		number(Gunwales, "lacing.pegs", "Pegs, both sides", units.Count, float64(l.Pegs), fromBuilders,
			working("one in # of # groups, counted from the middle", count(d.PegEvery), count(l.Count))).by(CommonPractice),
		number(Gunwales, "lacing.turn", "Root in one turn", units.SmallLength, l.Turn, fromGeometry,
			working("round inwale # and outwale # thick, the bark doubled # and down to the hole, at the middle of the root",
				small(d.InwaleThickness), small(d.OutwaleThickness), thin(2*d.BarkThickness))),
		number(Gunwales, "lacing.group", "Root in one group", units.Length, l.Group, fromBuilders,
			working("(# holes × # turns + the starting turn) × # + two tails of #",
				count(d.GroupHoles), count(d.Passes), small(l.Turn), small(d.Tail))).up(),
		number(Gunwales, "root.gunwales", "Split root for lacing, before waste", units.Run, l.Total, fromBuilders,
			working("# groups × #", count(l.Count), length(l.Group))).by(Estimate),
		number(Gunwales, "root.gunwalesWaste", "Split root for lacing, with waste", units.Run, l.WithWaste, fromBuilders,
			working("# and # of it for waste", run(l.Total), percent(d.RootWaste))).up(),
	}
}

func marksTable(c core.Canoe) Table {
	t := Table{
		Key: "marks", Title: "Gunwale marks from the middle", Group: Gunwales,
		Note: "The same toward both ends and on both sides. Each place is measured from the middle along the gunwale and rounded once: never add up spaces.",
		Columns: []Column{
			{"mark", "Mark", units.Count}, {"run", "From the middle, along the gunwale", units.Length},
			{"station", "Along the boat's length", units.Length}, {"holes", "Holes", units.Count}, {"peg", "Peg", units.Count},
		},
	}
	f := c.Frame
	add := func(name, part string, along, x float64, rest ...Cell) {
		t.Rows = append(t.Rows, Row{Part: part, Cells: append([]Cell{words(name), num(along), num(x)}, rest...)})
	}
	ribs := f.Ribs
	for i, g := range f.Lacing.Groups {
		name := "lacing"
		if g.Thwart >= 0 {
			name = frame.ThwartName(g.Thwart, len(f.Thwarts))
		}
		if i == 0 && len(ribs) > 0 && ribs[0].Alone() {
			add("rib under the middle thwart", RibPart(ribs[0].Number), ribs[0].Run, ribs[0].X, words("–"), words("–"))
			ribs = ribs[1:]
		}
		add(name, GroupPart(i), g.Run, g.X, whole(len(g.Holes)), yes(g.Pegged, "peg"))
		if len(ribs) > 0 {
			add("rib "+units.Count.Format(float64(ribs[0].Number), units.Metric), RibPart(ribs[0].Number), ribs[0].Run, ribs[0].X, words("–"), words("–"))
			ribs = ribs[1:]
		}
	}
	add("headboard", HeadboardPart, f.Headboard.Run, f.Headboard.X, words("–"), words("–"))
	add("gunwale end", "", f.Gunwales.Run, c.Hull.GunwaleX, words("–"), words("–"))
	return t
}

func holesTable(c core.Canoe) Table {
	t := Table{
		Key: "holes", Title: "Lacing holes from the middle", Group: Gunwales,
		Note:    "Along the gunwale; the same toward both ends and on both sides. A place less than zero lies on the other side of the middle.",
		Columns: []Column{{"group", "Group", units.Count}},
	}
	for i := range c.Design.GroupHoles {
		n := units.Count.Format(float64(i+1), units.Metric)
		t.Columns = append(t.Columns, Column{"hole" + n, "Hole " + n, units.Offset})
	}
	for i, g := range c.Frame.Lacing.Groups {
		r := Row{Part: GroupPart(i), Cells: []Cell{whole(i)}}
		for _, at := range g.Holes {
			r.Cells = append(r.Cells, num(at))
		}
		t.Rows = append(t.Rows, r)
	}
	return t
}
