package refit

import (
	"fmt"
	"math"

	"barkwright/core/record"
)

// checkLengths finds the half lengths and names what does not add up to them.
func (ev *evidence) checkLengths() {
	ev.checkOrder(record.LengthOverGunwales, record.LengthOverall)
	ev.stations.halfLength = ev.half(record.LengthOverall)
	ev.stations.halfGunwale = ev.half(record.LengthOverGunwales)
	for side := range 2 {
		ev.checkBays(side)
	}
}

// checkBays compares the sum of the bays of one half with half the length over the
// gunwales. Where that length is not recorded, the sum gives it.
func (ev *evidence) checkBays(side int) {
	last := ev.lastBay(side)
	sum, whole := ev.bays(last, side)
	if !whole {
		return
	}
	toEnd := ev.reachEnd(side)
	half := ev.stations.halfGunwale
	gunwales, i, known := ev.first(record.LengthOverGunwales)
	switch {
	case toEnd && !known && !half.known:
		ev.stations.halfGunwale = at(sum.x)
	case toEnd && known && math.Abs(sum.x-half.x) > sum.within+gunwales.Within()/2:
		// No bay can be told from the others as the wrong one.
		message := fmt.Sprintf("The bays from the middle add up to %s, but half the length over the gunwales is %s: the "+
			"bays are left out until one is put right.", ev.length(sum.x), ev.length(half.x))
		ev.asideAll(message, append([]int{i}, sum.from...), sum.from)
	case half.known && sum.x > half.x+sum.within:
		ev.asideAll(fmt.Sprintf("The bays from the middle add up to %s, more than half the length over the gunwales, %s: "+
			"the bays are left out until one is put right.", ev.length(sum.x), ev.length(half.x)), sum.from, sum.from)
	}
}

// reachEnd tells whether the bays of one half reach the gunwale's end: there is one
// more of them than thwarts in the record, or they add up to it.
func (ev *evidence) reachEnd(side int) bool {
	last := ev.lastBay(side)
	half := ev.stations.halfGunwale
	sum, whole := ev.bays(last, side)
	return whole && (last == ev.outermost()+1 || half.known && math.Abs(sum.x-half.x) <= sum.within)
}

func (ev *evidence) asideAll(message string, about, aside []int) {
	for _, i := range aside {
		ev.aside[i] = true
	}
	ev.conflicts = append(ev.conflicts, Conflict{Message: message, Data: about, Aside: aside})
}

// outermost returns the highest number of a thwart in the record, bays apart.
func (ev *evidence) outermost() int {
	n := 0
	for i, d := range ev.data {
		if d.Kind != record.Bay && !ev.aside[i] {
			n = max(n, d.Number)
		}
	}
	return n
}

// placeThwarts finds where each thwart stands. It names measurements that disagree:
// stations counted from the middle and from the end that do not add up to half the
// length.
func (ev *evidence) placeThwarts() {
	for side := range 2 {
		before := 0.0
		for n := 1; n <= furthest; n++ {
			for _, way := range ev.ways(n, side) {
				ev.placeThwart(n, side, before, way)
			}
			before = max(before, ev.stations.thwarts[side][n].x)
		}
	}
}

func (ev *evidence) placeThwart(n, side int, before float64, way position) {
	half, had := ev.stations.halfGunwale, ev.stations.thwarts[side][n]
	switch {
	case half.known && way.x >= half.x:
		ev.asideAll(fmt.Sprintf("Thwart %d stands at or beyond the end of the gunwales, %s from the middle: left out.", n,
			ev.length(half.x)), way.from, way.from)
	case way.x <= before:
		ev.asideAll(fmt.Sprintf("Thwart %d stands %s from the middle, no further out than the one before it: left out.", n,
			ev.length(way.x)), way.from, way.from)
	case !had.known:
		ev.stations.thwarts[side][n] = at(way.x)
	case math.Abs(had.x-way.x) > way.within+record.ThwartPosition.UsualTolerance():
		ev.asideAll(fmt.Sprintf("Thwart %d stands %s from the middle by one measurement and %s by another: the stations "+
			"do not add up to half the length. The first is used until one is put right.",
			n, ev.length(had.x), ev.length(way.x)), way.from, way.from)
	}
}
