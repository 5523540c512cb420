package shape

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/gonum/diff/fd"
)

// With power 2 the rise is t^2, and the plan with fine 1/2 a quarter circle: closed forms.
func TestBendAgainstClosedForms(t *testing.T) {
	r := NewRise(2)
	for _, x := range []float64{0, 0.1, 0.5, 0.9} {
		at, first, second := r.Bend(x)
		assert.InDelta(t, x*x, at, 1e-14)
		assert.InDelta(t, 2*x, first, 1e-14)
		assert.InDelta(t, 2, second, 1e-13)
		at, first, second = r.TaperBend(x, 0.5)
		y := math.Sqrt(1 - x*x)
		assert.InDelta(t, y, at, 1e-14)
		assert.InEpsilon(t, 1-x/y, 1+first, 1e-13)
		assert.InEpsilon(t, -1/(y*y*y), second, 1e-13)
	}
}

// Powers of 2 and no corrections: two parabolas, from amidships to the gunwale's end and no breadth beyond it.
func TestGunwaleAgainstParabolas(t *testing.T) {
	g := &Gunwale{Half: 2.5, HalfBeam: 0.4, Plan: NewRise(2), Fine: 1, Depth: 0.3, End: 0.5, Sweep: NewRise(2)}
	for _, x := range []float64{-2, -0.5, 0, 1, 2.5} {
		u := x / 2.5
		assert.InDelta(t, 0.4*(1-u*u), g.Breadth(x), 1e-14, "%v", x)
		assert.InDelta(t, 0.3+0.2*u*u, g.Sheer(x), 1e-14, "%v", x)
	}
	assert.Zero(t, g.Breadth(2.6))
}

// The gunwale's derivatives agree with gonum's differences, corrections included. Central
// differences over steps of 1e-4 miss the slope by a sixth of the step's square times the third
// derivative, which is under 60 here: 1e-7. They miss the second derivative by a twelfth of it
// times the fourth, which is under 1000: 1e-6.
func TestGunwaleBendAgainstDifferences(t *testing.T) {
	var by Corrections
	by.Count = 3
	by.Each[0] = Correction{At: 0.4, From: 0.1, To: 0.8, By: 0.02}
	by.Each[1] = Correction{At: 1, From: 0.5, To: 1, By: -0.01}
	by.Each[2] = Correction{At: 0, From: 0, To: 0.3, By: 0.015}
	g := &Gunwale{Half: 2.4, HalfBeam: 0.4, Plan: NewRise(2.3), Fine: 0.8, Depth: 0.3, End: 0.6, Sweep: NewRise(3.1),
		PlanBy: by, SheerBy: by}
	// At 0 itself, where the correction's third derivative jumps, a second difference would straddle both sides.
	for _, x := range []float64{0.01, 0.05, 0.3, 0.9, 1.1, 1.9, 2.3} {
		first := &fd.Settings{Formula: fd.Central, Step: 1e-4}
		second := &fd.Settings{Formula: fd.Central2nd, Step: 1e-4}
		slope, bend := g.BreadthBend(x)
		assert.InDelta(t, fd.Derivative(g.Breadth, x, first), slope, 1e-7)
		assert.InDelta(t, fd.Derivative(g.Breadth, x, second), bend, 1e-6)
		slope, bend = g.SheerBend(x)
		assert.InDelta(t, fd.Derivative(g.Sheer, x, first), slope, 1e-7)
		assert.InDelta(t, fd.Derivative(g.Sheer, x, second), bend, 1e-6)
	}
	breadth, _ := g.BreadthBend(0)
	sheer, _ := g.SheerBend(0)
	assert.Zero(t, breadth, "the gunwale runs straight fore and aft amidships")
	assert.Zero(t, sheer)
}
