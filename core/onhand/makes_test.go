package onhand_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/onhand"
	"barkwright/core/units"
)

const inch = units.Inch

// Longer, wider or more sheets make no smaller boat here; the boat named is covered and
// one a little larger is not.
func TestLargestBoat(t *testing.T) {
	d := design.Default()
	list := []bark.Sheet{{Width: 57 * inch, Length: 210 * inch}}
	o := onhand.Makes(d, list, nil)
	assert.InDelta(t, o.Largest*d.Length, o.Length, 1e-9)
	at := func(k float64) bool { return bark.CoversFlat(hull.New(d.Scaled(k)), list, nil) }
	assert.True(t, at(o.Largest))
	assert.False(t, at(o.Largest+0.002))
	less := onhand.Makes(d, onhand.Narrower(list, onhand.NarrowerBy), nil)
	assert.Less(t, less.Length, o.Length)
	assert.LessOrEqual(t, o.Length, onhand.Makes(d, append(list, bark.Sheet{Width: 30 * inch, Length: 210 * inch}), nil).Length)
}

func TestNoSheetsMakeNoBoat(t *testing.T) {
	assert.Zero(t, onhand.Makes(design.Default(), nil, nil))
}

// The boat that is named can be cut from the sheets once its bark is laid flat: strips of side panels are then
// broader and longer than the plain lengths make them. A boat built on its gunwales, whose panels lie in a bow.
func TestLargestBoatIsCut(t *testing.T) {
	d := check.With(t, "length", 200*inch, "overhang", 13*inch, "beam", 27.5*inch, "depth", 10.625*inch,
		"gunwaleEndHeight", 16.5*inch, "endHeight", 18.4*inch, "headSetback", 0.0)
	d.BuiltOn = design.OnGunwales
	d = design.Follow(d)
	moved := 0
	for _, width := range []float64{36, 38, 40, 42} {
		list := []bark.Sheet{{Width: width * inch, Length: 120 * inch}, {Width: width * inch, Length: 120 * inch}}
		o := onhand.Makes(d, list, nil)
		h := hull.New(d.Scaled(o.Largest))
		l := bark.PlanWith(h, list)
		h.Design.OnHand = h.Design.OnHand.Put(0, list[0]).Put(1, list[1])
		f := bark.Flatten(h, l, bark.ForFigures, nil, nil)
		require.Equal(t, geom.Converged, f.State)
		cut := l.OnFlat(h, f)
		assert.NotEqual(t, bark.CannotBeBuilt, cut.Verdict(), "%v in wide, %.1f in long", width, o.Length/inch)
		if !bark.Covers(hull.New(d.Scaled(o.Largest+0.002)), list) {
			continue
		}
		moved++
	}
	assert.Positive(t, moved, "or the plain lengths tell as well")
}
