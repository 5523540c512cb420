package paint

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
)

// Window and density at which the program was seen to stop on a device whose textures
// have 8192 pixels a side, and the ones at which it did not.
func TestPicturesThatFit(t *testing.T) {
	for _, row := range []struct {
		width, height, density float64
		texture                int
		fits                   bool
	}{
		{7404, 900, 4, 8192, false}, // 29616 pixels broad
		{8000, 900, 1, 8192, true},
		{4400, 900, 2, 8192, false}, // 8800
		{4000, 900, 2, 8192, true},
		{320, 300, 3, 8192, true},
		{900, 4100, 2, 8192, false},
		{8190, 900, 1, 8192, true},
		{8191, 900, 1, 8192, false},
		{8189.5, 900, 1, 8192, true},
		{9000, 900, 1, 16383, false}, // as 8192
		{9000, 900, 1, 16384, true},
		{0, 0, 1, 8192, true},
		{390, 300, 3, 0, false}, // no answer
	} {
		assert.Equal(t, row.fits, fits(draw.Size{Width: row.width, Height: row.height}, row.density, row.texture), "%+v", row)
	}
}
