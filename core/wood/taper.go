package wood

import (
	"math"

	"barkwright/core/units"
)

// BreastHeight is how far up the trunk a tree is taped by custom, 4 1/2 ft.
const BreastHeight = 4.5 * units.Foot

// birchTaper is the diameter of paper birch outside the bark over that at breast height,
// by height: the tree of 16 in and 65 ft, worked out from the taper equations of Li,
// Weiskittel, Dick, Kershaw and Seymour, North. J. Appl. For. 29(1), 2012, and
// Weiskittel and Li, CFRU report, 2012. Trees of 12 to 24 in differ by 0.02 at most.
var birchTaper = []struct{ height, ratio float64 }{
	{1 * units.Foot, 1.22}, {3 * units.Foot, 1.06}, {BreastHeight, 1}, {6 * units.Foot, 0.96}, {8 * units.Foot, 0.92},
	{10 * units.Foot, 0.89}, {12 * units.Foot, 0.87}, {14 * units.Foot, 0.84}, {16 * units.Foot, 0.82},
	{17.3 * units.Foot, 0.81}, {20 * units.Foot, 0.78}, {24 * units.Foot, 0.74},
}

// How much faster and slower than that trees grow thin: their form class, the
// diameter inside the bark at 17.3 ft over that at breast height, is usually from 66
// to 86 in a hundred, and 78 (0.81 of 0.96) in the table.
const (
	barkInside = 0.96
	quickTaper = (1 - 0.66/barkInside) / (1 - 0.81)
	slowTaper  = (1 - 0.86/barkInside) / (1 - 0.81)
	// leastTaper keeps a trunk from tapering to zero past the table's end.
	leastTaper = 0.3
)

// BirchTaper is the diameter of a paper birch outside the bark so high up, m, over
// that at breast height: the usual one, and from the quickest to the slowest taper.
func BirchTaper(height float64) (typical, low, high float64) {
	i := 1
	for i < len(birchTaper)-1 && height > birchTaper[i].height {
		i++
	}
	a, b := birchTaper[i-1], birchTaper[i]
	typical = max(leastTaper, a.ratio+(b.ratio-a.ratio)*(height-a.height)/(b.height-a.height))
	low = max(leastTaper, 1-(1-typical)*quickTaper)
	high = max(leastTaper, 1-(1-typical)*slowTaper)
	return typical, min(low, high), max(low, high)
}

// TreeDiameter is the diameter outside the bark of the least trunk that gives a
// sheet of the width, which goes once round it; the usable width is a little less.
// Metres in, metres out.
func TreeDiameter(width float64) float64 { return width / math.Pi }
