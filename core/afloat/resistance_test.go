package afloat_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/afloat"
	"barkwright/core/geom"
	"barkwright/core/internal/bodies"
	"barkwright/core/internal/check"
)

// testdata/published/ittc-1957-friction.csv.
func TestFrictionLine(t *testing.T) {
	for _, row := range check.Published(t, "ittc-1957-friction") {
		c, ok := afloat.FrictionCoefficient(row.Float(t, "reynolds"))
		require.True(t, ok)
		assert.InDelta(t, row.Float(t, "exact"), c, 5e-11, row["reynolds"])
		if row["printed"] != "" {
			assert.InDelta(t, row.Float(t, "printed"), c, row.Float(t, "tolerance"), row["reynolds"])
		}
	}
	for _, slow := range []float64{0, 99, 100, 9999, math.NaN()} {
		c, ok := afloat.FrictionCoefficient(slow)
		assert.False(t, ok)
		assert.Zero(t, c)
	}
}

// testdata/published/fresh-water.csv.
func TestFreshWater(t *testing.T) {
	for _, row := range check.Published(t, "fresh-water") {
		w := afloat.WaterAt(row.Float(t, "celsius"))
		assert.InDelta(t, row.Float(t, "tanaka"), w.Density, 5e-5, row["celsius"])
		assert.InEpsilon(t, row.Float(t, "iapws"), w.KinematicViscosity*1e6, 5e-5, row["celsius"])
		if row["ittcDensity"] != "" {
			assert.InDelta(t, row.Float(t, "ittcDensity"), w.Density, row.Float(t, "ittcDensityTolerance"),
				row["celsius"])
			assert.InDelta(t, row.Float(t, "ittcViscosity"), w.KinematicViscosity*1e6, 2e-4, row["celsius"])
		}
	}
	assert.PanicsWithValue(t, "afloat: water temperature outside 0 to 40 C", func() { afloat.WaterAt(-1) })
}

// towed is a parabolic hull of length 5 on an equal grid, its surface given.
func towed(beam, draught, surface float64, g afloat.WaveGrid) afloat.Towed {
	grid := bodies.Parabolic(beam, draught).Grid(g.Stations, g.Waterlines)
	waves := afloat.NewWaves(afloat.Offsets{Length: 5, Depth: draught,
		Stations: g.Stations, Waterlines: g.Waterlines, Half: grid}, g.Angles)
	return afloat.Towed{Length: 5, Surface: surface, Water: fresh, Waves: waves}
}

const surfaceA = 3.7197657762394 // hydrostatic-closed-forms.csv, parabolic

// fineGrid is twice as fine as the one in use: the published figures are for it.
var fineGrid = afloat.WaveGrid{Stations: 80, Waterlines: 40, Angles: 800}

// speedAt is the speed at which friction and waves take an effective power. The waves
// rise and fall, so it is looked for below the speed that friction alone allows.
func speedAt(h afloat.Towed, power float64) float64 {
	low, most := 0.0, 1.0
	for h.Friction(most)*most < power {
		most *= 2
	}
	u, _ := geom.Bisect(func(u float64) float64 { return (h.Friction(u)+h.Wave(u))*u - power }, low, most, 1e-7)
	return u
}

// coefficient is R / (rho U^2 S / 2), in thousandths.
func coefficient(h afloat.Towed, froude float64) float64 {
	u := froude * math.Sqrt(afloat.Gravity*h.Length)
	return 1000 * h.Wave(u) / (0.5 * h.Water.Density * u * u * h.Surface)
}

// testdata/computed/parabolic-hull-waves.csv.
func TestWaveCoefficients(t *testing.T) {
	h := towed(0.5, 0.3125, surfaceA, fineGrid)
	for _, row := range check.Computed(t, "parabolic-hull-waves") {
		assert.InEpsilon(t, row.Float(t, "coefficient"), coefficient(h, row.Float(t, "froude")),
			row.Float(t, "tolerance"), row["froude"])
	}
}

