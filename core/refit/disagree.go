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

// oddOne is one: a measurement's place in the record and what the others make of it.
type oddOne struct {
	index  int
	others float64
	// last tells that nothing of its curve is measured farther out: the others do not
	// stand about it, and a true end that lifts more steeply than this shape looks the same.
	last bool
}

// disagreeing finds the measurements that the rest do better without, block by
// block, one at a time.
func (b *boat) disagreeing() []oddOne {
	var list []oddOne
	for i, k := range b.blocks {
		skip := map[int]bool{}
		// With one figure more than parameters any of them could be the odd one.
		for len(skip) < odd && len(k.data)-len(skip) > len(k.loose)+1 {
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

// last tells whether nothing is measured farther out than the datum at place i; no
// point of a profile is the last of it.
func (b block) last(i int) bool {
	for _, s := range b.data {
		if s.x > b.data[i].x+nearby {
			return false
		}
	}
	return b.data[i].Kind != record.EndPoint
}

// nearby is how far apart two stations count as one, a choice of this project: less
// than a boat's curves change in.
const nearby = 2 * units.Inch

// oddest finds the measurement that disagrees most with the rest of block i.
func (k block) oddest(b *boat, i int, skip map[int]bool) (at int, others float64, found bool) {
	d, all := k.solve(b.begun[i], skip)
	misses := k.worst(d, skip)
	if len(misses) == 0 {
		return 0, 0, false
	}
	// An end that this shape cannot follow bends the fit beside it too: it is tried first,
	// so that no figure there is blamed for it.
	for i, s := range k.data {
		if !skip[i] && !s.Locked && k.last(i) {
			misses = append([]int{i}, misses...)
		}
	}
	least := betterWithout * all
	for _, try := range misses {
		skip[try] = true
		without, sum := k.solve(b.begun[i], skip)
		delete(skip, try)
		miss := k.miss(without, try)
		if sum >= least || math.Abs(miss) <= farOff*k.data[try].Within() {
			continue
		}
		least, at, others, found = sum, try, k.data[try].Value+miss, true
		if k.last(try) {
			break
		}
	}
	return at, others, found
}

// worst lists the places of the largest misses in tolerances, and none where all
// lie inside.
func (k block) worst(d design.Design, skip map[int]bool) []int {
	var list []int
	miss := make([]float64, len(k.data))
	outside := false
	for i, s := range k.data {
		if skip[i] || s.Locked {
			continue
		}
		miss[i] = math.Abs(k.miss(d, i)) / s.Within()
		outside = outside || miss[i] > 1
		list = append(list, i)
	}
	if !outside {
		return nil
	}
	sort.SliceStable(list, func(a, c int) bool { return miss[list[a]] > miss[list[c]] })
	return list[:min(suspects, len(list))]
}
