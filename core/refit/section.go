package refit

import (
	"fmt"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// section frees the corner of the section where half girths or half breadths at a height
// are recorded, and the bilge where both are. They never move the building frame: it is
// not part of the finished boat. Where the greatest breadth of the bark or the gunwale
// frame decides the section, the group is empty.
func (b *boat) section() group {
	girths, breadths := b.samples(record.HalfGirth), b.belowEdge(b.samples(record.HalfBreadth))
	k := group{data: append(girths, breadths...), skin: true}
	d := b.design
	if len(k.data) == 0 || d.Bulges() || d.BuiltOn != design.OnFrame {
		return group{}
	}
	rule := d.Midsection()
	turn := freed("turnWidth", func(d *design.Design) *float64 { return &d.TurnWidth })
	// The girth's spread as a spread of the corner.
	const step = units.Millimetre
	girth := func(corner float64) float64 { return shape.New(rule.At(corner)).HalfGirth() }
	slope := (girth(rule.Corner+step) - girth(rule.Corner-step)) / (4 * step)
	turn.spread = design.GirthSpread / max(slope, 0.05)
	k.free = []free{turn.within(0, design.MostTurn*d.OutsideBreadth())}
	if len(girths) > 0 && len(breadths) > 0 {
		bilge := freed("bilge", func(d *design.Design) *float64 { return &d.Bilge })
		bilge.spread = design.BilgeSpread
		k.free = append(k.free, bilge)
	}
	b.design = parameter("turnWidth").Set(d, 2*rule.Corner)
	return k
}

// belowEdge sets aside what was recorded at a height where the boat has no side.
func (b *boat) belowEdge(data []located) []located {
	var list []located
	lines := hull.Lines(b.design)
	for _, s := range data {
		x := min(s.x, lines.HeelX)
		if low, high := lines.Bottom(x), lines.TopEdge(x); s.At.Height <= low || s.At.Height >= high {
			b.ev.conflict(fmt.Sprintf("%v: the side stands from %s to %s over the base line there.",
				s.Named(b.ev.system), b.ev.length(low), b.ev.length(high)), s.index)
			continue
		}
		list = append(list, s)
	}
	return list
}
