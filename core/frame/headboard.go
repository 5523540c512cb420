package frame

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// Headboard is the board that stands inside each end; the boat has two. Heights are up
// the board from its foot, beside the heel of the stem-piece.
type Headboard struct {
	// Run along the gunwale and the station X are of the mark its top stands under, FootX
	// the station of its foot.
	Run, X, FootX float64
	// Height is from the foot to the top of the inwale, Sprung the length that takes when
	// the board bellies outboard as far as is set.
	Height, Sprung float64
	// Width is where it is broadest, Foot an inch up.
	Width, Foot float64
	// The neck that goes up between the inwales, a tenon: its breadth, and its height from the
	// inwales' underside there.
	Neck, Tenon float64
	// The notch over the heel of the stem-piece. Notched tells whether there is wood on
	// either side of it.
	NotchWidth, NotchDepth float64
	Notched                bool
	// Outline is the port half, (y, height), from the middle of the notch down round the
	// foot and up to the middle of its top.
	Outline []geom.Vec2
	// Stands is the lower edge of the board in the boat, at the foot, and Top where it
	// meets the top of the inwale, in (x, z).
	Stands, Top geom.Vec2
}

const (
	// HeadboardThickness: Adney and Chapelle 1964, p. 52 and fig. 102: cedar 1/4 in.
	HeadboardThickness = 0.25 * units.Inch
	// FootHeight is where the breadth of a headboard's foot is taken. A choice of this
	// project.
	FootHeight = 1 * units.Inch
	// boardPieces is in how many pieces the board's edge is looked at.
	boardPieces = 48
	// footRoom is how far the foot stays from the foremost point at least, so that the
	// stem-piece passes outside of it. A choice of this project.
	footRoom = 0.5 * units.Inch
)

// headboardFoot is the station of the headboard's foot: plumb under its mark, or farther
// out by what is set. Drawn boards have their feet 0 to 2 in farther out: scaled off
// Adney and Chapelle 1964, figures 31 to 106.
func headboardFoot(h *hull.Hull) float64 {
	d := &h.Design
	most := h.Foremost() - d.BarkThickness - d.StemDepth - footRoom
	return min(h.HeadboardX()+d.HeadboardFoot, max(h.HeadboardX(), most))
}

// newHeadboard cuts the skin at the board and takes bark and sheathing off. The board's
// foot comes down beside the heel to half the stem-piece's depth and is notched over it.
func newHeadboard(h *hull.Hull) Headboard {
	d := &h.Design
	b := Headboard{Run: HeadboardRun(h), X: h.HeadboardX(), FootX: headboardFoot(h)}
	_, b.Tenon = InwaleAt(h, b.Run)
	cut := h.CutAt(b.FootX, b.X)
	foot := footOver(h) / cut.Up.Y
	b.Stands, b.Top = along(cut, foot), along(cut, cut.P.Y)
	b.Height = cut.P.Y - foot
	b.Sprung = sprung(b.Height, d.HeadboardBelly)
	b.Neck = 2 * h.HalfBeam(b.X)
	b.NotchWidth, b.NotchDepth = d.StemWidth, d.StemDepth/2
	edge := boardEdge(cut.Section, d.BarkThickness+d.SheathingThickness, foot)
	shoulder := b.Height - b.Tenon
	cheeks := b.cheeks(edge)
	b.Notched = cheeks < b.NotchDepth
	b.Outline = b.outline(edge, cheeks, shoulder)
	for _, q := range b.Outline {
		if q.Y <= shoulder {
			b.Width = max(b.Width, 2*q.X)
		}
	}
	b.Foot = 2 * min(breadthAt(edge, min(FootHeight, shoulder)), b.Width/2)
	return b
}

// footOver is how far over the outside of the bark the board's foot stands.
func footOver(h *hull.Hull) float64 { return h.Design.BarkThickness + h.Design.StemDepth/2 }

func along(c hull.Cut, w float64) geom.Vec2 { return c.Foot.Add(c.Up.Scale(w)) }

// sprung is the length of a board of a height that bellies out by belly in the middle:
// the arc of a parabola.
func sprung(height, belly float64) float64 {
	if belly == 0 {
		return height
	}
	steep := 4 * belly / height // its slope at the ends
	return height / 2 * (math.Hypot(1, steep) + math.Asinh(steep)/steep)
}

// boardEdge is the inside of the skin's lining over the board's foot, rising.
func boardEdge(s shape.Section, depth, foot float64) []geom.Vec2 {
	var out []geom.Vec2
	for _, p := range Inside(s, depth, s.HalfGirth(), boardPieces) {
		q := geom.Vec2{X: max(0, p.X), Y: p.Y - foot}
		if n := len(out); n == 0 || q.Y > out[n-1].Y {
			out = append(out, q)
		}
	}
	return out
}

// breadthAt reads a rising edge at a height, held at its ends.
func breadthAt(edge []geom.Vec2, height float64) float64 {
	if height <= edge[0].Y {
		return edge[0].X
	}
	for i := 1; i < len(edge); i++ {
		if a, b := edge[i-1], edge[i]; height <= b.Y {
			return a.X + (b.X-a.X)*(height-a.Y)/(b.Y-a.Y)
		}
	}
	return edge[len(edge)-1].X
}

// cheeks is how high the wood beside the notch begins; at the notch's top there is none.
func (b Headboard) cheeks(edge []geom.Vec2) float64 {
	const pieces = 16
	for i := range pieces {
		from := b.NotchDepth * float64(i) / pieces
		if breadthAt(edge, from) > b.NotchWidth/2 {
			return from
		}
	}
	return b.NotchDepth
}

// outline returns half the board, whose cheeks begin at a height: higher where the lining
// leaves no wood beside the heel. Where it leaves none below the notch's top the foot is
// square over it.
func (b Headboard) outline(edge []geom.Vec2, from, shoulder float64) []geom.Vec2 {
	half := b.NotchWidth / 2
	out := []geom.Vec2{{Y: from}}
	if b.Notched {
		out = []geom.Vec2{{Y: b.NotchDepth}, {X: half, Y: b.NotchDepth}, {X: half, Y: from}}
	}
	out = append(out, geom.Vec2{X: breadthAt(edge, from), Y: from})
	for _, q := range edge {
		if q.Y > from && q.Y < shoulder {
			out = append(out, q)
		}
	}
	return append(out, geom.Vec2{X: breadthAt(edge, shoulder), Y: shoulder},
		geom.Vec2{X: b.Neck / 2, Y: shoulder}, geom.Vec2{X: b.Neck / 2, Y: b.Height}, geom.Vec2{Y: b.Height})
}
