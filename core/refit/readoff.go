package refit

import (
	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
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
	if d, _, ok := b.first(record.RibSpacing); ok && !b.settled["ribs"] {
		b.set("ribs", 2*length/d.Value)
	}
}

// headboard sets where the headboard stands, once plan and sheer are known: the heel
// and so the bottom hang on it.
func (b *boat) headboard() {
	if x, ok := b.mean(record.HeadboardPosition); ok {
		h := finished(b.design)
		b.set("headboard", h.Gunwale.Length()-h.RunTo(x))
	}
}

// finished is the whole hull but for the bulge of its bark, which nothing measured
// here depends on: it is slow to find.
func finished(d design.Design) *hull.Hull {
	d.GreatestBeam = 0
	return hull.New(d)
}
