package frame_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/wood"
)

// Every lamination by hand: the i-th from outside has its middle at the curve's
// radius less bark and i + 1/2 thicknesses.
func TestEveryLaminationOfTheStem(t *testing.T) {
	h, f := build(design.Default())
	d := h.Design
	require.Len(t, f.Stem.Laminations, 8)
	assert.InDelta(t, 1.25/8, f.Stem.Lamination/inch, 1e-12)
	outer := h.End.TightestRadius - d.BarkThickness
	for i, b := range f.Stem.Laminations {
		radius := outer - (float64(i)+0.5)*f.Stem.Lamination
		assert.InDelta(t, radius, b.Radius, 1e-12)
		assert.InDelta(t, f.Stem.Lamination/(2*radius), b.Strain, 1e-12)
	}
	assert.Equal(t, f.Stem.Laminations[7], f.Stem.Innermost())
	assert.Equal(t, wood.WithinGuide, f.Stem.Innermost().Verdict)
}

// The radius against a fine search by second differences on the curve itself.
func TestStemsTightestRadius(t *testing.T) {
	h, f := build(design.Default())
	least, where := math.Inf(1), 0.0
	const n, step = 20000, 1e-4
	for i := 1; i < n; i++ {
		u := float64(i) / n
		a, b, c := h.End.At(u-step), h.End.At(u), h.End.At(u+step)
		// The circle through three points: product of the sides over four areas.
		area := math.Abs(b.Sub(a).Cross(c.Sub(a))) / 2
		if r := b.Sub(a).Len() * c.Sub(b).Len() * c.Sub(a).Len() / (4 * area); r < least && u > step && u < 1-step {
			least, where = r, u
		}
	}
	assert.InEpsilon(t, least, h.End.TightestRadius, 1e-4)
	assert.InDelta(t, where, f.Stem.TightestAt, 1e-3)
}

// The published stem: six laminations of a piece 1 1/4 deep, split by halves with
// one end left solid (Adney and Chapelle 1964, pp. 48-49); laminations under the
// least number are near the limit or worse. Rounds of halving by hand.
func TestStemSplits(t *testing.T) {
	_, f := build(design.Default())
	s := f.Stem
	require.True(t, s.WithinOK)
	require.True(t, s.LimitOK)
	assert.LessOrEqual(t, s.Within.Laminations, 6, "the six of the published stem are enough on opening")
	assert.GreaterOrEqual(t, s.Within.Laminations, s.Limit.Laminations)
	assert.Equal(t, int(math.Ceil(math.Log2(float64(s.Within.Laminations)))), s.Within.Rounds)
	fewer := frame.Build(hull.New(check.With(t, "stemLaminations", float64(s.Within.Laminations-1)))).Stem
	assert.NotEqual(t, wood.WithinGuide, fewer.Innermost().Verdict)
	enough := frame.Build(hull.New(check.With(t, "stemLaminations", float64(s.Within.Laminations)))).Stem
	assert.Equal(t, wood.WithinGuide, enough.Innermost().Verdict)
}

// Curve, solid heel and 2 in of trim; the published billet is 36 in for an end
// of about this size (Adney and Chapelle 1964, p. 48).
func TestStemBlank(t *testing.T) {
	h, f := build(design.Default())
	points := make([]geom.Vec2, 100001)
	for i := range points {
		points[i] = h.End.At(float64(i) / 100000)
	}
	assert.InDelta(t, length(points), f.Stem.Curve, 1e-4, "240 chords")
	assert.InDelta(t, f.Stem.Curve+6*inch+2*inch, f.Stem.Blank, 1e-12)
}

// A curve tighter than the piece is deep is a named state and leaves no moments
// and no springback.
func TestStemThatWillNotFit(t *testing.T) {
	d := design.Default()
	d.StemDepth = 1
	s := frame.Build(hull.New(d)).Stem
	assert.True(t, s.Innermost().WillNotFit)
	assert.Equal(t, wood.TooTight, s.Innermost().Verdict)
	assert.False(t, s.WithinOK || s.LimitOK)
	assert.Zero(t, s.Moments)
	assert.Zero(t, s.Springback)
}

// Splitting in n makes the bundle n squared easier to bend than the piece whole
// (beam theory).
func TestStemMoments(t *testing.T) {
	_, f := build(design.Default())
	assert.InEpsilon(t, 64, f.Stem.Moments.Solid/f.Stem.Moments.Bundle, 1e-9)
	assert.InEpsilon(t, 8, f.Stem.Moments.Bundle/f.Stem.Moments.PerLamination, 1e-9)
	assert.Equal(t, f.Stem.Innermost().Springback(wood.Stock{}), f.Stem.Springback)
}
