package refit

import (
	"math"
	"sort"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

const (
	// suspects is how many of a block's worst misses are tried; more would not be
	// found in the time a fit may take.
	suspects = 6
	// odd are the most that are named in a block.
	odd = 3
	// betterWithout and farOff say when a measurement disagrees with the rest: the
	// squares of the others' misses come to less than this share without it, and
	// the others put it further off than this many tolerances. Choices of this project.
	betterWithout, farOff = 0.5, 2.0
)

// oddOne is a measurement that disagrees with the others: its index in the record and
// the value that the others predict.
type oddOne struct {
	index  int
	others float64
	// last tells that no datum of its curve is measured farther out. The others then
	// extrapolate to it, and a true end that lifts more steeply than this shape looks the same.
	last bool
}

// disagreeing finds the measurements without which the rest fit much better, group by
// group, one at a time.
func (b *boat) disagreeing() []oddOne {
	var list []oddOne
	for i, k := range b.groups {
		skip := map[int]bool{}
		// With one figure more than parameters any of them could be the odd one.
		for len(skip) < odd && len(k.data)-len(skip) > len(k.free)+1 {
			at, others, found := k.oddest(b, i, skip)
			if !found {
				break
			}
			skip[at] = true
			list = append(list, oddOne{k.data[at].index, others, k.last(at)})
		}
	}
	return list
}

// last tells whether datum i is the one measured farthest out. Points of a profile
// never are.
func (g group) last(i int) bool {
	for _, s := range g.data {
		if s.x > g.data[i].x+nearby {
			return false
		}
	}
	return g.data[i].Kind != record.EndPoint
}

// nearby is how far apart two stations count as one, a choice of this project: less
// than a boat's curves change in.
const nearby = 2 * units.Inch

// oddest finds the measurement that disagrees most with the rest of group i.
func (g group) oddest(b *boat, i int, skip map[int]bool) (at int, others float64, found bool) {
	d, all := g.solve(b.begun[i], skip)
	misses := g.worst(d, skip)
	if len(misses) == 0 {
		return 0, 0, false
	}
	// An end that this shape cannot follow bends the fit beside it too: it is tried first,
	// so that no figure there is blamed for it.
	for i, s := range g.data {
		if !skip[i] && !s.Locked && g.last(i) {
			misses = append([]int{i}, misses...)
		}
	}
	least := betterWithout * all
	for _, try := range misses {
		skip[try] = true
		without, sum := g.solve(b.begun[i], skip)
		delete(skip, try)
		miss := g.miss(without, try)
		if sum >= least || math.Abs(miss) <= farOff*g.data[try].Within() {
			continue
		}
		least, at, others, found = sum, try, g.data[try].Value+miss, true
		if g.last(try) {
			break
		}
	}
	return at, others, found
}

// worst lists the indices of the largest misses in tolerances. The list is empty where
// all lie inside.
func (g group) worst(d design.Design, skip map[int]bool) []int {
	var list []int
	miss := make([]float64, len(g.data))
	outside := false
	for i, s := range g.data {
		if skip[i] || s.Locked {
			continue
		}
		miss[i] = math.Abs(g.miss(d, i)) / s.Within()
		outside = outside || miss[i] > 1
		list = append(list, i)
	}
	if !outside {
		return nil
	}
	sort.SliceStable(list, func(a, c int) bool { return miss[list[a]] > miss[list[c]] })
	return list[:min(suspects, len(list))]
}
