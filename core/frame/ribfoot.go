package frame

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// boardClear is how far inboard of the headboard's foot the last rib's outer edge stands
// at least. Drawn boats 0.9 to 3.2 in: scaled off Adney and Chapelle 1964, figures 31 to
// 106.
const boardClear = 0.9 * units.Inch

// FootSpread is how far inboard and outboard of its computed place the foot of one of
// the last ribs may well stand: the spread of the drawn boats, same figures. It is
// SpreadRibs ribs an end that it is said of.
const (
	FootSpreadIn  = 0.5 * units.Inch
	FootSpreadOut = 1 * units.Inch
	SpreadRibs    = 3
)

// standRibs finds the feet of ribs that have their marks and widths. A rib stands
// square to the bottom at its foot (Adney and Chapelle 1964, pp. 105-106, read); past
// the heel, where the end's curve has no square that reaches the gunwale, the bottom
// counts as going on at the heel's slope. The last one leans less where its outer edge
// would come too near the headboard's foot, and those inboard of it no more than it does.
func standRibs(h *hull.Hull, ribs []Rib) {
	last := len(ribs) - 1
	most := headboardFoot(h) - boardClear - ribs[last].Width/2 - ribs[last].X
	for i := last; i >= 0; i-- {
		r := &ribs[i]
		if i < last {
			next := &ribs[i+1]
			// A last rib held back behind its mark pushes its neighbours no farther than
			// side by side.
			beside := next.FootX - r.X - (next.Width+r.Width)/2
			most = max(next.FootX-next.X, min(0, beside))
		}
		r.FootX = min(squareFoot(h, r.X), r.X+most)
	}
}

// squareFoot is the station from which the square to the bottom passes through the
// gunwale at x.
func squareFoot(h *hull.Hull, x float64) float64 {
	top := h.TopEdge(x)
	miss := func(foot float64) float64 { return foot - x - h.BottomSlope(foot)*(top-h.Floor(foot)) }
	a, b := x, x-miss(x)
	fa, fb := miss(a), miss(b)
	// Where the bottom curves up so hard that its squares cross, a few steps end
	// somewhere between the two; the rib stands there.
	for range 12 {
		if math.Abs(fb) < settled || fa == fb {
			break
		}
		a, b, fa = b, max(x, b-fb*(b-a)/(fb-fa)), fb
		fb = miss(b)
	}
	return b
}

// settled is how near a rib's foot is found, m.
const settled = 1e-10

// solidFrom is the station of the stem-piece's inboard end: at the last rib's outer
// edge, and no farther inboard of the headboard's foot than the heel is by rule.
func solidFrom(h *hull.Hull, ribs []Rib) float64 {
	r := ribs[len(ribs)-1]
	return max(r.FootX+r.Width/2, headboardFoot(h)-design.HeelInboard)
}
