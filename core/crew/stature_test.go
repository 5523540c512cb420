package crew_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/crew"
	"barkwright/core/design"
)

// Heights of the segment model (de Leva 1996, fractions from memory; stature 1.741
// m), printed to 0.01 m.
func TestCentreHeight(t *testing.T) {
	for _, c := range []struct {
		posture      design.Posture
		seat, height float64
	}{
		{design.SittingOnBottom, 0, 0.29}, {design.Kneeling, 0, 0.37},
		{design.Kneeling, 0.20, 0.44}, {design.Kneeling, 0.25, 0.47}, {design.Kneeling, 0.30, 0.51},
		{design.SittingOnSeat, 0.20, 0.48}, {design.SittingOnSeat, 0.25, 0.53}, {design.SittingOnSeat, 0.30, 0.57},
	} {
		assert.InDelta(t, c.height, crew.CentreHeight(c.posture, c.seat, design.ModelStature), 1e-12)
	}
	// The USAF sitting value, 0.24 to 0.25 m over the seat (from memory), is within
	// the stated spread.
	assert.InDelta(t, 0.25+0.245, crew.CentreHeight(design.SittingOnSeat, 0.25, design.ModelStature), crew.PostureSpread)
	// A taller paddler on a seat as much higher is the model enlarged.
	assert.InDelta(t, 1.1*0.53, crew.CentreHeight(design.SittingOnSeat, 1.1*0.25, 1.1*design.ModelStature), 1e-12)
	assert.Panics(t, func() { crew.CentreHeight(design.Kneeling, 0, 0) })
	assert.Panics(t, func() { crew.CentreHeight(design.Posture(9), 0, 1.7) })
	assert.Panics(t, func() { crew.CentreHeight(design.Kneeling, -0.1, 1.7) })
}

// 185 lb printed in kilograms.
func TestPaddlerMass(t *testing.T) {
	assert.InDelta(t, 83.914588, design.AverageMass, 5e-7)
}
