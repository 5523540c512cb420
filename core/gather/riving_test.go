package gather_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/internal/check"
)

// A bolt worked by hand: 11 in through, heart 3 in across and sapwood 3/4 in discarded,
// so sound wood from 1 1/2 to 4 3/4 in. Ribs 2 1/4 by 0.4 in are split 2 1/2 by 1/2.
//
// In quarters (the sector's side rises 1 for 1) the innermost face is at 1.5 in, where
// the quarter is 3 in wide, and the outermost at sqrt(4.75^2 - 1.25^2) = 4.5826, where
// the circle is 2 1/2 in wide: 3.0826 in for layers of 1/2 in, so four by halving, each
// 0.77065. Their inner faces are at 1.5, 2.2706, 3.0413 and 3.8119; a quarter is twice
// that wide there, and the circle at their outer faces 8.34, 7.30, 5.67 and 2.50 wide:
// 3.00, 4.54, 5.67 and 2.50 in give 1, 1, 2 and 1 of 2 1/2 in. Five a quarter, 20 a bolt.
//
// In eighths (0.41421 for 1) the innermost face is at 1.25/0.41421 = 3.0178 in, 1.5648 in
// for two layers, one rib each: 16. In sixteenths (0.19891) it would be at 6.28 in: none.
func TestRivingByHand(t *testing.T) {
	trunk := gather.Trunk{Diameter: 11 * inch, Clear: 204 * inch, Heart: 3 * inch, Sapwood: 0.75 * inch}
	r := trunk.Rive(2.25*inch, 0.4*inch)
	assert.Equal(t, 4, r.Sectors)
	assert.Equal(t, []int{1, 1, 2, 1}, r.Across)
	assert.Equal(t, 20, r.Count())
	assert.InDelta(t, 0.77065, r.Thick/inch, 5e-5)
	// Four bolts of 51 in from 17 ft, so 80 ribs.
	bolts, ribs := trunk.FromOneLog(gather.Piece{Length: 51 * inch, Width: 2.25 * inch, Thickness: 0.4 * inch})
	assert.Equal(t, 4, bolts)
	assert.Equal(t, 80, ribs)
}

// Whatever is split out lies in the sound wood: its corners are inside the circle and
// the sector, and a piece more in width or thickness would not be.
func TestSticksLieInTheSoundWood(t *testing.T) {
	for diameter := 5.0; diameter < 30; diameter += 0.7 {
		trunk := gather.Trunk{Diameter: diameter * inch, Heart: 2 * inch, Sapwood: 0.5 * inch}
		for _, size := range [][2]float64{{2.25, 0.375}, {1, 1}, {3.5, 0.125}, {3, 0.875}} {
			r := trunk.Rive(size[0]*inch, size[1]*inch)
			if r.Count() == 0 {
				continue
			}
			wide := size[0]*inch + 0.25*inch
			assert.GreaterOrEqual(t, r.Thick, 1.25*size[1]*inch-1e-12)
			sound, slope := trunk.Diameter/2-trunk.Sapwood, math.Tan(math.Pi/float64(r.Sectors))
			from := max(trunk.Heart/2, wide/2/slope)
			for i, n := range r.Across {
				inner, half := from+r.Thick*float64(i), float64(n)*wide/2
				assert.LessOrEqual(t, half, inner*slope+1e-9)
				assert.LessOrEqual(t, math.Hypot(half, inner+r.Thick), sound+1e-9)
			}
		}
	}
}

// Needs are met by the bolts named, not by one fewer, and a trunk too thin or too short
// says so. The thicker the trunk, the fewer the bolts.
func TestBoltsHoldWhatIsNeeded(t *testing.T) {
	l := list(design.Default())
	assert.NotEmpty(t, l.Bolts)
	for _, n := range l.Bolts {
		assert.Equal(t, gather.Found, n.State, n.Log)
		share := 0.0
		for _, u := range n.Uses {
			assert.GreaterOrEqual(t, u.Sectors*u.Riving.Each(), u.Piece.Count+u.Piece.Spares)
			assert.LessOrEqual(t, u.Piece.Length, n.Length)
			share += u.Share()
		}
		assert.GreaterOrEqual(t, float64(n.Bolts), share-1e-9)
		assert.Less(t, float64(n.Bolts)-share, 1.0)
		assert.InDelta(t, float64(n.Bolts)-share, n.Left, 1e-9)
	}
	bolts := func(d design.Design) int {
		sum := 0
		for _, n := range list(d).Bolts {
			sum += n.Bolts
		}
		return sum
	}
	assert.Less(t, bolts(check.With(t, "cedarDiameter", 16*inch)), bolts(design.Default()))
	for _, n := range list(check.With(t, "cedarClear", 60*inch)).Bolts {
		if n.Log == gather.GunwaleLog {
			assert.Equal(t, gather.TooShort, n.State)
			assert.Zero(t, n.Bolts)
		}
	}
	thin := list(check.With(t, "cedarDiameter", 4*inch))
	assert.Equal(t, gather.TooThin, thin.Bolts[1].State)
}
