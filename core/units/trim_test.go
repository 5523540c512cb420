package units_test

import (
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
