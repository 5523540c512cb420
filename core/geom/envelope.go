package geom

import "math"

// factorEnvelope replaces a symmetric positive definite matrix by its Cholesky
// factor U, A = U'U, and returns false where a pivot is not positive. Row i of
// the upper triangle stands in a[i*stride:], diagonal first; only its first
// reach[i/2] numbers are ever other than zero, with reach not falling by more
// than the rows passed, so that no fill falls outside. Rows come in pairs, the
// two coordinates of a point, and a pair is taken off the rows under it at once:
// that halves the traffic with memory, which is what the browser is slowest at.
func factorEnvelope(a []float64, stride int, reach []int) bool {
	for pair, k := range reach {
		at := 2 * pair * stride
		x, y := a[at:at+k], a[at+stride:at+stride+k-1]
		if !(x[0] > 0) {
			return false
		}
		scaleBy(x, 1/math.Sqrt(x[0]))
		subtract(y, x[1:], x[1])
		if !(y[0] > 0) {
			return false
		}
		scaleBy(y, 1/math.Sqrt(y[0]))
		x, y = x[2:], y[1:]
		for i := range x {
			p, q := x[i], y[i]
			u, v := x[i:], y[i:]
			row := a[at+(2+i)*stride:]
			row = row[:len(u)]
			v = v[:len(u)]
			for c := range u {
				row[c] -= p*u[c] + q*v[c]
			}
		}
	}
	return true
}

// solveEnvelope solves U'U x = b in place of b.
func solveEnvelope(a []float64, stride int, reach []int, b []float64) {
	for i := range b {
		row := a[i*stride : i*stride+reach[i/2]-i%2]
		b[i] /= row[0]
		subtract(b[i+1:i+len(row)], row[1:], b[i])
	}
	for i := len(b) - 1; i >= 0; i-- {
		row := a[i*stride : i*stride+reach[i/2]-i%2]
		sum := b[i]
		for c, u := range row[1:] {
			sum -= u * b[i+1+c]
		}
		b[i] = sum / row[0]
	}
}

func scaleBy(x []float64, k float64) {
	for i := range x {
		x[i] *= k
	}
}

// subtract takes k x off y.
func subtract(y, x []float64, k float64) {
	x = x[:len(y)]
	for i := range y {
		y[i] -= k * x[i]
	}
}
