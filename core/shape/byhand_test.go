package shape_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/shape"
)

// A conic passes its shoulder's share of the way from the middle of its chord to its
// corner: rho, of any book on conics (from memory). Where the side leans out that share
// is the bilge, and at the gunwale's end a half, whatever the bilge.
func TestShoulderIsTheBilge(t *testing.T) {
	for _, row := range []struct{ along, bilge, share float64 }{{0, 0.7, 0.7}, {0, 0.56, 0.56}, {1, 0.7, 0.5},
		{1, 0.56, 0.5}} {
		bend := shape.New(shape.Outline{Corner: 0.32, Top: 0.32, Half: 0.45, Along: row.along, Bilge: row.bilge}).Bend
		middle := bend.A.Lerp(bend.B, 0.5)
		shoulder, corner := bend.At(0.5).Sub(middle), bend.C.Sub(middle)
		assert.InDelta(t, row.share, shoulder.Dot(corner)/corner.Dot(corner), 1e-12, "%+v", row)
	}
}
