package geom

// Integrate returns the integral of f over [lo, hi] by five-point Gauss
// quadrature on n equal panels: exact for polynomials to degree nine.
func Integrate(f func(float64) float64, lo, hi float64, n int) float64 {
	half := (hi - lo) / float64(2*n)
	sum := 0.0
	for i := range n {
		mid := lo + half*float64(2*i+1)
		for _, g := range gauss5 {
			sum += g[1] * f(mid+half*g[0])
		}
	}
	return sum * half
}
