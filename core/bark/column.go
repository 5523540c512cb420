package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// column is a column of the skin with what the plain lengths are read from.
type column struct {
	hull.Column
	girth  float64 // from foot to top edge
	frame  float64 // half-breadth of what the bark is folded up round, at the foot
	onBed  float64 // the same folded up on the bed, 0 past the heel
	lifted float64 // how far out from the bed's centre line the foot lies when flat
}

// newColumn measures the column at a place. Past the heel the foot is on the end
// profile, which lies on the bed as it is seen from the side.
func newColumn(h *hull.Hull, place float64) (c column) {
	c.set(h, place)
	return c
}

// set makes a zero column that at a place.
func (c *column) set(h *hull.Hull, place float64) {
	c.Set(h, place)
	c.girth = c.Girth()
	c.frame = h.FrameHalfBreadth(c.Foot.X)
	if place <= 1 {
		c.onBed = h.FoldedUp(c.Foot.X, c.P.X, c.P.Y-c.A.Y)
	} else {
		c.lifted = lifted(h, c.Foot)
	}
}

// lifted is how far out from the bed's centre line a foot past the heel lies when flat.
func lifted(h *hull.Hull, foot geom.Vec2) float64 { return foot.Y - h.End.Path.Points[0].Y }

// reach is how far out from the bed's centre line bark is wanted when flat, before
// the flattening is worked out: the half girth on the bed or finished, whichever is
// more, and, past the heel, where the end lies as seen from the side, the height over
// the heel.
func (c *column) reach() float64 { return c.lifted + max(c.onBed, c.girth*c.Up.Y) }

// girthAt is how far up the column the distance y from the bed's centre line is.
func (c *column) girthAt(y float64) float64 {
	if c.Up.Y <= 0 {
		// At the stem head the column has no height; all of it is on one side.
		if y > c.lifted {
			return c.girth
		}
		return 0
	}
	return max(0, min(c.girth, (y-c.lifted)/c.Up.Y))
}

// The plain lengths are summed over this many spaces between columns, as far as the
// heel and past it, where the skin turns most: enough for a thousandth of the skin's
// area and of the panels' seams. They are even, for skinArea, and the same for every
// boat, so that no slider makes a jump.
const plainInside, plainPast = 24, 14

// plainColumns measures the columns of the half boat from amidships to the stem head.
func plainColumns(h *hull.Hull) []column { return spacedColumns(h, plainInside, plainPast) }

// spacedColumns has so many spaces between columns as far as the heel and past it.
func spacedColumns(h *hull.Hull, inside, past int) []column {
	out := make([]column, inside+past+1)
	for i := range out {
		place := float64(i) / float64(inside)
		if i > inside {
			place = 1 + float64(i-inside)/float64(past)
		}
		out[i].set(h, place)
	}
	return out
}
