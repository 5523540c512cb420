package wood_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"barkwright/core/units"
	"barkwright/core/wood"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The innermost lamination is within guide when n (Rout/depth - 1) + 1/2 >= K, so
// the least n is the ceiling of (K - 1/2)/(Rout/depth - 1).
func TestLeastSplitsAgainstTheClosedForm(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 1))
	found, none := 0, 0
	for range 2000 {
		p := wood.StemBend{
			Depth:       (0.25 + 2*random.Float64()) * units.Inch,
			OuterRadius: (0.1 + 20*random.Float64()) * units.Inch,
			Stock:       wood.Stock{Condition: wood.AllConditions()[random.IntN(4)]},
		}
		for band, threshold := range map[wood.Verdict]float64{
			wood.WithinGuide: p.Stock.Condition.Guide().Safe, wood.NearLimit: p.Stock.Condition.Guide().Limit,
		} {
			s, ok := wood.LeastSplits(p, band)
			want := math.Inf(1)
			if p.OuterRadius > p.Depth {
				want = max(1, math.Ceil((threshold-0.5)/(p.OuterRadius/p.Depth-1)))
			}
			require.Equal(t, want <= wood.MaxSplits, ok, "%+v", p)
			if !ok {
				none++
				assert.Zero(t, s)
				continue
			}
			found++
			assert.Equal(t, int(want), s.Laminations)
			assert.LessOrEqual(t, s.Innermost.Verdict, band)
			assert.GreaterOrEqual(t, s.Halved, s.Laminations)
			assert.Less(t, s.Halved, 2*s.Laminations)
			assert.Equal(t, float64(s.Halved), math.Pow(2, float64(s.Rounds)))
			assert.LessOrEqual(t, p.Innermost(s.Halved).Verdict, band, "halving once more keeps the band")
		}
	}
	assert.Greater(t, found, 500)
	assert.Greater(t, none, 50)
}

// The published stem: 1 1/4 deep, six laminations, a radius drawn at 12.1 in. Six
// are within guide boiled, and the whole piece unsplit is too tight.
func TestThePublishedStemIsWithinGuideInSix(t *testing.T) {
	p := wood.StemBend{Depth: 1.25 * units.Inch, OuterRadius: 12.1 * units.Inch}
	assert.Equal(t, wood.WithinGuide, p.Innermost(6).Verdict)
	assert.Equal(t, wood.TooTight, p.Innermost(1).Verdict)
	n, ok := wood.SplitsNeeded(p)
	assert.True(t, ok)
	assert.LessOrEqual(t, n, 6)
}

func TestLaminationsFromOutsideIn(t *testing.T) {
	p := wood.StemBend{Depth: 0.032, OuterRadius: 0.25}
	all := p.Laminations(8)
	require.Len(t, all, 8)
	assert.InDelta(t, 0.248, all[0].Radius, 1e-12)
	assert.InDelta(t, 0.220, all[7].Radius, 1e-12)
	assert.InDelta(t, p.Innermost(8).Ratio, all[7].Ratio, 1e-9)
	for i := 1; i < len(all); i++ {
		assert.Greater(t, all[i].Strain, all[i-1].Strain, "the innermost is bent hardest")
	}
	assert.PanicsWithValue(t, "wood: number of laminations under one", func() { p.Laminations(0) })
	assert.PanicsWithValue(t, "wood: number of laminations under one", func() { p.Innermost(0) })
}

func TestAPieceKnownByItsMiddle(t *testing.T) {
	s := wood.Stock{Condition: wood.Soaked}
	p := wood.FromMiddle(1, 0.025, s)
	assert.InDelta(t, wood.Check(1, 0.025, s).Ratio, p.Innermost(1).Ratio, 1e-9, "unsplit it is the piece itself")
	n, ok := wood.SplitsNeeded(p)
	assert.True(t, ok)
	assert.Equal(t, 3, n) // R/t 40; two give 2 x 39.5 + 0.5 = 79.5, three 119 against 100

	straight, ok := wood.SplitsNeeded(wood.FromMiddle(math.Inf(1), 0.025, s))
	assert.True(t, ok)
	assert.Equal(t, 1, straight)
}

func TestNoNumberOfSplitsMendsACurveTighterThanThePiece(t *testing.T) {
	for _, outer := range []float64{0.03, 0.01} {
		n, ok := wood.SplitsNeeded(wood.StemBend{Depth: 0.03, OuterRadius: outer})
		assert.False(t, ok)
		assert.Zero(t, n)
	}
	// R/t is n (Rout/depth - 1) + 1/2: 30 at n = 32, the last number tried.
	last := wood.StemBend{Depth: 0.03, OuterRadius: 0.03 * (1 + 29.5/32)}
	n, ok := wood.SplitsNeeded(last)
	assert.True(t, ok)
	assert.Equal(t, 32, n)
	last.OuterRadius *= 0.999
	_, ok = wood.SplitsNeeded(last)
	assert.False(t, ok)
	// Nothing that will not fit counts, even where any band would do.
	_, ok = wood.LeastSplits(wood.StemBend{Depth: 0.03, OuterRadius: 0.01}, wood.TooTight)
	assert.False(t, ok)
}

// About 1/16 in is the thinnest a source gives (Adney and Chapelle, p. 119).
func TestThinnerThanDocumented(t *testing.T) {
	thick, ok := wood.LeastSplits(wood.StemBend{Depth: units.Inch / 4, OuterRadius: 2.1 * units.Inch}, wood.WithinGuide)
	require.True(t, ok)
	assert.Equal(t, 4, thick.Laminations)
	assert.False(t, thick.ThinnerThanDocumented, "exactly 1/16 in")
	thin, ok := wood.LeastSplits(wood.StemBend{Depth: units.Inch, OuterRadius: 2.2 * units.Inch}, wood.WithinGuide)
	require.True(t, ok)
	assert.True(t, thin.ThinnerThanDocumented)
}
