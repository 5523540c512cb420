package gather

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Gear is one kind of thing that is needed for the work and does not stay in the boat.
// Low and High bound its length. They are 0 for gear without a length, Width and
// Thickness where they do not matter.
type Gear struct {
	Name             string
	Count            int
	Low, High        float64
	Width, Thickness float64
	// From is where the number comes from, for the reader.
	From string
}

const (
	pp4041 = "Adney and Chapelle, pp. 40-41"
	own    = "estimate"
)

// Lengths of what stands round the bed, metres: stakes 30 to 50 in (Adney and Chapelle
// 1964, pp. 40-41), inside stakes 20 to 25 in, 1 1/2 by 1 (p. 116; p. 45 has halves
// 1/2 in thick).
const (
	stakeShort, stakeLong   = 30 * units.Inch, 50 * units.Inch
	insideShort, insideLong = 20 * units.Inch, 25 * units.Inch
	// A stake goes stakeDriven into the ground and both kinds stand tieOver over the edge
	// that they hold, where they are tied across: deep boats need longer ones than the
	// published. Estimates.
	stakeDriven, tieOver = 12 * units.Inch, 4 * units.Inch
	insideWidth          = 1.5 * units.Inch
	insideThickness      = 0.5 * units.Inch
)

// clampEvery is how far apart the gunwales are clamped to the bark while they are
// lashed. Estimate.
const clampEvery = 1 * units.Foot

// temporaryRibs hold the sheathing until the ribs are in; of ash (Adney and Chapelle
// 1964, p. 51), how many an estimate: one to so much of the bottom.
const temporaryEvery = 2 * units.Foot

// gear lists what the bed, the bark and the gunwales are held with.
func gear(h *hull.Hull, f frame.Frame) []Gear {
	d, b := h.Design, f.Bed
	inside := 0
	for _, s := range b.Stakes {
		// Stakes at the frame's end and beyond take no inside stake.
		if !s.Beyond && s.X < h.FrameEnd() {
			inside += 4
		}
	}
	cross := 2*len(b.Crosspieces) - 1
	batten := battenLength(h)
	var all []Gear
	if d.BuiltOn == design.OnFrame {
		all = append(all,
			Gear{Name: "long battens of the building frame", Count: 2, Low: batten, High: batten, Width: frame.Batten,
				Thickness: frame.Batten, From: "Adney and Chapelle, p. 54"},
			Gear{Name: "crosspieces of the frame", Count: cross, Low: b.Crosspieces[len(b.Crosspieces)-1].OutToOut,
				High: b.Crosspieces[0].OutToOut, From: "the table of the building frame"})
	}
	all = append(all,
		Gear{Name: "stakes", Count: b.StakeCount, Low: max(stakeShort, d.Depth+stakeDriven+tieOver),
			High: max(stakeLong, d.EndHeight+stakeDriven+tieOver), From: pp4041},
		Gear{Name: "inside stakes, one against each stake along the sides", Count: inside,
			Low: max(insideShort, d.Depth+tieOver), High: max(insideLong, h.Sheer(h.FrameEnd())+tieOver),
			Width: insideWidth, Thickness: insideThickness, From: "Adney and Chapelle, pp. 45, 116"},
		Gear{Name: "ties: one across each pair of stakes, one to each inside stake", Count: b.StakeCount/2 + inside,
			From: own},
	)
	for i, p := range b.Posts {
		n := 4
		if i == 0 || i == len(b.Posts)-1 {
			n = 2 // the middle thwart has one place; at the ends the gunwales meet
		}
		all = append(all, Gear{Name: "posts under the " + p.Under, Count: n, Low: p.Length, High: p.Length,
			From: "the table of posts"})
	}
	if d.EndBlocking > 0 {
		all = append(all, Gear{Name: "blocks under the heels, this high", Count: 2, Low: d.EndBlocking, High: d.EndBlocking,
			From: "as set"})
	}
	return append(all,
		Gear{Name: "stones to weigh the frame down, two to a crosspiece", Count: 2 * cross, From: own},
		Gear{Name: "clamps, one to a foot of gunwale", Count: 2 * int(math.Ceil(f.Gunwales.Inwale/clampEvery)), From: own},
		Gear{Name: "temporary ribs, to hold the sheathing", Count: int(math.Ceil(2 * h.HeelX / temporaryEvery)),
			From: "Adney and Chapelle, p. 51; how many, estimate"},
	)
}

// battenLength is the length of the building frame's long batten along its curve.
func battenLength(h *hull.Hull) float64 {
	const pieces = 60
	end := h.FrameEnd()
	sum := 0.0
	for i := range pieces {
		a, b := end*float64(i)/pieces, end*float64(i+1)/pieces
		sum += math.Hypot(b-a, h.FrameHalfBreadth(b)-h.FrameHalfBreadth(a))
	}
	return 2 * sum
}
