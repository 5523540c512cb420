package core

import (
	"math"

	"barkwright/core/afloat"
	"barkwright/core/crew"
	"barkwright/core/design"
	"barkwright/core/hull"
)

const (
	// The boats that the section's spread is worked out for are cut more coarsely than
	// the boat itself: only the differences between them count.
	spreadStations, spreadPoints = 21, 16
)

// steady bounds the stiffness by what is not known of the section that the ribs come to
// rest in and of the height of the crew. The two are independent and are added as such:
// by the root of the sum of their squares.
func (a *Afloat) steady(h *hull.Hull, people float64) {
	a.GMLow, a.GMHigh = a.Floated.GM, a.Floated.GM
	if a.Floated.Upright.State != afloat.Floats {
		return
	}
	narrower, broader := 0.0, 0.0
	places := h.Places(spreadStations, spreadPoints)
	at := &places
	if plain, ok := a.stiffness(h, at); ok {
		if narrow, ok := a.stiffness(h.Resectioned(spread(1)), at); ok {
			narrower = max(0, plain-narrow)
		}
		if broad, ok := a.stiffness(h.Resectioned(spread(-1)), at); ok {
			broader = max(0, broad-plain)
		}
	}
	posture := people * crew.PostureSpread / a.Load.Mass
	a.GMLow -= math.Hypot(narrower, posture)
	a.GMHigh += math.Hypot(broader, posture)
}

// stiffness is the GM of a hull, cut coarsely at some places, under the boat's own load; it reports
// false where that is more than the hull carries.
func (a *Afloat) stiffness(h *hull.Hull, at *hull.Places) (float64, bool) {
	return afloat.NewBody(h.StationsAt(at)).LevelStiffness(a.Load, a.Water)
}

// spread makes the half girth of a design less by its spread and its bilge turn harder, or with way at -1 the other
// way about. The turn line does not follow: a section that is not set does not ask for it.
func spread(way float64) func(*design.Design) {
	return func(d *design.Design) {
		bilge, _ := design.Lookup("bilge")
		ease, _ := design.Lookup("ease")
		bilge.Put(d, max(bilge.Min, min(bilge.Max, d.Bilge+way*design.BilgeSpread)))
		ease.Put(d, max(ease.Min, min(ease.Max, d.Ease+way*design.GirthSpread)))
	}
}
