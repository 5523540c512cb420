// Package onhand answers what the sheets of bark that a builder has make of a design.
package onhand

import (
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Outcome is what a list of sheets makes of a design.
type Outcome struct {
	// Largest is the multiple of the design's size that the sheets just cover, and
	// Length that boat's length overall, m. Both are zero where they cover no size tried.
	Largest, Length float64
}

// The sizes tried, as multiples of the design's, and how closely the largest is found.
const (
	leastScale, mostScale = 0.25, 4.0
	scaleTolerance        = 0.001
)

// Makes works out what sheets make of a design. Without sheets the outcome is zero.
// The size is found by bisection, as if every boat smaller than a covered one were
// covered too. The cutting of panels can break that; the answer is then still a boat
// that the sheets cover. w is memory to work in, or nil; where its pause ends the work
// the outcome means nothing.
func Makes(d design.Design, sheets []bark.Sheet, w *geom.FlattenWorkspace) Outcome {
	return makesUpTo(d, sheets, mostScale, w)
}

// Agreeing is the outcome for a boat whose bark has been laid flat: whether the sheets cover it is
// known then, to a better length of bark than the sizes are tried with.
func (o Outcome) Agreeing(d design.Design, sheets []bark.Sheet, covered bool, w *geom.FlattenWorkspace) Outcome {
	switch {
	case covered && o.Largest < 1:
		return Outcome{Largest: 1, Length: d.Length}
	case !covered && o.Largest >= 1:
		return makesUpTo(d, sheets, 1-scaleTolerance, w)
	}
	return o
}

// makesUpTo looks for the largest size up to a multiple of the design's: by the plain lengths, and then near
// there by the bark laid flat, which takes longer and tells whether the sheets are cut so.
func makesUpTo(d design.Design, sheets []bark.Sheet, most float64, w *geom.FlattenWorkspace) Outcome {
	plain := plainLargest(d, sheets, most, w)
	if plain == 0 {
		return Outcome{}
	}
	covers := func(k float64) bool { return goesOn(w) && bark.CoversFlat(hull.New(d.Scaled(k)), sheets, w) }
	covered, bare := plain, plain
	step := firstStep
	if covers(plain) {
		for ; covered == bare; step *= 2 {
			if covered == most {
				return Outcome{Largest: most, Length: most * d.Length}
			}
			if bare = min(most, covered*(1+step)); covers(bare) {
				covered = bare
			}
		}
	} else {
		for ; covered == bare; step *= 2 {
			if bare == leastScale {
				return Outcome{}
			}
			if covered = max(leastScale, bare*(1-step)); !covers(covered) {
				bare = covered
			}
		}
	}
	for bare-covered > scaleTolerance {
		if mid := (covered + bare) / 2; covers(mid) {
			covered = mid
		} else {
			bare = mid
		}
	}
	return Outcome{Largest: covered, Length: covered * d.Length}
}

// goesOn pauses between two sizes and tells whether to go on.
func goesOn(w *geom.FlattenWorkspace) bool { return w == nil || w.Pause == nil || w.Pause() }

// firstStep is by what share of itself the size found by the plain lengths is changed at first.
const firstStep = 0.004

// plainLargest is the largest size tried that the plain lengths cover, zero where there is none.
func plainLargest(d design.Design, sheets []bark.Sheet, most float64, w *geom.FlattenWorkspace) float64 {
	covered := 0.0
	spare := func(k float64) float64 {
		if goesOn(w) && bark.Covers(hull.New(d.Scaled(k)), sheets) {
			covered = max(covered, k)
			return 1
		}
		return -1
	}
	if spare(leastScale) > 0 && spare(most) < 0 {
		geom.Bisect(spare, leastScale, most, scaleTolerance)
	}
	return covered
}

// NarrowerBy is the loss of width that the builder is shown beside the list: bark
// split at an edge, or a smaller tree.
const NarrowerBy = 2 * units.Inch

// Narrower returns the list with every sheet narrower by the amount. Sheets no wider
// than that stay in the list with a width of zero, so that the numbers stay.
func Narrower(sheets []bark.Sheet, by float64) []bark.Sheet {
	out := make([]bark.Sheet, len(sheets))
	for i, s := range sheets {
		out[i] = bark.Sheet{Width: max(0, s.Width-by), Length: s.Length}
	}
	return out
}
