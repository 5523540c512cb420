package frame

import (
	"barkwright/core/hull"
)

// Frame is all the wood of the boat and of its building bed.
type Frame struct {
	Gunwales  Gunwales
	Thwarts   []Thwart // of one half, from the middle one outward
	Ribs      []Rib    // of one half, from the middle outward
	Lacing    Lacing
	Headboard Headboard
	Stem      Stem
	Closing   Closing
	Sheathing Sheathing
	Bed       Bed
}

// Build works out the frame of a hull that Faults finds nothing wrong with.
func Build(h *hull.Hull) Frame {
	thwarts := newThwarts(h)
	ribs := newRibs(h, thwarts)
	stem := newStem(h, solidFrom(h, ribs))
	return Frame{
		Gunwales:  newGunwales(h),
		Thwarts:   thwarts,
		Ribs:      ribs,
		Lacing:    newLacing(h, ribs),
		Headboard: newHeadboard(h),
		Stem:      stem,
		Closing:   newClosing(h, stem),
		Sheathing: newSheathing(h),
		Bed:       newBed(h, thwarts),
	}
}

// HeadboardRun is where along the gunwale the headboard stands.
func HeadboardRun(h *hull.Hull) float64 { return h.Gunwale.Length() - h.Design.Headboard }

// straight is the largest radius spoken of, metres: a gunwale of the longest boat
// bent to it stands under 2 mm off a straight line. A choice of this project, so
// that a straight piece has a number.
const straight = 1e4
