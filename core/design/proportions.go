package design

import "barkwright/core/units"

// The proportions that numbers follow unless they are set. What is said of them
// elsewhere is written from these.
const (
	// FrameShare is the building frame's breadth as a share of the beam inside. Six
	// drawn boats have lettered frames of 0.77 to 0.90; at 0.82 the half girths of the
	// drawn midsections come out with no mean error: derived from Adney and Chapelle 1964.
	FrameShare = 0.82
	// FrameShorter is how much shorter the building frame is than the gunwales. Same
	// figure: 170 of 184 in.
	FrameShorter = 14 * units.Inch
	// bedLonger is how much longer the bed is than the gunwales; a choice of this
	// project.
	bedLonger = 48 * units.Inch
	// GunwaleEndRise is how far the gunwale's ends rise over the depth amidships, and
	// HeadRise how far the stem head rises over those; choices of this project.
	GunwaleEndRise = 7.5 * units.Inch
	HeadRise       = 5 * units.Inch
	// HeadBack is how far the head is set back where the end has room for it; a choice
	// of this project.
	HeadBack = 3 * units.Inch
	// RibEvery is the length of gunwale to a rib. Adney and Chapelle 1964, figure 109:
	// 3.8 in between centres.
	RibEvery = 4 * units.Inch
)
