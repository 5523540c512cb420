package geom

import "math"

// envelope is a symmetric positive definite matrix of 2 x 2 blocks, one for each
// pair of points, kept by the rows of its lower triangle from the first block of
// each row that is not zero to the diagonal. Its Cholesky factor fills the same
// places and no others. It works by inner products of four rows at a time, which
// read twice what they compute and write nothing: reading and writing memory is
// what the browser is slowest at.
type envelope struct {
	first []int // by block row, the first block
	start []int // by block row, where its two rows of numbers begin in a
	wide  int   // blocks of the widest row before its diagonal
	a     []float64
}

// shape sizes e for block rows that begin at first, and clears it.
func (e *envelope) shape(first []int) {
	e.first = first
	e.start = resized(e.start, len(first))
	size := 0
	e.wide = 0
	for v, f := range first {
		e.wide = max(e.wide, v-f)
		e.start[v] = size
		size += 4 * (v - f + 1)
	}
	e.a = resized(e.a, size)
	clear(e.a)
}

// rows returns the two rows of numbers of block row v, both as long as the block
// row: the first one's last number lies above the diagonal and is not used.
func (e *envelope) rows(v int) (x, y []float64) {
	n := 2 * (v - e.first[v] + 1)
	at := e.start[v]
	return e.a[at : at+n : at+n], e.a[at+n : at+2*n : at+2*n]
}

// pin makes row and column i those of the identity.
func (e *envelope) pin(i int) {
	v := i / 2
	x, y := e.rows(v)
	diagonal := len(x) - 2
	y[diagonal] = 0
	if i%2 == 0 {
		clear(x)
		x[diagonal] = 1
	} else {
		clear(y)
		y[diagonal+1] = 1
	}
	for u := v + 1; u < len(e.first) && u <= v+e.wide; u++ {
		if c := i - 2*e.first[u]; c >= 0 {
			x, y := e.rows(u)
			x[c], y[c] = 0, 0
		}
	}
}

// raise multiplies the diagonal by k.
func (e *envelope) raise(k float64) {
	for v := range e.first {
		x, y := e.rows(v)
		x[len(x)-2] *= k
		y[len(y)-1] *= k
	}
}

// factored says how a factorisation ended.
type factored int

const (
	positive factored = iota // the matrix is positive definite and factored
	singular                 // a pivot is not positive
	stopped                  // the caller's pause ended it
)

// pauseWork is how many multiplications are done between two calls of a pause: a
// millisecond or less in a browser on a machine of 2020.
const pauseWork = 500_000

// factor replaces the matrix A by L, A = LL', with the reciprocals of the diagonal
// in its place. pause may be nil; see FlattenWorkspace.Pause.
func (e *envelope) factor(pause func() bool) factored {
	work := 0
	for v, f := range e.first {
		if work += 2 * (v - f) * (v - f); pause != nil && work > pauseWork {
			if work = 0; !pause() {
				return stopped
			}
		}
		x, y := e.rows(v)
		for u := f; u < v; u++ {
			p, q := e.rows(u)
			from := max(f, e.first[u])
			at := 2 * (u - f)
			d := len(p) - 2
			// The inner products stand here and not in a function of their own: they are short, and
			// a call costs a browser as much as several terms.
			a, b := x[2*(from-f):at], y[2*(from-f):at]
			c := p[2*(from-e.first[u]):]
			g := q[2*(from-e.first[u]):]
			b, c, g = b[:len(a)], c[:len(a)], g[:len(a)]
			var xp, xq, yp, yq float64
			for i := 1; i < len(a); i += 2 {
				xp += a[i-1]*c[i-1] + a[i]*c[i]
				xq += a[i-1]*g[i-1] + a[i]*g[i]
				yp += b[i-1]*c[i-1] + b[i]*c[i]
				yq += b[i-1]*g[i-1] + b[i]*g[i]
			}
			x[at] = (x[at] - xp) * p[d]
			x[at+1] = (x[at+1] - xq - x[at]*q[d]) * q[d+1]
			y[at] = (y[at] - yp) * p[d]
			y[at+1] = (y[at+1] - yq - y[at]*q[d]) * q[d+1]
		}
		d := len(x) - 2
		var xx, xy, yy float64
		for i, k := range x[:d] {
			xx += k * k
			xy += k * y[i]
			yy += y[i] * y[i]
		}
		if !(x[d]-xx > 0) {
			return singular
		}
		x[d] = 1 / math.Sqrt(x[d]-xx)
		y[d] = (y[d] - xy) * x[d]
		if left := y[d+1] - yy - y[d]*y[d]; left > 0 {
			y[d+1] = 1 / math.Sqrt(left)
		} else {
			return singular
		}
	}
	return positive
}

// solve replaces b by the solution of A x = b once A is factored.
func (e *envelope) solve(b []float64) {
	for v, f := range e.first {
		x, y := e.rows(v)
		d := len(x) - 2
		var s, t float64
		known := b[2*f : 2*v]
		for i, k := range known {
			s += x[i] * k
			t += y[i] * k
		}
		b[2*v] = (b[2*v] - s) * x[d]
		b[2*v+1] = (b[2*v+1] - t - y[d]*b[2*v]) * y[d+1]
	}
	for v := len(e.first) - 1; v >= 0; v-- {
		x, y := e.rows(v)
		d := len(x) - 2
		t := b[2*v+1] * y[d+1]
		s := (b[2*v] - y[d]*t) * x[d]
		b[2*v], b[2*v+1] = s, t
		rest := b[2*e.first[v] : 2*v]
		for i := range rest {
			rest[i] -= x[i]*s + y[i]*t
		}
	}
}
