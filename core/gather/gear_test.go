package gather_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// Gear is counted from the bed by hand: two posts under the middle thwart, four under
// each of the others, two at the gunwales' ends; as many stakes as the bed has; inside
// stakes along the sides only, none at the frame's ends and beyond (Adney and Chapelle
// 1964, pp. 40-46).
func TestGearIsThatOfTheBed(t *testing.T) {
	h := hull.New(design.Default())
	f := frame.Build(h)
	posts, stakes, inside, cross := 0, 0, 0, 0
	for _, g := range gather.Gather(h, f, bark.Plan(h)).Gear {
		assert.Positive(t, g.Count, g.Name)
		assert.LessOrEqual(t, g.Low, g.High, g.Name)
		assert.NotEmpty(t, g.From, g.Name)
		switch {
		case strings.HasPrefix(g.Name, "posts"):
			posts += g.Count
		case g.Name == "stakes":
			stakes = g.Count
		case strings.HasPrefix(g.Name, "inside stakes"):
			inside = g.Count
		case strings.HasPrefix(g.Name, "crosspieces"):
			cross = g.Count
		}
	}
	assert.Equal(t, 2+4+4+2, posts)
	assert.Equal(t, f.Bed.StakeCount, stakes)
	// Three pairs a quarter stand past the sides: the frame's end and two beyond it.
	assert.Equal(t, f.Bed.StakeCount-4*3, inside)
	assert.Equal(t, 2*len(f.Bed.Crosspieces)-1, cross)
	// The example's lengths are enough for a boat of its depth; in a deep one they would end
	// below the edge that they hold.
	for _, d := range []design.Design{design.Default(), design.Starting()[2], check.With(t, "depth", 30*inch,
		"gunwaleEndHeight", 46*inch, "endHeight", 58*inch, "beam", 60*inch, "length", 420*inch)} {
		h := hull.New(d)
		for _, g := range list(d).Gear {
			switch {
			case g.Name == "stakes":
				assert.GreaterOrEqual(t, g.Low, d.Depth+12*inch)
				assert.GreaterOrEqual(t, g.High, d.EndHeight+12*inch)
				assert.GreaterOrEqual(t, g.Low, 30*inch)
			case strings.HasPrefix(g.Name, "inside stakes"):
				assert.Greater(t, g.Low, d.Depth)
				assert.Greater(t, g.High, h.Sheer(h.FrameEnd()))
			}
		}
	}
	for _, g := range list(check.With(t, "endBlocking", 0.0)).Gear {
		assert.NotContains(t, g.Name, "blocks")
	}
}
