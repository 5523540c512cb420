package sheet_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/sheet"
	"barkwright/core/units"
)

// By hand: a bar of 150 mm that measures 146.1 is at 97.4 %; of 4 m that leaves
// 104 mm. 97.4 and 94.1 % were measured of browsers that sent one paper's page to
// the other.
func TestScaleByHand(t *testing.T) {
	for _, c := range []struct {
		bar, measured float64
		cause         sheet.ScaleCause
	}{
		{150, 150, sheet.True}, {150, 150.5, sheet.True}, {150, 149.5, sheet.True}, {150, 149.4, sheet.SomeScaling},
		{150, 146.1, sheet.LetterOnA4}, {152.4, 148.4, sheet.LetterOnA4},
		{150, 141, sheet.A4OnLetter}, {150, 141.2, sheet.A4OnLetter},
		{150, 139.5, sheet.FitToPage}, {150, 120, sheet.FitToPage},
		{150, 154, sheet.Enlarged}, {150, 152.4, sheet.Enlarged},
		{150, 75, sheet.NotTheBar}, {150, 0, sheet.NotTheBar}, {150, 301, sheet.NotTheBar}, {150, math.NaN(), sheet.NotTheBar},
	} {
		s := sheet.CheckScale(c.bar/1000, c.measured/1000, 4)
		assert.Equal(t, c.cause, s.Cause, "%v of %v", c.measured, c.bar)
		if c.cause != sheet.NotTheBar {
			assert.InDelta(t, c.measured/c.bar, s.Ratio, 1e-12)
			assert.InDelta(t, 4*(c.measured/c.bar-1), s.Off, 1e-12)
		} else {
			assert.Zero(t, s.Ratio)
		}
	}
	s := sheet.CheckScale(0.150, 0.1461, 4)
	assert.Equal(t, "Printed at 97.4 %: the story stick, 4000 mm, would come out 104 mm short. It is likely a Letter page fitted to A4 paper: choose the paper that is in the printer, scale 100 %.",
		s.Text("the story stick", 4, units.Metric))
	assert.Equal(t, "Printed at 100.0 %: true to size, as far as a tape can tell. Print the rest.", sheet.CheckScale(0.15, 0.15, 4).Text("", 4, units.Metric))
	assert.Contains(t, sheet.CheckScale(0.15, 0.154, 4).Text("the stick", 4, units.Metric), "107 mm long")
	assert.Equal(t, "too far off to be this bar: measure the bar that is named here.", sheet.CheckScale(0.15, 0.01, 4).Text("", 4, units.Metric))
}
