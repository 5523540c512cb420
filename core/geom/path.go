package geom

// Path3 is a smooth curve in space given by its position at a parameter, with a
// table of its length.
type Path3 struct {
	At     func(t float64) Vec3
	Lo, Hi float64
	knots  []float64
	run    []float64
	// corner is the knot where one smooth curve passes into another, 0 where none does.
	corner int
}

// NewPath3 measures the curve from lo to hi. The knots lie closer together toward hi, so
// that a curve whose slope is infinite there is still measured. With n knots the error
// of the length is about (1/n)^4.
func NewPath3(at func(float64) Vec3, lo, hi float64, n int) Path3 {
	p := Path3{At: at, Lo: lo, Hi: hi, knots: make([]float64, n+1), run: make([]float64, n+1)}
	p.knots[0] = lo
	measure(at, lo, hi, n, func(k int, knot, run float64) { p.knots[k], p.run[k] = knot, run })
	return p
}

// Length3 is the length of NewPath3's curve alone.
func Length3(at func(float64) Vec3, lo, hi float64, n int) float64 {
	length := 0.0
	measure(at, lo, hi, n, func(_ int, _, run float64) { length = run })
	return length
}

// measure hands over each knot but the first, and the length as far as that.
func measure(at func(float64) Vec3, lo, hi float64, n int, take func(k int, knot, run float64)) {
	fine := 2 * n
	// Chords at full and at half step give the length without their leading
	// error, by Richardson's rule.
	place := func(i int) float64 {
		s := 1 - float64(i)/float64(fine)
		return hi - (hi-lo)*s*s
	}
	last, run := at(lo), 0.0
	for k := 1; k <= n; k++ {
		mid, end := at(place(2*k-1)), at(place(2*k))
		half := mid.Sub(last).Len() + end.Sub(mid).Len()
		run += (4*half - end.Sub(last).Len()) / 3
		take(k, place(2*k), run)
		last = end
	}
}

// Then returns the path followed by another of the same curve, which it may meet at an
// angle.
func (p Path3) Then(next Path3) Path3 {
	corner, length := len(p.knots)-1, p.Length()
	joined := Path3{At: next.At, Lo: p.Lo, Hi: next.Hi, corner: corner}
	joined.knots = append(append([]float64{}, p.knots...), next.knots[1:]...)
	joined.run = append([]float64{}, p.run...)
	for _, run := range next.run[1:] {
		joined.run = append(joined.run, length+run)
	}
	return joined
}

// Length returns the length of the whole curve.
func (p Path3) Length() float64 { return p.run[len(p.run)-1] }

// RunTo returns the length from the start to parameter t.
func (p Path3) RunTo(t float64) float64 { return p.interpolate(p.knots, p.run, t) }

// ParameterAt returns the parameter a length s from the start, held at the ends.
func (p Path3) ParameterAt(s float64) float64 { return p.interpolate(p.run, p.knots, s) }

// interpolate reads y at v from an increasing table by a cubic through the four
// nearest rows on one side of the corner, held at its ends.
func (p Path3) interpolate(x, y []float64, v float64) float64 {
	n := len(x) - 1
	if v <= x[0] {
		return y[0]
	}
	if v >= x[n] {
		return y[n]
	}
	lo, hi := 0, n
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; x[mid] <= v {
			lo = mid
		} else {
			hi = mid
		}
	}
	from, to := 0, n
	if lo < p.corner {
		to = p.corner
	} else {
		from = p.corner
	}
	first := max(from, min(lo-1, to-3))
	sum := 0.0
	for i := first; i <= first+3; i++ {
		term := y[i]
		for j := first; j <= first+3; j++ {
			if j != i {
				term *= (v - x[j]) / (x[i] - x[j])
			}
		}
		sum += term
	}
	return sum
}
