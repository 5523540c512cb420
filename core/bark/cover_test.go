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
	l, c := cover(t, sheets([2]float64{57, 210}))
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
	list := sheets([2]float64{57, 210})
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

// Sheets of one width leave side panels as the plain layout has them: the same stretches
// fore and aft, as wide, with seams as long. The list's are found on 60 places along the
// half boat, so a stretch's end is out by a part of one of those, 1.6 in, where the bark
// falls short by little: half an inch of width at most, and an inch of seam a panel's end.
func TestPanelsBesideEvenSheets(t *testing.T) {
	for _, width := range []float64{36, 40, 42} {
		d := boat(t, map[string]float64{"sheetWidth": width * inch})
		h := hull.New(d)
		l := bark.Plan(h)
		c := bark.Cover(h, l, sheets([2]float64{width, 400}, [2]float64{width, 400}))
		on := l.OnSheets(h, c)
		assert.InDelta(t, l.Seams[bark.PanelSeams].Length/inch, on.Seams[bark.PanelSeams].Length/inch, 2*float64(2*len(c.Beside)), "%v in", width)
		widest := func(panels []bark.Panel) (most float64) {
			for _, p := range panels {
				most = max(most, p.Width)
			}
			return most
		}
		most := 0.0
		for _, b := range c.Beside {
			most = max(most, b.Width)
		}
		assert.InDelta(t, widest(l.Panels)/inch, most/inch, 0.5, "%v in", width)
	}
}

// Panels follow the sheet that lies there: a wide sheet amidships and narrow ones toward
// the ends take panels beside the narrow ones only, each by what its own sheet lacks; and
// the seams sewn are those.
func TestPanelsFollowTheSheetThatLiesThere(t *testing.T) {
	h := hull.New(design.Default())
	l := bark.Plan(h)
	list := sheets([2]float64{60, 70}, [2]float64{38, 70}, [2]float64{36, 70})
	c := bark.Cover(h, l, list)
	require.Len(t, c.Bed, 3)
	assert.Equal(t, 0, c.Bed[1].Sheet, "the widest amidships")
	joined := map[int]bool{}
	seams := 0.0
	for _, b := range c.Beside {
		assert.NotEqual(t, 0, b.Sheet)
		seams += 2 * b.Seam
		assert.GreaterOrEqual(t, b.Seam, b.To-b.From, "the seam bends round the side")
		for _, s := range []bark.Laid{c.Bed[0], c.Bed[2]} {
			if inner := max(s.Aft, -s.Bow); s.Sheet == b.Sheet && max(b.Aft, -b.Bow) == inner {
				// Where it joins the wide one: what half the girth there, on the bed or
				// finished, lacks, with trim and lap. The nearest place asked may be 1.6 in off, where girths differ by this.
				want := max(h.Section(inner).HalfGirth(), h.HalfGirthOnBed(inner)) + 1.5*inch - s.Width/2 + 0.5*inch
				assert.InDelta(t, want/inch, b.Width/inch, 0.5, "sheet %d", s.Sheet)
				joined[s.Sheet] = true
			}
		}
	}
	assert.Len(t, joined, 2)
	assert.InDelta(t, seams, l.OnSheets(h, c).Seams[bark.PanelSeams].Length, 1e-9)
	wideSheet := bark.Cover(h, l, sheets([2]float64{60, 400}))
	assert.Zero(t, l.OnSheets(h, wideSheet).Seams[bark.PanelSeams].Length, "one wide sheet needs none, whatever width is set")
	require.NotZero(t, l.Seams[bark.PanelSeams].Length)
}
