package afloat

import "math"

// FrictionCoefficient returns the ITTC-1957 coefficient 0.075 / (log10 Re - 2)^2 for
// a Reynolds number on waterline length. It returns zero and false below
// leastReynolds. It is a correlation line; no credit is given for laminar flow.
func FrictionCoefficient(reynolds float64) (float64, bool) {
	if !(reynolds >= leastReynolds) {
		return 0, false
	}
	d := math.Log10(reynolds) - frictionPole
	return frictionFactor / (d * d), true
}

// Towed is what the resistance of a boat depends on.
type Towed struct {
	Length  float64 // m, wet length
	Surface float64 // m^2, wetted
	Water   Water
	Waves   *Waves
}

// Towed returns what the resistance of the boat in an upright attitude depends on.
func (b *Body) Towed(a Attitude, water Water, g WaveGrid) Towed {
	f := b.Hydrostatics(a)
	return Towed{f.Length, f.WettedSurface, water, NewWaves(b.Offsets(a, g), g.Angles)}
}

// Friction returns the frictional resistance in N at speed u, without a form
// factor. It is zero below leastReynolds.
func (t Towed) Friction(u float64) float64 {
	c, _ := FrictionCoefficient(u * t.Length / t.Water.KinematicViscosity)
	return 0.5 * t.Water.Density * t.Surface * u * u * c
}

// Wave returns the thin-ship wave resistance in N at speed u.
func (t Towed) Wave(u float64) float64 {
	return t.Waves.Resistance(u, t.Water.Density)
}

// Resistance is the force in N that holds the boat back at one speed, in calm water
// without wind. The page calls it push.
type Resistance struct {
	Speed    float64 // m/s
	Friction float64
	Wave     float64 // thin-ship theory at this speed
	WaveLow  float64 // the least and the most of it within 5 % of this speed
	WaveHigh float64
}

// Theory returns friction and the wave part as the theory has it.
func (r Resistance) Theory() float64 { return r.Friction + r.Wave }

// Low and High return the range shown: friction alone, and friction with the most
// that the theory gives near this speed.
func (r Resistance) Low() float64  { return r.Friction }
func (r Resistance) High() float64 { return r.Friction + r.WaveHigh }

// At returns the resistance at speed u.
func (t Towed) At(u float64) Resistance {
	return t.banded(u, t.Wave(u/(1+waveBand)), t.Wave(u), t.Wave(u*(1+waveBand)))
}

// banded returns the resistance at speed u from the wave part a band below, at and
// a band above it.
func (t Towed) banded(u, below, wave, above float64) Resistance {
	return Resistance{u, t.Friction(u), wave, min(below, wave, above), max(below, wave, above)}
}

// Curve returns the resistance at a number of speeds from the first upward, each 5 % more
// than the last, so that a speed's neighbours are its band.
func (t Towed) Curve(first float64, count int) []Resistance {
	waves := make([]float64, count+2)
	u := first / (1 + waveBand)
	for i := range waves {
		waves[i] = t.Wave(u)
		u *= 1 + waveBand
	}
	out := make([]Resistance, count)
	u = first
	for i := range out {
		out[i] = t.banded(u, waves[i], waves[i+1], waves[i+2])
		u *= 1 + waveBand
	}
	return out
}
