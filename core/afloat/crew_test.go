package afloat_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/afloat"
)

// Heights of the segment model (de Leva 1996, fractions from memory; stature 1.741
// m), printed to 0.01 m.
func TestCentreHeight(t *testing.T) {
	for _, c := range []struct {
		posture      afloat.Posture
		seat, height float64
	}{
		{afloat.SittingOnBottom, 0, 0.29}, {afloat.Kneeling, 0, 0.37},
		{afloat.Kneeling, 0.20, 0.44}, {afloat.Kneeling, 0.25, 0.47}, {afloat.Kneeling, 0.30, 0.51},
		{afloat.SittingOnSeat, 0.20, 0.48}, {afloat.SittingOnSeat, 0.25, 0.53}, {afloat.SittingOnSeat, 0.30, 0.57},
	} {
		assert.InDelta(t, c.height, afloat.CentreHeight(c.posture, c.seat), 1e-12)
	}
	// The USAF sitting value, 0.24 to 0.25 m over the seat (from memory), is within
	// the stated spread.
	assert.InDelta(t, 0.25+0.245, afloat.CentreHeight(afloat.SittingOnSeat, 0.25), afloat.PostureSpread)
	assert.Panics(t, func() { afloat.CentreHeight(afloat.Posture(9), 0) })
	assert.Panics(t, func() { afloat.CentreHeight(afloat.Kneeling, -0.1) })
}

// 185 lb printed in kilograms.
func TestPaddlerMass(t *testing.T) {
	assert.InDelta(t, 83.914588, afloat.PaddlerMass, 5e-7)
}
