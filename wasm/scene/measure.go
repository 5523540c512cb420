package scene

import (
	"math"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Measure is a dimension line with slanted ticks at its ends, broken at its
// middle by half the given gap each way.
func (p *Pen) Measure(from, to draw.Point, gap float64) []draw.Op {
	w := FineWidth * p.Weight
	share := max(0, 0.5-gap/2/math.Hypot(to.X-from.X, to.Y-from.Y))
	mid := func(s float64) draw.Point {
		return draw.Point{X: from.X + s*(to.X-from.X), Y: from.Y + s*(to.Y-from.Y)}
	}
	ops := []draw.Op{
		draw.Stroke{Role: draw.Ink, Points: []draw.Point{from, mid(share)}, Width: w},
		draw.Stroke{Role: draw.Ink, Points: []draw.Point{mid(1 - share), to}, Width: w},
	}
	const tick = 3.5
	for _, q := range [2]draw.Point{from, to} {
		ops = append(ops, draw.Stroke{Role: draw.Ink, Width: 1.4 * p.Weight,
			Points: []draw.Point{{X: q.X - tick, Y: q.Y + tick}, {X: q.X + tick, Y: q.Y - tick}}})
	}
	return ops
}

// ReadyFlat reports whether there is a flat sheet to draw. Where there is none, it says
// why in the picture.
func (p *Pen) ReadyFlat(f *bark.Flat) bool {
	text := "The bark is being laid flat."
	if f != nil {
		if f.State == geom.Converged || f.State == geom.NotConverged {
			return true
		}
		text = "This bark does not lie flat: " + f.State.String() + "."
	}
	p.Say(RankMain, text, draw.Ink, draw.Paper, SpotAt(p.List.Width/2, p.List.Height/2, draw.Middle))
	return false
}

// Wanting hatches a piece that the bark on hand does not cover.
func (p *Pen) Wanting(points []draw.Point) {
	p.Hatch(draw.Warn, 5, FineWidth, math.Pi/4, points)
}
