package units_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
)

// By hand.
func TestTrimmed(t *testing.T) {
	for _, c := range []struct {
		x      float64
		places int
		want   string
	}{
		{1.5, 3, "1.5"}, {2, 2, "2"}, {100, 0, "100"}, {100, 2, "100"}, {-0.004, 2, "0"}, {-0.4, 0, "0"},
		{-0.006, 2, "-0.01"}, {0.1 + 0.2, 6, "0.3"},
	} {
		assert.Equal(t, c.want, units.Trimmed(c.x, c.places), "%v to %d", c.x, c.places)
	}
}

// Feet, inches and eighths of an inch, carried through: 11 15/16 in is a foot.
func TestEighths(t *testing.T) {
	for inches, want := range map[float64]string{0: "0-0-0", 18.375: "1-6-3", 11.9375: "1-0-0", 192: "16-0-0", -2.25: "−0-2-2"} {
		assert.Equal(t, want, units.Eighths(inches*units.Inch))
	}
	assert.Equal(t, units.NotWorkedOut, units.Eighths(math.NaN()))
}
