package design_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

var systems = []units.System{units.Imperial16, units.Imperial8, units.Metric}

func set(t testing.TB, d design.Design, key string, v float64) design.Design {
	t.Helper()
	p, ok := design.Lookup(key)
	require.True(t, ok, key)
	return p.Set(d, v)
}

func keys(faults []design.Fault) []string {
	var out []string
	for _, f := range faults {
		out = append(out, f.Key)
	}
	return out
}

func TestDefaultIsValid(t *testing.T) {
	assert.Empty(t, design.Validate(design.Default()))
}

// The relations are of this project; the rows state them beside numbers that
// break them by a step.
func TestRelations(t *testing.T) {
	const in = units.Inch
	rows := []struct {
		key     string
		d       design.Design
		says    string
		fit     float64 // inches
		atLeast bool
	}{
		{"gunwaleEndHeight", check.With(t, "depth", 15*in, "gunwaleEndHeight", 14.75*in),
			`lower at its ends than the depth of 1' 3"`, 15, true},
		{"endHeight", check.With(t, "endHeight", 20.25*in), `and its cap, 1' 8 5/16" high`, 20.3125, true},
		{"headSetback", check.With(t, "headSetback", 8.25*in), `set back too far`, 8, false},
		{"headSetback", check.With(t, "overhang", 30*in, "heelLength", 10*in, "headSetback", 6.5*in), `60 %`, 6, false},
		{"headSetback", check.With(t, "overhang", 0.5*in, "headSetback", 0.25*in), `set back too far`, 0, false},
		{"rocker", check.With(t, "rocker", 6.5*in), `more than half the depth`, 6.25, false},
		{"frameLength", check.With(t, "frameLength", 172.25*in),
			`2" shorter than the gunwales, which are 14' 6" from`, 172, false},
		{"bedLength", check.With(t, "bedLength", 150*in), `shorter than the building frame of 13' 4"`, 160, true},
		{"bedLength", check.With(t, "builtOn", 1.0, "bedLength", 170*in),
			`shorter than the gunwales of 14' 6"`, 174, true},
		{"turnWidth", check.With(t, "turnWidth", 39.75*in),
			`at most 112 % of the 2' 11 1/4" outside the gunwales`, 1.12 * 35.28, false},
		{"greatestBeam", check.With(t, "greatestBeam", 35*in), `choose none, or more`, 35.53, true},
		{"stationsApart", check.With(t, "stationsApart", 2.75*in), `nearer than 3" would make a longer table`, 3, true},
		{"heelLength", check.With(t, "length", 100*in, "overhang", 2*in, "heelLength", 27*in), `less than half-way`,
			26, false},
		{"stemWidth", check.With(t, "inwaleThickness", 0.5*in, "stemWidth", 1.0625*in),
			`broader than the two inwales, 1/2" each`, 1, false},
		{"ribTipWidth", check.With(t, "ribTipWidth", 1.8125*in), `1 3/4" at the narrowest`, 1.75, false},
		{"ribTuck", check.With(t, "ribTuck", 1.0625*in), `which is 1" deep`, 1, false},
		{"paddler2Place", check.With(t, "paddler2Place", -90*in), `7' 3" from amidships`, -87, true},
		{"paddler1Place", check.With(t, "paddler1Place", 88*in), `Paddler 1 would be beyond`, 87, false},
	}
	for _, row := range rows {
		faults := design.Validate(row.d)
		require.Contains(t, keys(faults), row.key)
		for _, f := range faults {
			if f.Key != row.key {
				continue
			}
			message := strings.ReplaceAll(strings.ReplaceAll(f.Message(units.Imperial16), "\u00a0", " "), "\u202f", " ")
			assert.Contains(t, message, row.says)
			require.True(t, f.HasFit, message)
			assert.Equal(t, row.atLeast, f.FitLeast, message)
			assert.InDelta(t, row.fit*in, f.Fit, 1e-9, message)
			for _, s := range systems {
				v, ok := f.Suggest(s)
				require.True(t, ok)
				assert.NotContains(t, keys(design.Validate(set(t, row.d, f.Key, v))), f.Key, message)
			}
		}
	}
}

// A value past its range is told the range once, and an even number of thwarts both odd
// ones beside it.
func TestRangesInWords(t *testing.T) {
	for _, row := range []struct {
		key  string
		v    float64
		says string
	}{
		{"length", 60 * units.Foot, `60' 0" is too long; this page takes 8' 0" to 37' 0".`},
		{"length", 7 * units.Foot, `7' 0" is too short; this page takes 8' 0" to 37' 0".`},
		{"ribs", 200, `200 is too much; this page takes 8 to 110.`},
		{"thwarts", 6, `6 is even: one stands amidships and the rest in pairs. Take 5 or 7.`},
		{"thwarts", 8, `8 is even: one stands amidships and the rest in pairs. Take 7 or 9.`},
	} {
		faults := design.Validate(check.With(t, row.key, row.v))
		require.Contains(t, keys(faults), row.key)
		for _, f := range faults {
			if f.Key == row.key {
				assert.Equal(t, row.says, f.Message(units.Imperial16))
			}
		}
	}
}

