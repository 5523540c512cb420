package design_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/units"
)

// What is typed and cannot be taken is answered in the parameter's own terms: what
// stands now, its range, the unit that was meant.
func TestEntriesAreAnswered(t *testing.T) {
	for _, row := range []struct {
		key, text string
		s         units.System
		says      string
	}{
		{"ribs", "44 ft", units.Imperial16, `A count takes no unit, and "ft" stands after it. Write the number alone: 44.`},
		{"ribs", "44 ribs", units.Imperial16, `A count takes no unit, and "ribs" stands after it. Write the number alone: 44.`},
		{"ribs", "many", units.Imperial16, `A number is missing before "many". Try 44.`},
		{"pegEvery", "every other", units.Imperial16, `A number is missing before "every other". Try 2.`},
		{"beam", "", units.Imperial16, `Nothing is entered here. Try 33" or 2' 9".`},
		{"beam", "", units.Metric, `Nothing is entered here. Try 838 mm.`},
		{"depth", "deep", units.Imperial16, `A number is missing before "deep". Try 12 1/2" or 1' 0 1/2".`},
		{"length", "", units.Imperial16, `Nothing is entered here. Try 16' 0".`},
		{"length", "-3", units.Imperial16, `This cannot be less than zero. Length overall is 8' 0" to 37' 0".`},
		{"length", "15-6", units.Imperial16, `A hyphen joins only inches and their fraction, or stands after feet: ` +
			`15-6 may mean feet and inches. Try 15' 6".`},
		{"length", "15", units.Imperial16, `Read as inches. Did you mean 15 ft? This page takes 8' 0" to 37' 0".`},
		{"length", "15 1/2", units.Imperial16, `Read as inches. Did you mean 15 1/2 ft? This page takes 8' 0" to 37' 0".`},
		{"length", "16½", units.Imperial16, `Read as inches. Did you mean 16½ ft? This page takes 8' 0" to 37' 0".`},
		{"length", "4600", units.Imperial16, `Read as inches. Did you mean 4600 mm? This page takes 8' 0" to 37' 0".`},
		{"length", "465", units.Imperial16, `Read as inches. Did you mean 465 cm? This page takes 8' 0" to 37' 0".`},
		{"length", "4.6", units.Metric, `Read as millimetres. Did you mean 4.6 m? This page takes 2438 mm to 11278 mm.`},
		{"length", "183", units.Metric, `Read as millimetres. Did you mean 183 in? This page takes 2438 mm to 11278 mm.`},
		{"length", "15 1/2", units.Metric, `Read as inches. Did you mean 15 1/2 ft? This page takes 2438 mm to 11278 mm.`},
		{"inwaleThickness", "25", units.Imperial16, `Read as inches. Did you mean 25 mm? This page takes 1/2" to 2".`},
		{"barkThickness", "3", units.Imperial16, `Read as inches. Did you mean 3 mm? This page takes 5/64" to 5/16".`},
	} {
		p, ok := design.Lookup(row.key)
		require.True(t, ok, row.key)
		d := design.Default()
		_, _, err := p.Read(row.text, p.Get(&d), row.s)
		require.Error(t, err, "%s %q", row.key, row.text)
		assert.Equal(t, row.says, err.Error(), "%s %q", row.key, row.text)
	}
}

// What is inside the range is taken as it stands, and so is what no unit would mend.
func TestEntriesAreTaken(t *testing.T) {
	for _, row := range []struct {
		key, text string
		want      float64
	}{
		{"length", "180", 180 * units.Inch}, {"length", "15 in", 15 * units.Inch}, {"length", "2", 2 * units.Inch},
		{"ribTuck", "0", 0}, {"greatestBeam", "none", 0}, {"ribs", "4", 4},
	} {
		p, _ := design.Lookup(row.key)
		v, echo, err := p.Read(row.text, p.Min, units.Imperial16)
		require.NoError(t, err, row.text)
		assert.InDelta(t, row.want, v, 1e-12, row.text)
		assert.Contains(t, echo, "Read as", row.text)
	}
}

// A bound can be entered as the page tells it, in any units, and a hair past it cannot.
func TestBoundsAreEnteredAsTold(t *testing.T) {
	for _, p := range design.Params() {
		if p.Options != nil {
			continue
		}
		for _, s := range []units.System{units.Imperial16, units.Imperial8, units.Metric} {
			for _, bound := range []float64{p.Min, p.Max} {
				text := p.Kind.Format(bound, s)
				v, _, err := p.Read(text, p.Default, s)
				require.NoError(t, err, "%s: %s", p.Key, text)
				d := p.Set(design.Default(), v)
				assert.GreaterOrEqual(t, p.Get(&d), p.Min, "%s: %s", p.Key, text)
				assert.LessOrEqual(t, p.Get(&d), p.Max, "%s: %s", p.Key, text)
			}
		}
	}
	beam, _ := design.Lookup("beam")
	for text, want := range map[string]float64{"1829 mm": 72 * units.Inch, "1828 mm": 1.828, "1830 mm": 1.83,
		"457 mm": 18 * units.Inch} {
		v, _, err := beam.Read(text, beam.Default, units.Metric)
		require.NoError(t, err, text)
		// Millimetres are turned into metres once: two of a double's steps at two metres.
		assert.InDelta(t, want, v, 5e-16, text)
	}
}
