package record

import (
	"barkwright/core/design"
	"barkwright/core/hull"
)

// readOff sets what is measured along the gunwale of the finished lines.
func (b *boat) readOff() {
	h := finished(b.design)
	length := h.Gunwale.Length()
	for n := 1; n <= furthest; n++ {
		if x := b.thwart(n); x > 0 {
			b.set(thwartKey(n), h.RunTo(x)/length)
		}
	}
	if x, ok := b.mean(HeadboardPosition); ok {
		b.set("headboard", length-h.RunTo(x))
	}
	if d, _, ok := b.first(RibSpacing); ok && !b.settled["ribs"] {
		b.set("ribs", 2*length/d.Value)
	}
}

// finished is the whole hull but for the bulge of its bark, which nothing measured
// here depends on: it is slow to find.
func finished(d design.Design) hull.Hull {
	d.GreatestBeam = 0
	return hull.New(d)
}
