package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// The feet of the gores keep this share of a column clear below and above them in
// the grid, so that no row of cells shrinks to zero height. A gore shorter than that is
// left out.
const leastShare = 0.08

// bendRows lays one row of the grid along the line of the gores' feet as far out
// as the end thwarts, and lets the rows go back to even spacing from there to the
// heel. Every gore then has exactly its depth at every resolution. It is the
// middle row for every boat, so that a flattening can start from that of another.
func (s *strip) bendRows(h *hull.Hull, rows int) {
	last := endThwart(h)
	s.knuckleRow = rows / 2
	even := float64(s.knuckleRow) / float64(rows)
	s.knuckle = make([]float64, len(s.columns))
	for c, l := range s.columns {
		t := footShare(h, l, s.high[c])
		if l.Place > last {
			// Past the frame's ends there is no line to follow.
			out := geom.SmoothStep((l.Place - last) / (max(1, last+leastShare) - last))
			t += (even - t) * out
		}
		s.knuckle[c] = t * s.high[c]
	}
}

// footShare is the share of a column's girth at which a gore there has its foot.
func footShare(h *hull.Hull, l column, girth float64) float64 {
	foot := h.FrameHalfBreadth(l.Foot.X) + h.Design.GoreFoot
	if foot >= (1-leastShare)*girth {
		// At the stem head both may be 0.
		return 1 - leastShare
	}
	return max(leastShare, foot/girth)
}

// endThwart is the place of the column at the outermost thwart's end.
func endThwart(h *hull.Hull) float64 {
	d := &h.Design
	return h.ColumnAtEdge(h.StationAt(d.ThwartAt[d.OuterThwarts()-1] * h.Gunwale.Length()))
}
