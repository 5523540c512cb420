package answer

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

func gunwaleNumbers(c core.Canoe) []*Number {
	d, f := c.Design, c.Frame
	l, g := f.Lacing, f.Gunwales
	return []*Number{
		printed(stage.Gunwales, "gunwale.length", "Gunwale along its curve, end to end, finished", units.Length,
			g.Inwale,
			fromShape,
			working("twice # from the middle to the end, along the curve of the plan and the sheer; leave # "+
				"at each end until the ends are tied", length(g.Run), small(gather.EndTrim))).short("Gunwale"),
		printed(stage.Gunwales, "gunwale.outwale", "Outwale and cap, to the stem heads, finished", units.Length,
			g.Outwale,
			fromShape,
			working("along the bark's top edge from stem head to stem head, outside the # of gunwale",
				length(g.Inwale))),
		printed(stage.Lace, "lacing.groups", "Groups of lacing, both sides", units.Count, float64(l.Count),
			fromBuilders,
			working("one between ribs and one outside each end rib a side: # ribs",
				count(d.Ribs))).short("Groups").by(known.CommonPractice),
		printed(stage.Lace, "lacing.pegs", "Pegs of the outwales, both sides", units.Count, float64(l.Pegs),
			fromBuilders,
			pegsWorking(d.PegEvery, l.Count)).by(known.CommonPractice),
		printed(stage.Lace, "lacing.turn", "Root in one turn", units.SmallLength, l.Turn, fromGeometry,
			working("round inwale # and outwale # thick, the bark doubled # and down to the hole, at the middle of "+
				"the root",
				small(d.InwaleThickness), small(d.OutwaleThickness), thin(2*d.BarkThickness))),
		printed(stage.Lace, "lacing.group", "Root in one group", units.Length, l.Group, fromBuilders,
			working("(# holes × # + the starting turn) × # + two tails of #",
				count(d.GroupHoles), many(d.Passes, "turn", "turns"), small(l.Turn), small(d.Tail))).up(),
		printed(stage.Lace, "root.gunwales", "Split root for lacing, before waste", units.Run, l.Total, fromBuilders,
			working("# groups × #", count(l.Count), length(l.Group).atLeast())).by(known.Estimate),
		number(stage.Lace, "root.gunwalesWaste", "Split root for lacing, with waste", units.Run, l.WithWaste,
			fromBuilders,
			working("# and # of it for waste", run(l.Total).rough(), percent(d.RootWaste))).up(),
	}
}

func marksTable(c core.Canoe) Table {
	t := Table{
		Key: "marks", Title: "Gunwale marks from the middle", Home: stage.Gunwales, Open: true, OnPaper: true,
		Blanks: []string{"✓"},
		Note: "The same toward both ends and on both sides. Each place is measured from the middle along the " +
			"gunwale and rounded once: never add up spaces.",
	}
	marks := gunwaleMarks(c)
	return fill(t, refs(marks),
		text("mark", "Mark", func(m *mark) string { return m.name }),
		col("run", "From the middle, along the gunwale", units.Length, func(m *mark) Cell { return num(m.run) }),
		col("station", "Along the boat's length", units.Length, func(m *mark) Cell { return num(m.x) }),
		col("holes", "Holes", units.Count, func(m *mark) Cell { return when(m.holes > 0, whole(m.holes)) }),
		text("peg", "Peg", func(m *mark) string { return wordIf(m.pegged, "peg") }),
	).parts(func(i int) string { return marks[i].part })
}

// mark is a place marked on the gunwale: of a rib, a group of lacing or a thwart.
type mark struct {
	name, part string
	run, x     float64
	holes      int // of a group
	pegged     bool
}

// gunwaleMarks lists the marks from the middle outward.
func gunwaleMarks(c core.Canoe) []mark {
	f := c.Frame
	var marks []mark
	ribs := f.Ribs
	rib := func(name string) {
		marks = append(marks, mark{name: name, part: RibPart(ribs[0].Number), run: ribs[0].Run, x: ribs[0].X})
		ribs = ribs[1:]
	}
	for i, g := range f.Lacing.Groups {
		name := "lacing"
		if g.Thwart >= 0 {
			name = frame.ThwartName(g.Thwart, len(f.Thwarts))
		}
		if i == 0 && len(ribs) > 0 && ribs[0].Alone() {
			rib("rib under the middle thwart")
		}
		marks = append(marks, mark{name: name, part: GroupPart(i), run: g.Run, x: g.X, holes: len(g.Holes),
			pegged: g.Pegged})
		if len(ribs) > 0 {
			rib("rib " + units.Count.Format(float64(ribs[0].Number), units.Metric))
		}
	}
	return append(marks,
		mark{name: "headboard", part: HeadboardPart, run: f.Headboard.Run, x: f.Headboard.X},
		mark{name: "gunwale end", run: f.Gunwales.Run, x: c.Hull.GunwaleX})
}

func holesTable(c core.Canoe) Table {
	t := Table{
		Key: "holes", Title: "Lacing holes from the middle", Home: stage.Lace, OnPaper: true,
		Note: "Along the gunwale; the same toward both ends and on both sides. A place less than zero lies on the " +
			"other side of the middle.",
	}
	columns := []column[*frame.Group]{ordinal[*frame.Group]("group", "Group", 0)}
	for i := range c.Design.GroupHoles {
		n := units.Count.Format(float64(i+1), units.Metric)
		columns = append(columns, col("hole"+n, "Hole "+n, units.Offset,
			func(g *frame.Group) Cell { return num(g.Holes[i]) }))
	}
	return fill(t, refs(c.Frame.Lacing.Groups), columns...).parts(GroupPart)
}

// pegsWorking says at which groups pegs are driven.
func pegsWorking(every, groups int) func(units.System) string {
	if every == 1 {
		return working("a peg at every one of # groups; none past the end thwarts", count(groups))
	}
	return working("a peg every # of # groups, counted from the middle; none past the end thwarts", count(every),
		count(groups))
}
