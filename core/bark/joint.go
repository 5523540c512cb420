package bark

import (
	"math"

	"barkwright/core/geom"
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

// sideExcess is how much longer at each end the flat bark is than its bottom and
// its end seen from the side, as a multiple of what the plan of the top edge is
// longer than the middle line: the sides laid flat push forward. An estimate
// read off this project's own flattenings, good to about 3 in at an end; the flat
// sheet replaces it.
const sideExcess = 1.5

// plainFlatLength is the length of the bark on the bed before it is worked out.
func plainFlatLength(h hull.Hull, bottom bottomLine) float64 {
	excess := -h.HeadX
	last := geom.Vec2{X: 0, Y: h.SkinHalfBreadth(0)}
	for i := 1; i <= bottomPieces; i++ {
		x := h.HeadX * float64(i) / bottomPieces
		p := geom.Vec2{X: x, Y: h.SkinHalfBreadth(x)}
		excess += p.Sub(last).Len()
		last = p
	}
	return 2 * (bottom.heel() + h.Foremost() - h.HeelX + sideExcess*excess)
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
func joints(h hull.Hull, bottom bottomLine, whole float64) []Joint {
	d := h.Design
	n := sheetsEndToEnd(whole, d.SheetLength, d.SeamLap)
	out := make([]Joint, n-1)
	for i := range out {
		along := whole/2 - d.SheetLength - float64(i)*(d.SheetLength-d.SeamLap) + d.SeamLap/2
		out[i] = newJoint(h, bottom, along, whole)
	}
	return out
}

func newJoint(h hull.Hull, bottom bottomLine, along, whole float64) Joint {
	place := placeAlong(bottom, math.Abs(along), whole)
	l := newLine(h, place)
	return Joint{Along: along, Place: place, X: math.Copysign(l.foot.X, along), Length: 2 * l.girth}
}

// placeAlong is the place of the column whose foot lies a length from amidships on the
// flat bark, which is whole long over both ends.
func placeAlong(bottom bottomLine, run, whole float64) float64 {
	if run <= bottom.heel() {
		return bottom.placeAt(run)
	}
	return 1 + min(1, (run-bottom.heel())/(whole/2-bottom.heel()))
}
