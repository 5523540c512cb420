package hull

import (
	"math"
	"sort"

	"barkwright/core/geom"
)

// End is the profile of the bow from the heel to the stem head, in the plane of
// x and z, with the tightest place of its bend.
type End struct {
	geom.Bezier
	// Path is the profile in short straight pieces, for lengths along it.
	Path geom.Polyline
	// TightestAt is the parameter of the smallest radius and TightestRadius that
	// radius, metres at the bark's outer face. +Inf where nothing bends.
	TightestAt, TightestRadius float64
}

// foremostTolerance is how near the foremost point comes to half the length, m.
const foremostTolerance = 1e-9

// profilePieces is the number of pieces of the profile's Path: its length is then
// short of the true one by under 0.01 mm for a quarter circle of 0.6 m.
const profilePieces = 240

// newEnd shapes the end. The handle on the heel runs along the bottom; the one
// on the head is set so that the curve's foremost point is at half the length.
// The shares of run and rise are choices of this project: they keep the tightest
// bend off the heel and let it ease without reversal as endFull is lowered.
func (h *Hull) newEnd() End {
	d := &h.Design
	heel := geom.Vec2{X: h.HeelX, Y: d.Rocker}
	head := geom.Vec2{X: h.HeadX, Y: d.EndHeight}
	m := h.bottomSlope()
	a, b := d.HeelLength, head.Y-heel.Y
	reach := (0.40 + 0.35*d.EndFull) * a
	c := geom.Bezier{heel, {X: heel.X + reach, Y: heel.Y + m*reach}, head, head}
	c[2].X = head.X
	if d.HeadSetback > 0 {
		c[2].X, _ = geom.Bisect(func(x float64) float64 {
			c[2].X = x
			return foremost(c) - d.Length/2
		}, head.X, head.X+8*a, foremostTolerance)
	}
	c[2].Y = max(head.Y-(0.15+0.65*d.EndFull)*b, heel.Y+m*(c[2].X-heel.X)+0.08*b)
	e := End{Bezier: c}
	points := make([]geom.Vec2, profilePieces+1)
	for i := range points {
		points[i] = c.At(float64(i) / profilePieces)
	}
	e.Path = geom.NewPolyline(points)
	e.TightestAt, e.TightestRadius = e.tightest(0, 1)
	return e
}

// foremost returns the largest X of the curve, from the zero of its derivative.
func foremost(b geom.Bezier) float64 {
	// X'(t)/3 = p (1-t)^2 + 2 q t(1-t) + r t^2.
	p, q, r := b[1].X-b[0].X, b[2].X-b[1].X, b[3].X-b[2].X
	if r >= 0 {
		return b[3].X
	}
	// The largest root: X falls from there to the head.
	k := p - 2*q + r
	t := 0.0
	if root := math.Sqrt(max(0, q*q-p*r)); k != 0 {
		t = (p - q + root) / k
		if t < 0 || t > 1 {
			t = (p - q - root) / k
		}
	} else {
		t = p / (2 * (p - q))
	}
	return b.At(max(0, min(1, t))).X
}

// Floor is the height of the outside of the bark on the centre line at x: the
// bottom as far as the heel, beyond it the lower branch of the end's profile, which
// the skin's columns stand on. Past the foremost point it is that point's height.
func (h *Hull) Floor(x float64) float64 {
	x = math.Abs(x)
	if x <= h.HeelX {
		return h.Bottom(x)
	}
	return h.End.Path.At(h.End.RunTo(x)).Y
}

// RunTo is the length along the profile from the heel to the station x, held at the
// heel and the foremost point.
func (e *End) RunTo(x float64) float64 {
	p := e.Path
	// X rises along the profile as far as the foremost point.
	i := sort.Search(len(p.Points)-1, func(i int) bool {
		return p.Points[i].X >= x || p.Points[i+1].X <= p.Points[i].X
	})
	if i == 0 {
		return 0
	}
	a, b := p.Points[i-1], p.Points[i]
	return p.Run[i-1] + (p.Run[i]-p.Run[i-1])*min(1, (x-a.X)/(b.X-a.X))
}

// ParameterAt is the curve's parameter a length run along it from the heel.
func (e *End) ParameterAt(run float64) float64 {
	r := e.Path.Run
	i := sort.SearchFloat64s(r, run)
	switch {
	case i == 0:
		return 0
	case i == len(r):
		return 1
	}
	return (float64(i-1) + (run-r[i-1])/(r[i]-r[i-1])) / profilePieces
}

// RunAt is the length along the curve from the heel to parameter t in [0, 1].
func (e *End) RunAt(t float64) float64 {
	i := min(int(t*profilePieces), profilePieces-1)
	return e.Path.Run[i] + (e.Path.Run[i+1]-e.Path.Run[i])*(t*profilePieces-float64(i))
}

// TightestBetween is the smallest radius between two parameters, +Inf where nothing
// bends there.
func (e *End) TightestBetween(lo, hi float64) float64 {
	if lo <= e.TightestAt && e.TightestAt <= hi {
		return e.TightestRadius
	}
	_, radius := e.tightest(lo, hi)
	return radius
}

// TightestFrom is the smallest radius of the curve from parameter t on, and where.
func (e *End) TightestFrom(t float64) (at, radius float64) {
	if e.TightestAt >= t {
		return e.TightestAt, e.TightestRadius
	}
	return e.tightest(t, 1)
}

// tightest is where the curve bends most between two parameters, and the radius there,
// +Inf where nothing bends.
func (e *End) tightest(lo, hi float64) (at, radius float64) {
	at, bend := e.Tightest(lo, hi, 200)
	if bend == 0 {
		return at, math.Inf(1)
	}
	return at, 1 / bend
}

// Foremost is the largest x of the bark: half the length overall.
func (h *Hull) Foremost() float64 { return foremost(h.End.Bezier) }
