package refit

import (
	"fmt"
	"math"

	"barkwright/core/record"
)

// checkLengths finds the half lengths and names what does not add up to them.
func (r *reading) checkLengths() {
	r.checkOrder(record.LengthOverGunwales, record.LengthOverall, "left out until one is put right.")
	r.halfLength = r.value(record.LengthOverall) / 2
	r.halfGunwale = r.value(record.LengthOverGunwales) / 2
	for side := range 2 {
		r.checkBays(side)
	}
}

// checkBays holds the bays of one half against half the length over the gunwales,
// which they give where it is not recorded.
func (r *reading) checkBays(side int) {
	last := r.lastBay(side)
	sum, whole := r.bays(last, side)
	if !whole {
		return
	}
	toEnd := r.reachEnd(side)
	gunwales, i, known := r.first(record.LengthOverGunwales)
	switch {
	case toEnd && !known && r.halfGunwale == 0:
		r.halfGunwale = sum.x
	case toEnd && known && math.Abs(sum.x-r.halfGunwale) > sum.within+gunwales.Within()/2:
		// No bay can be told from the others as the wrong one.
		message := fmt.Sprintf("The bays from the middle add up to %s, but half the length over the gunwales is %s: the bays are left out until one is put right.", r.length(sum.x), r.length(r.halfGunwale))
		r.asideAll(message, append([]int{i}, sum.from...), sum.from)
	case r.halfGunwale > 0 && sum.x > r.halfGunwale+sum.within:
		r.asideAll(fmt.Sprintf("The bays from the middle add up to %s, more than half the length over the gunwales, %s: the bays are left out until one is put right.", r.length(sum.x), r.length(r.halfGunwale)), sum.from, sum.from)
	}
}

// reachEnd tells whether the bays of one half reach the gunwale's end: there is one
// more of them than thwarts that anything is said of, or they add up to it.
func (r *reading) reachEnd(side int) bool {
	last := r.lastBay(side)
	sum, whole := r.bays(last, side)
	return whole && (last == r.outermost()+1 || r.halfGunwale > 0 && math.Abs(sum.x-r.halfGunwale) <= sum.within)
}

func (r *reading) asideAll(message string, about, aside []int) {
	for _, i := range aside {
		r.aside[i] = true
	}
	r.conflicts = append(r.conflicts, Conflict{Message: message, Data: about, Aside: aside})
}

// outermost is the highest number of a thwart that the record speaks of otherwise
// than by its bay.
func (r *reading) outermost() int {
	n := 0
	for i, d := range r.data {
		if d.Kind != record.Bay && !r.aside[i] {
			n = max(n, d.Number)
		}
	}
	return n
}

// placeThwarts finds where each thwart stands and names the ways of telling that
// disagree: a station counted from the middle and from the end that do not add up
// to half the length.
func (r *reading) placeThwarts() {
	for side := range 2 {
		before := 0.0
		for n := 1; n <= furthest; n++ {
			for _, way := range r.ways(n, side) {
				r.placeThwart(n, side, before, way)
			}
			before = max(before, r.thwarts[side][n])
		}
	}
}

func (r *reading) placeThwart(n, side int, before float64, way station) {
	at := &r.thwarts[side][n]
	switch {
	case r.halfGunwale > 0 && way.x >= r.halfGunwale:
		r.asideAll(fmt.Sprintf("Thwart %d stands at or beyond the end of the gunwales, %s from the middle: left out.", n, r.length(r.halfGunwale)), way.from, way.from)
	case way.x <= before:
		r.asideAll(fmt.Sprintf("Thwart %d stands %s from the middle, no further out than the one before it: left out.", n, r.length(way.x)), way.from, way.from)
	case *at == 0:
		*at = way.x
	case math.Abs(*at-way.x) > way.within+record.ThwartPosition.UsualTolerance():
		r.asideAll(fmt.Sprintf("Thwart %d stands %s from the middle by one measurement and %s by another: the stations do not add up to half the length. The first is used until one is put right.",
			n, r.length(*at), r.length(way.x)), way.from, way.from)
	}
}
