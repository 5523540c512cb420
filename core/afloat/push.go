package afloat

import "math"

// FrictionCoefficient returns the ITTC-1957 coefficient 0.075 / (log10 Re - 2)^2 for
// a Reynolds number on waterline length. It reports false, and no friction, below
// LeastReynolds. It is a correlation line; no credit is given for laminar flow.
func FrictionCoefficient(reynolds float64) (float64, bool) {
	if !(reynolds >= LeastReynolds) {
		return 0, false
	}
	d := math.Log10(reynolds) - frictionPole
	return frictionFactor / (d * d), true
}

// Towed is what the push depends on.
type Towed struct {
	Length  float64 // m, wet length
	Surface float64 // m^2, wetted
	Water   Water
	Waves   *Waves
}

// Towed returns what the push of the boat in an upright attitude depends on.
func (b *Body) Towed(a Attitude, water Water, g WaveGrid) Towed {
	f := b.Figures(a)
	return Towed{f.Length, f.WettedSurface, water, NewWaves(b.Offsets(a, g), g.Angles)}
}

// Friction returns the frictional resistance in N at speed u, form factor none;
// none below LeastReynolds.
func (t Towed) Friction(u float64) float64 {
	c, _ := FrictionCoefficient(u * t.Length / t.Water.KinematicViscosity)
	return 0.5 * t.Water.Density * t.Surface * u * u * c
}

// Wave returns the thin-ship wave resistance in N at speed u.
func (t Towed) Wave(u float64) float64 {
	return t.Waves.Resistance(u, t.Water.Density)
}

// Push is what it costs to move at one speed, in N, calm water, no wind.
type Push struct {
	Speed    float64 // m/s
	Friction float64
	Wave     float64 // thin-ship theory at this speed
	WaveLow  float64 // the least and the most of it within 5 % of this speed
	WaveHigh float64
}

// Theory is friction and the wave part as the theory has it.
func (p Push) Theory() float64 { return p.Friction + p.Wave }

// Low and High are the range shown: friction alone, and friction with the most the
// theory gives near this speed.
func (p Push) Low() float64  { return p.Friction }
func (p Push) High() float64 { return p.Friction + p.WaveHigh }

// At returns the push at speed u.
func (t Towed) At(u float64) Push {
	return t.push(u, t.Wave(u/(1+waveBand)), t.Wave(u), t.Wave(u*(1+waveBand)))
}

func (t Towed) push(u, below, wave, above float64) Push {
	return Push{u, t.Friction(u), wave,
		min(below, wave, above), max(below, wave, above)}
}

// Curve returns the push at a number of speeds from the first upward, each 5 % more
// than the last, so that a speed's neighbours are its band.
func (t Towed) Curve(first float64, count int) []Push {
	waves := make([]float64, count+2)
	u := first / (1 + waveBand)
	for i := range waves {
		waves[i] = t.Wave(u)
		u *= 1 + waveBand
	}
	pushes := make([]Push, count)
	u = first
	for i := range pushes {
		pushes[i] = t.push(u, waves[i], waves[i+1], waves[i+2])
		u *= 1 + waveBand
	}
	return pushes
}
