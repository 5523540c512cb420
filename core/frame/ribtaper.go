package frame

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/hull"
)

// RibTaper is how a rib narrows: from Middle on the bottom to Shoulder, which stands
// Length short of the tip along the rib, and from there to Tip.
type RibTaper struct{ Length, Middle, Shoulder, Tip float64 }

// shoulderShare is a rib's width under the gunwale as a share of its width on the
// bottom: about 2 in to 1 3/4 in. Adney and Chapelle 1964, p. 90.
const shoulderShare = 1.75 / 2

// Taper is how the rib narrows toward either tip.
func (r Rib) Taper(d design.Design) RibTaper {
	return RibTaper{
		Length:   min(d.RibTaper, r.Length/2),
		Middle:   r.Width,
		Shoulder: max(d.RibTipWidth, shoulderShare*r.Width),
		Tip:      d.RibTipWidth,
	}
}

// Area is the area of the rib's broad face, m2.
func (r Rib) Area(d design.Design) float64 {
	t := r.Taper(d)
	return (r.Length-2*t.Length)*(t.Middle+t.Shoulder)/2 + t.Length*(t.Shoulder+t.Tip)
}

// BendFrom is how far along the rib's outer face from its middle it is bent hardest.
func (r Rib) BendFrom(h *hull.Hull) float64 {
	const step = 1e-4 // m: short against any bend, long against rounding
	d := &h.Design
	section := r.Cut(h).Section
	a, b := max(0, r.BendAt-step), min(section.HalfGirth(), r.BendAt+step)
	heading := section.At(b).Sub(section.At(a))
	// Inside the bark and the sheathing the way is shorter by what the curve turns.
	return max(0, r.BendAt-(d.BarkThickness+d.SheathingThickness)*math.Atan2(heading.Y, heading.X))
}
