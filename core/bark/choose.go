package bark

import (
	"math"
	"sort"
)

// mostTried is how many choices of sheets for the bed are laid out in full, and
// mostTriedShort how many where all before them left something wanting.
const (
	mostTried      = 4
	mostTriedShort = 24
)

// choices lists the ways to choose sheets for the bed from a list, the most
// promising first. These are the sets that reach from end to end and need every one of
// their sheets, and the sets that do so with sheets of the size more added.
func (d *demand) choices(sheets []Sheet, more Sheet) [][]bedSheet {
	type choice struct {
		order []bedSheet
		cost  float64
	}
	lap := d.hull.Design.SeamLap
	var all []choice
	// later is the mask of the later sheets that are of the same size.
	later := make([]int, len(sheets))
	for i, s := range sheets {
		for k := i + 1; k < len(sheets); k++ {
			if sheets[k] == s {
				later[i] |= 1 << k
			}
		}
	}
	for mask := range 1 << len(sheets) {
		reach, shortest, first := 0.0, math.Inf(1), true
		for i, s := range sheets {
			if mask>>i&1 == 0 {
				// Of sheets of one size the first ones are taken.
				first = first && mask&later[i] == 0
				continue
			}
			reach += s.Length - lap
			shortest = min(shortest, s.Length)
		}
		if !first || (mask&(mask-1) != 0 && reach+lap-(shortest-lap) >= d.whole) {
			continue
		}
		var set []bedSheet
		for i, s := range sheets {
			if mask>>i&1 == 1 {
				set = append(set, bedSheet{s, i})
			}
		}
		wanting := 0.0
		for reach+lap < d.whole {
			wanting += min(more.Length, d.whole-reach)
			set = append(set, bedSheet{more, Wanting})
			reach += more.Length - lap
		}
		order := inOrder(set)
		all = append(all, choice{order, d.estimate(order, reach+lap) + costWanting*wanting})
	}
	sort.SliceStable(all, func(a, b int) bool { return all[a].cost < all[b].cost })
	out := make([][]bedSheet, len(all))
	for i, c := range all {
		out[i] = c.order
	}
	return out
}

// What a choice of sheets for the bed costs, in metres of seam: a metre that is
// wanting, and a metre in which a sheet is narrower than the bed asks.
const (
	costWanting = 1000.0
	costNarrow  = 100.0
)

// estimate is about how much a choice of sheets leaves to sew, m, were each cut
// shorter in proportion.
func (d *demand) estimate(order []bedSheet, reach float64) float64 {
	cost := float64(len(order)-1) * d.full[0]
	bow := d.whole / 2
	for _, s := range order {
		aft := bow - s.Length*d.whole/reach
		places := d.between(max(aft, -d.whole/2), bow)
		for i := 1; i < len(places); i++ {
			x, run := (places[i]+places[i-1])/2, places[i]-places[i-1]
			if d.at(d.full, x) > s.Width {
				cost += 2 * run
			}
			if d.at(d.bed, x) > s.Width {
				cost += costNarrow * run
			}
		}
		bow = aft
	}
	return cost
}
