package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// shownStretch is the last place to which a stretch is shown, as a share.
const shownStretch = 0.0001

// WithinLimit tells whether a stretch keeps to a limit, both as they are shown, so that
// what reads 0.50 % is not over 0.50 %.
func WithinLimit(stretch, limit float64) bool {
	return math.Round(stretch/shownStretch) <= math.Round(limit/shownStretch)
}

// CurvePoint is the stretch left by a number of gores a side.
type CurvePoint struct {
	Gores    int
	P95, RMS float64 // as shares
	State    geom.FlattenState
}

// StretchAt is the stretch left by n gores a side standing evenly between the end
// thwarts; l is the layout with any number of gores. It takes a flattening and is no
// step of a slider.
func StretchAt(h *hull.Hull, l Layout, n int, res Resolution, w *geom.FlattenWorkspace) CurvePoint {
	l.Gores = gores(h, evenShares(h.Design, n))
	reach(h, l.Gores, l.SheetWidth)
	f := Flatten(h, l, res, nil, w)
	return CurvePoint{Gores: n, P95: f.P95, RMS: f.RMS, State: f.State}
}

// Fewest is the least number of gores whose stretch is within the limit, and
// whether there is one on the curve.
func Fewest(curve []CurvePoint, limit float64) (int, bool) {
	for _, p := range curve {
		if p.State == geom.Converged && WithinLimit(p.P95, limit) {
			return p.Gores, true
		}
	}
	return 0, false
}
