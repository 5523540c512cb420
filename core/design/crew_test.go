package design_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// Unless moved the crew sit evenly between the end thwarts, weigh what each is said
// to weigh to the last bit, and follow when the boat or their number changes.
func TestCrewFollows(t *testing.T) {
	const in, lb = units.Inch, units.Pound
	d := check.With(t, "paddlers", 3.0, "paddlerMass", 187.3*lb, "seatHeight", 0.1)
	half := 0.9 * 0.78 * 87
	assert.InDelta(t, half, d.Aboard[0].X/in, 0.125, "to a quarter of an inch")
	assert.Zero(t, d.Aboard[1].X)
	assert.Equal(t, -d.Aboard[0].X, d.Aboard[2].X)
	assert.Equal(t, design.Paddler{Mass: 187.3 * lb, SeatHeight: 0.1}, d.Aboard[13], "ashore, but of the crew")
	d = set(t, d, "paddler3Place", -20*in)
	d = set(t, d, "paddler3Mass", 140*lb)
	d = set(t, d, "paddlers", 2.0)
	d = set(t, set(t, d, "paddlers", 3.0), "length", 200*in)
	assert.InDelta(t, -20, d.Aboard[2].X/in, 1e-12, "moved ones stay")
	assert.InDelta(t, 140, d.Aboard[2].Mass/lb, 1e-12)
	assert.InDelta(t, 0.9*0.78*91, d.Aboard[0].X/in, 0.125, "to a quarter of an inch")
	assert.Zero(t, check.With(t, "paddlers", 1.0).Aboard[0].X, "one alone sits amidships")
}
