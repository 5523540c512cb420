package pattern

import (
	"math"
	"sort"
	"sync"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Each label stands whole on one page, where no other page comes to lie on it.

// shown is the part of a page, in its block, that is seen once the pages after it lie on
// their overlaps.
func (t Tile) shown() draw.Box {
	const edge = 1.5 // mm
	b := draw.Box{Left: edge, Top: edge, Right: t.Block.Width - edge, Bottom: t.Block.Height - edge}
	if t.Col < t.Cols-1 {
		b.Right -= t.Block.Overlap
	}
	if t.Row < t.Rows-1 {
		b.Bottom -= t.Block.Overlap
	}
	return b
}

// placeLabels gives every label of a pattern its page: the one that it lies on whole, or
// the nearest on which it can, moved along, off other labels and the pages' own marks.
func placeLabels(tiles []Tile) {
	if len(tiles) == 0 {
		return
	}
	marks := make([][]Line, len(tiles))
	for i, t := range tiles {
		marks[i] = t.cut(t.registration())
	}
	for _, l := range tiles[0].Pattern.Labels {
		best, on, least := l, -1, math.Inf(1)
		for i, t := range tiles {
			at := l
			at.At = l.At.Sub(t.origin())
			low, high := at.box()
			size, shown := high.Sub(low), t.shown()
			for _, by := range labelSteps() {
				corner := into(low.Add(by.Scale(l.size())), size, shown)
				off := corner.Sub(low).Len()
				if off >= least {
					continue
				}
				const each = 30 // mm that a label is moved sooner than to lie on another
				off += each * float64(covered(corner, size, 0.5, marks[i], t.Labels, 100))
				if off < least {
					best, on, least = at, i, off
					best.At = at.At.Add(corner.Sub(low))
				}
			}
		}
		tiles[on].Labels = append(tiles[on].Labels, best)
	}
}

// labelSteps are how a label is moved from its place, in its letters' size, the least first.
var labelSteps = sync.OnceValue(func() (out []geom.Vec2) {
	for x := -6.0; x <= 6; x += 0.75 {
		for y := -6.0; y <= 6; y += 0.5 {
			out = append(out, geom.Vec2{X: x, Y: y})
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Len() < out[j].Len() })
	return out
})

// into is where the upper left corner of something of a size comes, moved as little as it
// takes to lie in a box.
func into(corner, size geom.Vec2, b draw.Box) geom.Vec2 {
	return geom.Vec2{
		X: max(b.Left, min(corner.X, b.Right-size.X)),
		Y: max(b.Top, min(corner.Y, b.Bottom-size.Y)),
	}
}
