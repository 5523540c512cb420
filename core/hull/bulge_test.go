package hull_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// Nothing crosses along the boat: its greatest breadth never rises outward. The corner
// stands out as far at the end thwarts as amidships, and the bark of the two measured
// boats that bulge does to the quarter inch that drawn sections are good to. Nothing
// stands out at the stem head.
func TestBulgeIsCarried(t *testing.T) {
	drawn := []*hull.Hull{hull.New(measuredM1(t)), hull.New(measured(t, "K3"))}
	hulls := append(buildable(10, 21), hull.New(check.With(t, "builtOn", 1.0)),
		hull.New(check.With(t, "turnWidth", 39.5*inch)))
	bulging := 0
	for n, h := range append(drawn, hulls...) {
		last := math.Inf(1)
		for i := range 201 {
			s := h.Column(2 * float64(i) / 200).Section
			breadth := s.Breadth()
			require.LessOrEqual(t, breadth, last+1e-9)
			last = breadth
		}
		end := h.Column(2).Section
		require.InDelta(t, end.P.X, end.Breadth(), 1e-9)
		if h.Bulge() == 0 {
			continue
		}
		bulging++
		x := h.StationAt(h.Design.EndThwart() * h.Gunwale.Length())
		for _, at := range []float64{0, 0.5, 1} {
			s := h.Column(h.ColumnAtEdge(at * x)).Section
			require.InDelta(t, h.Turn(0)-h.SkinHalfBreadth(0), s.C.X-s.P.X, 1e-9)
			if n < len(drawn) {
				require.InDelta(t, h.Bulge(), s.Breadth()-s.P.X, inch/4)
			}
		}
	}
	assert.GreaterOrEqual(t, bulging, 4)
}

// Under a slider the section goes on without a jump: of each step the half that moves it
// more is halved on and on, and what moves must shrink with it. Choices and whole counts
// are left out, what follows in rounded steps is held, and from no greatest breadth to the
// least one is a choice between two boats.
func TestNoJumpUnderASlider(t *testing.T) {
	keys := []string{"beam", "depth", "frameWidth", "turnWidth", "greatestBeam", "ease", "bilge", "inwaleThickness",
		"beamFine", "thwart2"}
	boats := []design.Design{design.Default(), check.With(t, "builtOn", 1.0), check.With(t, "greatestBeam", 37*inch),
		design.Starting()[2]}
	for n, from := range boats {
		from = held(from)
		for k, key := range keys {
			if n == 0 || k%len(boats) == n {
				noJump(t, from, key)
			}
		}
	}
}

func noJump(t *testing.T, from design.Design, key string) {
	p, ok := design.Lookup(key)
	require.True(t, ok)
	lo := p.Min
	if p.NoneAtMin {
		lo = from.OutsideBreadth() + 1e-6
	}
	measure := func(v float64) []float64 {
		d := p.Set(from, v)
		if design.Validate(d) != nil {
			return nil
		}
		h := hull.New(d)
		var out []float64
		for _, at := range []float64{0, 0.6, 0.95} {
			s := h.Section(at * h.HeelX)
			radius, _ := s.TightestRadius()
			out = append(out, s.HalfGirth(), s.Breadth(), s.HalfBreadthAt(s.A.Y+3*inch), 0.1*radius)
		}
		return out
	}
	apart := func(a, b []float64) float64 {
		most := 0.0
		for i := range a {
			most = max(most, math.Abs(a[i]-b[i]))
		}
		return most
	}
	const steps, halvings = 16, 10
	for i := range steps {
		u, v := lo+(p.Max-lo)*float64(i)/steps, lo+(p.Max-lo)*float64(i+1)/steps
		mu, mv := measure(u), measure(v)
		if mu == nil || mv == nil {
			continue
		}
		whole := apart(mu, mv)
		for range halvings {
			mid := (u + v) / 2
			mm := measure(mid)
			require.NotNil(t, mm, "%s at %v inches", key, mid/inch)
			if apart(mm, mu) > apart(mv, mm) {
				v, mv = mid, mm
			} else {
				u, mu = mid, mm
			}
		}
		require.Less(t, apart(mu, mv), 0.1*units.Millimetre+0.02*whole, "%s at %v inches", key, u/inch)
	}
}

// held sets everything that follows in rounded steps, but for the turn line.
func held(d design.Design) design.Design {
	for _, p := range design.Params() {
		if p.Follows() && p.Key != "turnWidth" && p.Paddler == 0 {
			p.Claim(&d)
		}
	}
	return design.Follow(d)
}

// Frames as long as published ones are accepted: 28 in by 156 under gunwales of 158
// (Adney and Chapelle 1964, figure 103).
func TestPublishedFrameIsAccepted(t *testing.T) {
	d := check.With(t, "length", 176*inch, "overhang", 9*inch, "beam", 32*inch, "depth", 14*inch,
		"frameWidth", 28*inch, "frameLength", 156*inch)
	assert.Empty(t, faultsOf(d))
}
