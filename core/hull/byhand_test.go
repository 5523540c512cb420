package hull_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// The choices of form, each worked by hand on one boat in inches: a weight, a reach or a
// power that is a little off moves every number of the boat and breaks no law.
func TestFormByHand(t *testing.T) {
	h := hull.New(check.With(t, "inwaleThickness", 1*inch, "barkThickness", 0.125*inch, "stemWidth", 0.75*inch,
		"heelLength", 20*inch, "endFull", 0.6, "rocker", 0.0))

	// Half-way along the gunwale the bark stands 1.125 in outside it amidships, less a
	// 64th part of the way to the 0.5 in at its end.
	x := h.GunwaleX / 2
	assert.InDelta(t, (0.5+0.625*63/64)*inch, h.SkinHalfBreadth(x)-h.HalfBeam(x), 1e-9)

	// The end leaves the heel level, and its handle reaches (0.40 + 0.35 x 0.6) 20 in.
	handle := h.End.Bezier[1].Sub(h.End.Bezier[0])
	assert.InDelta(t, 12.2*inch, handle.X, 1e-9)
	assert.InDelta(t, 0, handle.Y, 1e-9)
}
