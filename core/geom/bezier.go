package geom

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

// Curvature returns the signed curvature at t, positive where the curve turns
// left; zero where the curve stands still.
func (b Bezier) Curvature(t float64) float64 {
	s := 1 - t
	second := b[2].Sub(b[1].Scale(2)).Add(b[0]).Scale(6 * s).
		Add(b[3].Sub(b[2].Scale(2)).Add(b[1]).Scale(6 * t))
	return curvature(b.Derivative(t), second)
}
