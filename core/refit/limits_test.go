package refit

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/record"
)

// A measurement is outside its tolerance from just over it.
func TestToleranceIsWhatItSays(t *testing.T) {
	d := design.Default()
	for _, c := range []struct {
		off   float64
		state State
	}{{0.24, InsideTolerance}, {-0.24, InsideTolerance}, {0.26, OutsideTolerance}, {-0.26, OutsideTolerance}} {
		rows := Measure(d, record.Record{Data: []record.Datum{{Kind: record.EndHeight, Value: d.EndHeight + c.off*inch,
			Tolerance: 0.25 * inch}}})
		assert.Equal(t, c.state, rows[0].State, "off by %g in", c.off)
	}
}

// Two readings of one thing agree as far apart as both their tolerances together.
func TestTwoReadingsAgreeWithinBothTolerances(t *testing.T) {
	for apart, conflicts := range map[float64]int{0.7: 0, 0.8: 1} {
		f := Fit(record.Record{Data: []record.Datum{
			{Kind: record.EndHeight, Value: 25 * inch, Tolerance: 0.25 * inch},
			{Kind: record.EndHeight, Value: (25 + apart) * inch, Tolerance: 0.5 * inch},
		}})
		require.Len(t, f.Conflicts, conflicts, "%g in apart", apart)
	}
}

// A station as far from the gunwale's end as half the gunwales are long is amidships.
func TestAmidshipsFromTheEnd(t *testing.T) {
	for _, from := range []record.Place{{From: record.FromGunwaleEnd, Distance: 87 * inch},
		{From: record.FromEnd, Distance: 96 * inch}} {
		f := Fit(plain(record.Datum{Kind: record.SheerHeight, At: from, Value: 12.5 * inch}))
		assert.Empty(t, f.Conflicts)
		assert.Equal(t, InsideTolerance, f.Rows[4].State, from.From)
		assert.Zero(t, f.Rows[4].X)
	}
}

// What is stated twice is the mean weighed by the inverse squares of the tolerances, as
// for any two measurements of one thing (JCGM 100:2008, from memory): 26 good to 1/4 and
// 26.4 good to 1/2 are 26.08.
func TestStatedTwiceIsTheWeighedMean(t *testing.T) {
	f := Fit(plain(
		record.Datum{Kind: record.FrameWidth, Value: 26 * inch, Tolerance: inch / 4},
		record.Datum{Kind: record.FrameWidth, Value: 26.4 * inch, Tolerance: inch / 2}))
	assert.InDelta(t, 26.08*inch, f.Design.FrameWidth, 1e-9)
}
