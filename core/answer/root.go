package answer

import (
	"barkwright/core/stage"
	"fmt"
	"slices"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/gather"
	"barkwright/core/known"
	"barkwright/core/units"
)

const fromCutting = "strands cut for groups and seams, the longest first and each from the first strand with room " +
	"for it: a plain rule of this calculator"

// rootNumbers tell of the roots to dig.
func rootNumbers(c core.Canoe) []*Number {
	d, s, r := c.Design, c.Gather.Root.Strands, c.Gather.Root
	plan := func(n *Number) *Number {
		if !s.Fits {
			return n.absent("none: a group takes more than a strand")
		}
		return n
	}
	published := gather.PublishedRoot(d)
	return []*Number{
		plan(printed(stage.Gather, "root.pieces", "Roots to dig of the usual length", units.Count, float64(s.Roots),
			fromCutting,
			working("# of # each, two from a root, cut into # for groups and seams; and # of the roots for waste",
				many(len(s.Cut), "strand", "strands"), run(d.RootLength), many(s.Pieces, "piece", "pieces"),
				percent(d.RootWaste))).by(known.Estimate)),
		plan(number(stage.Gather, "root.left", "Left over at the strands' ends", units.Run, s.Left, fromCutting,
			working("# of strand less what groups and seams take; short lengths serve for ties",
				run(float64(len(s.Cut))*d.RootLength).rough())).by(known.Estimate)),
		printed(stage.Gather, "root.published", "Root to dig by one published plan", units.Run, published,
			"a museum's account of building one canoe with 40 ribs: 250 ft (76 m) dug gave 500 ft (152 m) split",
			working("# for each of # ribs, and # for the seams of a boat # long in proportion to #. "+
				"This page has #: it allows # for waste, and side panels take # of its root where the sheets are "+
				"narrow", run(gather.PublishedSpace), count(d.Ribs), run(gather.PublishedSeams),
				length(gather.PublishedLength), length(d.Length), run(r.Dug).atLeast(), percent(d.RootWaste),
				run(c.Bark.Seams[bark.PanelSeams].Root).rough())).by(known.Published),
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
		Key: "strands", Title: "How the roots are cut", Home: stage.Gather, OnPaper: true,
		Note: "Each root is split into two strands as long. A group of lacing is laced with one strand; a seam " +
			"goes on with the next. Cut groups first, from the thick end; what is left sews seams. Roots to dig " +
			"allow for those that are spoiled.",
	}
	return fill(t, alikeStrands(c.Gather.Root.Strands),
		col("strands", "Strands", units.Count, func(a *alike) Cell { return whole(a.strands) }),
		col("groups", "Groups from each", units.Count, func(a *alike) Cell { return whole(a.groups) }),
		col("cut", "Root in a group", units.Length, func(a *alike) Cell {
			return when(a.groups > 0, atLeast(c.Frame.Lacing.Group))
		}).screenOnly(),
		text("seams", "And for seams", func(a *alike) string { return a.seams }),
		col("sewn", "Of it for seams, about", units.Run, func(a *alike) Cell { return about(a.sewn) }),
		col("left", "Left over, about", units.Run, func(a *alike) Cell { return about(a.left) }),
	).orNone("a group takes more than a strand: dig longer roots")
}

// alike are strands cut into as many groups and for the same seams.
type alike struct {
	groups, strands int
	seams           string
	sewn, left      float64
}

// alikeStrands puts alike strands together, those with most groups first; none where a
// group takes more than a strand.
func alikeStrands(s gather.Strands) []*alike {
	if !s.Fits {
		return nil
	}
	type cut struct {
		groups int
		seams  string
	}
	var all []*alike
	at := map[cut]*alike{}
	for _, strand := range inGroups(s.Cut) {
		k := cut{strand.Groups, seamsOf(strand)}
		if at[k] == nil {
			at[k] = &alike{groups: k.groups, seams: k.seams}
			all = append(all, at[k])
		}
		at[k].strands++
		at[k].sewn += seamRoot(strand)
		at[k].left += strand.Left
	}
	return all
}

// inGroups are strands with those first that most groups come from.
func inGroups(cut []gather.Strand) []gather.Strand {
	sorted := slices.Clone(cut)
	slices.SortStableFunc(sorted, func(a, b gather.Strand) int { return b.Groups - a.Groups })
	return sorted
}

// rootChoicesTable is what tails, turns and holes make of the roots.
func rootChoicesTable(c core.Canoe) Table {
	t := Table{
		Key: "lacingchoices", Title: "What saves root", Home: stage.Lace,
		Note: "The lacing as set, and what one change would make of roots of the usual length. A tail shorter than " +
			"the fingers need, or fewer turns than hold the bark, saves nothing.",
	}
	choices := gather.RootChoices(c.Design, c.Frame, c.Bark)
	least := -1
	share := func(r gather.RootChoice) float64 {
		return r.Strands.Left / (float64(len(r.Strands.Cut)) * r.Strands.Length)
	}
	for i, r := range choices {
		if r.Strands.Fits && (least < 0 || share(r) < share(choices[least])) {
			least = i
		}
	}
	return fill(t, refs(choices),
		text("change", "Lacing", func(r *gather.RootChoice) string {
			return lacingChange(*r, choices[0]) + wordIf(least >= 0 && r == &choices[least], ", wastes least")
		}),
		col("group", "Root in a group", units.Length, func(r *gather.RootChoice) Cell { return atLeast(r.Group) }),
		col("roots", "Roots to dig", units.Count, func(r *gather.RootChoice) Cell {
			return whole(r.Strands.Roots).saying(wordIf(!r.Strands.Fits, "longer roots"))
		}),
		col("left", "Left over, about", units.Run, func(r *gather.RootChoice) Cell {
			return when(r.Strands.Fits, about(r.Strands.Left))
		}),
		col("share", "Wasted", units.Percent, func(r *gather.RootChoice) Cell {
			return when(r.Strands.Fits, about(share(*r)))
		}),
	)
}

// lacingChange says how a lacing differs from the one set.
func lacingChange(r, set gather.RootChoice) string {
	switch {
	case r.Holes != set.Holes:
		return fmt.Sprintf("%d holes a group", r.Holes)
	case r.Passes != set.Passes:
		return many(r.Passes, "turn", "turns").text(units.Metric) + " a hole"
	case r.Tail != set.Tail:
		return fmt.Sprintf("tails of %.0f in (%.0f mm)", r.Tail/units.Inch, 1000*r.Tail)
	}
	return "as set"
}
