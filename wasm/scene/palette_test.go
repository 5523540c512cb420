package scene_test

import (
	"testing"

	"barkwright/wasm/scene"

	"github.com/stretchr/testify/assert"
)

// WCAG 2.2: black on white is 21 to 1 by definition; 1.4.3 asks 4.5:1 of
// lettering and 1.4.11 asks 3:1 of lines needed to understand a drawing.
func TestContrast(t *testing.T) {
	assert.InDelta(t, 21, scene.Contrast(scene.Colour{}, scene.Colour{R: 255, G: 255, B: 255}), 1e-9)

	filled := []scene.Role{scene.Paper, scene.Bark, scene.Inside, scene.InsideHalf, scene.InsideShade, scene.Cedar, scene.Ground}
	lines := []scene.Role{scene.Ink, scene.Seam, scene.Root, scene.Frame, scene.Water, scene.Warn, scene.Mark, scene.Pinned}
	for name, palette := range map[string]scene.Palette{"screen": scene.Screen(), "print": scene.Print()} {
		for _, line := range lines {
			for _, ground := range filled {
				assert.GreaterOrEqual(t, scene.Contrast(palette.Of(line), palette.Of(ground)), 3.0, "%s: %s on %s", name, line, ground)
			}
			assert.GreaterOrEqual(t, scene.Contrast(palette.Of(line), palette.Of(scene.Paper)), 4.5, "%s: lettering in %s", name, line)
		}
		assert.GreaterOrEqual(t, scene.Contrast(palette.Of(scene.Faint), palette.Of(scene.Paper)), 4.5, "%s: faint on paper", name)
	}
	assert.PanicsWithValue(t, "scene: no colour for role lavender", func() { scene.Screen().Of("lavender") })
	assert.Equal(t, "#241c15", scene.Screen().Of(scene.Ink).Hex())
}
