package shape_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/shape"
)

// A plan of power 2 and fineness 1 is a parabola but for its blunting, and a sheer
// of the same power is one: a station s in from the end against the closed length of
// a parabola in their common plane.
func TestInboardOfAParabola(t *testing.T) {
	g := shape.Gunwale{Half: 2, HalfBeam: 0.4, Plan: shape.NewRise(2), Fine: 1, Depth: 0.3, End: 0.5,
		Sweep: shape.NewRise(2)}
	// y falls and z rises by one parabola each: together a x^2 with a of both.
	a := math.Hypot(g.HalfBeam, g.End-g.Depth) / (g.Half * g.Half)
	run := func(x float64) float64 {
		u := 2 * a * x
		return (u*math.Sqrt(1+u*u) + math.Asinh(u)) / (4 * a)
	}
	for _, s := range []float64{0.01, 0.09, 0.3} {
		x := g.Inboard(s)
		// The way in is added up in pieces: to a ten-thousandth of a millimetre.
		assert.InDelta(t, s, run(g.Half)-run(x), 1e-7, "%v", s)
		assert.InDelta(t, g.Path().ParameterAt(g.Path().Length()-s), x, 1e-7, "as the whole curve has it")
	}
	assert.Zero(t, g.Inboard(3), "longer than the gunwale")
}

// Finer and hollower ends, where the slope runs away, agree with the whole curve to a
// micrometre: that one is in longer pieces.
func TestInboardIsTheWholeCurves(t *testing.T) {
	for _, fine := range []float64{0.9, 1.3, 2.3} {
		g := shape.Gunwale{Half: 2.2, HalfBeam: 0.42, Plan: shape.NewRise(2.1), Fine: fine, Depth: 0.32, End: 0.5,
			Sweep: shape.NewRise(5)}
		p := g.Path()
		for _, s := range []float64{0.025, 0.09, 0.3} {
			assert.InDelta(t, p.ParameterAt(p.Length()-s), g.Inboard(s), 1e-6, "fine %v, %v", fine, s)
		}
	}
}

func BenchmarkInboard(b *testing.B) {
	g := shape.Gunwale{Half: 2.2, HalfBeam: 0.42, Plan: shape.NewRise(2.1), Fine: 1.3, Depth: 0.32, End: 0.5,
		Sweep: shape.NewRise(5)}
	for b.Loop() {
		g.Inboard(0.09)
	}
}
