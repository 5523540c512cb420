package geom

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// energyPatch is a crooked patch of surface, its workspace and the points of its
// square start stretched by k, so that the sum of the stretches is above 2 in
// every triangle, or below.
func energyPatch(t *testing.T, k float64) (*FlattenWorkspace, *Flat) {
	random := rand.New(rand.NewPCG(4, 4))
	g := NewGrid(4, 4, func(c, r int) Vec3 {
		return Vec3{float64(c), float64(r), 0.1 * random.NormFloat64()}
	})
	p := FlattenProblem{Grid: g, Slits: []Slit{{Col: 1, Foot: 1}}, Hold: func(c, r int) Held { return Held{} }}
	mesh := newSlitMesh(g, p.Slits, nil)
	f := &Flat{grid: g, slits: p.Slits, mesh: mesh, Points: startPoints(p, &mesh)}
	w := &FlattenWorkspace{}
	_, ok := w.prepare(p, f)
	require.True(t, ok)
	for i, q := range f.Points {
		f.Points[i] = q.Scale(k)
	}
	return w, f
}

// dense returns the matrix the workspace has assembled.
func (w *FlattenWorkspace) dense() *mat.SymDense {
	n := len(w.down)
	h := mat.NewSymDense(n, nil)
	for v, f := range w.hessian.first {
		x, y := w.hessian.rows(v)
		for c := range x {
			if c < len(x)-1 {
				h.SetSym(2*v, 2*f+c, x[c])
			}
			h.SetSym(2*v+1, 2*f+c, y[c])
		}
	}
	return h
}

// Oracle: central differences of the energy for the gradient and of the gradient
// for the Hessian, which is exact where the stretches add up to more than 2.
func TestEnergyDerivatives(t *testing.T) {
	w, f := energyPatch(t, 1.3)
	w.assemble(&f.mesh, f.Points)
	hessian := w.dense()
	down := append([]float64(nil), w.down...)
	const step = 1e-5
	for i := range down {
		at := &f.Points[i/2].X
		if i%2 == 1 {
			at = &f.Points[i/2].Y
		}
		kept := *at
		*at = kept + step
		high, _ := w.energy(&f.mesh, f.Points)
		w.assemble(&f.mesh, f.Points)
		plus := append([]float64(nil), w.down...)
		*at = kept - step
		low, _ := w.energy(&f.mesh, f.Points)
		w.assemble(&f.mesh, f.Points)
		*at = kept
		assert.InDelta(t, (low-high)/(2*step), down[i], 1e-8)
		for j := range down {
			assert.InDelta(t, (w.down[j]-plus[j])/(2*step), hessian.At(i, j), 1e-8)
		}
	}
}

// Where the stretches add up to less than 2 the true Hessian has negative
// eigenvalues; the projected one has none.
func TestProjectedHessianIsNotNegative(t *testing.T) {
	w, f := energyPatch(t, 0.6)
	w.assemble(&f.mesh, f.Points)
	var eigen mat.EigenSym
	require.True(t, eigen.Factorize(w.dense(), false))
	assert.Greater(t, eigen.Values(nil)[0], -1e-12)
}
