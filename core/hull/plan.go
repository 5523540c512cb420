package hull

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/shape"
)

// HalfBeam is the half-breadth inside the gunwales at x, 0 beyond their ends.
func (h *Hull) HalfBeam(x float64) float64 {
	return h.plan.Breadth(x)
}

// PlanBend returns the slope and the second derivative of HalfBeam at x, 0 or more.
func (h *Hull) PlanBend(x float64) (slope, second float64) { return h.plan.BreadthBend(x) }

// SkinHalfBreadth is the half-breadth of the bark's outer face at its top edge.
// It stands outside the inwale by the inwale and the bark, and closes on the
// stem-piece at the gunwale's end and beyond.
func (h *Hull) SkinHalfBreadth(x float64) float64 {
	d := &h.Design
	stem := d.StemWidth/2 + d.BarkThickness
	t := math.Abs(x) / h.GunwaleX
	if t >= 1 {
		return stem
	}
	t3 := t * t * t
	return h.HalfBeam(x) + stem + (d.InwaleThickness+d.BarkThickness-stem)*(1-t3*t3)
}

// FrameHalfBreadth is half of what the bark is folded up round on the bed, out to
// out, at x: the building frame, or the gunwales where the boat is built on them.
// 0 beyond it.
func (h *Hull) FrameHalfBreadth(x float64) float64 {
	d := &h.Design
	if d.BuiltOn == design.OnGunwales {
		if math.Abs(x) >= h.GunwaleX {
			return 0
		}
		return h.SkinHalfBreadth(x) - d.BarkThickness
	}
	return d.FrameWidth / 2 * h.frameRise.Taper(math.Abs(x)/(d.FrameLength/2), d.FrameFine)
}

// FrameEnd is the x of the end of what the bark is folded up round.
func (h *Hull) FrameEnd() float64 {
	if h.Design.BuiltOn == design.OnGunwales {
		return h.GunwaleX
	}
	return h.Design.FrameLength / 2
}

// Sheer is the height of the top of the inwale at x, within the gunwales.
func (h *Hull) Sheer(x float64) float64 { return h.plan.Sheer(x) }

// SheerBend returns the slope and the second derivative of Sheer at x, 0 or more.
func (h *Hull) SheerBend(x float64) (slope, second float64) { return h.plan.SheerBend(x) }

// TopEdge is the height of the bark's top edge at x: the sheer, and beyond the
// gunwale's end a cubic that leaves with the sheer's slope and meets the stem
// head with twice the chord's slope less the sheer's, never falling.
func (h *Hull) TopEdge(x float64) float64 {
	x = math.Abs(x)
	if x <= h.GunwaleX {
		return h.Sheer(x)
	}
	d := &h.Design
	run := h.HeadX - h.GunwaleX
	if run <= 0 || x >= h.HeadX {
		return d.EndHeight
	}
	m0 := h.endSlope
	m1 := max(0, 2*(d.EndHeight-d.GunwaleEndHeight)/run-m0)
	t := (x - h.GunwaleX) / run
	s := 1 - t
	return d.GunwaleEndHeight*s*s*(1+2*t) + d.EndHeight*t*t*(3-2*t) + run*(m0*t*s*s-m1*t*t*s)
}

// Bottom is the height of the bottom on the centre line at x, as far as the heel.
func (h *Hull) Bottom(x float64) float64 {
	return h.Design.Rocker * shape.Power(math.Abs(x)/h.HeelX, h.Design.RockerSpread)
}

// bottomSlope is the slope of the bottom at the heel.
func (h *Hull) bottomSlope() float64 { return h.Design.Rocker * h.Design.RockerSpread / h.HeelX }

// BottomSlope is the slope of the bottom at x from amidships forward; past the heel it
// is held at the heel's.
func (h *Hull) BottomSlope(x float64) float64 {
	if x >= h.HeelX {
		return h.bottomSlope()
	}
	return h.bottomSlope() * shape.Power(x/h.HeelX, h.Design.RockerSpread-1)
}
