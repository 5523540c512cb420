package gather_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/units"
)

// fewest is the least number of strands that lengths can be cut from, by trying all ways.
func fewest(lengths []float64, strand float64) int {
	best := len(lengths)
	var left []float64
	var put func(i int)
	put = func(i int) {
		if len(left) >= best {
			return
		}
		if i == len(lengths) {
			best = len(left)
			return
		}
		for k := range left {
			if left[k] >= lengths[i]-1e-9 {
				left[k] -= lengths[i]
				put(i + 1)
				left[k] += lengths[i]
			}
		}
		left = append(left, strand-lengths[i])
		put(i + 1)
		left = left[:len(left)-1]
	}
	put(0)
	return best
}

// First fit, the longest first, against every way there is. By hand: 6 and 4, 5 and 5
// from strands of 10. The bound is Dosa's, 11/9 and 6/9.
func TestFirstFitAgainstAllWays(t *testing.T) {
	assert.Equal(t, []int{0, 1, 1, 0}, gather.FirstFit([]float64{6, 5, 5, 4}, 10))
	r := rand.New(rand.NewPCG(2, 4))
	same := 0
	for range 200 {
		lengths := make([]float64, 3+r.IntN(6))
		for i := range lengths {
			lengths[i] = float64(1+r.IntN(20)) / 2
		}
		slices.Sort(lengths)
		slices.Reverse(lengths)
		strands := 0
		for _, at := range gather.FirstFit(lengths, 10) {
			strands = max(strands, at+1)
		}
		exact := fewest(lengths, 10)
		require.GreaterOrEqual(t, strands, exact)
		require.LessOrEqual(t, strands, (11*exact+6)/9)
		if strands == exact {
			same++
		}
	}
	assert.Greater(t, same, 180, "it seldom takes one more")
}

// Every group and every seam is cut, no strand gives more than it has, and the books
// add up.
func TestStrandsKeepTheirBooks(t *testing.T) {
	for _, feet := range []float64{4, 5.3, 8, 10, 12, 20} {
		d := design.Default()
		d.RootLength = feet * units.Foot
		l := list(d)
		s := l.Root.Strands
		if feet < 5 {
			assert.False(t, s.Fits, "a group takes 5 ft 3 in in one strand")
			continue
		}
		groups, used := 0, 0.0
		for _, c := range s.Cut {
			require.GreaterOrEqual(t, c.Left, -1e-9)
			groups += c.Groups
			used += s.Length - c.Left
		}
		assert.Equal(t, 90, groups)
		assert.InDelta(t, l.Root.Split, used, 1e-9, "%v ft", feet)
		assert.InDelta(t, float64(len(s.Cut))*s.Length-used, s.Left, 1e-9)
		assert.Equal(t, int(math.Ceil(float64(len(s.Cut))*(1+d.RootWaste)/2)), s.Roots)
	}
}

// Strands of 10 ft give one group of 5 ft 3 in each, and two when tails are 1 in: the
// shorter tail saves a third of the roots.
func TestTailsThatSaveRoot(t *testing.T) {
	var none [4]bark.Seam
	long := gather.CutStrands(10*units.Foot, 90, 5.27*units.Foot, none, 0)
	short := gather.CutStrands(10*units.Foot, 90, 4.94*units.Foot, none, 0)
	assert.Equal(t, 45, long.Roots)
	assert.Equal(t, 23, short.Roots)
}

// The published boat itself: 15 ft and 40 ribs, 250 ft dug.
func TestPublishedRoot(t *testing.T) {
	d := design.Default()
	d.Length, d.Ribs = 180*inch, 40
	assert.InDelta(t, 250, gather.PublishedRoot(d)/units.Foot, 1e-9)
}
