package design_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/units"
)

func TestSheetsOnHandKeepTheirOrder(t *testing.T) {
	a, b, c := design.Sheet{Width: 1, Length: 3}, design.Sheet{Width: 0.9, Length: 2}, design.Sheet{Width: 0.5, Length: 4}
	o := design.OnHand{}.Put(0, a).Put(1, b).Put(2, c)
	assert.Equal(t, []design.Sheet{a, b, c}, o.List())
	assert.Equal(t, []design.Sheet{a, c}, o.Without(1).List())
	assert.Equal(t, design.OnHand{}.Put(0, a).Put(1, c), o.Without(1), "equal lists are ==")
	assert.Equal(t, o, o.Put(5, a), "no gap in the list")
	assert.Equal(t, o, o.Without(3))
	for range 20 {
		o = o.Put(o.Count, a)
	}
	assert.Equal(t, design.MostSheets, o.Count)
	assert.Zero(t, o.Without(0).Sheets[design.MostSheets-1], "a full list leaves nothing behind either")
}

func TestSheetOutOfRangeIsNamed(t *testing.T) {
	d := design.Default()
	d.OnHand = d.OnHand.Put(0, design.Sheet{Width: 40 * units.Inch, Length: 120 * units.Inch}).
		Put(1, design.Sheet{Width: 2 * units.Inch, Length: math.NaN()})
	faults := design.Validate(d)
	require.Len(t, faults, 2)
	assert.Equal(t, design.SheetWidthKey(1), faults[0].Key)
	assert.Equal(t, `Sheet 2: a width from 4" to 10' 0" is taken.`, faults[0].Message(units.Imperial16))
	assert.Equal(t, design.SheetLengthKey(1), faults[1].Key)
}

// A sheet typed in one unit may miss a bound in another by its last bits.
func TestSheetOnABoundIsTaken(t *testing.T) {
	o := design.OnHand{}.Put(0, design.Sheet{Width: design.LeastSheetWidth - 1e-12,
		Length: design.MostSheetLength + 1e-12})
	assert.Equal(t, design.Sheet{Width: design.LeastSheetWidth, Length: design.MostSheetLength}, o.Sheets[0])
	d := design.Default()
	d.OnHand = o
	assert.Empty(t, design.Validate(d))
}
