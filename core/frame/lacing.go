package frame

import (
	"math"

	"barkwright/core/hull"
)

// Group is one group of lacing on one quarter's gunwale.
type Group struct {
	Run, X float64
	// Thwart is the thwart it laces, from 0 at the middle, or -1.
	Thwart int
	Pegged bool
	// Holes are the places of its holes along the gunwale. Those of a group split
	// round a rib stand either side of it.
	Holes []float64
}

// Lacing is the root lacing of both gunwales.
type Lacing struct {
	// Groups stand along one quarter, from the middle outward. The first stands
	// on the middle where no space between ribs or thwart is off it.
	Groups []Group
	// Count and Pegs are for the whole boat, both sides.
	Count, Pegs int
	// Turn is the root in one turn round the gunwales, Group that in one group.
	Turn, Group float64
	// Total is the root in all groups, before waste; WithWaste after it.
	Total, WithWaste float64
}

// holeBelow is how far under the gunwales the holes stand: a quarter inch. Common
// practice, no published source.
const holeBelow = 0.25 * 0.0254

func newLacing(h hull.Hull, thwarts []Thwart, ribs []Rib) Lacing {
	d := h.Design
	var l Lacing
	add := func(run float64, thwart int) {
		k := len(l.Groups)
		g := Group{Run: run, X: h.StationAt(run), Thwart: thwart, Pegged: k%d.PegEvery == 0}
		for i := range d.GroupHoles {
			at := run + d.HoleSpacing*(float64(i)-float64(d.GroupHoles-1)/2)
			if run == 0 && d.Ribs%2 == 1 {
				at += math.Copysign(ribs[0].Width/2, float64(i)-float64(d.GroupHoles-1)/2)
			}
			g.Holes = append(g.Holes, at)
		}
		l.Groups = append(l.Groups, g)
	}
	add(0, 0)
	// With no rib at the middle the first space, that of the middle thwart, is done.
	for i, r := range ribs {
		switch t := thwartAfter(thwarts, ribs, i); {
		case i+1 == len(ribs):
			add(r.Run+r.Spacing/2, -1)
		case t > 0:
			add(thwarts[t].Run, t)
		default:
			add((r.Run+ribs[i+1].Run)/2, -1)
		}
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
	l.Group = float64(d.GroupHoles*d.Passes+1)*l.Turn + 2*d.Tail
	l.Total = float64(l.Count) * l.Group
	l.WithWaste = l.Total * (1 + d.RootWaste)
	return l
}

// thwartAfter is the thwart between rib i and the next, or -1.
func thwartAfter(thwarts []Thwart, ribs []Rib, i int) int {
	if i+1 < len(ribs) && ribs[i+1].Bay > ribs[i].Bay {
		return ribs[i+1].Bay
	}
	return -1
}

// turnLength is one turn: round inwale, outwale and the bark doubled, down to the
// hole, measured at the middle of a root half as thick as it is wide.
func turnLength(h hull.Hull) float64 {
	d := h.Design
	across := d.InwaleThickness + d.OutwaleThickness + 2*d.BarkThickness
	down := math.Max(d.InwaleDepth, d.OutwaleDepth) + holeBelow
	return 2*(across+down) + 2*math.Pi*d.RootWidth/4
}
