package core_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/design"
	"barkwright/core/units"
)

// The water pushed aside is within 0.1 % of that of a body cut eight times as fine both
// ways: as loaded, and at the loads that leave the marked freeboards. GM is within a
// tenth of a millimetre and a thousandth, and the boat alone, whose water is a twentieth
// of that, lies within a quarter of a millimetre.
func TestDisplacementIsConverged(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		a := c.Afloat
		fine := afloat.NewBody(c.Hull.Stations(8*61, 8*32))
		at := fine.Float(a.Load, a.Water)
		assert.InEpsilon(t, fine.Hydrostatics(at.Upright).Volume, a.Body.Hydrostatics(at.Upright).Volume, 1e-3, d.Name)
		assert.InDelta(t, at.GM, a.Floated.GM, 1e-4+1e-3*max(at.GM, 0), d.Name)
		for i, f := range afloat.MarkedFreeboards() {
			assert.InEpsilon(t, fine.CarriesLevel(a.Boat, a.Water, f).Total, a.Carries[i].Total, 1e-3, "%s %g", d.Name, f)
		}
		light, coarse := fine.Float(a.Boat, a.Water).Upright, a.Body.Float(a.Boat, a.Water).Upright
		assert.InDelta(t, light.Draught, coarse.Draught, 0.25*units.Millimetre, d.Name)
	}
}