// testdata/computed/parabolic-hull-waves-grid.csv.
func TestWaveGridErrors(t *testing.T) {
	exact := map[string]float64{}
	for _, row := range check.Computed(t, "parabolic-hull-waves") {
		exact[row["froude"]] = row.Float(t, "coefficient")
	}
	for _, row := range check.Computed(t, "parabolic-hull-waves-grid") {
		g := afloat.WaveGrid{Stations: int(row.Float(t, "stations")),
			Waterlines: int(row.Float(t, "waterlines")), Angles: int(row.Float(t, "angles"))}
		h := towed(0.5, 0.3125, surfaceA, g)
		if row["at25"] != "" {
			assert.InDelta(t, row.Float(t, "at25"), coefficient(h, 0.25), 5e-8, g)
			assert.InDelta(t, row.Float(t, "at40"), coefficient(h, 0.40), 5e-8, g)
		}
		if row["error20"] == "" {
			continue
		}
		for column, froude := range map[string]string{"error20": "0.20", "error25": "0.25", "error35": "0.35",
			"error45": "0.45"} {
			fn := map[string]float64{"0.20": 0.2, "0.25": 0.25, "0.35": 0.35, "0.45": 0.45}[froude]
			got := 100 * (coefficient(h, fn)/exact[froude] - 1)
			assert.InDelta(t, row.Float(t, column), got, row.Float(t, "errorTolerance"), "%v %s", g, froude)
		}
	}
}

// A strut with parabolic waterlines and straight sides, whose foot counts: the
// spectrum is Q = -(4B/L^2) X Z with X = 2 (sin a / w^2 - (L/2) cos a / w), a = w L/2,
// w = k lam, and Z = (1 - exp(-k lam^2 T)) / (k lam^2), summed by midpoints in theta.
func TestWavesOfStrut(t *testing.T) {
	const length, beam, draught, u = 5.0, 0.5, 0.1, 2.5
	g := afloat.WaveGrid{Stations: 160, Waterlines: 10, Angles: 1600}
	half := make([]float64, 0, (g.Stations+1)*(g.Waterlines+1))
	for i := range g.Stations + 1 {
		x := 2*float64(i)/float64(g.Stations) - 1
		for range g.Waterlines + 1 {
			half = append(half, beam/2*(1-x*x))
		}
	}
	k := afloat.Gravity / (u * u)
	sum := 0.0
	const n = 100000
	for i := range n {
		lam := 1 / math.Cos((float64(i)+0.5)*math.Pi/2/n)
		w := k * lam
		sin, cos := math.Sincos(w * length / 2)
		q := 4 * beam / (length * length) * 2 * (sin/(w*w) - length/2*cos/w) * -math.Expm1(-w*lam*draught) / (w * lam)
		sum += q * q * lam * lam * lam * math.Pi / 2 / n
	}
	want := 4 * 1000 * afloat.Gravity * afloat.Gravity / (math.Pi * u * u) * sum
	o := afloat.Offsets{Length: length, Depth: draught, Stations: g.Stations, Waterlines: g.Waterlines, Half: half}
	// Straight down, so only the chords of the waterlines tell: as the hull's at this grid.
	assert.InEpsilon(t, want, afloat.NewWaves(o, g.Angles).Resistance(u, 1000), 3e-4)
}

// surfaceOf integrates the wetted surface of a parabolic hull of length 5, both sides,
// by midpoints: within 1e-6.
func surfaceOf(beam, draught float64) float64 {
	const n, length = 1000, 5.0
	sum := 0.0
	for i := range n {
		u := (2*float64(i)+1)/n - 1
		for j := range n {
			w := (float64(j) + 0.5) / n
			along := -2 * beam / length * u * (1 - w*w)
			down := -beam / draught * w * (1 - u*u)
			sum += math.Sqrt(1 + along*along + down*down)
		}
	}
	return 2 * sum * length * draught / (n * n)
}

func hulls(g afloat.WaveGrid) map[string]afloat.Towed {
	return map[string]afloat.Towed{
		"A": towed(0.5, 0.3125, surfaceA, g),
		"B": towed(0.8, 0.12, surfaceOf(0.8, 0.12), g),
	}
}

