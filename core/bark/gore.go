package bark

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
)

// Gore is one slit in the port side.
type Gore struct {
	X         float64 // station, m forward of amidships
	Run       float64 // along the gunwale from its middle, m; aft is negative
	FootGirth float64 // from the centre line to the foot along the bark, m
	EndGirth  float64 // from the centre line to where it stops: the top edge or a panel's seam, m
	FullGirth float64 // from the centre line to the top edge, m
	Depth     float64 // from foot to end on the hull, m
	Along     float64 // of its foot along the flat bark, m forward of amidships
	State     GoreState

	place float64 // of its column, forward
}

// GoreState says whether there is a gore at a place where one was asked for.
type GoreState int

const (
	// GoreCut is a gore that takes bark out.
	GoreCut GoreState = iota
	// GoreNoRoom has its foot past the edge of the sheet, or in the lap of a panel there.
	GoreNoRoom
	// GoreLetIn would open the wrong way: the edge is too short there.
	GoreLetIn
	// GoreNotNeeded is a slash that stays a slit: it would open by less than is trimmed.
	GoreNotNeeded
)

func (s GoreState) String() string {
	return [...]string{
		"gore",
		"no gore here, the sheet ends at its foot",
		"no gore here, bark to be let in",
		"a slit: hardly anything rides over",
	}[s]
}

// GoresByRule tells whether the gores stand by the example's rule: one at each
// thwart end and one half-way between (Adney and Chapelle 1964, p. 41). It holds
// as long as the user has set no number.
func GoresByRule(d design.Design) bool {
	p, _ := design.Lookup("gores")
	return !p.Owned(d)
}

// goreShares returns where the gores of a side stand, as shares of the half
// gunwale along its curve from its middle, from the after one forward.
func goreShares(d design.Design) []float64 {
	if GoresByRule(d) {
		return ruleShares(d)
	}
	return evenShares(d, d.Gores)
}

// ruleShares places a gore at each thwart end and one half-way between.
func ruleShares(d design.Design) []float64 {
	forward := []float64{0}
	for _, at := range d.ThwartAt[:d.OuterThwarts()] {
		last := forward[len(forward)-1]
		forward = append(forward, (last+at)/2, at)
	}
	out := make([]float64, 0, 2*len(forward)-1)
	for i := len(forward) - 1; i > 0; i-- {
		out = append(out, -forward[i])
	}
	return append(out, forward...)
}

// evenShares places n gores evenly between the end thwarts, one on each of them;
// a single one stands amidships.
func evenShares(d design.Design, n int) []float64 {
	if n == 1 {
		return []float64{0}
	}
	last := d.ThwartAt[d.OuterThwarts()-1]
	out := make([]float64, n)
	for i := range out {
		out[i] = last * (2*float64(i)/float64(n-1) - 1)
	}
	return out
}

// gores measures the gores of the port side at shares of the half gunwale.
func gores(h *hull.Hull, shares []float64) []Gore {
	out := make([]Gore, len(shares))
	for i, share := range shares {
		run := share * h.Gunwale.Length()
		if mirror := len(shares) - 1 - i; mirror < i {
			out[i] = out[mirror]
			out[i].X, out[i].Run = -out[i].X, run
			continue
		}
		x := h.StationAt(math.Abs(run))
		out[i] = newGore(h, x)
		out[i].X, out[i].Run = math.Copysign(x, run), run
	}
	return out
}

// newGore measures the gore at x. The bark lies flat on the bed when the foot is
// marked, so a distance outside the frame there is a distance along the bark.
func newGore(h *hull.Hull, x float64) Gore {
	d := &h.Design
	l := newColumn(h, h.ColumnAtEdge(x))
	g := Gore{
		FootGirth: l.girthAt(h.FrameHalfBreadth(x) + d.GoreFoot),
		FullGirth: l.girth,
		place:     l.Place,
	}
	g.end(l.girth, d.SeamLap)
	return g
}

// end stops a gore at a girth. A slash that a panel's lap covers is no gore.
func (g *Gore) end(girth, lap float64) {
	g.EndGirth, g.Depth, g.State = girth, girth-g.FootGirth, GoreCut
	if g.Depth <= 0 || girth < g.FullGirth && g.Depth <= lap {
		g.Depth, g.State = 0, GoreNoRoom
	}
}

// reach stops gores, which stand the same fore and aft, at the edge of a sheet of a width.
func reach(h *hull.Hull, all []Gore, width float64) {
	for i := range all {
		g := &all[i]
		if mirror := len(all) - 1 - i; mirror < i {
			g.end(all[mirror].EndGirth, h.Design.SeamLap)
			continue
		}
		c := newColumn(h, g.place)
		g.end(sheetGirth(h, &c, width), h.Design.SeamLap)
	}
}
