package refit

import (
	"barkwright/core/design"
	"barkwright/core/record"
)

func (b *boat) stateBeam() {
	out, _, outside := b.ev.first(record.BeamOutside)
	great, _, bulges := b.ev.first(record.GreatestBeam)
	switch {
	case b.settled["beam"]:
		b.splitBeams()
	case outside:
		b.set("beam", out.Value-2*b.design.InwaleThickness)
	case bulges:
		b.set("beam", great.Value-b.design.OutsideBreadth()+b.design.Beam)
	default:
		b.design = hold(b.design, "beam")
	}
	// Bark that is no broader than the gunwales does not bulge.
	if bulges && great.Value > b.design.OutsideBreadth() {
		b.set("greatestBeam", great.Value)
		b.settled["turnWidth"] = true
		// Bark bulges where it was folded up round the gunwales themselves.
		if _, _, framed := b.ev.first(record.FrameWidth); !framed {
			b.set("builtOn", float64(design.OnGunwales))
		}
	}
}

// splitBeams gives the inwales what lies between the beams outside and inside them,
// where no thickness is recorded.
func (b *boat) splitBeams() {
	_, _, inside := b.ev.first(record.BeamInside)
	_, _, thick := b.ev.first(record.InwaleThickness)
	if out, _, outside := b.ev.first(record.BeamOutside); inside && outside && !thick {
		b.set("inwaleThickness", (out.Value-b.design.Beam)/2)
	}
}

// amidships collects what the record states of a curve amidships, as measurements of
// the curve there. Each is weighed against the others by its own tolerance.
func (b *boat) amidships(stated map[record.Kind]record.Kind, less float64) []located {
	var list []located
	for i, d := range b.ev.data {
		if as, ok := stated[d.Kind]; ok && !b.ev.aside[i] {
			d.Tolerance = d.Within()
			d.Kind = as
			d.Value -= less
			list = append(list, located{d, 0, i})
		}
	}
	return list
}

// samples collects the data of some kinds that are not set aside.
func (b *boat) samples(kinds ...record.Kind) []located {
	var list []located
	for i, d := range b.ev.data {
		for _, k := range kinds {
			if d.Kind == k && !b.ev.aside[i] {
				x, _ := b.ev.stations.where(d)
				list = append(list, located{d, x, i})
			}
		}
	}
	return list
}

// says tells whether the record has a datum of a kind that is not set aside.
func (b *boat) says(k record.Kind) bool {
	_, _, ok := b.ev.first(k)
	return ok
}

// offMiddle tells whether any datum was taken away from amidships.
func offMiddle(data []located) bool {
	for _, s := range data {
		if s.x > 0 {
			return true
		}
	}
	return false
}
