package geom

import "math"

// SoftMin returns the lesser of p and q, with the corner between them rounded over a
// fifth of their sum, so that the slope is continuous. It never exceeds the true
// minimum. Scaling both arguments scales the result.
func SoftMin(p, q float64) float64 {
	// Of floats min and max are calls in a browser, and every section asks for this.
	least := p
	if q < p {
		least = q
	}
	k := (p + q) / 5
	h := 1 - math.Abs(p-q)/k
	if k <= 0 || h <= 0 {
		return least
	}
	return least - h*h*k/4
}

// SmoothStep returns u^2 (3 - 2u) for u in [0, 1], 0 below and 1 above.
func SmoothStep(u float64) float64 {
	switch {
	case u <= 0:
		return 0
	case u >= 1:
		return 1
	}
	return u * u * (3 - 2*u)
}
