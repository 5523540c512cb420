package answer

import (
	"fmt"
	"sort"
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/gather"
	"barkwright/core/units"
)

const fromCutting = "strands cut for groups and seams, the longest first and each from the first strand with room for it: a plain rule of this calculator"

// rootNumbers tell of the roots to dig.
func rootNumbers(c core.Canoe) []Number {
	d, s, r := c.Design, c.Gather.Root.Strands, c.Gather.Root
	plan := func(n Number) Number {
		if !s.Fits {
			return n.absent("none: a group takes more than a strand")
		}
		return n
	}
	published := gather.PublishedRoot(d)
	return []Number{
		plan(number(SeamsAndRoot, "root.pieces", "Roots to dig of the usual length", units.Count, float64(s.Roots), fromCutting,
			working("# of # each, two from a root, cut into # for groups and seams; and # of the roots for waste", many(len(s.Cut), "strand", "strands"), run(d.RootLength), many(s.Pieces, "piece", "pieces"), percent(d.RootWaste))).by(Estimate)),
		plan(number(SeamsAndRoot, "root.left", "Left over at the strands' ends", units.Run, s.Left, fromCutting,
			working("# of strand less what groups and seams take; short lengths serve for ties", run(float64(len(s.Cut))*d.RootLength))).by(Estimate)),
		number(SeamsAndRoot, "root.published", "Root to dig by one published plan", units.Run, published, "a museum's account of building one canoe, 15 ft with 40 ribs: 250 ft dug gave 500 ft split, planned as 5 ft for each rib and 50 ft for the seams",
			working("5 ft (1.5 m) for each of # ribs, and 50 ft (15 m) for the seams of 15 ft in proportion to #. This page has #: it allows # for waste, and side panels take # of its root where the sheets are narrow", count(d.Ribs), length(d.Length), run(r.Dug), percent(d.RootWaste), run(c.Bark.Seams[bark.PanelSeams].Root))).by(Published),
	}
}

// rootsCell is how many roots to dig.
func rootsCell(c core.Canoe) Cell {
	if s := c.Gather.Root.Strands; s.Fits {
		return whole(s.Roots)
	}
	return words("longer roots")
}

// strandsTable is how strands are cut, alike ones together.
func strandsTable(c core.Canoe) Table {
	t := Table{
		Key: "strands", Title: "How the roots are cut", Group: SeamsAndRoot,
		Note:    "Each root is split into two strands as long. A group of lacing is laced with one strand; a seam goes on with the next. Cut groups first, from the thick end; what is left sews seams. Roots to dig allow for those that are spoiled.",
		Columns: []Column{{"strands", "Strands", units.Count}, {"groups", "Groups from each", units.Count}, {"seams", "And for seams", units.Count}, {"sewn", "Of it for seams, in all", units.Run}, {"left", "Left over, in all", units.Run}},
	}
	s := c.Gather.Root.Strands
	if !s.Fits {
		t.Rows = []Row{{Cells: dashes("a group takes more than a strand: dig longer roots", len(t.Columns))}}
		return t
	}
	type kind struct {
		groups int
		seams  string
	}
	type sum struct {
		kind
		strands    int
		sewn, left float64
	}
	var all []*sum
	at := map[kind]*sum{}
	for _, strand := range s.Cut {
		var names []string
		sewn := 0.0
		for k, v := range strand.Seams {
			if v > 0 {
				names = append(names, strings.ToLower(seamLabels[bark.Kind(k)]))
				sewn += v
			}
		}
		k := kind{strand.Groups, strings.Join(names, ", ")}
		if at[k] == nil {
			at[k] = &sum{kind: k}
			all = append(all, at[k])
		}
		at[k].strands++
		at[k].sewn += sewn
		at[k].left += strand.Left
	}
	sort.SliceStable(all, func(i, k int) bool { return all[i].groups > all[k].groups })
	for _, a := range all {
		seams := a.seams
		if seams == "" {
			seams = "–"
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{whole(a.strands), whole(a.groups), words(seams), num(a.sewn), num(a.left)}})
	}
	return t
}

// rootChoicesTable is what tails, turns and holes make of the roots.
func rootChoicesTable(c core.Canoe) Table {
	t := Table{
		Key: "lacingchoices", Title: "What saves root", Group: SeamsAndRoot,
		Note:    "The lacing as set, and what one change would make of roots of the usual length. A tail shorter than the fingers need, or fewer turns than hold the bark, saves nothing.",
		Columns: []Column{{"change", "Lacing", units.Count}, {"group", "Root in a group", units.Length}, {"roots", "Roots to dig", units.Count}, {"left", "Left over", units.Run}, {"share", "Wasted", units.Percent}},
	}
	choices := gather.RootChoices(c.Design, c.Frame, c.Bark)
	set, least := choices[0], -1
	share := func(r gather.RootChoice) float64 {
		return r.Strands.Left / (float64(len(r.Strands.Cut)) * r.Strands.Length)
	}
	for i, r := range choices {
		if r.Strands.Fits && (least < 0 || share(r) < share(choices[least])) {
			least = i
		}
	}
	for i, r := range choices {
		name := "as set"
		switch {
		case r.Holes != set.Holes:
			name = fmt.Sprintf("%d holes a group", r.Holes)
		case r.Passes != set.Passes:
			name = fmt.Sprintf("%d turns a hole", r.Passes)
		case r.Tail != set.Tail:
			name = fmt.Sprintf("tails of %.0f in (%.0f mm)", r.Tail/units.Inch, 1000*r.Tail)
		}
		if i == least {
			name += ", wastes least"
		}
		row := []Cell{words(name), num(r.Group), words("longer roots"), words("–"), words("–")}
		if r.Strands.Fits {
			row = []Cell{words(name), num(r.Group), whole(r.Strands.Roots), num(r.Strands.Left), num(share(r))}
		}
		t.Rows = append(t.Rows, Row{Cells: row})
	}
	return t
}
