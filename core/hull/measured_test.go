package hull_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// measuredM1 is the boat of Adney and Chapelle 1964, fig. 31, whose bark bulges
// beyond its gunwales, with the default's timbers.
func measuredM1(t testing.TB) design.Design { return measured(t, "M1") }

// measured is a measured boat whose bark bulges, with what is not lettered as the default
// has it.
func measured(t testing.TB, id string) design.Design {
	for _, row := range check.Published(t, "measured-canoes") {
		if row["id"] != id {
			continue
		}
		overall, gunwales := row.Float(t, "length_overall_in"), row.Float(t, "length_over_gunwales_in")
		return check.With(t,
			"length", overall*inch, "overhang", (overall-gunwales)/2*inch,
			"beam", row.Float(t, "beam_inside_gunwales_in")*inch,
			"depth", row.Float(t, "depth_amidships_in")*inch,
			"greatestBeam", row.Float(t, "beam_in")*inch)
	}
	require.Fail(t, "no such boat")
	return design.Design{}
}

// A rib amidships bends to 9 to 15 times its thickness: measured off fig. 31 of
// Adney and Chapelle 1964, +-20 %.
func TestBulgingMeasuredBoat(t *testing.T) {
	d := measuredM1(t)
	h := hull.New(d)
	assert.Empty(t, faultsOf(d))
	assert.True(t, h.TurnReached)
	assert.InDelta(t, d.GreatestBeam/2, h.Section(0).Breadth(), 1e-9)
	ratio := (tightest(h.Section(0)) - d.BarkThickness - d.SheathingThickness - d.RibThickness/2) / d.RibThickness
	t.Logf("R/t amidships %.2f", ratio)
	assert.GreaterOrEqual(t, ratio, 9.0)
	assert.LessOrEqual(t, ratio, 15.0)
}
