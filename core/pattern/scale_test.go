package pattern_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// The bars' ticks stand ten millimetres apart, the long one at a hundred, and an inch apart, 25.4 mm
// (international yard and pound agreement, 1959), each way.
func TestTicksOfTheBars(t *testing.T) {
	p := pattern.Pages(patterns(design.Default())["stem"], head)[0]
	tall := func(b draw.Box) draw.Box { return draw.Box{Left: b.Top, Top: b.Left, Right: b.Bottom, Bottom: b.Right} }
	for _, turned := range []bool{false, true} {
		var bars, ticks []draw.Box
		for _, op := range p.Ops {
			f, ok := op.(draw.Fill)
			if !ok {
				continue
			}
			b := draw.BoxOf(f.Points)
			if turned {
				b = tall(b)
			}
			switch {
			case b.Height() < 1.5 && b.Width() > 140:
				bars = append(bars, b)
			case b.Width() < 0.5 && b.Height() < 1.5:
				ticks = append(ticks, b)
			}
		}
		require.Len(t, bars, 2)
		for _, bar := range bars {
			apart, want := 10.0, 14
			if bar.Width() > 151 {
				apart, want = 25.4, 5
			}
			n := 0
			for _, tick := range ticks {
				if math.Abs(tick.Bottom-bar.Top) > 1e-9 {
					continue
				}
				n++
				at := (tick.Left+tick.Right)/2 - bar.Left
				assert.InDelta(t, apart*float64(n), at, 1e-9)
				assert.Equal(t, apart == 10 && n == 10, tick.Height() > 1, "%v mm along", at)
			}
			assert.Equal(t, want, n)
		}
	}
}

// By hand: a bar of 150 mm that measures 146.1 is at 97.4 %; of 4 m that leaves
// 104 mm. 97.4 and 94.1 % were measured of browsers that sent one paper's page to
// the other.
func TestScaleByHand(t *testing.T) {
	for _, c := range []struct {
		bar, measured float64
		cause         pattern.ScaleCause
	}{
		{150, 150, pattern.True}, {150, 150.5, pattern.True}, {150, 149.5, pattern.True}, {150, 149.4, pattern.SomeScaling},
		{150, 146.1, pattern.LetterOnA4}, {152.4, 148.4, pattern.LetterOnA4},
		{150, 141, pattern.A4OnLetter}, {150, 141.2, pattern.A4OnLetter},
		{150, 139.5, pattern.FitToPage}, {150, 120, pattern.FitToPage},
		{150, 154, pattern.Enlarged}, {150, 152.4, pattern.Enlarged},
		{150, 75, pattern.NotTheBar}, {150, 0, pattern.NotTheBar}, {150, 301, pattern.NotTheBar},
		{150, math.NaN(), pattern.NotTheBar},
	} {
		s := pattern.CheckScale(c.bar/1000, c.measured/1000, 4)
		assert.Equal(t, c.cause, s.Cause, "%v of %v", c.measured, c.bar)
		if c.cause != pattern.NotTheBar {
			assert.InDelta(t, c.measured/c.bar, s.Ratio, 1e-12)
			assert.InDelta(t, 4*(c.measured/c.bar-1), s.Off, 1e-12)
		} else {
			assert.Zero(t, s.Ratio)
		}
	}
	s := pattern.CheckScale(0.150, 0.1461, 4)
	assert.Equal(t, "Printed at 97.4 %: the story stick, 4000 mm, would come out 104 mm short. It is likely a "+
		"Letter page fitted to A4 paper: choose the paper that is in the printer, scale 100 %.",
		s.Text("the story stick", 4, units.Metric))
	assert.Equal(t, "Printed at 100.0 %: true to size, as far as a tape can tell. Print the rest.",
		pattern.CheckScale(0.15, 0.15, 4).Text("", 4, units.Metric))
	assert.Contains(t, pattern.CheckScale(0.15, 0.154, 4).Text("the stick", 4, units.Metric), "107 mm long")
	assert.Equal(t, "too far off to be this bar: measure the bar that is named here.",
		pattern.CheckScale(0.15, 0.01, 4).Text("", 4, units.Metric))
}
