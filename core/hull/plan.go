package hull

import "math"

// blunt keeps the plan smooth amidships: t^a with a under 2 would have a knuckle
// there. A choice of this project.
const blunt = 0.01

// power is x^p of x not less than nothing and p more, as math.Pow has it to its last
// bits and in a fraction of the time.
func power(x, p float64) float64 { return math.Exp(p * math.Log(x)) }

// rise is t^power made smooth at t = 0, from 0 there to 1 at t = 1.
type rise struct{ power, low, span float64 }

func newRise(p float64) rise {
	low := power(blunt, p/2)
	return rise{p, low, power(1+blunt, p/2) - low}
}

func (r rise) at(t float64) float64 { return (power(t*t+blunt, r.power/2) - r.low) / r.span }

// slope is the derivative by t.
func (r rise) slope(t float64) float64 {
	return r.power * t * power(t*t+blunt, r.power/2-1) / r.span
}

// taper is a half-breadth plan from 1 amidships to 0 at t = 1.
func (r rise) taper(t, fine float64) float64 {
	if t >= 1 {
		return 0
	}
	return power(1-r.at(t), fine)
}

// HalfBeam is the half-breadth inside the gunwales at x, 0 beyond their ends.
func (h *Hull) HalfBeam(x float64) float64 {
	d := &h.Design
	return d.Beam / 2 * h.beamRise.taper(math.Abs(x)/h.GunwaleX, d.BeamFine)
}

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

// FrameHalfBreadth is half the building frame, out to out, at x; 0 beyond it.
func (h *Hull) FrameHalfBreadth(x float64) float64 {
	d := &h.Design
	return d.FrameWidth / 2 * h.frameRise.taper(math.Abs(x)/(d.FrameLength/2), d.FrameFine)
}

// Sheer is the height of the top of the inwale at x, within the gunwales.
func (h *Hull) Sheer(x float64) float64 {
	d := &h.Design
	return d.Depth + (d.GunwaleEndHeight-d.Depth)*h.sheerRise.at(math.Abs(x)/h.GunwaleX)
}

// sheerEndSlope is the slope of the sheer at the gunwale's end.
func (h *Hull) sheerEndSlope() float64 {
	d := &h.Design
	return (d.GunwaleEndHeight - d.Depth) * h.sheerRise.slope(1) / h.GunwaleX
}

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
	m0 := h.sheerEndSlope()
	m1 := math.Max(0, 2*(d.EndHeight-d.GunwaleEndHeight)/run-m0)
	t := (x - h.GunwaleX) / run
	s := 1 - t
	return d.GunwaleEndHeight*s*s*(1+2*t) + d.EndHeight*t*t*(3-2*t) + run*(m0*t*s*s-m1*t*t*s)
}

// Bottom is the height of the bottom on the centre line at x, as far as the heel.
func (h *Hull) Bottom(x float64) float64 {
	return h.Design.Rocker * power(math.Abs(x)/h.HeelX, h.Design.RockerSpread)
}

// bottomSlope is the slope of the bottom at the heel.
func (h *Hull) bottomSlope() float64 { return h.Design.Rocker * h.Design.RockerSpread / h.HeelX }
