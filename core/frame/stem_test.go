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
	d := &h.Design
	require.Len(t, f.Stem.Laminations, 8)
	assert.InDelta(t, 1.25/8, f.Stem.Lamination/inch, rounding)
	outer := f.Stem.Radius - d.BarkThickness
	for i, b := range f.Stem.Laminations {
		radius := outer - (float64(i)+0.5)*f.Stem.Lamination
		assert.InDelta(t, radius, b.Radius, rounding)
		assert.InDelta(t, f.Stem.Lamination/(2*radius), b.Strain, rounding)
	}
	assert.Equal(t, f.Stem.Laminations[7], f.Stem.Innermost())
	assert.Equal(t, wood.WithinGuide, f.Stem.Innermost().Verdict)
}

// The radius past the solid against a fine search by circles through three points of the
// curve itself.
func TestStemsTightestRadius(t *testing.T) {
	h, f := build(design.Default())
	heel := f.Stem.Curve - h.End.Path.Length()
	least, where := math.Inf(1), 0.0
	const n, step = 20000, 1e-4
	for i := 1; i < n; i++ {
		u := float64(i) / n
		run := heel + h.End.RunAt(u)
		if r := circle(h.End.At(u-step), h.End.At(u), h.End.At(u+step)); run > f.Stem.Solid && r < least && u < 1-step {
			least, where = r, run
		}
	}
	// Near its least a radius changes by the square of the way along: the place is known
	// worse by far than the radius.
	assert.InEpsilon(t, least, f.Stem.Radius, 1e-4)
	assert.InDelta(t, where, f.Stem.Tightest, 1e-3)
	assert.False(t, f.Stem.SolidTightest)
}

// circle is the radius of the circle through three points: the product of the sides
// over four areas.
func circle(a, b, c geom.Vec2) float64 {
	return b.Sub(a).Len() * c.Sub(b).Len() * c.Sub(a).Len() / (2 * math.Abs(b.Sub(a).Cross(c.Sub(a))))
}

// Where the end is tightest in the solid, that is sawn: the laminations are judged by
// the curve past it, and the billet is as deep as the piece and the curve of its heel.
// Both against a fine search of the curve itself.
func TestTightestInTheSolid(t *testing.T) {
	tight := 0
	for _, d := range design.Starting() {
		h, f := build(d)
		s := f.Stem
		const n, step = 20000, 1e-4
		past, inside := math.Inf(1), math.Inf(1)
		var solid []geom.Vec2
		for i := 1; i < n; i++ {
			u := float64(i) / n
			q := h.End.At(u)
			r := circle(h.End.At(u-step), q, h.End.At(u+step))
			run := h.End.RunAt(u) + s.Curve - h.End.Path.Length()
			switch {
			case u <= step || u >= 1-step || run < 0:
			case run > s.Solid:
				past = min(past, r)
			default:
				inside = min(inside, r)
				solid = append(solid, q)
			}
		}
		// The search stops short of the solid's end by a step of a 20,000th of the curve, over
		// which a radius that is still falling there falls by less than a thousandth.
		assert.InEpsilon(t, past, s.Radius, 1e-3, d.Name)
		assert.InEpsilon(t, inside, s.SolidRadius, 1e-3, d.Name)
		assert.Equal(t, inside < past, s.SolidTightest, d.Name)
		chord := solid[len(solid)-1].Sub(solid[0]).Unit()
		most := 0.0
		for _, q := range solid {
			most = max(most, math.Abs(chord.Cross(q.Sub(solid[0]))))
		}
		// The stem's own curve is in chords: their sagitta is under a fiftieth of a millimetre.
		assert.InDelta(t, d.StemDepth+most, s.Stock, 2e-5, d.Name)
		if s.SolidTightest {
			tight++
		}
	}
	assert.Greater(t, tight, 1)
	assert.Less(t, tight, len(design.Starting()))
}

// A trial piece whose radius grew by a quarter asks for a form tighter by 1.25; none
// asks for the inner face itself.
func TestFormsRadius(t *testing.T) {
	_, plain := build(design.Default())
	_, tried := build(check.With(t, "stemOpening", 0.25))
	face := plain.Stem.Radius - plain.Stem.FormRadius
	assert.InDelta(t, (1.25+0.14)*inch, face, rounding, "stem-piece and bark")
	assert.InDelta(t, plain.Stem.FormRadius/1.25, tried.Stem.FormRadius, rounding)
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

// The curve from the inboard end of the solid, by a fine sum of chords, and 2 in of
// trim. The published billet is 36 in rough for a boat of 18 to 19 ft (Adney and
// Chapelle 1964, p. 48), printed in whole inches: the example's blank.
func TestStemBlank(t *testing.T) {
	h, f := build(design.Default())
	s := f.Stem
	require.Greater(t, s.SolidFrom, h.HeelX, "the default's solid begins on the curve")
	points := make([]geom.Vec2, 0, 100001)
	for i := range 100001 {
		if q := h.End.At(float64(i) / 100000); q.X >= s.SolidFrom || len(points) > 0 {
			points = append(points, q)
		}
	}
	assert.InDelta(t, length(points), s.Curve, 1e-4, "240 chords")
	assert.InDelta(t, s.Curve+2*inch, s.Blank, rounding)
	along := 0.0
	for i := 1; along < s.Solid; i++ {
		along += points[i].Sub(points[i-1]).Len()
		if along >= s.Solid {
			assert.InDelta(t, points[i].X, s.SolidEnd, 1e-4)
		}
	}
	t.Logf("blank %.2f in", s.Blank/inch)
	assert.InDelta(t, 36, frame.Build(example(t, 7.5, 17)).Stem.Blank/inch, 0.5)
}

// A stem-piece whose board stands inboard of the curve begins on the bottom: the way
// along both, by a fine sum.
func TestStemBeginsOnTheBottom(t *testing.T) {
	h, f := build(check.With(t, "heelLength", 9*inch))
	s := f.Stem
	require.Less(t, s.SolidFrom, h.HeelX)
	sum, last := 0.0, geom.Vec2{X: s.SolidFrom, Y: h.Bottom(s.SolidFrom)}
	for i := 1; i <= 100000; i++ {
		x := s.SolidFrom + (h.HeelX-s.SolidFrom)*float64(i)/100000
		q := geom.Vec2{X: x, Y: h.Bottom(x)}
		sum += q.Sub(last).Len()
		last = q
	}
	assert.InDelta(t, sum+h.End.Path.Length(), s.Curve, 1e-6)
	assert.InDelta(t, s.Solid, s.Profile.Run[s.Point], rounding, "a point stands where the solid ends")
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
	assert.InEpsilon(t, 64, f.Stem.Moments.Solid/f.Stem.Moments.Bundle, rounding)
	assert.InEpsilon(t, 8, f.Stem.Moments.Bundle/f.Stem.Moments.PerLamination, rounding)
	assert.Equal(t, f.Stem.Innermost().Springback(wood.Stock{}), f.Stem.Springback)
}
