package geom

// gauss5 holds the abscissae and weights of five-point Gauss-Legendre
// quadrature on [-1, 1]. Source: Abramowitz and Stegun, Handbook of Mathematical
// Functions (1964), table 25.4.
var gauss5 = [5][2]float64{
	{0, 0.568888888888889},
	{0.538469310105683, 0.478628670499366}, {-0.538469310105683, 0.478628670499366},
	{0.906179845938664, 0.236926885056189}, {-0.906179845938664, 0.236926885056189},
}

// Slope returns the derivative of f at x by the four-point central difference
// with step h; its error is h^4/30 times the fifth derivative.
func Slope(f func(float64) float64, x, h float64) float64 {
	return (8*(f(x+h)-f(x-h)) - (f(x+2*h) - f(x-2*h))) / (12 * h)
}
