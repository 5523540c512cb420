package geom

import "math"

// Bezier is a cubic Bezier curve.
type Bezier [4]Vec2

// At returns the point at parameter t in [0, 1].
func (b Bezier) At(t float64) Vec2 {
	s := 1 - t
	w := [4]float64{s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t}
	var p Vec2
	for i, c := range b {
		p.X += w[i] * c.X
		p.Y += w[i] * c.Y
	}
	return p
}

// Derivative returns the derivative by t at t.
func (b Bezier) Derivative(t float64) Vec2 {
	s := 1 - t
	return b[1].Sub(b[0]).Scale(3 * s * s).
		Add(b[2].Sub(b[1]).Scale(6 * s * t)).
		Add(b[3].Sub(b[2]).Scale(3 * t * t))
}

// Tightest returns where the curve bends most between two parameters, looked for in n equal
// steps, and its curvature there without its sign.
//
// With D = s^2 p + 2st q + t^2 r, of the differences p, q and r of the points, the derivative is
// 3D and the curvature comes to 2/3 (s^2 pxq + st pxr + t^2 qxr) / |D|^3.
func (b Bezier) Tightest(lo, hi float64, n int) (t, curvature float64) {
	p, q, r := b[1].Sub(b[0]), b[2].Sub(b[1]), b[3].Sub(b[2])
	pq, pr, qr := p.Cross(q), p.Cross(r), q.Cross(r)
	t, least := Least(func(t float64) float64 {
		s := 1 - t
		a, m, c := s*s, s*t, t*t
		x, y := a*p.X+2*m*q.X+c*r.X, a*p.Y+2*m*q.Y+c*r.Y
		d := x*x + y*y
		if d == 0 {
			return 0
		}
		return -math.Abs(a*pq+m*pr+c*qr) / (d * math.Sqrt(d))
	}, lo, hi, n)
	return t, -2. / 3 * least
}

// Curvature returns the signed curvature at t, positive where the curve turns
// left; zero where the curve stands still.
func (b Bezier) Curvature(t float64) float64 {
	s := 1 - t
	second := b[2].Sub(b[1].Scale(2)).Add(b[0]).Scale(6 * s).
		Add(b[3].Sub(b[2].Scale(2)).Add(b[1]).Scale(6 * t))
	return curvature(b.Derivative(t), second)
}
