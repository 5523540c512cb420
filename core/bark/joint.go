package bark

import (
	"math"

	"barkwright/core/hull"
)

// Joint is a seam right across, where one sheet ends and the next goes on. The
// forward sheet lies outside, so that the lap faces the stern (Adney and Chapelle
// 1964, p. 147).
type Joint struct {
	Along  float64 // on the flat sheet, m forward of amidships
	Place  float64 // of the column it follows, aft or forward, as hull.Hull.Column takes it
	X      float64 // of that column's foot, m forward of amidships
	Length float64 // from edge to edge round the bottom on the hull, m
}

// plainFlatLength is the length of the bark on the bed before it is worked out:
// the bottom between the heels and the ends as seen from the side.
func plainFlatLength(h hull.Hull, all []line) float64 {
	return 2 * (heelRun(all) + h.Foremost() - h.HeelX)
}

// heelRun is the length of the bottom from amidships to the heel.
func heelRun(all []line) float64 {
	run := 0.0
	for i := 1; i < len(all) && all[i].place <= 1; i++ {
		run += all[i].at(0).Sub(all[i-1].at(0)).Len()
	}
	return run
}

// sheetsEndToEnd is how many sheets of a length, each lapped over the next, make
// up the whole.
func sheetsEndToEnd(whole, sheet, lap float64) int {
	if sheet >= whole {
		return 1
	}
	return 1 + int(math.Ceil((whole-sheet)/(sheet-lap)-1e-9))
}

// joints lays whole sheets from the bow aft, so that only the last is cut.
func joints(h hull.Hull, heelRun, whole float64) []Joint {
	d := h.Design
	n := sheetsEndToEnd(whole, d.SheetLength, d.SeamLap)
	out := make([]Joint, n-1)
	for i := range out {
		along := whole/2 - d.SheetLength - float64(i)*(d.SheetLength-d.SeamLap) + d.SeamLap/2
		out[i] = newJoint(h, along, heelRun, whole)
	}
	return out
}

func newJoint(h hull.Hull, along, heelRun, whole float64) Joint {
	s := math.Abs(along)
	place := s / heelRun
	if s > heelRun {
		place = 1 + min(1, (s-heelRun)/(whole/2-heelRun))
	}
	l := newLine(h, place)
	return Joint{Along: along, Place: place, X: math.Copysign(l.foot.X, along), Length: 2 * l.girth}
}
