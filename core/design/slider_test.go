package design_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
)

// A bare number that would be a boat in feet is offered in feet; anything else is
// taken as it stands.
func TestMeantFeet(t *testing.T) {
	length, _ := design.Lookup("length")
	tuck, _ := design.Lookup("ribTuck")
	for _, c := range []struct {
		param design.Param
		text  string
		s     units.System
		want  string
	}{
		{length, "15", units.Imperial16, "15 ft"},
		{length, " 15.5 ", units.Imperial16, "15.5 ft"},
		{length, "180", units.Imperial16, ""},
		{length, "15 in", units.Imperial16, ""},
		{length, "15", units.Metric, ""},
		{length, "2", units.Imperial16, ""},
		{tuck, "0", units.Imperial16, ""},
	} {
		v, _, err := c.param.Kind.Parse(c.text, c.s)
		assert.NoError(t, err)
		got, ok := design.MeantFeet(c.param, v, c.text, c.s)
		assert.Equal(t, c.want, got, c.text)
		assert.Equal(t, c.want != "", ok)
	}
}

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