// testdata/computed/parabolic-hull-push.csv.
func TestPush(t *testing.T) {
	assert.InEpsilon(t, surfaceA, surfaceOf(0.5, 0.3125), 1e-6)
	all := hulls(afloat.WaveGrid{Stations: 160, Waterlines: 80, Angles: 1600})
	for _, row := range check.Computed(t, "parabolic-hull-push") {
		h, u := all[row["hull"]], row.Float(t, "speed")
		p := h.At(u)
		// Half the last digit and what viscosity by the shorter formula adds, 0.003 %
		// of it and a sixth of that of the friction.
		assert.InDelta(t, row.Float(t, "friction"), p.Friction, 5e-6+5e-6*p.Friction)
		assert.InEpsilon(t, row.Float(t, "wave"), p.Wave, 3e-4, "%s %v", row["hull"], u)
		assert.InEpsilon(t, row.Float(t, "total"), p.Theory(), 3e-4)
		assert.LessOrEqual(t, p.Low(), p.Theory())
		assert.LessOrEqual(t, p.Theory(), p.High())
		assert.LessOrEqual(t, p.WaveLow, p.Wave)
	}
}

// testdata/computed/parabolic-hull-speed.csv.
func TestSpeedAtPower(t *testing.T) {
	all := hulls(fineGrid)
	for _, row := range check.Computed(t, "parabolic-hull-speed") {
		assert.InDelta(t, row.Float(t, "speed"), speedAt(all[row["hull"]], row.Float(t, "power")), 6e-4)
	}
}

// The offsets of a floating body are those of the exact hull, and so are its waves.
func TestOffsetsAsFloated(t *testing.T) {
	e := exactBodies()["parabolic"]
	a := e.body.At(e.load(), fresh, 0)
	g := afloat.LiveGrid()
	o := e.body.Offsets(a, g)
	want := bodies.Parabolic(0.5, 0.3125).Grid(g.Stations, g.Waterlines)
	assert.InDelta(t, 5, o.Length, 1e-12)
	for i := range want {
		// Chords of 400 in depth, and the draught a little deeper for them: 1e-5.
		require.InDelta(t, want[i], o.Half[i], 1e-5)
	}
	got := e.body.Towed(a, fresh, g)
	assert.InEpsilon(t, coefficient(towed(0.5, 0.3125, surfaceA, g), 0.35), coefficient(got, 0.35), 5e-4)
}

// A curve's speeds are 5 % apart and its bands those of the single speed.
func TestCurveAndDay(t *testing.T) {
	h := towed(0.5, 0.3125, surfaceA, afloat.LiveGrid())
	curve := h.Curve(0.7, 32)
	for i, p := range curve {
		one := h.At(p.Speed)
		assert.InDelta(t, one.High(), p.High(), 1e-9)
		assert.InDelta(t, one.WaveLow, p.WaveLow, 1e-9)
		near := []float64{h.Wave(p.Speed / 1.05), h.Wave(p.Speed), h.Wave(p.Speed * 1.05)}
		assert.InDelta(t, slices.Min(near), p.WaveLow, 1e-9)
		assert.InDelta(t, p.Friction+slices.Max(near), p.High(), 1e-9)
		if i > 0 {
			assert.InEpsilon(t, 1.05, p.Speed/curve[i-1].Speed, 1e-12)
		}
	}
	for _, power := range []float64{30, afloat.TouringPower, afloat.BriskPower, 100} {
		d := afloat.DayOn(curve, afloat.Paddling{Paddlers: 2, Least: 0.8 * power, Power: power, Most: 1.2 * power})
		require.True(t, d.OnCurve)
		assert.InEpsilon(t, speedAt(h, 2*power*0.65), d.Speed, 0.005)
		assert.Less(t, d.SpeedLow, d.Speed)
		assert.Less(t, d.Speed, d.SpeedHigh)
		// From three miles an hour, or slower, for six hours, to the fast end's.
		assert.InEpsilon(t, 6*3600*min(d.SpeedLow, 3*1609.344/3600), d.DistanceLow, 1e-12)
		assert.InEpsilon(t, 6*3600*d.SpeedHigh, d.DistanceHigh, 1e-12)
	}
	assert.False(t, afloat.DayOn(curve, afloat.Paddling{Paddlers: 0, Least: 20, Power: 50, Most: 75}).OnCurve)
}
