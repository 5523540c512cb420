package afloat

import "math"

// Waves sums the thin-ship (Michell) integral for one set of offsets:
//
//	R = (4 rho g^2 / (pi U^2)) Int |P+iQ|^2 sec^3 dtheta, 0 to pi/2
//	P + iQ = -i lam k IntInt f exp(-lam^2 k z + i lam k x) dx dz
//
// with k = g/U^2 and lam the secant of theta; after integration by parts, so that
// no slopes are needed and raked ends are only places where f is zero. Down and along,
// f is interpolated linearly and those integrals are exact. The integral over theta is
// by the midpoint rule at equal steps.
//
// J. H. Michell, The wave-resistance of a ship, Phil. Mag. (5) 45 (1898) 106-123.
// The theory takes a thin rigid hull that neither sinks nor trims in deep water
// without viscosity; a canoe with a length of 5 to 6 beams is outside thin.
type Waves struct {
	offsets Offsets
	secant  []float64 // lam at each angle
	share   []float64 // sec^3 dtheta at each angle
	down    []float64 // scratch: weights down the waterlines
}

// NewWaves prepares the integral over a number of wave angles.
func NewWaves(o Offsets, angles int) *Waves {
	w := &Waves{offsets: o, down: make([]float64, o.Waterlines+1)}
	step := math.Pi / 2 / float64(angles)
	for i := range angles {
		lam := 1 / math.Cos((float64(i)+0.5)*step)
		if lam > steepestWave {
			break
		}
		w.secant = append(w.secant, lam)
		w.share = append(w.share, lam*lam*lam*step)
	}
	return w
}

// Resistance returns the wave resistance in newtons at speed u in m/s, in water of
// a density in kg/m^3. At zero speed it is zero.
func (w *Waves) Resistance(u, density float64) float64 {
	if !(u > 0) {
		return 0
	}
	k := Gravity / (u * u)
	o := w.offsets
	dx := o.Length / float64(o.Stations)
	dz := o.Depth / float64(o.Waterlines)
	sum := 0.0
	for n, lam := range w.secant {
		used := w.weighDown(lam * lam * k * dz)
		half := lam * k * dx / 2
		sin, cos := math.Sincos(half)
		c, s := w.along(cos*cos-sin*sin, 2*sin*cos, used)
		hat := sin / half
		size := lam * k * dx * dz * hat * hat
		sum += size * size * (c*c + s*s) * w.share[n]
	}
	return 4 * density * Gravity * Gravity / (math.Pi * u * u) * sum
}

// weighDown sets the weights of the waterlines for decay q over one cell, in units
// of the cell, and returns how many of them matter.
func (w *Waves) weighDown(q float64) int {
	const none = 1e-12 // of the surface's own weight; squared in the sum
	e := math.Exp(-q)
	top, bottom, step := 0.5-q/6+q*q/24, 0.5-q/3+q*q/8, 1-q/2+q*q/6-q*q*q/24
	if q > 1e-3 { // below, the next term is under 1e-11
		top, bottom, step = (q-1+e)/(q*q), (1-e*(1+q))/(q*q), (1-e)/q
	}
	w.down[0] = top
	decay := step * step
	last := len(w.down) - 1
	for j := 1; j < last; j++ {
		w.down[j] = decay
		decay *= e
		if decay < none*top {
			return j + 1
		}
	}
	w.down[last] = decay / (step * step) * bottom
	return last + 1
}

// along returns the sum over stations of the weighted half-breadths times the
// cosine and sine of their phase, which turns by the angle of cosine dc and sine ds
// in each cell.
func (w *Waves) along(dc, ds float64, used int) (c, s float64) {
	rows := w.offsets.Waterlines + 1
	turnC, turnS := 1.0, 0.0
	down := w.down[:used]
	for i := 0; i < len(w.offsets.Half); i += rows {
		f := dot(down, w.offsets.Half[i:i+used])
		c += f * turnC
		s += f * turnS
		turnC, turnS = turnC*dc-turnS*ds, turnC*ds+turnS*dc
	}
	return c, s
}

// dot is the inner product of two slices of a length. Four terms a turn: in the
// browser the turn costs as much as a term.
func dot(a, b []float64) float64 {
	sum := 0.0
	b = b[:len(a)]
	j := 0
	for ; j+3 < len(a); j += 4 {
		sum += a[j]*b[j] + a[j+1]*b[j+1] + a[j+2]*b[j+2] + a[j+3]*b[j+3]
	}
	for ; j < len(a); j++ {
		sum += a[j] * b[j]
	}
	return sum
}
