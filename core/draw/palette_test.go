package draw_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
)

// WCAG 2.2: black on white is 21 to 1 by definition; 1.4.3 asks 4.5:1 of
// lettering and 1.4.11 asks 3:1 of lines needed to understand a drawing.
func TestContrast(t *testing.T) {
	assert.InDelta(t, 21, contrast(draw.Colour{}, draw.Colour{R: 255, G: 255, B: 255}), 1e-9)

	filled := []draw.Role{draw.Paper, draw.Bark, draw.Inside, draw.InsideHalf, draw.InsideShade, draw.Cedar, draw.Ground}
	lines := []draw.Role{draw.Ink, draw.Seam, draw.Root, draw.Frame, draw.Water, draw.Warn, draw.Mark, draw.Pinned}
	for name, palette := range map[string]draw.Palette{"screen": draw.Screen(), "print": draw.Print()} {
		for _, line := range lines {
			for _, ground := range filled {
				assert.GreaterOrEqual(t, contrast(palette.Of(line), palette.Of(ground)), 3.0, "%s: %s on %s", name, line, ground)
			}
			assert.GreaterOrEqual(t, contrast(palette.Of(line), palette.Of(draw.Paper)), 4.5, "%s: lettering in %s", name, line)
		}
		assert.GreaterOrEqual(t, contrast(palette.Of(draw.Faint), palette.Of(draw.Paper)), 4.5, "%s: faint on paper", name)
	}
	sun := draw.Sun()
	for _, line := range append(lines, draw.Faint) {
		for _, ground := range filled {
			assert.GreaterOrEqual(t, contrast(sun.Of(line), sun.Of(ground)), 7.0, "sun: %s on %s", line, ground)
		}
	}
	assert.Len(t, sun, len(draw.Screen()))
	assert.PanicsWithValue(t, "draw: no colour for role lavender", func() { draw.Screen().Of("lavender") })
	assert.Equal(t, "#241c15", draw.Screen().Of(draw.Ink).Hex())
}

// luminance is the relative luminance of WCAG 2.2, 0 for black to 1 for white.
func luminance(c draw.Colour) float64 {
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// contrast is the contrast ratio of WCAG 2.2 between two colours, 1 to 21.
func contrast(a, b draw.Colour) float64 {
	high, low := luminance(a), luminance(b)
	if high < low {
		high, low = low, high
	}
	return (high + 0.05) / (low + 0.05)
}
