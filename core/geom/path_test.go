package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
	"barkwright/core/internal/check"
)

// A helix's length is known: the root of r2 + c2 for each radian.
func TestPath3Helix(t *testing.T) {
	const r, c = 0.7, 0.2
	helix := func(u float64) geom.Vec3 { return geom.Vec3{X: r * math.Cos(u), Y: r * math.Sin(u), Z: c * u} }
	p := geom.NewPath3(helix, 1, 5, 120)
	pace := math.Hypot(r, c)
	assert.InDelta(t, 4*pace, p.Length(), 1e-7)
	for u := 1.0; u <= 5; u += 0.13 {
		require.InDelta(t, (u-1)*pace, p.RunTo(u), 1e-7)
		require.InDelta(t, u, p.ParameterAt(p.RunTo(u)), 1e-7)
	}
	assert.Zero(t, p.RunTo(0), "held at its ends")
	assert.Equal(t, p.Length(), p.RunTo(9))
	assert.Equal(t, 1.0, p.ParameterAt(-1))
	assert.Equal(t, 5.0, p.ParameterAt(99))
}

// Parabola of chord 16 ft and sag 3 in: the closed form with asinh, 4.879973142239 m.
func TestPath3Parabola(t *testing.T) {
	const chord, sag = 4.8768, 0.0762
	half := func(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: 4 * sag * x * x / (chord * chord)} }
	got := 2 * geom.NewPath3(half, 0, chord/2, 120).Length()
	assert.InDelta(t, 4.879973142239, got, 1e-10)
	want := math.Sqrt(chord*chord/4+4*sag*sag) + chord*chord/(8*sag)*math.Asinh(4*sag/chord)
	assert.InDelta(t, want, got, 1e-10)
}

// The error falls as the fourth power of the number of knots.
func TestPath3Order(t *testing.T) {
	circle := func(u float64) geom.Vec3 { return geom.Vec3{X: math.Cos(u), Y: math.Sin(u)} }
	miss := func(n int) float64 { return math.Abs(geom.NewPath3(circle, 0, 3, n).Length() - 3) }
	assert.Less(t, miss(40), miss(20)/12)
	assert.Less(t, miss(120), 1e-7)
}

// An infinite slope at the end, as that of a square root, is still measured: a quarter
// circle by its own abscissa.
func TestPath3SteepEnd(t *testing.T) {
	quarter := func(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: math.Sqrt(max(0, 1-x*x))} }
	assert.InDelta(t, math.Pi/2, geom.NewPath3(quarter, 0, 1, 120).Length(), 1e-6)
}

// A path with a corner is two straight runs. Lengths and places are worked by hand.
func TestPath3Corner(t *testing.T) {
	at := func(x float64) geom.Vec3 { return geom.Vec3{X: x, Y: 4.0 / 3 * max(0, x-3)} }
	p := geom.NewPath3(at, 0, 3, 8).Then(geom.NewPath3(at, 3, 6, 8))
	assert.InDelta(t, 3+5, p.Length(), 1e-12)
	for x := 0.0; x <= 6; x += 0.01 {
		run := x + 2.0/3*max(0, x-3)
		assert.InDelta(t, run, p.RunTo(x), 1e-9)
		assert.InDelta(t, x, p.ParameterAt(run), 1e-9)
	}
}

func TestPolyline(t *testing.T) {
	p := geom.NewPolyline([]geom.Vec2{{X: 0}, {X: 3}, {X: 3, Y: 4}})
	assert.Equal(t, 7.0, p.Length())
	assert.Equal(t, geom.Vec2{X: 3, Y: 2}, p.At(5))
	assert.Equal(t, geom.Vec2{X: 3}, p.At(3))
	assert.Equal(t, geom.Vec2{}, p.At(-1))
	assert.Equal(t, geom.Vec2{X: 3, Y: 4}, p.At(8))
	assert.Equal(t, geom.Vec2{X: 1}, p.Heading(1))
	assert.Equal(t, geom.Vec2{Y: 1}, p.Heading(3))
	assert.Equal(t, geom.Vec2{Y: 1}, p.Heading(7))
	assert.InDelta(t, math.Pi/2, p.Turning(), 1e-15)
	assert.Equal(t, geom.Vec2{X: 3, Y: 0.5}, p.At(3.5))
	assert.Zero(t, geom.Polyline{}.Length())
	assert.Equal(t, geom.Vec2{X: 1, Y: 2}, geom.NewPolyline([]geom.Vec2{{X: 1, Y: 2}}).At(1))
}

// A regular polygon of n sides in the unit circle: length 2 n sin(pi/n), area
// n/2 sin(2 pi/n), one turn.
func TestPolygon(t *testing.T) {
	const n = 7
	var round []geom.Vec2
	for i := range n + 2 {
		a := 2 * math.Pi * float64(i) / n
		round = append(round, geom.Vec2{X: 5 + math.Cos(a), Y: 2 + math.Sin(a)})
	}
	assert.InDelta(t, n/2.0*math.Sin(2*math.Pi/n), check.Area(round[:n]), 1e-13)
	assert.InDelta(t, 2*n*math.Sin(math.Pi/n), geom.NewPolyline(round[:n+1]).Length(), 1e-13)
	assert.InDelta(t, 2*math.Pi, geom.NewPolyline(round).Turning(), 1e-13)
	clockwise := []geom.Vec2{{}, {Y: 1}, {X: 1, Y: 1}, {X: 1}}
	assert.Equal(t, -1.0, check.Area(clockwise))
	assert.Zero(t, check.Area(nil))
}

// A circle's points, evenly spaced, move to those of the circle with the same middle: the
// chord between a point's neighbours is square to its radius. An end moves square to its
// own piece.
func TestOffset(t *testing.T) {
	const radius, by, n = 2.0, 0.3, 12
	circle := make([]geom.Vec2, n+1)
	for i := range circle {
		sin, cos := math.Sincos(math.Pi * float64(i) / n)
		circle[i] = geom.Vec2{X: radius * cos, Y: radius * sin}
	}
	in := geom.Offset(circle, by)
	require.Len(t, in, len(circle))
	for i := 1; i < n; i++ {
		want := circle[i].Scale((radius - by) / radius)
		assert.InDelta(t, 0, in[i].Sub(want).Len(), 1e-15*n)
	}
	for _, i := range []int{0, n} {
		piece, moved := circle[min(i+1, n)].Sub(circle[max(i-1, 0)]), in[i].Sub(circle[i])
		assert.InDelta(t, 0, piece.Dot(moved), 1e-15)
		assert.InDelta(t, by, moved.Len(), 1e-15)
	}
	out := geom.Offset([]geom.Vec2{{X: 1}, {X: 3}}, -by)
	assert.Equal(t, []geom.Vec2{{X: 1, Y: -by}, {X: 3, Y: -by}}, out)
	assert.Empty(t, geom.Offset(nil, by))
}
