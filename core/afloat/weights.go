package afloat

// leastNeighbour is how long, as a share of an interval, the one beside it must be
// for a parabola to reach over both. Through points much closer together a parabola
// runs off wildly along the long interval; stations fall close together where two
// ways of cutting the boat meet. The weight of an end station stays positive while
// 1/3 + r/2 > r^3/12, r the second interval over the first: up to r = 2.7.
const leastNeighbour = 0.4

// parabolas returns which parabolas are used in interval i of increasing x: those
// through points j, j+1 and j+2 for the first n of j, one reaching back over the
// interval before, one forward over the one after. With n of zero f is taken as straight.
func parabolas(x []float64, i int) (j [2]int, n int) {
	h := leastNeighbour * (x[i+1] - x[i])
	if i > 0 && x[i]-x[i-1] >= h {
		j[n] = i - 1
		n++
	}
	if i+2 < len(x) && x[i+2]-x[i+1] >= h {
		j[n] = i
		n++
	}
	return j, n
}

// integrationWeights returns w so that the integral of f over [x[0], x[n-1]] is
// the sum of w[i] f(x[i]), for increasing x at unequal distances.
//
// Inside an interval f is the mean of the parabolas that parabolas returns. The rule is
// exact for parabolas at any spacing that leaves no parabola out. At equal spacing it is
// exact for cubics except in the two end intervals, so of the fourth order for smooth f.
// At a corner of f, and where both parabolas are left out, it is of the second order.
func integrationWeights(x []float64) []float64 {
	w := make([]float64, len(x))
	for i := 0; i+1 < len(x); i++ {
		starts, n := parabolas(x, i)
		for _, j := range starts[:n] {
			addParabola(w, x, j, i, 1/float64(n))
		}
		if n == 0 {
			w[i] += (x[i+1] - x[i]) / 2
			w[i+1] += (x[i+1] - x[i]) / 2
		}
	}
	return w
}

// addParabola adds to w a share of the integral over interval i of the parabola
// through points j, j+1 and j+2.
func addParabola(w, x []float64, j, i int, share float64) {
	// With t measured from the middle of the interval no digits are lost.
	m, h := (x[i]+x[i+1])/2, x[i+1]-x[i]
	for k := range 3 {
		p, q := x[j+(k+1)%3], x[j+(k+2)%3]
		integral := h*(m-p)*(m-q) + h*h*h/12
		w[j+k] += share * integral / ((x[j+k] - p) * (x[j+k] - q))
	}
}

// interpolate returns the value at t of the curve integrationWeights integrates, in
// interval i of x, which holds t.
func interpolate(x, f []float64, i int, t float64) float64 {
	starts, n := parabolas(x, i)
	if n == 0 {
		return f[i] + (f[i+1]-f[i])*(t-x[i])/(x[i+1]-x[i])
	}
	sum := 0.0
	for _, j := range starts[:n] {
		for k := range 3 {
			p, q := x[j+(k+1)%3], x[j+(k+2)%3]
			sum += f[j+k] * (t - p) * (t - q) / ((x[j+k] - p) * (x[j+k] - q))
		}
	}
	return sum / float64(n)
}
