package geom

import "math"

// restTriangle is a triangle of the surface laid out in its own plane: its area
// and the gradients of its three corner functions, so that the map of the
// triangle to flat corners x has the 2 x 2 matrix F = sum x_i grad_i'.
type restTriangle struct {
	area float64
	grad [3]Vec2
}

// newRestTriangle lays the triangle a, b, c flat. side is +1 to keep the turning sense
// of its corners and -1 to reverse it. It returns an area of zero for a triangle without
// area, or with a coordinate that is not a finite number.
func newRestTriangle(a, b, c Vec3, side float64) restTriangle {
	ab, ac := b.Sub(a), c.Sub(a)
	long := ab.Len()
	twice := ab.Cross(ac).Len()
	if !(twice > slenderness*max(long*long, ac.Dot(ac))) {
		return restTriangle{}
	}
	bx := long
	cx, cy := ac.Dot(ab)/long, side*twice/long
	t := restTriangle{area: twice / 2}
	t.grad[1] = Vec2{1 / bx, -cx / (bx * cy)}
	t.grad[2] = Vec2{0, 1 / cy}
	t.grad[0] = t.grad[1].Add(t.grad[2]).Scale(-1)
	return t
}

// slenderness is the height of a triangle, as a share of its longer side, under
// which it has no usable shape: 1e-9 leaves its gradients seven good digits.
const slenderness = 1e-9

// matrix is a 2 x 2 matrix by rows.
type matrix struct{ xx, xy, yx, yy float64 }

// deform returns F for flat corners p, q, r.
func (t *restTriangle) deform(p, q, r Vec2) matrix {
	g := &t.grad
	return matrix{
		p.X*g[0].X + q.X*g[1].X + r.X*g[2].X, p.X*g[0].Y + q.X*g[1].Y + r.X*g[2].Y,
		p.Y*g[0].X + q.Y*g[1].X + r.Y*g[2].X, p.Y*g[0].Y + q.Y*g[1].Y + r.Y*g[2].Y,
	}
}

func (f matrix) det() float64 { return f.xx*f.yy - f.xy*f.yx }

// rotation returns cosine and sine of the rotation nearest to f, and the sum of
// its principal stretches, the smaller one signed.
func (f matrix) rotation() (cos, sin, sum float64) {
	a, b := f.xx+f.yy, f.yx-f.xy
	sum = math.Sqrt(a*a + b*b)
	if sum == 0 {
		return 1, 0, 0
	}
	return a / sum, b / sum, sum
}

// stretches returns the principal stretches of f, larger first; the smaller is
// negative where f turns its triangle over.
func (f matrix) stretches() (s1, s2 float64) {
	_, _, sum := f.rotation()
	a, b := f.xx-f.yy, f.yx+f.xy
	difference := math.Sqrt(a*a + b*b)
	return (sum + difference) / 2, (sum - difference) / 2
}

// energy returns the area-weighted as-rigid-as-possible energy of the points,
//
//	sum area ((s1-1)^2 + (s2-1)^2) = sum area |F - R|^2,
//
// R the rotation nearest to F (Liu, Zhang, Xu, Gotsman and Gortler, "A
// local/global approach to mesh parameterization", SGP 2008), and the number of
// triangles turned over.
func (w *FlattenWorkspace) energy(m *slitMesh, points []Vec2) (sum float64, flipped int) {
	for i, v := range m.triangles {
		t := &w.rest[i]
		f := t.deform(points[v[0]], points[v[1]], points[v[2]])
		if f.det() <= 0 {
			flipped++
		}
		c, s, _ := f.rotation()
		xx, xy, yx, yy := f.xx-c, f.xy+s, f.yx-s, f.yy-c
		sum += t.area * (xx*xx + xy*xy + yx*yx + yy*yy)
	}
	return sum, flipped
}

// assemble fills the workspace with the downhill gradient and the projected
// Hessian at the points: per triangle gradient 2A (F-R) grad and Hessian
// 2A (I - c t t'), t the twist mode and c = min(1, 2/(s1+s2)), which keeps it
// from ever being negative (Smith, de Goes and Kim, "Analytic eigensystems for
// isotropic distortion energies", ACM TOG 38(1), 2019; from memory). Rows of held
// coordinates become rows of the identity.
func (w *FlattenWorkspace) assemble(m *slitMesh, points []Vec2) {
	w.hessian.shape(m.first)
	clear(w.down)
	for i, v := range m.triangles {
		t := &w.rest[i]
		f := t.deform(points[v[0]], points[v[1]], points[v[2]])
		c, s, sum := f.rotation()
		e := matrix{f.xx - c, f.xy + s, f.yx - s, f.yy - c}
		k := 2 * t.area
		twist := k / 2
		if sum > 2 {
			twist = k / sum
		}
		var turned [3]Vec2
		for j, g := range t.grad {
			w.down[2*v[j]] -= k * (e.xx*g.X + e.xy*g.Y)
			w.down[2*v[j]+1] -= k * (e.yx*g.X + e.yy*g.Y)
			turned[j] = Vec2{s*g.X + c*g.Y, s*g.Y - c*g.X}
		}
		for j, row := range v {
			x, y := w.hessian.rows(row)
			a, g := turned[j], t.grad[j]
			for l, column := range v {
				if column > row {
					continue
				}
				same := k * g.Dot(t.grad[l])
				b := turned[l]
				at := 2 * (column - m.first[row])
				x[at] += same - twist*a.X*b.X
				x[at+1] -= twist * a.X * b.Y
				y[at] -= twist * a.Y * b.X
				y[at+1] += same - twist*a.Y*b.Y
			}
		}
	}
	for i, held := range w.held {
		if held {
			w.down[i] = 0
			w.hessian.pin(i)
		}
	}
}

// firstShift and shiftGrowth make the matrix of a sheet not held in place, or
// hinged at a single point, which is singular, solvable: its diagonal grows by a
// share of itself, the first far enough over rounding and under the share of the
// softest bending of a hundred columns (about 1e-8) to cost no iteration.
const (
	firstShift  = 1e-10
	shiftGrowth = 100
)

// step solves for the Newton step, left in w.move, and returns the energy it
// promises to take off to first order; singular means that no shift helps.
func (w *FlattenWorkspace) step(m *slitMesh, points []Vec2) (promise float64, result factored) {
	for shift := 0.0; shift < 1; shift = max(firstShift, shift*shiftGrowth) {
		w.assemble(m, points)
		w.hessian.raise(1 + shift)
		switch w.hessian.factor(w.Pause) {
		case stopped:
			return 0, stopped
		case singular:
			continue
		}
		copy(w.move, w.down)
		w.hessian.solve(w.move)
		for i, d := range w.down {
			promise += d * w.move[i]
		}
		if math.IsNaN(promise) {
			return 0, singular
		}
		return promise, positive
	}
	return 0, singular
}
