package shape_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/shape"
)

const inch = 0.0254

// anyMidsection is an outline amidships of any boat that the form takes, its bilge often
// at an end of its range.
func anyMidsection(r *rand.Rand) shape.Outline {
	o := shape.Outline{Top: (7 + 27*r.Float64()) * inch, Half: (9.5 + 28.5*r.Float64()) * inch,
		Bilge: 0.56 + 0.29*r.Float64()}
	switch r.IntN(4) {
	case 0:
		o.Bilge = 0.56
	case 1:
		o.Bilge = 0.85
	}
	return o
}

// The girth rises with the corner, as far out as a side may lean in, and so does the
// breadth once the corner is outside the gunwale: there is one corner or none. Where the
// round bend takes over nothing steps: over a ten-thousandth of the way girth and
// breadth move by no more than two of them, and the radius by no more than
// two thousandths.
func TestGirthRisesWithTheCorner(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	const steps = 150
	for range 200 {
		o := anyMidsection(r)
		most := o.Half + o.Top*math.Tan(math.Pi/3)
		girth, breadth := 0.0, 0.0
		for i := 1; i <= steps; i++ {
			s := shape.New(o.At(most * float64(i) / steps))
			require.Greater(t, s.HalfGirth(), girth, "%+v at %v", o, s.C.X)
			require.GreaterOrEqual(t, s.Breadth(), breadth-1e-12, "%+v at %v", o, s.C.X)
			if s.C.X > o.Half {
				require.Greater(t, s.Breadth(), breadth, "%+v at %v", o, s.C.X)
			}
			girth, breadth = s.HalfGirth(), s.Breadth()
			near := shape.New(o.At(s.C.X * (1 + 1e-4)))
			// Half girth and breadth move by at most about twice what the corner does.
			require.InEpsilon(t, girth, near.HalfGirth(), 2e-4)
			require.InEpsilon(t, breadth, near.Breadth(), 2e-4)
			radius, _ := s.TightestRadius()
			nearRadius, _ := near.TightestRadius()
			require.InEpsilon(t, radius, nearRadius, 2e-3, "%+v at %v", o, s.C.X)
		}
	}
}

// The corner solved from a girth or a breadth gives that back.
func TestCornerGivesBack(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 2))
	for range 300 {
		o := anyMidsection(r)
		want := o.At(o.Half * (0.5 + r.Float64()))
		s := shape.New(want)
		got, ok := o.WithHalfGirth(s.HalfGirth(), 2*o.Half)
		require.True(t, ok)
		require.InDelta(t, want.Corner, got.Corner, 1e-9)
		if s.Breadth() > o.Half {
			got, ok = o.WithBreadth(s.Breadth())
			require.True(t, ok)
			require.InDelta(t, want.Corner, got.Corner, 1e-9)
		}
	}
	o := shape.Outline{Top: 12 * inch, Half: 17 * inch, Bilge: 0.7}
	short, ok := o.WithHalfGirth(math.Hypot(12, 17)*inch-0.001, 17*inch)
	assert.False(t, ok, "shorter than straight from the keel to the gunwale")
	assert.Zero(t, short.Corner)
	_, ok = o.WithHalfGirth(29*inch, 17*inch)
	assert.False(t, ok)
	_, ok = o.WithBreadth(80 * inch)
	assert.False(t, ok)
}

// Breadths read off the section at a height stand on it: against the points of a fine
// sample.
func TestHalfBreadthAt(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	tried := 0
	for range 40 {
		o := anyMidsection(r)
		s := shape.New(o.At(o.Half * (0.6 + 0.8*r.Float64())))
		for _, p := range s.Sample(50)[1:] {
			if p.Y > 1e-4 {
				tried++
				require.InDelta(t, p.X, s.HalfBreadthAt(p.Y), 1e-9)
			}
		}
	}
	assert.Greater(t, tried, 40*25, "half the points stand over the bottom")
}

// A side leans in by 75 degrees at most, whose tangent is 2 and the root of 3, over the height from bottom to top.
func TestMostCorner(t *testing.T) {
	o := shape.Outline{Top: 0.5, Bottom: 0.2, Half: 0.4, Bilge: 0.7}
	assert.InDelta(t, 0.4+0.3*(2+math.Sqrt(3)), o.MostCorner(), 1e-14)
}

// Bark folded up round the gunwales themselves stands plumb on the bed; at that girth the
// sides of every finished boat lean in by the same angle, 21.7 degrees, for a box has no
// scale (a prototype's, in a round bend alone: what is left of the other form here adds up
// to 0.3).
func TestBoxLeansIn(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	for range 50 {
		o := anyMidsection(r)
		o.Bilge, o.Half = 0.7, max(o.Half, o.Top)
		got, ok := o.WithHalfGirth(o.Half+o.Top, o.MostCorner())
		require.True(t, ok)
		require.InDelta(t, 21.7, (shape.New(got).Turning()-math.Pi/2)*180/math.Pi, 0.3, "%+v", o)
	}
}
