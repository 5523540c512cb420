package units

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Subtractions done by hand on what is shown.
func TestDifference(t *testing.T) {
	for _, row := range []struct {
		kind     Kind
		from, to float64
		s        System
		want     string
	}{
		{Length, 6.53 * Inch, 6.47 * Inch, Imperial16, ""}, // both show 6 1/2"
		{Length, 10 * Inch, 10.5 * Inch, Imperial16, `+1/2"`},
		{Length, 35 * Inch, 10 * Inch, Imperial16, `−2' 1"`},
		{Length, 10.03 * Inch, 10.04 * Inch, Imperial16, `+1/16"`}, // 10" and 10 1/16"
		{Length, 10 * Inch, 10.001 * Inch, Imperial16, ""},
		{Length, 0.1004, 0.1006, Metric, "+1 mm"}, // 100 and 101
		{Offset, -1 * Inch, 1 * Inch, Imperial16, `+2"`},
		{Temperature, 10, 20, Imperial16, "+18 °F"}, // 50 and 68
		{Mass, 10 * Pound, 12.34 * Pound, Imperial16, "+2.3 lb"},
		{Ratio, 0.123, 0.126, Metric, "+0.003"},
		{Count, 40, 44, Metric, "+4"},
		{Length, 1, math.NaN(), Metric, ""},
		{Length, math.Inf(1), math.Inf(1), Imperial16, ""},
	} {
		assert.Equal(t, row.want, row.kind.Difference(row.from, row.to, row.s), "%v %v %v", row.kind, row.from, row.to)
	}
	rough := func(from, to float64, s System) string {
		return Length.Difference(Length.RoughValue(from, s), Length.RoughValue(to, s), s)
	}
	// The freeboard of a boat whose estimate is shown to a quarter inch: 6 1/2 to 8 1/2.
	assert.Equal(t, `+2"`, rough(6.6*Inch, 8.41*Inch, Imperial16))
	assert.Equal(t, "", rough(6.45*Inch, 6.55*Inch, Imperial16))
	assert.Equal(t, "+5 mm", rough(0.1614, 0.1655, Metric))
}

// Whatever is shown, read again and subtracted, is the difference shown.
func TestDifferenceIsOfWhatIsShown(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7))
	for k := Kind(0); k < kindCount; k++ {
		for range 400 {
			s := []System{Imperial16, Imperial8, Metric}[r.IntN(3)]
			size := k.in(s).si * math.Pow(10, 3*r.Float64()-1)
			from, to := size*r.Float64(), size*r.Float64()
			read := func(text string) float64 {
				v, _, err := k.Parse(text, s)
				require.NoError(t, err, "%v %s", k, text)
				return v
			}
			a, b := read(k.Format(from, s)), read(k.Format(to, s))
			assert.InDelta(t, a, k.Shown(from, s), 1e-9*max(1, a))
			if k == Temperature || k.in(s).style == figures {
				continue // the first has a zero of its own, the other fewer places the larger it is
			}
			want := b - a
			text := k.Difference(from, to, s)
			if text == "" {
				assert.InDelta(t, 0, want, 1e-9*max(1, a))
				continue
			}
			got := read(strings.TrimLeft(text, "+−"))
			if strings.HasPrefix(text, "−") {
				got = -got
			}
			assert.InDelta(t, want, got, 1e-9*max(1, a, b), "%v: %s to %s", k, k.Format(from, s), k.Format(to, s))
		}
	}
}

// Thicknesses shown as fractions differ by what the fractions do, by hand.
func TestDifferenceOfThicknesses(t *testing.T) {
	assert.Equal(t, `+1/32"`, Thickness.Difference(5.0/32*Inch, 6.0/32*Inch, Imperial16))
	// 0.14 in shows as 9/64 and 0.15 as 5/32, which is 10/64.
	assert.Equal(t, `+1/64"`, Thickness.Difference(0.14*Inch, 0.15*Inch, Imperial16))
}

// Every value shown is a whole number of its steps.
func TestShownInWholeSteps(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	for k := Kind(0); k < kindCount; k++ {
		for i := range 200 {
			s := []System{Imperial16, Imperial8, Metric}[r.IntN(3)]
			u := k.in(s)
			v := u.si * math.Pow(10, 3*r.Float64()-1) * r.Float64()
			if i < 2 {
				v = 100 * u.si * float64(i) // the ends of the range
			}
			whole := func(shown, step float64) {
				if k == Temperature {
					return // it has a zero of its own
				}
				n := shown / step
				assert.InDelta(t, math.Round(n), n, 1e-9, "%v of %v, %v", shown, k, s)
			}
			whole(k.Shown(v, s), k.ShownStep(v, s))
			whole(k.Shown(k.RoughValue(v, s), s), k.RoughStep(v, s))
			whole(k.Shown(k.RoughUpValue(v, s), s), k.RoughUpStep(v, s))
		}
	}
}
