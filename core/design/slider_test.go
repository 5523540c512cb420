package design_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
)

// Cargo is carried between the gunwales' ends, and the fault says how far out fits.
func TestCargoStaysInTheBoat(t *testing.T) {
	p, _ := design.Lookup("cargoPosition")
	for _, inches := range []float64{-150, 150} {
		faults := design.Validate(p.Set(design.Default(), inches*units.Inch))
		if assert.Len(t, faults, 1) {
			assert.Equal(t, "cargoPosition", faults[0].Key)
			assert.Contains(t, faults[0].Message(units.Imperial16), "7' 3\"")
		}
	}
	assert.Empty(t, design.Validate(p.Set(design.Default(), 80*units.Inch)))
}
