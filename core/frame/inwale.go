package frame

import "barkwright/core/hull"

// InwaleAt is how thick and how deep the inwale is at a run along the gunwale: whole as far as the
// end thwarts, and from there evenly tapered to where its half arrowhead begins. At all five
// thwarts of the building example of Adney and Chapelle 1964, pp. 38-40, from end to end is two
// inwales of 1 1/2 in more than from shoulder to shoulder: there they are not tapered yet.
func InwaleAt(h *hull.Hull, run float64) (thickness, depth float64) {
	d := &h.Design
	from, to := inwaleTaper(h)
	s := 0.0
	if run > from {
		s = min(1, (run-from)/(to-from))
	}
	return d.InwaleThickness * (1 - s*(1-endThicknessShare)), d.InwaleDepth * (1 - s*(1-endDepthShare))
}

// UnderInwale is the height of the inwale's underside at x, as far as the gunwale's end.
func UnderInwale(h *hull.Hull, x float64) float64 {
	_, depth := InwaleAt(h, h.RunTo(x))
	return h.Sheer(x) - depth
}

// inwaleTaper is from which run to which the inwale tapers.
func inwaleTaper(h *hull.Hull) (from, to float64) {
	from = endThwartRun(h)
	return from, max(from, h.Gunwale.Length()-arrowLength)
}

// endThwartRun is where along the gunwale the end thwart stands.
func endThwartRun(h *hull.Hull) float64 {
	d := &h.Design
	return d.ThwartAt[d.OuterThwarts()-1] * h.Gunwale.Length()
}

// InwaleVolume is that of one inwale, m3: whole, tapered, and half of each last part cut away to the
// half arrowhead.
func InwaleVolume(h *hull.Hull) float64 {
	d := &h.Design
	from, to := inwaleTaper(h)
	// Both of two factors fall evenly: the mean of their product.
	const tapered = (1 + endThicknessShare*endDepthShare + (1+endThicknessShare)*(1+endDepthShare)) / 6
	const arrow = endThicknessShare * endDepthShare / 2
	return 2 * d.InwaleThickness * d.InwaleDepth * (from + tapered*(to-from) + arrow*(h.Gunwale.Length()-to))
}

// CapVolume is that of one cap, m3: it narrows evenly from amidships to its ends.
func (g *Gunwales) CapVolume(h *hull.Hull) float64 {
	return g.Cap * h.Design.CapThickness * h.Design.CapWidth * (1 + capEndShare) / 2
}
