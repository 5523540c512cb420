package frame

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Headboard is the board that stands inside each end; the boat has two.
type Headboard struct {
	Run, X float64
	// Height is from the sheathing on the bottom to the top of the inwale, Width
	// where it is broadest, Neck between the gunwales and Foot just over the bottom.
	Height, Width, Neck, Foot float64
	// Outline is the port half, (y, z) over the board's foot, from the foot's
	// middle up to the middle of its top.
	Outline []geom.Vec2
}

// footHeight is where the breadth of a headboard's foot is taken, an inch up: it
// stands over the stem's heel there. Common practice, no published source.
const footHeight = 0.0254

func newHeadboard(h hull.Hull) Headboard {
	d := h.Design
	b := Headboard{Run: HeadboardRun(h)}
	b.X = h.StationAt(b.Run)
	section := h.ColumnSection(h.ColumnAtEdge(b.X))
	depth := d.BarkThickness + d.SheathingThickness
	b.Neck = 2 * h.HalfBeam(b.X)
	top := section.P.Y
	foot := section.A.Y + depth
	b.Height = top - foot
	shoulder := b.Height - d.InwaleDepth
	raw := Inside(section, depth, section.HalfGirth(), 48)
	b.Outline = []geom.Vec2{{}}
	height := 0.0
	for _, p := range raw {
		q := geom.Vec2{X: math.Max(0, p.X), Y: p.Y - foot}
		if q.Y < height || q.Y > shoulder {
			continue
		}
		height = q.Y
		b.Outline = append(b.Outline, q)
		b.Width = math.Max(b.Width, 2*q.X)
		if q.Y <= footHeight {
			b.Foot = 2 * q.X
		}
	}
	b.Outline = append(b.Outline,
		geom.Vec2{X: b.Neck / 2, Y: shoulder}, geom.Vec2{X: b.Neck / 2, Y: b.Height}, geom.Vec2{Y: b.Height})
	return b
}
