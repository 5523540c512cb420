package afloat

import "math"

// Waves sums the thin-ship (Michell) integral for one set of offsets:
//
//	R = (4 rho g^2 / (pi U^2)) Int |P+iQ|^2 sec^3 dtheta, 0 to pi/2
//	P + iQ = -i lam k IntInt f exp(-lam^2 k z + i lam k x) dx dz
//
// with k = g/U^2 and lam the secant of theta; after integration by parts, so that
// no slopes are needed and raked ends are only places where f is nothing. Down and
// along, f is joined by straight lines and those integrals are exact; the last one
// is the midpoint rule at equal steps of theta.
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
// a density in kg/m^3; none at no speed.
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
		c, s := w.along(lam*k*dx, used)
		hat := sinc(lam * k * dx / 2)
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
	top, bottom := 0.5-q/6+q*q/24, 0.5-q/3+q*q/8
	if q > 1e-3 { // below, the next term is under 1e-11
		top, bottom = (q-1+e)/(q*q), (1-e*(1+q))/(q*q)
	}
	step := -math.Expm1(-q) / q
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
// cosine and sine of their phase, phase per cell.
func (w *Waves) along(phase float64, used int) (c, s float64) {
	rows := w.offsets.Waterlines + 1
	ds, dc := math.Sincos(phase)
	turnC, turnS := 1.0, 0.0
	down := w.down[:used]
	for i := 0; i < len(w.offsets.Half); i += rows {
		f := 0.0
		row := w.offsets.Half[i : i+used]
		for j, weight := range down {
			f += weight * row[j]
		}
		c += f * turnC
		s += f * turnS
		turnC, turnS = turnC*dc-turnS*ds, turnC*ds+turnS*dc
	}
	return c, s
}

func sinc(x float64) float64 {
	if x < 1e-4 { // the next term is x^4/120
		return 1 - x*x/6
	}
	return math.Sin(x) / x
}

// WaveCoefficient returns R / (rho U^2 S / 2).
func WaveCoefficient(resistance, density, u, surface float64) float64 {
	return resistance / (0.5 * density * u * u * surface)
}