func TestEveryParameterHasItsRange(t *testing.T) {
	for _, p := range design.Params() {
		for _, v := range []float64{p.Min - 1000, p.Max + 1000, p.Max + 1e12, math.NaN(), math.Inf(1), math.Inf(-1)} {
			if p.Kind == units.Count && (math.IsNaN(v) || math.IsInf(v, 0)) {
				continue // a whole number cannot be one of these
			}
			faults := design.Validate(p.Set(design.Default(), v))
			require.Contains(t, keys(faults), p.Key, "%s at %v", p.Key, v)
			for _, f := range faults {
				for _, s := range systems {
					require.NotEmpty(t, f.Message(s))
				}
			}
			if math.IsNaN(v) {
				assert.Equal(t, []string{p.Key}, keys(faults), "one absurd number is one fault")
				continue
			}
			nearest := design.Validate(p.Set(design.Default(), max(p.Min, min(p.Max, v))))
			assert.Subset(t, append(keys(nearest), p.Key), keys(faults),
				"%s at %v is no more faults than its nearest value is", p.Key, v)
		}
	}
}

func TestTextLengths(t *testing.T) {
	d := design.Default()
	d.Name, d.Notes = strings.Repeat("é", design.MaxName), strings.Repeat("é", design.MaxNotes)
	assert.Empty(t, design.Validate(d))
	d.Name, d.Notes = d.Name+"x", d.Notes+"x"
	assert.Equal(t, []string{"name", "notes"}, keys(design.Validate(d)))
	d.Name, d.Notes = "\xff", ""
	assert.Equal(t, []string{"name"}, keys(design.Validate(d)))
}

// Whatever is entered, each fault reads in every system and its suggestion is
// inside the range and mends what it names.
func TestFaultsOfRandomDesigns(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 600 {
		d := check.AnyDesign(r)
		for _, f := range design.Validate(d) {
			_, known := design.Lookup(f.Key)
			require.True(t, known, f.Key)
			for _, s := range systems {
				m := f.Message(s)
				require.True(t, strings.HasSuffix(m, "."), m)
				require.NotContains(t, m, "%!", m)
				if v, ok := f.Suggest(s); ok && f.HasFit {
					require.NotContains(t, keys(design.Validate(set(t, d, f.Key, v))), f.Key, m)
				}
			}
		}
	}
}

// A value that misses a bound only by rounding comes to stand on it, whichever way it
// comes in; a value farther out is named, and so is one that did not come in by a door.
func TestNothingOutsideItsRangePassesValidate(t *testing.T) {
	for _, p := range design.Params() {
		for _, bound := range []float64{p.Min, p.Max} {
			out := 1.0
			if bound == p.Min {
				out = -1
			}
			d := p.Set(design.Default(), bound+out*1e-7*p.StepMetric)
			assert.Equal(t, bound, p.Get(&d), p.Key)
			p.Put(&d, bound-out*1e-7*p.StepMetric)
			assert.Equal(t, bound, p.Get(&d), p.Key)
			if line, err := design.Line(d); assert.NoError(t, err) {
				back, _, err := design.ReadLine(line)
				require.NoError(t, err)
				assert.GreaterOrEqual(t, out*(bound-p.Get(&back)), 0.0, "%s in %s", p.Key, line)
			}
			d = p.Set(design.Default(), bound+out*2e-6*max(p.StepMetric, 1e-3))
			if !p.Whole() {
				assert.Contains(t, keys(design.Validate(d)), p.Key)
			}
		}
	}
	d := design.Default()
	d.WaterTemperature = -1e-12
	assert.Equal(t, []string{"waterTemperature"}, keys(design.Validate(d)))
}

// Lines and entries that stood a hair under a bound.
func TestALineAHairOutsideStandsOnTheBound(t *testing.T) {
	for _, line := range []string{"barkwright2_Cx-0.0000001", "barkwright2_Gf-0.000000001",
		"barkwright2_Ch-0.000000001"} {
		d, _, err := design.ReadLine(line)
		require.NoError(t, err, line)
		assert.Empty(t, design.Validate(d))
		assert.GreaterOrEqual(t, min(d.WaterTemperature, d.GoreFoot, d.SeatHeight, d.CargoHeight), 0.0, line)
	}
	v, _, err := units.Temperature.Parse("31.9999999 F", units.Imperial16)
	require.NoError(t, err)
	require.Negative(t, v)
	d := set(t, design.Default(), "waterTemperature", v)
	assert.Empty(t, design.Validate(d))
	assert.Zero(t, d.WaterTemperature)
}
