package afloat

import (
	"math"

	"barkwright/core/geom"
)

// Figures are the working figures of the boat as she floats upright. Lengths in
// metres, areas in square metres; coefficients are ratios.
type Figures struct {
	ForwardEnd, AfterEnd  float64 // x where the wet body ends
	Length, Beam, Draught float64 // wet length, breadth at the surface, deepest
	Volume                float64
	WaterPlane            float64 // area of the surface cut by the boat
	WettedSurface         float64
	LargestSection        float64
	Block, Prismatic      float64 // volume over L B T; over L and the largest section
	Section, Plane        float64 // largest section over B T; water plane over L B
	Buoyancy              geom.Vec3
	PlaneCentre           float64 // x of the water plane's centre
	MetacentreAcross      float64 // above the centre of buoyancy, for heel (BM)
	MetacentreAlong       float64 // above the centre of buoyancy, for trim (BM)
}

// Figures returns the working figures for an upright attitude whose state is Floats
// or Swamped. It panics on a heeled one. Taken in the boat's own axes: with a trim
// of 1 degree lengths along the water are 0.02 % longer.
func (b *Body) Figures(a Attitude) Figures {
	if a.Plane.Heel != 0 {
		panic(heeledPlane)
	}
	t := b.upright
	m := t.immerse(a.Plane.Height, a.Plane.Slope)
	f := Figures{Volume: m.volume, WaterPlane: m.plane, Draught: a.Draught, Buoyancy: a.Buoyancy}
	for i, x := range b.x {
		w := t.clip(i, a.Plane.Height+a.Plane.Slope*x)
		f.Beam = max(f.Beam, w.breadth)
		f.LargestSection = max(f.LargestSection, w.area)
	}
	f.AfterEnd, f.ForwardEnd = t.wetEnds(a.Plane)
	f.Length = f.ForwardEnd - f.AfterEnd
	f.WettedSurface = b.WettedSurface(a.Plane)
	f.Block = f.Volume / (f.Length * f.Beam * f.Draught)
	f.Prismatic = f.Volume / (f.Length * f.LargestSection)
	f.Section = f.LargestSection / (f.Beam * f.Draught)
	f.Plane = f.WaterPlane / (f.Length * f.Beam)
	f.PlaneCentre = m.planeOne / m.plane
	f.MetacentreAcross = m.planeAcrossTwo / m.volume
	f.MetacentreAlong = (m.planeTwo - m.planeOne*m.planeOne/m.plane) / m.volume
	return f
}

// wetEnds returns the x of the after and the forward end of the wet body: where the
// lowest points of two neighbouring stations, joined by a straight line, cross the
// surface, or the last station if that is wet.
func (t *tilted) wetEnds(p Plane) (after, forward float64) {
	b := t.body
	depth := make([]float64, len(b.x))
	first, last := -1, -1
	for i, x := range b.x {
		low := math.Inf(1)
		for _, q := range t.ring[b.first[i]:b.first[i+1]] {
			low = min(low, q.Y)
		}
		depth[i] = p.Height + p.Slope*x - low
		if depth[i] > 0 {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	crossing := func(wet, dry int) float64 {
		return b.x[wet] + (b.x[dry]-b.x[wet])*depth[wet]/(depth[wet]-depth[dry])
	}
	after, forward = b.x[first], b.x[last]
	if first > 0 {
		after = crossing(first, first-1)
	}
	if last+1 < len(b.x) {
		forward = crossing(last, last+1)
	}
	return after, forward
}
