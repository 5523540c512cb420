package pattern

import (
	"strings"

	"barkwright/core/geom"
)

// besideGap is the room between parts on the same pages, mm.
const besideGap = 6

// sideBySide puts parts that go on no page whole beside one another where they then take fewer pages.
func (k kit) sideBySide(parts []Pattern) []Pattern {
	var out []Pattern
	long := -1 // the last of them
	for _, p := range parts {
		if p.onOnePage() {
			out = append(out, p)
			continue
		}
		if long >= 0 {
			both := k.beside(out[long], p)
			if both.Size.X+2*narrow <= Paper.Width && len(both.Tiles(Paper)) < len(out[long].Tiles(Paper))+len(p.Tiles(Paper)) {
				out[long] = both
				continue
			}
		}
		long = len(out)
		out = append(out, p)
	}
	return out
}

// onOnePage tells whether a pattern goes on one page of paper whole.
func (p Pattern) onOnePage() bool {
	return p.Size.X+2*narrow <= Paper.Width && p.Size.Y+2*narrow <= Paper.Height
}

// beside puts the second to the right of the first.
func (k kit) beside(a, b Pattern) Pattern {
	out := Pattern{Key: a.Key, Name: a.Name + "; " + strings.TrimPrefix(b.Name, k.name("")), Note: a.Note + " " + b.Note}
	shift := geom.Vec2{X: a.Size.X + besideGap}
	out.Lines, out.Labels = append(out.Lines, a.Lines...), append(out.Labels, a.Labels...)
	for _, l := range b.Lines {
		out.Lines = append(out.Lines, Line{each(l.Points, shift.Add), l.Style})
	}
	for _, l := range b.Labels {
		l.At = l.At.Add(shift)
		out.Labels = append(out.Labels, l)
	}
	return out.done()
}
