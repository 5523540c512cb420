package hull

import (
	"math"

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
	c[2].Y = math.Max(head.Y-(0.15+0.65*d.EndFull)*b, heel.Y+m*(c[2].X-heel.X)+0.08*b)
	e := End{Bezier: c}
	points := make([]geom.Vec2, profilePieces+1)
	for i := range points {
		points[i] = c.At(float64(i) / profilePieces)
	}
	e.Path = geom.NewPolyline(points)
	var least float64
	e.TightestAt, least = geom.Least(func(t float64) float64 { return -math.Abs(c.Curvature(t)) }, 0, 1, 200)
	e.TightestRadius = math.Inf(1)
	if least < 0 {
		e.TightestRadius = -1 / least
	}
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
	if root := math.Sqrt(math.Max(0, q*q-p*r)); k != 0 {
		t = (p - q + root) / k
		if t < 0 || t > 1 {
			t = (p - q - root) / k
		}
	} else {
		t = p / (2 * (p - q))
	}
	return b.At(math.Max(0, math.Min(1, t))).X
}

// Floor is the height of the outside of the bark on the centre line at x: the
// bottom as far as the heel, beyond it the lower branch of the end's profile. Past
// the foremost point it is that point's height.
func (h *Hull) Floor(x float64) float64 {
	x = math.Abs(x)
	if x <= h.HeelX {
		return h.Bottom(x)
	}
	x = math.Min(x, h.Foremost())
	// X rises along the curve as far as the foremost point: the first piece to
	// reach x holds it.
	hi := 1.0
	for i := range floorPieces {
		if t := float64(i+1) / floorPieces; h.End.At(t).X >= x {
			hi = t
			break
		}
	}
	t, _ := geom.Bisect(func(t float64) float64 { return h.End.At(t).X - x }, math.Max(0, hi-1.0/floorPieces), hi, 1e-10)
	return h.End.At(t).Y
}

// floorPieces is in how many pieces the profile is looked at for a place on it.
const floorPieces = 64

// Foremost is the largest x of the bark: half the length overall.
func (h *Hull) Foremost() float64 { return foremost(h.End.Bezier) }
