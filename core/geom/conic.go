package geom

import "math"

// Conic is a rational quadratic: from A, heading for C, to B, arriving from C.
// W is the weight of C: 0 the chord, less than 1 an ellipse, 1 a parabola, more
// a hyperbola; larger weights press the curve into the corner. See Farin, Curves
// and Surfaces for CAGD, chapter on conics.
type Conic struct {
	A, C, B Vec2
	W       float64
}

// At returns the point at parameter t in [0, 1].
func (q *Conic) At(t float64) Vec2 {
	s := 1 - t
	a, c, b := s*s, 2*s*t*q.W, t*t
	d := a + c + b
	return Vec2{(a*q.A.X + c*q.C.X + b*q.B.X) / d, (a*q.A.Y + c*q.C.Y + b*q.B.Y) / d}
}

// Derivative returns the derivative by t at t.
func (q Conic) Derivative(t float64) Vec2 {
	v, _ := q.derivatives(t)
	return v
}

// Speed returns the length of the derivative by t at t.
func (q *Conic) Speed(t float64) float64 {
	s := 1 - t
	d := s*s + 2*s*t*q.W + t*t
	a, b, c := s*s*q.W, s*t, t*t*q.W
	x := a*(q.C.X-q.A.X) + b*(q.B.X-q.A.X) + c*(q.B.X-q.C.X)
	y := a*(q.C.Y-q.A.Y) + b*(q.B.Y-q.A.Y) + c*(q.B.Y-q.C.Y)
	return 2 * math.Sqrt(x*x+y*y) / (d * d)
}

// Run returns the length of the curve from parameter lo to hi, by five-point Gauss.
func (q *Conic) Run(lo, hi float64) float64 {
	half, mid := (hi-lo)/2, (hi+lo)/2
	ax, ay := q.W*(q.C.X-q.A.X), q.W*(q.C.Y-q.A.Y)
	bx, by := q.B.X-q.A.X, q.B.Y-q.A.Y
	cx, cy := q.W*(q.B.X-q.C.X), q.W*(q.B.Y-q.C.Y)
	sum := 0.0
	for i := range gauss5 {
		t := mid + half*gauss5[i][0]
		s := 1 - t
		a, b, c := s*s, s*t, t*t
		d := a + 2*b*q.W + c
		x, y := a*ax+b*bx+c*cx, a*ay+b*by+c*cy
		sum += gauss5[i][1] * math.Sqrt(x*x+y*y) / (d * d)
	}
	return 2 * half * sum
}

func (q *Conic) derivatives(t float64) (first, second Vec2) {
	s := 1 - t
	ac, cb := q.C.Sub(q.A).Scale(q.W), q.B.Sub(q.C).Scale(q.W)
	ab := q.B.Sub(q.A)
	d := s*s + 2*s*t*q.W + t*t
	dd := 2*(t-s) + 2*(s-t)*q.W
	// The quotient rule leaves N = 2(s^2 w(C-A) + st(B-A) + t^2 w(B-C)) over d^2.
	n := ac.Scale(2 * s * s).Add(ab.Scale(2 * s * t)).Add(cb.Scale(2 * t * t))
	dn := ac.Scale(-4 * s).Add(ab.Scale(2 * (s - t))).Add(cb.Scale(4 * t))
	first = n.Scale(1 / (d * d))
	second = dn.Scale(1 / (d * d)).Sub(n.Scale(2 * dd / (d * d * d)))
	return first, second
}

// Curvature returns the signed curvature at t, positive where the curve turns
// left; zero where the curve stands still.
func (q Conic) Curvature(t float64) float64 {
	d, dd := q.derivatives(t)
	return curvature(d, dd)
}

// Tightest returns where the curve bends most, looked for in n equal steps, and its
// curvature there without its sign.
//
// With N = s^2 w(C-A) + st(B-A) + t^2 w(B-C) and d = s^2 + 2stw + t^2 the derivative is
// 2N/d^2, and the curvature comes to w/2 (C-A)x(B-C) (d/|N|)^3: only that last is looked at.
func (q *Conic) Tightest(n int) (t, curvature float64) {
	ac, ab, cb := q.C.Sub(q.A).Scale(q.W), q.B.Sub(q.A), q.B.Sub(q.C).Scale(q.W)
	t, least := Least(func(t float64) float64 {
		s := 1 - t
		a, b, c := s*s, s*t, t*t
		d := a + 2*b*q.W + c
		x, y := a*ac.X+b*ab.X+c*cb.X, a*ac.Y+b*ab.Y+c*cb.Y
		if x == 0 && y == 0 {
			return 0
		}
		return -d * d / (x*x + y*y)
	}, 0, 1, n)
	return t, math.Abs(ac.Cross(cb)) / (2 * q.W) * -least * math.Sqrt(-least)
}

func curvature(d, dd Vec2) float64 {
	l := d.Len()
	if l == 0 {
		return 0
	}
	return d.Cross(dd) / (l * l * l)
}

// Turning returns the angle from A-C to C-B, positive to the left; zero where a
// leg has no length.
func (q Conic) Turning() float64 {
	a, b := q.C.Sub(q.A), q.B.Sub(q.C)
	if a.Len() == 0 || b.Len() == 0 {
		return 0
	}
	return math.Atan2(a.Cross(b), a.Dot(b))
}
