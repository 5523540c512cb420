package bark_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/bark"
	"barkwright/core/design"
)

// Over-and-over stitches have a hole on either side of the seam each. Running stitches
// share theirs, so a seam has one more than stitches. Stitches over the edge have one
// each turn.
func TestHolesOfASeam(t *testing.T) {
	l := plan(design.Default())
	for kind, want := range map[bark.Kind]func(bark.Seam) int{
		bark.GoreSeams:  func(s bark.Seam) int { return 2 * s.Stitches },
		bark.PanelSeams: func(s bark.Seam) int { return 2 * s.Stitches },
		bark.JointSeams: func(s bark.Seam) int { return s.Stitches + s.Count },
		bark.EndSeams:   func(s bark.Seam) int { return s.Stitches },
	} {
		assert.Positive(t, l.Seams[kind].Stitches, kind)
		assert.Equal(t, want(l.Seams[kind]), l.Seams[kind].Holes, kind)
	}
}
