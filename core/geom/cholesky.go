package geom

import "math"

// solveCholesky solves A x = b for a symmetric positive definite matrix of order
// n, its upper half in a by rows, and leaves x in b; a is lost. It reports false
// where a pivot is not positive. The method is Cholesky's, Golub and Van Loan,
// Matrix Computations, algorithm 4.2.1; gonum is its oracle in the tests. It is
// written out because the page's file cannot bear a linear-algebra library: the
// linker keeps every method of one, half a megabyte for these lines.
func solveCholesky(n int, a, b []float64) bool {
	for j := range n {
		for k := range j {
			for i := j; i < n; i++ {
				a[j*n+i] -= a[k*n+j] * a[k*n+i]
			}
		}
		pivot := a[j*n+j]
		if !(pivot > 0) {
			return false
		}
		root := math.Sqrt(pivot)
		for i := j; i < n; i++ {
			a[j*n+i] /= root
		}
	}
	for j := range n {
		for k := range j {
			b[j] -= a[k*n+j] * b[k]
		}
		b[j] /= a[j*n+j]
	}
	for j := n - 1; j >= 0; j-- {
		for k := j + 1; k < n; k++ {
			b[j] -= a[j*n+k] * b[k]
		}
		b[j] /= a[j*n+j]
	}
	return true
}
