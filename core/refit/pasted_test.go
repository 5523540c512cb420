package refit

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/record"
	"barkwright/core/units"
)

// Stations from the end and from the middle say the same boat.
func TestEitherOrderOfStations(t *testing.T) {
	head := "length overall\t16'\ngunwale length\t14' 6\"\nbeam inside\t33\ndepth\t12 1/2\n"
	_, a, refusedA := record.Read(head+"stations from middle\t30\t60\t80\nclear\t26\t14\t6\n", 0, units.Imperial16)
	_, b, refusedB := record.Read(head+"stations from end\t66\t36\t16\nclear\t26\t14\t6\n", 0, units.Imperial16)
	require.Empty(t, append(refusedA, refusedB...))
	assert.InDelta(t, Fit(record.Record{Data: a}).Design.BeamFull, Fit(record.Record{Data: b}).Design.BeamFull, 1e-9)
}

// Nothing pasted brings the fit down.
func FuzzFit(f *testing.F) {
	f.Add("stations\t-1\t2\nsheer\t1\t2\t±1\nend thwart aft from end\t9e9\nbay 3\t1/0", false)
	f.Add("profile;1;2\nprofile;3;4\nclear, amidships, 40\nspacing first;1\nspacing 2;500 ft", true)
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		s := units.Imperial16
		if metric {
			s = units.Metric
		}
		_, data, _ := record.Read(text, 0, s)
		fit := Fit(record.Record{Data: data[:min(12, len(data))]})
		for _, r := range fit.Rows {
			if r.Difference != r.Difference {
				t.Fatal("not a number", r.Datum)
			}
		}
		AsBuilt(fit.Design, data, units.Imperial16)
	})
}
