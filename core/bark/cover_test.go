package bark_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/hull"
)

// sheets are in inches, width by length; invented.
func sheets(inches ...[2]float64) []bark.Sheet {
	var out []bark.Sheet
	for _, s := range inches {
		out = append(out, bark.Sheet{Width: s[0] * inch, Length: s[1] * inch})
	}
	return out
}

func cover(t *testing.T, list []bark.Sheet) (bark.Layout, bark.Coverage) {
	t.Helper()
	h := hull.New(design.Default())
	l := bark.Plan(h)
	return l, bark.Cover(h, l, list)
}

func TestOneGreatSheetCovers(t *testing.T) {
	l, c := cover(t, sheets([2]float64{55, 210}))
	assert.True(t, c.Covers())
	require.Len(t, c.Bed, 1)
	assert.Empty(t, c.Port)
	assert.Empty(t, c.Joints)
	assert.InDelta(t, l.FlatLength, c.Bed[0].Bow-c.Bed[0].Aft, 1e-9)
}

func TestNothingOnHand(t *testing.T) {
	l, c := cover(t, nil)
	require.Len(t, c.Short, 1)
	assert.False(t, c.Short[0].Panel)
	assert.InDelta(t, l.FlatLength, c.Short[0].Length(), 1e-9)
	assert.Zero(t, bark.Makes(design.Default(), nil).Largest)
}

func TestShortByALength(t *testing.T) {
	l, c := cover(t, sheets([2]float64{60, 150}))
	require.Len(t, c.Short, 1)
	assert.InDelta(t, l.FlatLength-150*inch, c.Short[0].Length(), 1e-9)
}

// Sheets and strips overlap by the lap, nothing is laid twice over, no sheet
// gives more bark than it has, and what is laid or named as short is the boat.
func TestCoverKeepsItsBooks(t *testing.T) {
	for _, list := range [][]bark.Sheet{
		sheets([2]float64{40, 120}, [2]float64{40, 120}),
		sheets([2]float64{40, 120}, [2]float64{40, 120}, [2]float64{20, 120}, [2]float64{30, 60}),
		sheets([2]float64{48, 60}, [2]float64{36, 100}, [2]float64{40, 60}, [2]float64{30, 60}),
		sheets([2]float64{24, 200}, [2]float64{24, 200}),
		sheets([2]float64{60, 90}, [2]float64{60, 90}, [2]float64{60, 90}),
	} {
		l, c := cover(t, list)
		lap := design.Default().SeamLap
		taken := make([]float64, len(list))
		for i, s := range c.Bed {
			taken[s.Sheet] += s.Width * (s.Bow - s.Aft)
			if i > 0 {
				assert.InDelta(t, lap, s.Bow-c.Bed[i-1].Aft, 1e-9, "lapped")
			}
		}
		assert.Len(t, c.Joints, len(c.Bed)-1)
		assert.InDelta(t, l.FlatLength/2, c.Bed[0].Bow, 1e-9)
		for _, strip := range append(append([]bark.Laid(nil), c.Port...), c.Star...) {
			taken[strip.Sheet] += strip.Width * (strip.Bow - strip.Aft)
		}
		for i, s := range list {
			assert.LessOrEqual(t, taken[i], s.Width*s.Length*(1+1e-9), "sheet %d", i)
		}
		for _, side := range [][]bark.Laid{c.Port, c.Star} {
			for i, a := range side {
				for _, b := range side[:i] {
					assert.LessOrEqual(t, min(a.Bow, b.Bow)-max(a.Aft, b.Aft), lap+1e-9)
				}
			}
		}
	}
}

// Wider or more sheets never make a smaller boat, narrower ones never a larger; the
// boat named is covered and one a little larger is not.
func TestLargestBoat(t *testing.T) {
	d := design.Default()
	list := sheets([2]float64{55, 210})
	o := bark.Makes(d, list)
	assert.True(t, o.Coverage.Covers())
	assert.InDelta(t, o.Largest*d.Length, o.Length, 1e-9)
	at := func(k float64) bool {
		h := hull.New(bark.Scaled(d, k))
		return bark.Cover(h, bark.Plan(h), list).Covers()
	}
	assert.True(t, at(o.Largest))
	assert.False(t, at(o.Largest+0.002))
	less := bark.Makes(d, bark.Narrower(list, bark.NarrowerBy))
	assert.Less(t, less.Length, o.Length)
	assert.LessOrEqual(t, o.Length, bark.Makes(d, append(list, sheets([2]float64{30, 210})...)).Length)
}
