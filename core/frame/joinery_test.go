package frame_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/frame"
	"barkwright/core/internal/check"
)

// The published example's own timber gives its own joints: inwales 1 1/2 in square to
// 3/4 by 1 to 1 1/4, almost 1/2 in of bevel, a 2 in cap to 1 (Adney and Chapelle 1964,
// pp. 38, 52).
func TestJoineryOfTheExample(t *testing.T) {
	j := frame.NewJoinery(check.With(t, "inwaleThickness", 1.5*inch, "inwaleDepth", 1.5*inch, "capWidth", 2*inch))
	assert.InDelta(t, 0.5, j.Bevel/inch, 1e-9)
	assert.InDelta(t, 0.75, j.EndThickness/inch, 1e-9)
	assert.GreaterOrEqual(t, j.EndDepth, 1*inch)
	assert.LessOrEqual(t, j.EndDepth, 1.25*inch)
	assert.InDelta(t, 1, j.CapEnd/inch, 1e-9)
}
