package core_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func set(t testing.TB, d design.Design, key string, v float64) design.Design {
	t.Helper()
	p, ok := design.Lookup(key)
	require.True(t, ok, key)
	return p.Set(d, v)
}

// levelFreeboard is the freeboard a load leaves, floated level, by halving between
// none and the depth.
func levelFreeboard(a core.Afloat, boat afloat.Load, payload, depth float64) float64 {
	low, high := 0.0, depth
	for range 40 {
		mid := (low + high) / 2
		if c := a.Body.CarriesLevel(boat, a.Water, mid); c.Possible && c.Payload > payload {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// Canoes of known size carry what they are recorded to have carried: testdata/
// published/loads.csv, with what is assumed of their shape.
func TestPublishedLoads(t *testing.T) {
	const in, lb = units.Inch, units.Pound
	for _, row := range check.Published(t, "loads") {
		d := set(t, design.Default(), "length", row.Float(t, "length")*in)
		d = set(t, d, "beam", row.Float(t, "breadth")*in-2*(d.InwaleThickness+d.BarkThickness+d.OutwaleThickness))
		d = set(t, d, "depth", row.Float(t, "depth")*in)
		d = set(t, d, "frameWidth", row.Float(t, "frame")*d.Beam)
		require.Empty(t, core.Validate(d), row["boat"])
		freeboard := func(d design.Design, load string) float64 {
			a := core.Evaluate(d).Afloat
			boat := a.Boat
			if row["boatWeight"] != "" {
				boat.Mass = row.Float(t, "boatWeight") * lb
			}
			return levelFreeboard(a, boat, row.Float(t, load)*lb, d.Depth) / in
		}
		most, least := freeboard(d, "loadLow"), freeboard(core.Spread(d, 1), "loadHigh")
		t.Logf("%s: freeboard %.1f to %.1f in, by rule %.1f", row["boat"], least, most, freeboard(d, "loadHigh"))
		assert.GreaterOrEqual(t, most, 4.0, row["boat"])
		assert.LessOrEqual(t, least, row.Float(t, "most"), row["boat"])
		assert.Equal(t, row.Float(t, "most") > 9, least > 9, "%s: only what lies beyond is let", row["boat"])
	}
}

// More load is never less draught. By definition of floating: no published source.
func TestMoreLoadMoreDraught(t *testing.T) {
	d, last := design.Default(), 0.0
	for cargo := 0.0; cargo <= 700; cargo += 20 {
		d = set(t, d, "cargo", cargo*units.Pound)
		f := core.Evaluate(d).Afloat.Floated
		require.Equal(t, afloat.Floats, f.State)
		require.Greater(t, f.Upright.Draught, last)
		last = f.Upright.Draught
	}
}
