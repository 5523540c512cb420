package hull_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/shape"
)

// buildable draws n designs that pass design.Validate and Faults, half of them
// near the default.
func buildable(n int, seed uint64) []*hull.Hull {
	r := rand.New(rand.NewPCG(seed, seed))
	var out []*hull.Hull
	for len(out) < n {
		d := check.NearDesign(r, design.Default(), 0.4)
		if len(out)%2 == 1 {
			d = check.AnyDesign(r)
		}
		if faultsOf(d) == nil {
			out = append(out, hull.New(d))
		}
	}
	return out
}

// Points of a sample stand at equal lengths; oracle: gonum's adaptive-order
// Legendre quadrature of the speed, at many more points. The girth is good to 1e-8 (bendPanels).
func TestSampleByLength(t *testing.T) {
	for _, h := range buildable(40, 5) {
		for _, v := range []float64{0, 0.3, 0.9, 1, 1.3, 1.9} {
			s := h.Column(v).Section
			speed := func(u float64) float64 { return s.Bend.Derivative(u).Len() }
			bend := quad.Fixed(speed, 0, 0.5, 200, nil, 0) + quad.Fixed(speed, 0.5, 1, 200, nil, 0)
			want := s.Bend.A.Sub(s.A).Len() + bend + s.P.Sub(s.Bend.B).Len()
			require.InDelta(t, want, s.HalfGirth(), 1e-8*want, "column %v", v)
			// A chord falls short of its arc by its angle squared over 24; fine
			// pieces of one length have chords of one length to that.
			points := s.Sample(2000)
			step := s.HalfGirth() / 2000
			turned := step / tightest(s)
			for i := 1; i < len(points); i++ {
				require.InDelta(t, step, points[i].Sub(points[i-1]).Len(), step*(1e-6+turned*turned/12), "column %v piece %d", v, i)
			}
		}
	}
}

func tightest(s shape.Section) float64 {
	r, _ := s.TightestRadius()
	return r
}

// The integral of the curvature along the section is the angle it turns through:
// the theorem of turning tangents. Oracle of the integral: gonum.
func TestTurningIdentity(t *testing.T) {
	for _, h := range buildable(60, 6) {
		for _, v := range []float64{0, 0.5, 0.95, 1.2, 1.8} {
			s := h.Column(v).Section
			bent := func(u float64) float64 { return s.Bend.Curvature(u) * s.Bend.Derivative(u).Len() }
			sum := quad.Fixed(bent, 0, 0.5, 120, nil, 0) + quad.Fixed(bent, 0.5, 1, 120, nil, 0)
			require.InDelta(t, s.Turning(), sum, 1e-9, "column %v", v)
		}
	}
}

// Gunwales' outside, depth and turn line are where the design puts them.
func TestSectionAmidships(t *testing.T) {
	for _, h := range buildable(60, 7) {
		d := &h.Design
		s := h.Section(0)
		require.InDelta(t, d.OutsideBreadth()/2, s.P.X, 1e-12)
		require.InDelta(t, d.Depth, s.P.Y, 1e-12)
		require.Equal(t, geom.Vec2{}, s.A)
		if d.Bulges() {
			require.InDelta(t, d.GreatestBeam/2, s.Breadth(), 1e-9)
			continue
		}
		require.InDelta(t, h.TurnWidth()/2, s.C.X, 1e-12)
		if d.TurnSet() {
			require.InDelta(t, d.TurnWidth/2, s.C.X, 1e-12)
			continue
		}
		girth := d.HalfGirthOnBed()
		if d.BuiltOn == design.OnFrame {
			girth -= d.Ease
		}
		require.InDelta(t, girth, s.HalfGirth(), 1e-9)
	}
}
