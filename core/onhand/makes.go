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
// that the sheets cover.
func Makes(d design.Design, sheets []bark.Sheet) Outcome { return makesUpTo(d, sheets, mostScale) }

// Agreeing is the outcome for a boat whose bark has been laid flat: whether the sheets cover it is
// known then, to a better length of bark than the sizes are tried with.
func (o Outcome) Agreeing(d design.Design, sheets []bark.Sheet, covered bool) Outcome {
	switch {
	case covered && o.Largest < 1:
		return Outcome{Largest: 1, Length: d.Length}
	case !covered && o.Largest >= 1:
		return makesUpTo(d, sheets, 1-scaleTolerance)
	}
	return o
}

// makesUpTo looks for the largest size up to a multiple of the design's.
func makesUpTo(d design.Design, sheets []bark.Sheet, most float64) Outcome {
	var out Outcome
	covered := 0.0
	spare := func(k float64) float64 {
		if bark.Covers(hull.New(d.Scaled(k)), sheets) {
			covered = max(covered, k)
			return 1
		}
		return -1
	}
	if spare(leastScale) < 0 {
		return out
	}
	if spare(most) < 0 {
		geom.Bisect(spare, leastScale, most, scaleTolerance)
	}
	out.Largest, out.Length = covered, covered*d.Length
	return out
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
