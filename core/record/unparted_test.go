package record

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/units"
)

// A line without a colon, comma or tab is read as with one, where that leaves one reading.
func TestLinesThatNothingParts(t *testing.T) {
	for bare, parted := range map[string]string{
		"beam inside 33":                          "beam inside: 33",
		"Length overall 16 ft 4 in":               "Length overall: 16 ft 4 in",
		"length overall 16' 3 1/2\"":              "length overall: 16' 3 1/2\"",
		"depth 12 1/2":                            "depth: 12 1/2",
		"ribs 44":                                 "ribs: 44",
		"stem-head height 25":                     "stem-head height: 25",
		"first thwart clear 2 ft 1 in":            "first thwart clear: 2 ft 1 in",
		"thwart 2 clear 9 3/4":                    "thwart 2 clear: 9 3/4",
		"clear length at thwart 1 25 1/4":         "clear length at thwart 1: 25 1/4",
		"first thwart from middle 35":             "first thwart from middle: 35",
		"cap top height at thwart 1 13 1/4":       "cap top height at thwart 1: 13 1/4",
		"depth to the cap top 13":                 "depth to the cap top: 13",
		"sheer height amidships 12 1/2":           "sheer height amidships: 12 1/2",
		"headboard from middle 84":                "headboard from middle: 84",
		"beam inside 33 locked":                   "beam inside: 33, locked",
		"beam inside 33 +-1/4 locked":             "beam inside: 33, +-1/4, locked",
		"depth to inwale 317 mm scaled":           "depth to inwale: 317 mm, scaled",
		"half breadth 4 up at thwart 1 12 1/2 in": "half breadth 4 up at thwart 1: 12 1/2 in",
	} {
		_, want, refused := Read("length overall: 16 ft\nthwart 1 from middle: 34\nthwart 2 from middle: 66\n"+parted,
			0, units.Imperial16)
		require.Empty(t, refused, parted)
		_, got, refused := Read("length overall: 16 ft\nthwart 1 from middle: 34\nthwart 2 from middle: 66\n"+bare,
			0, units.Imperial16)
		assert.Empty(t, refused, bare)
		assert.Equal(t, want, got, bare)
	}
	_, _, refused := Read("beam inside", 0, units.Imperial16)
	require.Len(t, refused, 1)
	assert.Contains(t, refused[0].Why, "There is no value beside the name")
}

// Every kind of measurement that needs no place is read by its own name with a value after it.
func TestKindsByTheirNamesAlone(t *testing.T) {
	for _, k := range Kinds() {
		if k.Placed() || k == Bay || k == ThwartPosition {
			continue
		}
		_, data, refused := Read(k.String()+" 20", 0, units.Imperial16)
		require.Empty(t, refused, "%v", k)
		require.Len(t, data, 1)
		assert.Equal(t, k, data[0].Kind)
	}
}
