package frame_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// The gunwale's lean from upright, against the last thousandths of the section drawn
// as points: the side is straight there or nearly. Depths and beams at which the bend
// takes the whole side are among them. Tolerance: what a bend of 2 in radius turns in
// the last two points of 4000 along 30 in.
func TestThwartFlareIsThatOfTheSide(t *testing.T) {
	const points, tolerance = 4000, 0.005
	for depth := 7.0; depth <= 18; depth += 0.5 {
		for beam := 24.0; beam <= 60; beam += 4 {
			h := hull.New(check.With(t, "depth", depth*inch, "beam", beam*inch))
			for i, thwart := range frame.Build(h).Thwarts {
				drawn := h.Column(h.ColumnAtEdge(thwart.X)).Section.Sample(points)
				last := drawn[points].Sub(drawn[points-1])
				assert.InDelta(t, math.Atan2(last.X, last.Y), thwart.Flare, tolerance, "depth %g beam %g thwart %d", depth, beam, i)
			}
		}
	}
}
