package afloat

import "math"

// balance finds the plane at this heel that carries the load's volume with the
// centre of buoyancy below the centre of mass as seen from the side. From a start
// it takes Newton's steps in height and slope with exact derivatives (for the
// clipped polygons as they stand); where those fail it bisects the slope with the
// height solved inside. It reports false where neither balances.
func (t *tilted) balance(volume float64, load Load, start Waterplane) (Waterplane, immersion, bool) {
	if p, m, ok := t.newton(volume, load, start); ok {
		return p, m, true
	}
	return t.bisect(volume, load)
}

// moment is the out-of-balance volume moment fore and aft and its derivatives by
// height and slope. With the centre of mass at (gx, gv) in turned axes the balance
// is (Mx - V gx) + slope (Mv - V gv) = 0, the distance between the centres along
// the direction that is level and lies in the boat's middle plane.
func (t *tilted) moment(m immersion, load Load, p Waterplane) (value, byHeight, bySlope float64) {
	gx := load.Centre.X
	gv := load.Centre.Y*t.sin + load.Centre.Z*t.cos
	lever := m.up - m.volume*gv
	value = m.along - m.volume*gx + p.Slope*lever
	upByHeight := p.Height*m.area + p.Slope*m.areaMoment
	upBySlope := p.Height*m.areaMoment + p.Slope*m.areaInertia
	byHeight = m.areaMoment - gx*m.area + p.Slope*(upByHeight-gv*m.area)
	bySlope = m.areaInertia - gx*m.areaMoment + lever + p.Slope*(upBySlope-gv*m.areaMoment)
	return value, byHeight, bySlope
}

func (t *tilted) newton(volume float64, load Load, p Waterplane) (Waterplane, immersion, bool) {
	half := t.body.halfLength()
	for range newtonSteps {
		m := t.immerse(p.Height, p.Slope)
		v, vh, vs := m.volume-volume, m.area, m.areaMoment
		f, fh, fs := t.moment(m, load, p)
		det := vh*fs - vs*fh
		// fs has the sign of the stiffness fore and aft: a balance with it negative
		// would not be rested in.
		if !(det > 0) || !(vh > 0) {
			return p, m, false
		}
		dh := -(v*fs - vs*f) / det
		ds := -(vh*f - v*fh) / det
		p.Height += dh
		p.Slope += ds
		if !(math.Abs(p.Slope) <= steepestSlope) {
			return p, m, false
		}
		if math.Abs(dh)+math.Abs(ds)*half < stepTolerance {
			return p, t.immerse(p.Height, p.Slope), true
		}
	}
	return p, immersion{}, false
}

func (t *tilted) bisect(volume float64, load Load) (Waterplane, immersion, bool) {
	imbalance := func(slope float64) (Waterplane, immersion, float64, bool) {
		p := Waterplane{t.heel, 0, slope}
		height, m, ok := t.height(volume, slope, stepTolerance)
		p.Height = height
		f, _, _ := t.moment(m, load, p)
		return p, m, f, ok
	}
	low, high := -steepestSlope, steepestSlope
	_, _, fl, okl := imbalance(low)
	_, _, fh, okh := imbalance(high)
	if !okl || !okh || !(fl < 0 && fh > 0) {
		return Waterplane{}, immersion{}, false
	}
	for high-low > stepTolerance/t.body.halfLength() {
		mid := (low + high) / 2
		if _, _, f, _ := imbalance(mid); f < 0 {
			low = mid
		} else {
			high = mid
		}
	}
	p, m, _, ok := imbalance((low + high) / 2)
	return p, m, ok
}

// height finds the height at which the body carries a volume at a given slope.
// Volume grows with height, so the root is kept between bounds: the step of towards
// where it stays inside them, half-way where it does not, until one is under tol. It
// reports false where the whole body is smaller than the volume.
func (t *tilted) height(volume, slope, tol float64) (float64, immersion, bool) {
	low, high := t.extent(slope)
	lowest, enough := low, false
	h := (low + high) / 2
	for range bisectionSteps {
		m := t.immerse(h, slope)
		if m.volume < volume {
			if !enough && t.immerse(high, slope).volume < volume {
				return 0, immersion{}, false
			}
			low = h
		} else {
			high = h
		}
		enough = true
		next := lowest + towards(m, h-lowest, volume)
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-h) < tol {
			return h, m, true
		}
		h = next
	}
	return h, t.immerse(h, slope), true
}

// towards is the depth at which a body carries a volume, guessed from what is immersed at
// another depth: Newton's step between their logarithms, for a hull's volume rises much
// like a power of its depth. It is NaN where no volume or no surface is there.
func towards(m immersion, depth, volume float64) float64 {
	return depth * math.Pow(volume/m.volume, m.volume/(m.area*depth))
}
