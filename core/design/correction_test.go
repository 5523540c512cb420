package design_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/shape"
	"barkwright/core/units"
)

func corrected(list ...shape.Correction) design.Design {
	d := design.Default()
	for _, c := range list {
		d.Corrected.Plan, _ = d.Corrected.Plan.Add(c)
		d.Corrected.Sheer, _ = d.Corrected.Sheer.Add(c)
	}
	// The heel follows the headboard's station, and that the plan and the sheer.
	return design.Follow(d)
}

// A line of text brings corrections back, and one that is damaged is refused.
func TestCorrectionsInALine(t *testing.T) {
	d := corrected(shape.Correction{At: 0.41, To: 0.78, By: 0.0127}, shape.Correction{At: 0, To: 0.41, By: -0.003})
	line, err := design.Line(d)
	require.NoError(t, err)
	assert.Contains(t, line, "_Qp0.41~0~0.78~12.7!0~0~0.41~-3_Qs0.41")
	back, _, err := design.ReadLine(line)
	require.NoError(t, err)
	assert.Equal(t, d, back)
	for _, part := range []string{"Qp1~2~3", "Qs", "Qg1~2~3~x", "Qp0~0~1~1!", "QpNaN~0~1~1"} {
		_, _, err := design.ReadLine("barkwright1_" + part)
		assert.Error(t, err, part)
	}
}

// The relations of this project: places inside the gunwales in their order, at most
// three inches, and gunwales that do not close.
func TestCorrectionFaults(t *testing.T) {
	assert.Empty(t, design.Validate(corrected(shape.Correction{At: 0.41, To: 0.78, By: 0.0127})))
	many := design.Default()
	many.Corrected.Girth.Count = shape.MostCorrections + 1
	for says, d := range map[string]design.Design{
		"not inside":                   corrected(shape.Correction{At: 0.5, From: 0.6, To: 0.7}),
		"is not inside":                corrected(shape.Correction{At: math.NaN(), To: 1}),
		"plan is not inside":           corrected(shape.Correction{At: 1, To: 1}),
		`more than 3"`:                 corrected(shape.Correction{At: 0.5, To: 1, By: 4 * units.Inch}),
		"more than":                    corrected(shape.Correction{At: 0.5, To: 1, By: math.NaN()}),
		"close 7' 0 1/2\" from amidsh": corrected(shape.Correction{At: 0.9713, From: 0.9, To: 1, By: -3 * units.Inch}),
		"holds 9 corrections; 8":       many,
	} {
		faults := design.Validate(d)
		if assert.Len(t, faults, 1, says) {
			assert.Equal(t, design.CorrectionsKey, faults[0].Key)
			assert.Contains(t, faults[0].Message(units.Imperial16), says)
		}
	}
}
