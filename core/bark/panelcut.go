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
func (c *Coverage) cutPanels(d demand, left []offcut, lap float64) {
	gaps := c.gaps(d, lap)
	sort.SliceStable(gaps, func(a, b int) bool { return gaps[a].Width > gaps[b].Width })
	for _, g := range gaps {
		for _, side := range []*[]Laid{&c.Port, &c.Star} {
			left = c.fill(g, side, left, lap)
		}
	}
}

// gaps lists the stretches in which a sheet on the bed is narrower than the boat,
// with the width of the panel that each side takes.
func (c *Coverage) gaps(d demand, lap float64) []Shortage {
	var out []Shortage
	for _, s := range c.Bed {
		open := false
		for i, x := range d.along {
			if x < s.Aft || x > s.Bow {
				continue
			}
			width := (d.full[i]-s.Width)/2 + lap
			if width <= lap {
				open = false
				continue
			}
			if !open {
				aft := s.Aft
				if i > 0 {
					aft = max(aft, d.along[i-1])
				}
				out = append(out, Shortage{Aft: aft, Panel: true})
				open = true
			}
			g := &out[len(out)-1]
			g.Width, g.Bow = max(g.Width, width), s.Bow
			if i+1 < len(d.along) {
				g.Bow = min(s.Bow, d.along[i+1])
			}
		}
	}
	return out
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
