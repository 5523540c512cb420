package afloat

import "barkwright/core/geom"

// Hydrostatics are the figures of the boat as it floats upright. Lengths are in
// metres, areas in square metres; coefficients are ratios. L is the wet length, B
// the breadth at the surface and T the draught.
type Hydrostatics struct {
	ForwardEnd, AfterEnd  float64 // x where the wet body ends
	Length, Beam, Draught float64 // wet length, breadth at the surface, deepest
	Volume                float64
	WaterplaneArea        float64 // of the surface cut by the boat
	WettedSurface         float64
	LargestSection        float64 // area
	BlockCoefficient      float64 // volume over L B T
	PrismaticCoefficient  float64 // volume over L and the largest section
	SectionCoefficient    float64 // largest section over B T
	WaterplaneCoefficient float64 // waterplane over L B
	Buoyancy              geom.Vec3
	CentreOfFlotation     float64 // x of the waterplane's centre
	TransverseBM          float64 // metacentre above the centre of buoyancy, for heel
	LongitudinalBM        float64 // metacentre above the centre of buoyancy, for trim
}

// Hydrostatics returns the figures for an upright attitude whose state is Floats or
// Swamped. It panics on a heeled one. They are taken in the boat's own axes: with a
// trim of 1 degree, lengths along the water are 0.02 % longer.
func (b *Body) Hydrostatics(a Attitude) Hydrostatics {
	if a.Waterplane.Heel != 0 {
		panic(heeledWaterplane)
	}
	t := b.upright
	m := t.immerse(a.Waterplane.Height, a.Waterplane.Slope)
	f := Hydrostatics{Volume: m.volume, WaterplaneArea: m.area, Draught: a.Draught, Buoyancy: a.Buoyancy}
	for i, x := range b.x {
		w := t.clip(i, a.Waterplane.Height+a.Waterplane.Slope*x)
		f.Beam = max(f.Beam, w.breadth)
		f.LargestSection = max(f.LargestSection, w.area)
	}
	f.AfterEnd, f.ForwardEnd = t.wetEnds(a.Waterplane)
	f.Length = f.ForwardEnd - f.AfterEnd
	f.WettedSurface = b.WettedSurface(a.Waterplane)
	f.BlockCoefficient = f.Volume / (f.Length * f.Beam * f.Draught)
	f.PrismaticCoefficient = f.Volume / (f.Length * f.LargestSection)
	f.SectionCoefficient = f.LargestSection / (f.Beam * f.Draught)
	f.WaterplaneCoefficient = f.WaterplaneArea / (f.Length * f.Beam)
	f.CentreOfFlotation = m.areaMoment / m.area
	f.TransverseBM = m.areaInertiaAcross / m.volume
	f.LongitudinalBM = (m.areaInertia - m.areaMoment*m.areaMoment/m.area) / m.volume
	return f
}

// wetEnds returns the x of the after and the forward end of the wet body: where the
// lowest points of two neighbouring stations, joined by a straight line, cross the
// surface, or the last station if that is wet.
func (t *tilted) wetEnds(p Waterplane) (after, forward float64) {
	b := t.body
	depth := make([]float64, len(b.x))
	first, last := -1, -1
	for i, x := range b.x {
		depth[i] = p.Height + p.Slope*x - t.rings[i].low
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
