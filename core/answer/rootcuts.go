package answer

import (
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/gather"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// rootsTable is every root with its two strands, as they are cut one after another.
func rootsTable(c core.Canoe) Table {
	t := Table{
		Key: "roots", Title: "Roots, strand by strand", Home: stage.Gather,
		Note: "Two strands from a root, those for the lacing first. Cut the groups from the thick end; what is left sews " +
			"seams, and the last of it ties. Lengths are estimates: lace and sew one piece, and see what it takes.",
	}
	s := c.Gather.Root.Strands
	type strand struct {
		gather.Strand
		root, half string
	}
	var all []strand
	if s.Fits {
		for i, cut := range inGroups(s.Cut) {
			half := [...]string{"first strand", "second strand"}[i%2]
			all = append(all, strand{cut, units.Count.Format(float64(i/2+1), units.Metric), half})
		}
	}
	group := c.Frame.Lacing.Group
	return fill(t, refs(all),
		text("root", "Root", func(s *strand) string { return s.root }),
		text("half", "Strand", func(s *strand) string { return s.half }),
		col("groups", "Groups from it", units.Count, func(s *strand) Cell { return whole(s.Groups) }),
		col("cut", "Root in a group", units.Length,
			func(s *strand) Cell { return when(s.Groups > 0, atLeast(group)) }),
		col("last", "Last group ends at", units.Length,
			func(s *strand) Cell { return when(s.Groups > 1, atLeast(float64(s.Groups)*group)) }),
		text("seams", "And for seams", func(s *strand) string { return seamsOf(s.Strand) }),
		col("sewn", "Of it for seams, about", units.Run, func(s *strand) Cell {
			sewn := seamRoot(s.Strand)
			return when(sewn > 0, about(sewn))
		}),
		col("left", "Left over, about", units.Run, func(s *strand) Cell { return about(s.Left) }),
	).orNone("a group takes more than a strand: dig longer roots")
}

// seamsOf names the seams that a strand sews.
func seamsOf(s gather.Strand) string {
	var names []string
	for kind, v := range s.Seams {
		if v > 0 {
			names = append(names, strings.ToLower(seamNames[bark.Kind(kind)].name))
		}
	}
	return strings.Join(names, ", ")
}

// seamRoot is how much of a strand goes into seams, m.
func seamRoot(s gather.Strand) float64 {
	sum := 0.0
	for _, v := range s.Seams {
		sum += v
	}
	return sum
}
