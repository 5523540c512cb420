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

// The gunwale's derivatives agree with gonum's differences, corrections included. Central
// differences over steps of 1e-4 miss the slope by a sixth of the step's square times the third
// derivative, which is under 60 here: 1e-7. They miss the second derivative by a twelfth of it
// times the fourth, which is under 1000: 1e-6.
func TestGunwaleBendAgainstDifferences(t *testing.T) {
	var by Corrections
	by.Count = 2
	by.Each[0] = Correction{At: 0.4, From: 0.1, To: 0.8, By: 0.02}
	by.Each[1] = Correction{At: 1, From: 0.5, To: 1, By: -0.01}
	g := &Gunwale{Half: 2.4, HalfBeam: 0.4, Plan: NewRise(2.3), Fine: 0.8, Depth: 0.3, End: 0.6, Sweep: NewRise(3.1),
		PlanBy: by, SheerBy: by}
	for _, x := range []float64{0, 0.05, 0.3, 0.9, 1.1, 1.9, 2.3} {
		first := &fd.Settings{Formula: fd.Central, Step: 1e-4}
		second := &fd.Settings{Formula: fd.Central2nd, Step: 1e-4}
		slope, bend := g.BreadthBend(x)
		assert.InDelta(t, fd.Derivative(g.Breadth, x, first), slope, 1e-7)
		assert.InDelta(t, fd.Derivative(g.Breadth, x, second), bend, 1e-6)
		slope, bend = g.SheerBend(x)
		assert.InDelta(t, fd.Derivative(g.Sheer, x, first), slope, 1e-7)
		assert.InDelta(t, fd.Derivative(g.Sheer, x, second), bend, 1e-6)
	}
}
