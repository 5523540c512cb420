package bark

import (
	"slices"
	"sort"
)

// offcut is a piece of bark that panels may be cut from.
type offcut struct {
	sheet         int
	width, length float64
}

// shortestStrip is the least length of a strip worth sewing in, m: a foot. A choice
// of this project.
const shortestStrip = 0.3048

// cutPanels fills, on both sides, the places where the sheets on the bed fall short
// of the edge, the widest places first.
func (c *Coverage) cutPanels(left []offcut, lap float64) {
	widest := slices.Clone(c.Beside)
	sort.SliceStable(widest, func(a, b int) bool { return widest[a].Width > widest[b].Width })
	for _, b := range widest {
		for _, side := range []*[]Laid{&c.Port, &c.Star} {
			left = c.fill(Shortage{Aft: b.Aft, Bow: b.Bow, Width: b.Width, Panel: true}, side, left, lap)
		}
	}
}

// fill lays strips from the forward end of a gap aft and returns what is left over.
func (c *Coverage) fill(g Shortage, side *[]Laid, left []offcut, lap float64) []offcut {
	bow := g.Bow
	for bow > g.Aft {
		need := bow - g.Aft
		best := pickOffcut(left, g.Width, need)
		if best < 0 {
			c.Short = append(c.Short, Shortage{Aft: g.Aft, Bow: bow, Width: g.Width, Panel: true})
			break
		}
		o := left[best]
		cut := min(o.length, need)
		*side = append(*side, Laid{Sheet: o.sheet, Aft: bow - cut, Bow: bow, Width: g.Width})
		left = slices.Delete(left, best, best+1)
		left = append(left,
			offcut{o.sheet, o.width - g.Width, o.length},
			offcut{o.sheet, g.Width, o.length - cut})
		if cut >= need {
			break
		}
		bow -= cut - lap
	}
	return left
}

// pickOffcut is the offcut to cut a strip of the width from: of those that reach
// the whole length the narrowest, failing that the longest; -1 where there is none.
func pickOffcut(left []offcut, width, length float64) int {
	best := -1
	for i, o := range left {
		if o.width < width || o.length < min(shortestStrip, length) {
			continue
		}
		if best < 0 {
			best = i
			continue
		}
		b := left[best]
		switch reaches := o.length >= length; {
		case reaches != (b.length >= length):
			if reaches {
				best = i
			}
		case reaches && o.width < b.width, !reaches && o.length > b.length:
			best = i
		}
	}
	return best
}
