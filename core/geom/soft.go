package geom

import "math"

// SoftMin is the lesser of p and q with the corner between them rounded off over
// a fifth of their sum, so that its slope is continuous where one takes over
// from the other. It never exceeds the true minimum and is homogeneous: scaling
// both arguments scales the result.
func SoftMin(p, q float64) float64 {
	k := (p + q) / 5
	if k <= 0 {
		return min(p, q)
	}
	h := max(0, 1-math.Abs(p-q)/k)
	return min(p, q) - h*h*k/4
}

// SmoothStep is u^2 (3 - 2u) on [0, 1], held at its ends outside.
func SmoothStep(u float64) float64 {
	u = max(0, min(1, u))
	return u * u * (3 - 2*u)
}
