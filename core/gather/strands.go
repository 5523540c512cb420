package gather

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Strands is how roots of the usual length are cut: each gives two strands as long,
// and a strand is cut into groups of lacing and lengths for seams.
type Strands struct {
	Length float64 // of a root and its strands, m
	// Fits tells whether a group of lacing can be had from one strand; the rest holds
	// only then.
	Fits bool
	Cut  []Strand
	// Pieces counts what they are cut into, and Roots what is dug for them, those that
	// are spoiled included.
	Pieces, Roots int
	Left          float64 // over of all strands, m
}

// Strand is one strand: its groups of lacing and how much of it goes into each kind
// of seam, m.
type Strand struct {
	Groups int
	Seams  [4]float64
	Left   float64
}

// lengthOf is a length to be cut from a strand: for a kind of seam, or a group.
type lengthOf struct {
	length float64
	kind   int
}

const forGroup = -1

// CutStrands cuts strands for groups of lacing of one length and for the seams: of what
// is to be cut the longest first, each from the first strand that has room for it. A
// group is one strand, since it is not pieced; a seam that takes more than a strand goes
// on with the next one. waste is the share of roots that are spoiled.
func CutStrands(length float64, groups int, group float64, seams [4]bark.Seam, waste float64) Strands {
	s := Strands{Length: length, Fits: group <= length}
	if !s.Fits {
		return s
	}
	count := groups
	for i := range seams {
		for _, root := range seams[i].Strands {
			count += int(math.Ceil(root / length))
		}
	}
	all := make([]lengthOf, 0, count)
	for range groups {
		all = append(all, lengthOf{group, forGroup})
	}
	for kind := range seams {
		for _, root := range seams[kind].Strands {
			for ; root > length; root -= length {
				all = append(all, lengthOf{length, kind})
			}
			all = append(all, lengthOf{root, kind})
		}
	}
	slices.SortStableFunc(all, func(a, b lengthOf) int { return cmp.Compare(b.length, a.length) })
	lengths := make([]float64, len(all))
	for i, a := range all {
		lengths[i] = a.length
	}
	places := FirstFit(lengths, length)
	strands := 0
	for _, at := range places {
		strands = max(strands, at+1)
	}
	s.Cut = make([]Strand, 0, strands)
	for i, at := range places {
		if at == len(s.Cut) {
			s.Cut = append(s.Cut, Strand{Left: length})
		}
		strand := &s.Cut[at]
		strand.Left -= all[i].length
		if all[i].kind == forGroup {
			strand.Groups++
		} else {
			strand.Seams[all[i].kind] += all[i].length
		}
	}
	for _, c := range s.Cut {
		s.Left += c.Left
	}
	s.Pieces = len(all)
	s.Roots = int(geom.Ceil(float64(len(s.Cut)) * (1 + waste) / 2))
	return s
}

// FirstFit gives the number of the strand that each length is cut from, the first that
// has room. With the lengths from the longest to the shortest, as few strands serve as
// any other way needs, times 11/9 and 6/9 more at most (G. Dosa, The tight bound of first
// fit decreasing bin-packing algorithm, ESCAPE 2007; from memory).
func FirstFit(lengths []float64, strand float64) []int {
	const tolerance = 1e-9
	out := make([]int, len(lengths))
	var left []float64
	for i, v := range lengths {
		at := slices.IndexFunc(left, func(room float64) bool { return room >= v-tolerance })
		if at < 0 {
			at = len(left)
			left = append(left, strand)
		}
		left[at] -= v
		out[i] = at
	}
	return out
}

// RootChoice is another way to lace, with what it makes of the roots.
type RootChoice struct {
	Holes, Passes int
	Tail, Group   float64 // m
	Strands       Strands
}

// RootChoices are the lacing as set and what changing one thing of it would do: tails
// of 1 to 4 in, a turn more or less through a hole, a hole more or less.
func RootChoices(d design.Design, f frame.Frame, b bark.Layout) []RootChoice {
	set := RootChoice{Holes: d.GroupHoles, Passes: d.Passes, Tail: d.Tail}
	all := []RootChoice{set}
	add := func(c RootChoice) {
		same := c.Holes == set.Holes && c.Passes == set.Passes && c.Tail == set.Tail
		if !same && c.Passes > 0 && c.Holes > 1 {
			all = append(all, c)
		}
	}
	for inches := 1.0; inches <= 4; inches++ {
		add(RootChoice{Holes: set.Holes, Passes: set.Passes, Tail: inches * units.Inch})
	}
	for _, more := range []int{-1, 1} {
		add(RootChoice{Holes: set.Holes, Passes: set.Passes + more, Tail: set.Tail})
	}
	for _, more := range []int{-1, 1} {
		add(RootChoice{Holes: set.Holes + more, Passes: set.Passes, Tail: set.Tail})
	}
	for i := range all {
		c := &all[i]
		c.Group = f.Lacing.GroupOf(c.Holes, c.Passes, c.Tail)
		c.Strands = CutStrands(d.RootLength, f.Lacing.Count, c.Group, b.Seams, d.RootWaste)
	}
	return all
}

// The one published total of root: a museum's account of a 15 ft canoe with 40 ribs
// plans 5 ft a rib space and 50 ft for the seams; 250 ft dug gave 500 ft split.
const (
	PublishedSpace, PublishedSeams = 5 * units.Foot, 50 * units.Foot
	PublishedLength                = 15 * units.Foot
)

// PublishedRoot is what that account's plan comes to for a boat, m to dig: by its ribs
// and, for the seams, by its length.
func PublishedRoot(d design.Design) float64 {
	return PublishedSpace*float64(d.Ribs) + PublishedSeams*d.Length/PublishedLength
}
