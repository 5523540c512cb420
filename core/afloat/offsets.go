package afloat

// Offsets are half-breadths of the wet body on an equal grid: Stations cells along
// Length, Waterlines cells down Depth from the surface. Half[i (Waterlines+1) + j]
// is at station i, waterline j; outside the grid it is zero. Metres.
type Offsets struct {
	Length, Depth        float64
	Stations, Waterlines int
	Half                 []float64
}

// Offsets returns the wet body's offsets as floated in an upright attitude. It
// panics on a heeled one.
//
// At each waterline the half-breadths of the body's stations are joined by the
// curve of weights.go, cut off at zero. Where a section is folded over, the
// greatest half-breadth counts.
func (b *Body) Offsets(a Attitude, g WaveGrid) Offsets {
	if a.Waterplane.Heel != 0 {
		panic(heeledWaterplane)
	}
	t := b.upright
	after, forward := t.wetEnds(a.Waterplane)
	o := Offsets{forward - after, a.Draught, g.Stations, g.Waterlines, nil}
	o.Half = make([]float64, (o.Stations+1)*(o.Waterlines+1))
	raw := make([]float64, len(b.x))
	for j := range o.Waterlines + 1 {
		depth := o.Depth * float64(j) / float64(o.Waterlines)
		for i, x := range b.x {
			raw[i] = b.halfBreadth(i, a.Waterplane.Height+a.Waterplane.Slope*x-depth)
		}
		k := 0
		for i := range o.Stations + 1 {
			x := after + o.Length*float64(i)/float64(o.Stations)
			for k+2 < len(b.x) && b.x[k+1] < x {
				k++
			}
			o.Half[i*(o.Waterlines+1)+j] = max(interpolate(b.x, raw, k, x), 0)
		}
	}
	return o
}

// halfBreadth returns the greatest half-breadth of station i at height z, zero where
// the station does not reach.
func (b *Body) halfBreadth(i int, z float64) float64 {
	port := b.outline(i)
	most := 0.0
	for k := 0; k+1 < len(port); k++ {
		p, q := port[k], port[k+1]
		if (p.Y > z) == (q.Y > z) && p.Y != z && q.Y != z {
			continue
		}
		y := max(p.X, q.X)
		if p.Y != q.Y {
			share := min(max((z-p.Y)/(q.Y-p.Y), 0), 1)
			y = p.X + share*(q.X-p.X)
		}
		most = max(most, y)
	}
	return most
}
