package record

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/units"
)

// A half breadth says where and at what height, in a row's name, its station or both.
func TestReadBreadthAtAHeight(t *testing.T) {
	for text, want := range map[string]Datum{
		"Half breadth 4 in up amidships: 15 3/4":             {Value: 15.75 * inch, At: Place{Height: 4 * inch}},
		"half breadth amidships, 4 in up: 15.75":             {Value: 15.75 * inch, At: Place{Height: 4 * inch}},
		"Half-breadth at a height of 4 in amidships\t15 3/4": {Value: 15.75 * inch, At: Place{Height: 4 * inch}},
		"breadth at 4 in height, 12 in from the middle, 31 1/2": {Value: 15.75 * inch,
			At: Place{Distance: 12 * inch, Height: 4 * inch}},
		"Half breadth; 4 1/2 up, at thwart 1; 15 3/4": {Value: 15.75 * inch, Number: 1,
			At: Place{Height: 4.5 * inch}},
		"Half breadth; 3 in high, 10 in from the end, aft; 9; ±1/8": {Value: 9 * inch, Tolerance: inch / 8,
			At: Place{From: FromEnd, Distance: 10 * inch, Side: Aft, Height: 3 * inch}},
		"Half breadth 100 mm up; 12; 400 mm": {Value: 0.4,
			At: Place{Distance: 12 * inch, Height: 0.1}},
	} {
		_, data, refused := Read(text, 0, units.Imperial16)
		require.Empty(t, refused, text)
		require.Len(t, data, 1, text)
		got := data[0]
		assert.Equal(t, HalfBreadth, got.Kind, text)
		assert.InDelta(t, want.Value, got.Value, 1e-9, text)
		assert.InDelta(t, want.At.Height, got.At.Height, 1e-9, text)
		assert.InDelta(t, want.At.Distance, got.At.Distance, 1e-9, text)
		assert.InDelta(t, want.Tolerance, got.Tolerance, 1e-9, text)
		assert.Equal(t, [2]int{want.Number, int(want.At.From)}, [2]int{got.Number, int(got.At.From)}, text)
		assert.Equal(t, want.At.Side, got.At.Side, text)
	}
	for _, text := range []string{
		"Half breadth; amidships; 15 3/4",         // at no height
		"Half breadth 4 in up; 15 3/4",            // at no place
		"Half breadth; 0 in up, amidships; 15",    // at the base line
		"Half breadth amidships: 15 3/4",          // at no height
		"Half breadth; 4 5 up, amidships; 15 3/4", // 4 or 5
	} {
		_, data, refused := Read(text, 0, units.Imperial16)
		assert.Len(t, refused, 1, text)
		assert.Empty(t, data, text)
	}
	// Names that a height was never of stay what they were.
	_, data, _ := Read("sheer height; 36 in; 14", 0, units.Imperial16)
	require.Len(t, data, 1)
	for _, d := range data {
		assert.Zero(t, d.At.Height)
	}
}

// A row of stations under which half breadths stand at the name's height.
func TestHalfBreadthsAcross(t *testing.T) {
	_, data, refused := Read("Stations;0;12;24\nHalf breadth 4 in up;15;14 1/2;13", 0, units.Imperial16)
	require.Empty(t, refused)
	require.Len(t, data, 3)
	for i, d := range data {
		assert.InDelta(t, 4*inch, d.At.Height, 1e-12)
		assert.InDelta(t, float64(12*i)*inch, d.At.Distance, 1e-12)
	}
}
