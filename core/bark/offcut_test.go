package bark

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// A sheet ten inches wider than the boat under it leaves five along either side, and one
// two feet longer than its place two feet off its end; a sheet that does not lie on the
// bed is left whole.
func TestWhatABedLeaves(t *testing.T) {
	h := hull.New(design.Default())
	all := plainColumns(h)
	d := newDemand(h, all, bottomRun(h), 5)
	wide := d.most(d.full, -1, 1)
	l := &laying{d: &d, bed: []Laid{{Sheet: 1, Aft: -1, Bow: 1}},
		sheets: []Sheet{{Width: 0.3, Length: 1.5}, {Width: wide + 10*units.Inch, Length: 2 + 2*units.Foot}}}
	sides, ends, whole := 0, 0, 0
	for _, o := range l.left() {
		switch {
		case o.sheet == 0:
			whole++
			assert.Equal(t, l.sheets[0], Sheet{Width: o.width, Length: o.length})
		case o.from == FromSide:
			sides++
			assert.InDelta(t, 5*units.Inch, o.width, 1e-9)
			assert.InDelta(t, 2, o.length, 1e-9)
		case o.from == FromEnd:
			ends++
			assert.InDelta(t, 2*units.Foot, o.length, 1e-9)
			assert.InDelta(t, wide+10*units.Inch, o.width, 1e-9)
		}
	}
	require.Equal(t, [3]int{2, 1, 1}, [3]int{sides, ends, whole})
}
