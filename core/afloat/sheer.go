package afloat

import (
	"math"

	"barkwright/core/geom"
)

// freeboard returns the least vertical distance of the sheer above the water, both
// sides, and where it is. Between stations the lowest place is that of the parabola
// through the three heights about it.
func (b *Body) freeboard(p Waterplane) (float64, geom.Vec3) {
	sin, cos := math.Sincos(p.Heel)
	level := 1 / math.Sqrt(1+p.Slope*p.Slope)
	least, where := math.Inf(1), geom.Vec3{}
	for _, side := range []float64{1, -1} {
		height := func(i int) float64 {
			s := b.sheer[i]
			return level * (side*s.y*sin + s.z*cos - p.Height - p.Slope*s.x)
		}
		k := 0
		for i := range b.sheer {
			if height(i) < height(k) {
				k = i
			}
		}
		f, at := height(k), b.sheerAt(k, side)
		if k > 0 && k+1 < len(b.sheer) {
			f, at = b.lowest(k, side, height)
		}
		if f < least {
			least, where = f, at
		}
	}
	return least, where
}

func (b *Body) sheerAt(i int, side float64) geom.Vec3 {
	s := b.sheer[i]
	return geom.Vec3{X: s.x, Y: side * s.y, Z: s.z}
}

// lowest refines the lowest station k by the parabola through it and its
// neighbours.
func (b *Body) lowest(k int, side float64, height func(int) float64) (float64, geom.Vec3) {
	before, mid, after := b.sheerAt(k-1, side), b.sheerAt(k, side), b.sheerAt(k+1, side)
	h0, h1, h2 := height(k-1), height(k), height(k+1)
	u, v := before.X-mid.X, after.X-mid.X
	bend := ((h2-h1)/v - (h0-h1)/u) / (v - u)
	if !(bend > 0) {
		return h1, mid
	}
	slope := (h2-h1)/v - bend*v
	at := min(max(-slope/(2*bend), u), v)
	towards, share := after, at/v
	if at < 0 {
		towards, share = before, at/u
	}
	return h1 + slope*at + bend*at*at, mid.Lerp(towards, share)
}
