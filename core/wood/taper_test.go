package wood_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
	"barkwright/core/wood"
)

// The diameter at breast height over a sheet's at its upper end and at its middle,
// for sheets cut from 3 ft up: this project's own arithmetic on the unrounded equations
// of Li and others (2012), so a check on the reading of the table and not on the trees.
// Both tables are rounded to a hundredth, which is 0.006 more at the least ratio.
func TestBirchTaper(t *testing.T) {
	for _, row := range []struct{ feet, end, middle float64 }{{10, 1.17, 1.08}, {12, 1.20, 1.10}, {14, 1.23, 1.12},
		{16, 1.26, 1.14}} {
		end, _, _ := wood.BirchTaper((3 + row.feet) * units.Foot)
		middle, _, _ := wood.BirchTaper((3 + row.feet/2) * units.Foot)
		assert.InDelta(t, row.end, 1/end, 0.005+0.006, "%v ft", row.feet)
		assert.InDelta(t, row.middle, 1/middle, 0.005+0.006, "%v ft", row.feet)
	}
}

// Form class 66 to 86 at 17.3 ft, inside the bark, of trees whose bark leaves 0.96.
func TestBirchTaperRange(t *testing.T) {
	_, low, high := wood.BirchTaper(17.3 * units.Foot)
	assert.InDelta(t, 0.66, 0.96*low, 1e-9)
	assert.InDelta(t, 0.86, 0.96*high, 1e-9)
	last := 2.0
	for h := 0.5; h < 12; h += 0.1 {
		typical, low, high := wood.BirchTaper(h)
		assert.LessOrEqual(t, low, typical)
		assert.LessOrEqual(t, typical, high)
		assert.LessOrEqual(t, typical, last)
		last = typical
	}
}
