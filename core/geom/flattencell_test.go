package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
)

// A cell of an affine map has its singular values, found here by hand: a shear of a
// unit square by k has the stretches sqrt(1 + k^2/4) +- k/2.
func TestCellOfAShear(t *testing.T) {
	const k = 0.3
	g := geom.NewGrid(3, 3, func(c, r int) geom.Vec3 { return geom.Vec3{X: float64(c), Y: float64(r)} })
	f := geom.Flatten(geom.FlattenProblem{
		Grid: g,
		Hold: func(int, int) geom.Held { return geom.Held{X: true, Y: true} },
		Start: func() []geom.Vec2 {
			var out []geom.Vec2
			for _, p := range g.At {
				out = append(out, geom.Vec2{X: p.X + k*p.Y, Y: p.Y})
			}
			return out
		}(),
	}, nil)
	cells := f.Cells()
	require.Len(t, cells, 4)
	for _, c := range cells {
		assert.InDelta(t, math.Sqrt(1+k*k/4)+k/2, c.S1, 1e-12)
		assert.InDelta(t, math.Sqrt(1+k*k/4)-k/2, c.S2, 1e-12)
		assert.InDelta(t, 1, c.Area, 1e-12)
	}
	assert.Equal(t, geom.Vec2{X: 0.5 + k/2, Y: 0.5}, cells[0].Middle)
}

// The stretch at the middles of cells nears its limit in the square of the mesh
// width: a sphere's zone projected square to its axis, at colatitude a, gathers by
// cos a along the meridian and not at all along the parallel.
func TestCellsAreOfSecondOrder(t *testing.T) {
	worst := func(n int) float64 {
		g := geom.NewGrid(n+1, n+1, func(c, r int) geom.Vec3 {
			a, b := 0.4+0.4*float64(r)/float64(n), 0.8*float64(c)/float64(n)
			return geom.Vec3{X: math.Sin(a) * math.Cos(b), Y: math.Sin(a) * math.Sin(b), Z: math.Cos(a)}
		})
		var start []geom.Vec2
		for _, p := range g.At {
			start = append(start, geom.Vec2{X: p.X, Y: p.Y})
		}
		f := geom.Flatten(geom.FlattenProblem{Grid: g, Start: start,
			Hold: func(int, int) geom.Held { return geom.Held{X: true, Y: true} }}, nil)
		most := 0.0
		for i, c := range f.Cells() {
			a := 0.4 + 0.4*(float64(i%n)+0.5)/float64(n)
			most = max(most, math.Abs(c.S1-1), math.Abs(c.S2-math.Cos(a)))
		}
		return most
	}
	coarse, fine := worst(8), worst(16)
	assert.InDelta(t, 4, coarse/fine, 0.2)
}

// A pause that returns false ends the flattening. One that returns true changes nothing.
func TestFlattenIsCutOff(t *testing.T) {
	p := illustrativeCanoe{0.86}.problem(48, 40, 5)
	want := geom.Flatten(p, nil)
	calls := 0
	w := geom.FlattenWorkspace{Pause: func() bool { calls++; return true }}
	got := geom.Flatten(p, &w)
	assert.Equal(t, want.Points, got.Points)
	assert.Greater(t, calls, got.Iterations, "several pieces an iteration")
	w.Pause = func() bool { calls--; return calls > 0 }
	calls = 3
	assert.Equal(t, geom.CutOff, geom.Flatten(p, &w).State)
	assert.Zero(t, calls, "it stops at once")
	w.Pause = nil
	assert.Equal(t, want.Points, geom.Flatten(p, &w).Points, "and leaves nothing behind")
}
