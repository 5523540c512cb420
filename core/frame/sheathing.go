package frame

import (
	"math"
	"slices"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Sheathing is the lining between ribs and bark, in regions along the boat whose
// strips lap one another.
type Sheathing struct {
	Regions []SheathingRegion
	// Strips and Area are for the whole boat, laps included.
	Strips int
	Area   float64
}

// SheathingRegion is the strips that stand side by side over one length.
type SheathingRegion struct {
	From, To float64 // along x
	// Length of the longest strip and of the shortest, laps included: the one under
	// the gunwale follows the plan and the sheer, the one in the middle the bottom.
	Length, Shortest float64
	Strips           int
}

const (
	// longestStrip is how long a strip of sheathing is split: to 9 ft. Adney and
	// Chapelle 1964, pp. 50-51.
	longestStrip = 9 * units.Foot
	// shortestRegion is how long a region is at least, where the boat is long enough: strips are
	// split from 5 ft on. Same pages.
	shortestRegion = 5 * units.Foot
	// boatPieces is in how many pieces the strips are measured at least, and stripLines how
	// many strips of a region are.
	boatPieces = 24
	stripLines = 5
)

func newSheathing(h *hull.Hull) Sheathing {
	lap, long := h.Design.SheathingLap, 2*h.HeadboardX()
	for n := int(math.Ceil(long / (longestStrip - lap))); ; n++ {
		regions := n
		if more := n + 1 - n%2; long/float64(more) >= shortestRegion {
			regions = more // an odd number keeps the joints off the middle
		}
		if s := sheathed(h, regions); s.longest() <= longestStrip {
			return s
		}
	}
}

func (s *Sheathing) longest() float64 {
	most := 0.0
	for _, r := range s.Regions {
		most = max(most, r.Length)
	}
	return most
}

// sheathed covers the boat from headboard to headboard in n regions.
func sheathed(h *hull.Hull, n int) Sheathing {
	d := &h.Design
	end := h.HeadboardX()
	pieces := 4 * ((boatPieces + 4*n - 1) / (4 * n)) // of a region: two pairs or more, so that a pair ends amidships
	half := make([]lining, (n+1)/2)                  // from amidships outward
	amidships := pieces / 2 * (n % 2)                // of the region there, whose after half mirrors
	last := liningAt(h, 0)
	for k := 2; k <= n*pieces/2; k += 2 {
		middle := liningAt(h, end*float64(2*(k-1))/float64(n*pieces))
		at := liningAt(h, end*float64(2*k)/float64(n*pieces))
		half[(k-1+amidships)/pieces].add(last, middle, at)
		last = at
	}
	if amidships > 0 {
		half[0].double()
	}
	var s Sheathing
	for i := range n {
		r := SheathingRegion{From: end * (2*float64(i)/float64(n) - 1), To: end * (2*float64(i+1)/float64(n) - 1)}
		line := &half[max(i, n-1-i)-n/2]
		lap := 0.0
		if i > 0 {
			lap = d.SheathingLap
		}
		r.Shortest = slices.Min(line.lengths[:]) + lap
		r.Length = slices.Max(line.lengths[:]) + lap
		r.Strips = int(math.Ceil(line.girth / d.SheathingWidth))
		s.Strips += r.Strips
		s.Area += float64(r.Strips) * d.SheathingWidth * (line.mean() + lap)
		s.Regions = append(s.Regions, r)
	}
	return s
}

// lining is a region's strips on the skin: how long they are, from the middle one up to
// the one under the gunwale, and the greatest girth that they cover, which grows again
// toward high ends.
type lining struct {
	lengths [stripLines]float64
	girth   float64
}

// liningColumn is where strips cross one column of the skin.
type liningColumn struct {
	points [stripLines]geom.Vec3
	girth  float64
}

// liningAt is the column whose top stands at x: strips narrow with the boat, so each
// keeps its share of the girth.
func liningAt(h *hull.Hull, x float64) liningColumn {
	column := h.Column(h.ColumnAtEdge(x))
	girth := column.Girth()
	c := liningColumn{girth: 2 * girth}
	for j := range c.points {
		c.points[j] = column.At(girth * float64(j) / (stripLines - 1))
	}
	return c
}

// add adds a pair of pieces. Chords fall short of a curve by the square of their length: two of them by a
// quarter of what the one from end to end does, and by a third of what they differ in.
func (l *lining) add(from, middle, to liningColumn) {
	l.girth = max(l.girth, from.girth, middle.girth, to.girth)
	for j := range l.lengths {
		two := middle.points[j].Sub(from.points[j]).Len() + to.points[j].Sub(middle.points[j]).Len()
		l.lengths[j] += two + (two-to.points[j].Sub(from.points[j]).Len())/3
	}
}

// mean is the mean length of the strips, by Simpson's rule over the girth.
func (l *lining) mean() float64 {
	sum := l.lengths[0] + l.lengths[stripLines-1]
	for j, length := range l.lengths[1 : stripLines-1] {
		sum += float64(4-2*(j%2)) * length
	}
	return sum / (3 * (stripLines - 1))
}

func (l *lining) double() {
	for j := range l.lengths {
		l.lengths[j] *= 2
	}
}
