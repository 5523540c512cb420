package geom_test

import (
	"math/big"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
	"barkwright/core/units"
)

// Against whole numbers divided by whole numbers, which is exact: every length of whole inches up to 40 ft over every
// spacing up to 4 ft, both in metres.
func TestWholeCountsAreThoseOfWholeNumbers(t *testing.T) {
	rat := new(big.Rat)
	for spacing := int64(1); spacing <= 48; spacing++ {
		for length := int64(0); length <= 480; length++ {
			full := length / spacing
			begun := full
			if !rat.SetFrac64(length, spacing).IsInt() {
				begun++
			}
			v := float64(length) * units.Inch / (float64(spacing) * units.Inch)
			require.Equal(t, float64(begun), geom.Ceil(v), "%d over %d", length, spacing)
			require.Equal(t, float64(full), geom.Floor(v), "%d over %d", length, spacing)
		}
	}
	assert.Equal(t, 4.0, geom.Ceil(3+1e-6), "what is really longer counts")
	assert.Equal(t, 2.0, geom.Floor(3-1e-6), "what is really shorter does not")
	assert.Equal(t, -2.0, geom.Ceil(-2.5))
}
