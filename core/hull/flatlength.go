package hull

import (
	"barkwright/core/geom"
	"barkwright/core/units"
)

const (
	// sideExcess tells by how much, at each end, the flat bark is longer than its bottom and
	// its end seen from the side: the sides laid flat push forward. It is a multiple of the
	// difference in length between the plan of the top edge and the middle line. An estimate
	// read off this project's own flattenings, good to FlatSpread at an end; the flat sheet
	// replaces it.
	sideExcess = 1.5
	// FlatSpread is how much farther or less far the bark may reach.
	FlatSpread = 3 * units.Inch
	// excessPieces is in how many pieces that plan is measured: a tenth of a millimetre.
	excessPieces = 64
)

// FlatPastHeel is about how far the bark on the bed reaches past the heel, m.
func (h *Hull) FlatPastHeel() float64 {
	excess := -h.HeadX
	last := 0.0
	for i := 0; i <= excessPieces; i++ {
		half := h.SkinHalfBreadth(h.HeadX * float64(i) / excessPieces)
		if i > 0 {
			excess += geom.Vec2{X: h.HeadX / excessPieces, Y: half - last}.Len()
		}
		last = half
	}
	return h.Foremost() - h.HeelX + sideExcess*excess
}
