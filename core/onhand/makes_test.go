package onhand_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/onhand"
	"barkwright/core/units"
)

const inch = units.Inch

// Longer, wider or more sheets make no smaller boat here; the boat named is covered and
// one a little larger is not.
func TestLargestBoat(t *testing.T) {
	d := design.Default()
	list := []bark.Sheet{{Width: 57 * inch, Length: 210 * inch}}
	o := onhand.Makes(d, list)
	assert.InDelta(t, o.Largest*d.Length, o.Length, 1e-9)
	at := func(k float64) bool { return bark.Covers(hull.New(d.Scaled(k)), list) }
	assert.True(t, at(o.Largest))
	assert.False(t, at(o.Largest+0.002))
	less := onhand.Makes(d, onhand.Narrower(list, onhand.NarrowerBy))
	assert.Less(t, less.Length, o.Length)
	assert.LessOrEqual(t, o.Length, onhand.Makes(d, append(list, bark.Sheet{Width: 30 * inch, Length: 210 * inch})).Length)
}

func TestNoSheetsMakeNoBoat(t *testing.T) {
	assert.Zero(t, onhand.Makes(design.Default(), nil))
}
