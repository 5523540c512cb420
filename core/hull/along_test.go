package hull_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// scaled returns d with every length k times as long.
func scaled(d design.Design, k float64) design.Design {
	out := d
	for _, p := range design.Params() {
		if p.Kind >= units.Length && p.Kind <= units.Distance {
			out = p.Set(out, k*p.Get(&d))
		} else if p.Follows() {
			out = p.Set(out, p.Get(&d))
		}
	}
	return out
}

// All lengths k times as long: the skin's points, radii and runs are k times as
// far, its area k squared. The foremost point is solved to a nanometre, whatever
// the scale, and the skin past the heel moves with it.
func TestScaling(t *testing.T) {
	const solved = 1e-7
	for _, h := range buildable(30, 10) {
		for _, k := range []float64{0.5, 3} {
			big := hull.New(scaled(h.Design, k))
			require.InDelta(t, k*h.Gunwale.Length(), big.Gunwale.Length(), 1e-9)
			require.InDelta(t, k*h.Edge.Length(), big.Edge.Length(), 1e-9)
			require.InDelta(t, k*h.End.TightestRadius, big.End.TightestRadius, 1e-3*big.End.TightestRadius)
			places := columns(h, 30)
			require.Equal(t, len(places), len(columns(big, 30)))
			small, large := skin(h, places, 13), skin(big, places, 13)
			for i, p := range small.At {
				require.InDelta(t, 0, p.Scale(k).Sub(large.At[i]).Len(), solved)
			}
			require.InEpsilon(t, k*k*area(small), area(large), 1e-4)
			s, b := h.Section(h.HeelX/2), big.Section(big.HeelX/2)
			require.InDelta(t, k*s.HalfGirth(), b.HalfGirth(), 1e-9)
			require.InDelta(t, s.Turning(), b.Turning(), 1e-9)
			require.InEpsilon(t, k*tightest(s), tightest(b), 1e-9)
		}
	}
}

// area sums the two triangles of each cell.
func area(g geom.Grid) float64 {
	sum := 0.0
	for c := 0; c+1 < g.Cols; c++ {
		for r := 0; r+1 < g.Rows; r++ {
			a, b := g.At[c*g.Rows+r], g.At[(c+1)*g.Rows+r]
			e, f := g.At[c*g.Rows+r+1], g.At[(c+1)*g.Rows+r+1]
			sum += (b.Sub(a).Cross(e.Sub(a)).Len() + b.Sub(f).Cross(e.Sub(f)).Len()) / 2
		}
	}
	return sum
}

// kink returns the largest jump of slope of f on [lo, hi], and where. A step of h
// sees a jump J as second differences of J h to J h/2 and a bend as the square of
// h. So at a quarter of the step a bend's second difference by the step falls to a
// quarter, and a jump's to no less than half: what falls to under 0.4 of what a
// coarse step saw thereabouts is no kink.
func kink(f func(float64) float64, lo, hi float64) (jump, at float64) {
	const h = 0.016 // m
	n := max(0, int((hi-lo)/h))
	bend := func(x, step float64) float64 { return math.Abs(f(x+step)-2*f(x)+f(x-step)) / step }
	coarse := make([]float64, n+1)
	for i := 1; i < n; i++ {
		coarse[i] = bend(lo+float64(i)*h, h)
	}
	for i := 2; i < n-1; i++ {
		seen := max(coarse[i-1], coarse[i], coarse[i+1])
		for j := -2; j <= 2; j++ {
			x := lo + float64(i)*h + float64(j)*h/4
			if fine := bend(x, h/4); fine > 0.4*seen && fine > jump {
				jump, at = fine, x
			}
		}
	}
	return jump, at
}

// noKink is a jump of slope that is let pass: the end's profile is walked in
// pieces that turn by up to 0.007 radians each.
const noKink = 0.01

// Girth and turning run on without a kink from amidships to the head, over every
// place where a formula changes hands, but for the gunwale's end: there the
// gunwales meet at an angle.
func TestNoKinkAlong(t *testing.T) {
	hulls := append(buildable(16, 11), hull.New(design.Default()), hull.New(measuredM1(t)))
	tried := 0
	for _, h := range hulls {
		// An end that turns within a few of kink's steps, of 16 mm, is not told from a kink.
		if h.End.TightestRadius < 0.1 {
			continue
		}
		tried++
		at := func(x float64) shape.Section { return h.Column(h.ColumnAtEdge(math.Abs(x))).Section }
		for _, reach := range [][2]float64{{-0.1, h.GunwaleX - 0.03}, {h.GunwaleX + 0.03, h.HeadX - 0.04}} {
			jump, x := kink(func(x float64) float64 { return at(x).HalfGirth() }, reach[0], reach[1])
			assert.Less(t, jump, noKink, "girth at %v, heel %v, gunwale %v", x, h.HeelX, h.GunwaleX)
			jump, x = kink(func(x float64) float64 { return at(x).Turning() * units.Foot }, reach[0], reach[1])
			assert.Less(t, jump, noKink, "turning at %v, heel %v, gunwale %v", x, h.HeelX, h.GunwaleX)
		}
	}
	assert.Greater(t, tried, 12)
}

// The tightest radius has a true corner where its place jumps from one part of the
// bend to another; on these boats it does not.
func TestNoKinkOfTightestRadius(t *testing.T) {
	for _, d := range []design.Design{design.Default(), measuredM1(t), check.With(t, "bilge", 0.6),
		check.With(t, "turnWidth", 20*inch)} {
		h := hull.New(d)
		jump, x := kink(func(x float64) float64 {
			return math.Log(tightest(h.Column(h.ColumnAtEdge(math.Abs(x))).Section)) * units.Foot
		}, -0.1, h.GunwaleX-0.03)
		assert.Less(t, jump, 2*noKink, "at %v, heel %v, gunwale %v", x, h.HeelX, h.GunwaleX)
	}
}

// Across the heel, where columns begin to lean, the skin has no crease: its normals
// on either side agree but for the bend of the profile's first piece.
func TestNoCreaseAtTheHeel(t *testing.T) {
	for _, h := range buildable(60, 12) {
		if math.Abs(h.GunwaleX-h.HeelX) < 0.1 {
			continue // the gunwale's end makes a corner of its own there
		}
		const step, rows = 5e-4, 24
		first := h.End.Path.Run[1]
		allowed := 0.5*units.Degree + 1.5*first*h.End.Curvature(0)
		before, here, after := h.Column(1-step).Points(rows), h.Column(1).Points(rows), h.Column(1+step).Points(rows)
		for i := 1; i < rows; i++ {
			up := here[i+1].Sub(here[i-1])
			m, n := up.Cross(here[i].Sub(before[i])), up.Cross(after[i].Sub(here[i]))
			angle := math.Atan2(m.Cross(n).Len(), m.Dot(n))
			require.Less(t, angle, allowed, "row %d of %v", i, h.Design)
		}
	}
}
