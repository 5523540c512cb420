package geom_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/mathext"

	"barkwright/core/geom"
)

// curve is what conics and Bezier curves share.
type curve interface {
	At(t float64) geom.Vec2
	Derivative(t float64) geom.Vec2
	Curvature(t float64) float64
}

func randomPoint(r *rand.Rand) geom.Vec2 { return geom.Vec2{X: r.NormFloat64(), Y: r.NormFloat64()} }

func randomCurves(n int) []curve {
	r := rand.New(rand.NewPCG(4, 4))
	var out []curve
	for range n {
		out = append(out,
			geom.Bezier{randomPoint(r), randomPoint(r), randomPoint(r), randomPoint(r)},
			&geom.Conic{A: randomPoint(r), C: randomPoint(r), B: randomPoint(r), W: 0.3 + 3*r.Float64()})
	}
	return out
}

// Oracle: gonum's differences of the points, and of those the curvature by its
// definition.
func TestCurveDerivativesAgainstDifferences(t *testing.T) {
	for i, c := range randomCurves(50) {
		x := func(u float64) float64 { return c.At(u).X }
		y := func(u float64) float64 { return c.At(u).Y }
		for _, u := range []float64{0.1, 0.37, 0.5, 0.82} {
			first := func(f func(float64) float64) float64 {
				return fd.Derivative(f, u, &fd.Settings{Formula: fd.Central, Step: 1e-5})
			}
			second := func(f func(float64) float64) float64 {
				return fd.Derivative(f, u, &fd.Settings{Formula: fd.Central2nd, Step: 1e-4})
			}
			d := c.Derivative(u)
			require.InDelta(t, first(x), d.X, 1e-6*(1+d.Len()), "curve %d at %v", i, u)
			require.InDelta(t, first(y), d.Y, 1e-6*(1+d.Len()), "curve %d at %v", i, u)
			want := (d.X*second(y) - d.Y*second(x)) / math.Pow(d.Len(), 3)
			require.InDelta(t, want, c.Curvature(u), 1e-4*(1+math.Abs(want)), "curve %d at %v", i, u)
		}
	}
}

// Closed forms of the cubic that stands for a quarter circle, handle 4(sqrt 2-1)/3:
// computed apart from this program by quadrature; the digits are those printed.
func TestQuarterCircleBezier(t *testing.T) {
	k := 4 * (math.Sqrt2 - 1) / 3
	b := geom.Bezier{{X: 1, Y: 0}, {X: 1, Y: k}, {X: k, Y: 1}, {X: 0, Y: 1}}
	assert.InDelta(t, 0.978553390593, b.Curvature(0), 5e-13)
	assert.InDelta(t, 2*(1-k)/(3*k*k), b.Curvature(0), 1e-12, "(n-1)/n |d1 x d2|/|d1|^3")
	assert.InDelta(t, 0.993757645304, b.Curvature(0.5), 5e-13)
	at, least := geom.Least(func(u float64) float64 { return -b.Curvature(u) }, 0, 1, 100)
	// By golden section in decimal arithmetic of 40 digits.
	assert.InDelta(t, 1.00800496718375, -least, 5e-15)
	assert.InDelta(t, 0.18749, min(at, 1-at), 5e-6)
	speed := func(u float64) float64 { return b.Derivative(u).Len() }
	assert.InDelta(t, 1.571016698074, geom.Integrate(speed, 0, 1, 40), 5e-13)
	assert.InDelta(t, math.Pi/2, geom.Integrate(func(u float64) float64 { return b.Curvature(u) * speed(u) }, 0, 1, 40),
		1e-12)
	_, out := geom.Least(func(u float64) float64 { return -b.At(u).Len() }, 0, 1, 100)
	assert.InDelta(t, 2.72530007e-4, -out-1, 5e-13)
}

// A conic of weight sqrt 2/2 with square legs is a quarter ellipse, of weight 1 a
// parabola, of weight 0 its chord. Radii b2/a and a2/b and the parabola's length are
// closed forms; the girth's oracle is gonum's elliptic integral.
func TestConicKinds(t *testing.T) {
	const a, b = 0.45, 0.33
	e := geom.Conic{A: geom.Vec2{}, C: geom.Vec2{X: a}, B: geom.Vec2{X: a, Y: b}, W: math.Sqrt2 / 2}
	assert.InDelta(t, b/(a*a), e.Curvature(0), 1e-12)
	assert.InDelta(t, 1/0.613636363636, e.Curvature(0), 1e-11)
	assert.InDelta(t, 1/0.242, e.Curvature(1), 1e-12)
	speed := func(u float64) float64 { return e.Derivative(u).Len() }
	assert.InDelta(t, 0.616240876376, geom.Integrate(speed, 0, 1, 20), 5e-13)
	girth := a * mathext.CompleteE(1-b*b/(a*a))
	assert.InDelta(t, girth, geom.Integrate(speed, 0, 1, 20), 1e-12)
	run := 0.0
	for i := range 20 {
		run += e.Run(float64(i)/20, float64(i+1)/20)
	}
	assert.InDelta(t, girth, run, 1e-12)

	p := geom.Conic{A: geom.Vec2{}, C: geom.Vec2{X: 0.5}, B: geom.Vec2{X: 1, Y: 1}, W: 1}
	for _, u := range []float64{0, 0.25, 0.7, 1} {
		assert.InDelta(t, p.At(u).X*p.At(u).X, p.At(u).Y, 1e-15, "y = x^2")
	}
	assert.InDelta(t, 2, p.Curvature(0), 1e-12)
	assert.InDelta(t, 1.47894285754460,
		geom.Integrate(func(u float64) float64 { return p.Derivative(u).Len() }, 0, 1, 20), 5e-14)

	chord := geom.Conic{A: geom.Vec2{}, C: geom.Vec2{X: 9, Y: -5}, B: geom.Vec2{X: 1, Y: 2}}
	for _, u := range []float64{0.2, 0.5, 0.9} {
		assert.InDelta(t, 2*chord.At(u).X, chord.At(u).Y, 1e-15)
	}
}

// The integral of curvature over length is the turning, by gonum's quadrature.
func TestConicTurning(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	for range 50 {
		c := geom.Conic{A: randomPoint(r), C: randomPoint(r), B: randomPoint(r), W: 0.5 + r.Float64()}
		if math.Abs(c.Turning()) > 2.6 {
			continue // so sharp a turn is a needle that quadrature sees poorly
		}
		got := quad.Fixed(func(u float64) float64 { return c.Curvature(u) * c.Derivative(u).Len() }, 0, 1, 400, nil, 0)
		require.InDelta(t, c.Turning(), got, 1e-6)
	}
	assert.InDelta(t, math.Pi/2, geom.Conic{C: geom.Vec2{X: 1}, B: geom.Vec2{X: 1, Y: 1}, W: 1}.Turning(), 1e-15)
	assert.InDelta(t, -math.Pi/2, geom.Conic{C: geom.Vec2{X: 1}, B: geom.Vec2{X: 1, Y: -1}, W: 1}.Turning(), 1e-15)
}

func TestStandingStill(t *testing.T) {
	assert.Zero(t, geom.Conic{}.Turning())
	assert.Zero(t, geom.Conic{W: 1}.Curvature(0.5))
	assert.Zero(t, geom.Bezier{}.Curvature(0.5))
	assert.Equal(t, geom.Vec2{}, geom.Vec2{}.Unit())
}
