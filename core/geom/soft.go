package geom

import "math"

// SoftMin returns the lesser of p and q, with the corner between them rounded over a
// fifth of their sum, so that the slope is continuous. It never exceeds the true
// minimum. Scaling both arguments scales the result.
func SoftMin(p, q float64) float64 {
	k := (p + q) / 5
	if k <= 0 {
		return min(p, q)
	}
	h := max(0, 1-math.Abs(p-q)/k)
	return min(p, q) - h*h*k/4
}

// SmoothStep returns u^2 (3 - 2u) for u in [0, 1], 0 below and 1 above.
func SmoothStep(u float64) float64 {
	u = max(0, min(1, u))
	return u * u * (3 - 2*u)
}
