package frame

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Group is one group of lacing on one quarter's gunwale.
type Group struct {
	Run, X float64
	// Thwart is the thwart it laces, from 0 at the middle, or -1.
	Thwart int
	Pegged bool
	// Holes are the places of its holes along the gunwale. Those of a group split
	// round a rib stand either side of its tip.
	Holes []float64
}

// Lacing is the root lacing of both gunwales.
type Lacing struct {
	// Groups stand along one quarter, from the middle outward. The first stands
	// on the middle where no space between ribs or thwart is off it.
	Groups []Group
	// Count and Pegs are for the whole boat, both sides. No peg stands past the end thwarts:
	// Adney and Chapelle 1964, p. 48.
	Count, Pegs int
	// Turn is the root in one turn round the gunwales, Group that in one group.
	Turn, Group float64
	// Total is the root in all groups, before waste; WithWaste after it.
	Total, WithWaste float64
}

// RootThickness is the thickness of a split root as a share of its width. Estimate.
const RootThickness = 0.5

// HoleBelow is how far under the gunwales the holes stand: a quarter inch. Common
// practice, no published source.
const HoleBelow = 0.25 * units.Inch

// samePlace is how near two places along the gunwale count as one, m.
const samePlace = 1e-9

func newLacing(h *hull.Hull, ribs []Rib) Lacing {
	d := &h.Design
	l := Lacing{Groups: make([]Group, 0, len(ribs)+1)}
	endThwart := endThwartRun(h)
	add := func(run float64, thwart int, holes []float64) {
		l.Groups = append(l.Groups, Group{Run: run, X: h.StationAt(run), Thwart: thwart,
			Pegged: len(l.Groups)%d.PegEvery == 0 && run <= endThwart+samePlace, Holes: holes})
	}
	if ribs[0].Alone() {
		add(0, 0, splitHoles(d))
	} else {
		// The first space, that of the middle thwart, is done with this one.
		add(0, 0, holes(d, 0))
	}
	for i, r := range ribs {
		// Half a space out stands the thwart where there is one before the next rib.
		run := r.Run + r.Spacing/2
		if r.Alone() {
			// Midway of what the half of the split group leaves of its space.
			run += (splitRoom(d) - d.RibTipWidth/2) / 2
		}
		add(run, thwartAfter(ribs, i), holes(d, run))
	}
	for i, g := range l.Groups {
		n := 4
		if i == 0 {
			n = 2
		}
		l.Count += n
		if g.Pegged {
			l.Pegs += n
		}
	}
	l.Turn = turnLength(h)
	l.Group = l.GroupOf(d.GroupHoles, d.Passes, d.Tail)
	l.Total = float64(l.Count) * l.Group
	l.WithWaste = l.Total * (1 + d.RootWaste)
	return l
}

// GroupOf is the root in a group of so many holes with so many turns through each, m.
func (l *Lacing) GroupOf(holes, passes int, tail float64) float64 {
	return float64(holes*passes+1)*l.Turn + 2*tail
}

// groupLength is the length of a group from its first hole to its last.
func groupLength(d design.Design) float64 { return float64(d.GroupHoles-1) * d.HoleSpacing }

// holes are those of a group with its middle at run.
func holes(d *design.Design, run float64) []float64 {
	out := make([]float64, d.GroupHoles)
	length := groupLength(*d)
	for i := range out {
		out[i] = run - length/2 + d.HoleSpacing*float64(i)
	}
	return out
}

// splitHoles are those of the group that a rib under the middle thwart parts: half
// a spacing clear of its tip on either side, the odd one forward.
func splitHoles(d *design.Design) []float64 {
	out := make([]float64, d.GroupHoles)
	aft := d.GroupHoles / 2
	for i := range out {
		beyond := float64(i-aft) + 0.5
		out[i] = d.HoleSpacing*beyond + math.Copysign(d.RibTipWidth/2, beyond)
	}
	return out
}

// splitRoom is how far along the gunwale from the middle the split group reaches.
func splitRoom(d *design.Design) float64 { return splitHoles(d)[d.GroupHoles-1] }

// thwartAfter is the thwart between rib i and the next, or -1.
func thwartAfter(ribs []Rib, i int) int {
	if i+1 < len(ribs) && ribs[i+1].Bay > ribs[i].Bay {
		return ribs[i+1].Bay
	}
	return -1
}

// turnLength is one turn: round inwale, outwale and the bark doubled, down to the
// hole, measured at the middle of the root's thickness.
func turnLength(h *hull.Hull) float64 {
	d := &h.Design
	across := d.InwaleThickness + d.OutwaleThickness + 2*d.BarkThickness
	down := max(d.InwaleDepth, d.OutwaleDepth) + HoleBelow
	return 2*(across+down) + math.Pi*d.RootWidth*RootThickness
}
