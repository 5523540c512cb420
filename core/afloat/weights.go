package afloat

// integrationWeights returns w so that the integral of f over [x[0], x[n-1]] is
// the sum of w[i] f(x[i]), for increasing x at unequal distances, n >= 3.
//
// Inside an interval f is the mean of the parabola through its ends and the point
// before, and the one through its ends and the point after; in the first and last
// interval the only parabola there is. Exact for parabolas at any spacing; at
// equal spacing exact for cubics except in the two end intervals, so of the
// fourth order for smooth f. At a corner of f it is of the second order.
func integrationWeights(x []float64) []float64 {
	n := len(x)
	w := make([]float64, n)
	for i := 0; i+1 < n; i++ {
		switch i {
		case 0:
			addParabola(w, x, 0, i, 1)
		case n - 2:
			addParabola(w, x, i-1, i, 1)
		default:
			addParabola(w, x, i-1, i, 0.5)
			addParabola(w, x, i, i, 0.5)
		}
	}
	return w
}

// addParabola adds to w a share of the integral over interval i of the parabola
// through points j, j+1 and j+2.
func addParabola(w, x []float64, j, i int, share float64) {
	if j+2 >= len(x) {
		j = len(x) - 3
	}
	a, b := x[i], x[i+1]
	for k := 0; k < 3; k++ {
		p, q := x[j+(k+1)%3], x[j+(k+2)%3]
		over := (x[j+k] - p) * (x[j+k] - q)
		// The integral of (t-p)(t-q) with t measured from the middle of the
		// interval, where no digits are lost.
		m, h := (a+b)/2, b-a
		integral := h*(m-p)*(m-q) + h*h*h/12
		w[j+k] += share * integral / over
	}
}

// interpolate returns the value at t of the curve integrationWeights integrates,
// in interval i of x, which holds t.
func interpolate(x, f []float64, i int, t float64) float64 {
	n := len(x)
	switch i {
	case 0:
		return parabola(x, f, 0, t)
	case n - 2:
		return parabola(x, f, n-3, t)
	}
	return (parabola(x, f, i-1, t) + parabola(x, f, i, t)) / 2
}

func parabola(x, f []float64, j int, t float64) float64 {
	sum := 0.0
	for k := 0; k < 3; k++ {
		p, q := x[j+(k+1)%3], x[j+(k+2)%3]
		sum += f[j+k] * (t - p) * (t - q) / ((x[j+k] - p) * (x[j+k] - q))
	}
	return sum
}
