package bark

import (
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Scaled is the design with every length of the hull and of its building frame and
// bed times k; bark, timbers, root and crew stay as they are.
func Scaled(d design.Design, k float64) design.Design {
	for _, length := range []*float64{
		&d.Length, &d.Overhang, &d.Beam, &d.GreatestBeam, &d.Depth,
		&d.GunwaleEndHeight, &d.Rocker,
		&d.FrameWidth, &d.FrameLength, &d.TurnWidth, &d.Ease, &d.BedLength, &d.BedCrown, &d.EndBlocking,
		&d.EndHeight, &d.HeadSetback, &d.HeelLength, &d.Headboard,
	} {
		*length *= k
	}
	d.Corrected = d.Corrected.Scaled(k)
	return d
}

// Outcome is what a list of sheets makes of a design.
type Outcome struct {
	// Largest is the multiple of the design's size that the sheets just cover, and
	// Length that boat's length overall, m. Both are 0 where they cover none.
	Largest, Length float64
}

// The sizes looked at, as multiples of the design's, and how near the largest is
// found.
const (
	leastScale, mostScale = 0.25, 4.0
	scaleTolerance        = 0.001
)

// Makes works out what sheets make of a design, without a list nothing. Sizes are halved in on from both
// sides, as if every boat smaller than a covered one were covered too; where the
// cutting of panels breaks that, the answer still is a boat that they cover.
func Makes(d design.Design, sheets []Sheet) Outcome {
	var out Outcome
	covered := 0.0
	spare := func(k float64) float64 {
		if Covers(hull.New(Scaled(d, k)), sheets) {
			covered = max(covered, k)
			return 1
		}
		return -1
	}
	if spare(leastScale) < 0 {
		return out
	}
	if spare(mostScale) < 0 {
		geom.Bisect(spare, leastScale, mostScale, scaleTolerance)
	}
	out.Largest, out.Length = covered, covered*d.Length
	return out
}

// Covers tells whether a list of sheets covers a boat.
func Covers(h *hull.Hull, sheets []Sheet) bool {
	if len(sheets) == 0 {
		return false
	}
	bottom := bottomRun(h)
	d := newDemand(h, lines(h), bottom, plainFlatLength(h, bottom))
	l := Layout{Gores: gores(h, goreShares(h.Design))}
	return lay(&d, l.marks(&d), sheets).wanting == 0
}

// NarrowerBy is the loss of width that the builder is shown beside the list: bark
// split at an edge, or a smaller tree.
const NarrowerBy = 2 * units.Inch

// Narrower is the list with every sheet narrower by the amount; those that have
// nothing left are kept, with no width, so that the numbers stay.
func Narrower(sheets []Sheet, by float64) []Sheet {
	out := make([]Sheet, len(sheets))
	for i, s := range sheets {
		out[i] = Sheet{Width: max(0, s.Width-by), Length: s.Length}
	}
	return out
}
