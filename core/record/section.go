package record

import (
	"barkwright/core/design"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// girthSpread is how far the half girths of drawn boats lie from what the bed gives
// less the usual ease: their standard deviation over nine midsections, derived from the
// drawings of Adney and Chapelle 1964.
const girthSpread = 0.6 * units.Inch

// section is the corner of the section, which half girths decide: with no more than
// them the bilge is held. They never move the building frame, which was another thing on
// the bed. Where the greatest breadth of the bark or the gunwale frame decides the
// section they free nothing.
func (b *boat) section() block {
	k := block{data: b.samples(HalfGirth), skin: true}
	d := b.design
	if len(k.data) == 0 || d.Bulges() || d.BuiltOn != design.OnFrame {
		return block{}
	}
	rule, _ := d.Midsection()
	turn := freed("turnWidth", func(d *design.Design) *float64 { return &d.TurnWidth })
	// What the spread of the girth is of the corner.
	const step = units.Millimetre
	slope := (shape.New(rule.At(rule.Corner+step)).HalfGirth() - shape.New(rule.At(rule.Corner-step)).HalfGirth()) / (4 * step)
	turn.spread = girthSpread / max(slope, 0.05)
	k.loose = []loose{turn.within(0, design.MostTurn*d.OutsideBreadth())}
	b.design = parameter("turnWidth").Set(d, 2*rule.Corner)
	return k
}
