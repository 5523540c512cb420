package geom

import (
	"math"
)

// LeastSquares asks for the x within its bounds that makes the sum of squares of some
// residuals least. Lower, Upper and Scale have the length of x.
type LeastSquares struct {
	// Residuals fills out, of length Count, for x inside the bounds. It has to be
	// continuous and to return finite numbers.
	Residuals func(x, out []float64)
	Count     int
	// Lower and Upper bound x; equal ones hold it.
	Lower, Upper []float64
	// Scale is a change of each x that matters. It sets the steps of the derivatives and
	// decides when the search ends.
	Scale []float64
}

// Minimum is the result of a search.
type Minimum struct {
	X []float64
	// Sum is the sum of the squares of the residuals at X.
	Sum float64
	// Settled says that the search ended because nothing improved, and not because the turns
	// ran out. X is the best point seen in either case.
	Settled bool
}

const (
	leastSquaresTurns = 60
	// differenceStep is the share of Scale stepped each way for a derivative:
	// about the cube root of the rounding of a float64, the usual best.
	differenceStep = 1e-5
	// settledStep is the share of Scale under which a step ends the search.
	settledStep = 1e-7
	// firstDamping, and how it falls after a step that helped and grows after one
	// that did not, are the customary choices of the method.
	firstDamping, dampingFall, dampingGrowth, mostDamping = 1e-3, 0.2, 5.0, 1e10
)

// Minimise searches from start, first brought inside the bounds, by damped
// Gauss-Newton steps projected on the bounds: a variable at a bound that would
// be pushed out is held there for the step. The same question gives the same
// answer, to the last bit.
// The method is Levenberg (1944) and Marquardt (1963), from memory.
func (q LeastSquares) Minimise(start []float64) Minimum {
	n := len(start)
	if len(q.Lower) != n || len(q.Upper) != n || len(q.Scale) != n {
		panic("geom: least squares with bounds or scales of another length")
	}
	s := newSearch(q, start)
	for range leastSquaresTurns {
		s.linearise()
		if !s.step() {
			return Minimum{X: s.x, Sum: s.sum, Settled: true}
		}
	}
	return Minimum{X: s.x, Sum: s.sum}
}

// search is the state of one minimisation. The variables are in units of Scale.
type search struct {
	LeastSquares
	x, trial         []float64
	now, next, minus []float64
	sum, damping     float64
	jacobian         []float64 // Count rows of len(x)
	gradient         []float64
	free             []int
	normal, move     []float64
}

func newSearch(q LeastSquares, start []float64) *search {
	n := len(start)
	s := &search{
		LeastSquares: q, damping: firstDamping,
		x: append([]float64(nil), start...), trial: make([]float64, n),
		now: make([]float64, q.Count), next: make([]float64, q.Count), minus: make([]float64, q.Count),
		jacobian: make([]float64, q.Count*n), gradient: make([]float64, n),
		free: make([]int, 0, n), normal: make([]float64, n*n), move: make([]float64, n),
	}
	for i := range s.x {
		s.x[i] = s.inside(i, s.x[i])
	}
	q.Residuals(s.x, s.now)
	s.sum = sumOfSquares(s.now)
	return s
}

func (s *search) inside(i int, v float64) float64 {
	return max(s.Lower[i], min(s.Upper[i], v))
}

// linearise finds the derivatives by central differences, one-sided at a bound,
// the gradient and which variables are free to move.
func (s *search) linearise() {
	n := len(s.x)
	s.free = s.free[:0]
	copy(s.trial, s.x)
	for i := range s.x {
		h := differenceStep * s.Scale[i]
		hi, lo := s.inside(i, s.x[i]+h), s.inside(i, s.x[i]-h)
		s.gradient[i] = 0
		if hi == lo {
			continue
		}
		s.trial[i] = hi
		s.Residuals(s.trial, s.next)
		s.trial[i] = lo
		s.Residuals(s.trial, s.minus)
		s.trial[i] = s.x[i]
		for r := range s.now {
			slope := (s.next[r] - s.minus[r]) / (hi - lo) * s.Scale[i]
			s.jacobian[r*n+i] = slope
			s.gradient[i] += slope * s.now[r]
		}
		outward := s.x[i] <= s.Lower[i] && s.gradient[i] > 0 || s.x[i] >= s.Upper[i] && s.gradient[i] < 0
		if !outward && s.gradient[i] != 0 {
			s.free = append(s.free, i)
		}
	}
}

// step moves x to a better place and reports whether it moved far enough to matter. The
// damping grows until a step helps.
func (s *search) step() bool {
	for len(s.free) > 0 && s.damping < mostDamping {
		if !s.solve() {
			s.damping *= dampingGrowth
			continue
		}
		far := 0.0
		copy(s.trial, s.x)
		for k, i := range s.free {
			s.trial[i] = s.inside(i, s.x[i]-s.move[k]*s.Scale[i])
			far = max(far, math.Abs(s.trial[i]-s.x[i])/s.Scale[i])
		}
		if far < settledStep {
			return false
		}
		s.Residuals(s.trial, s.next)
		if sum := sumOfSquares(s.next); sum < s.sum {
			s.sum = sum
			s.x, s.trial = s.trial, s.x
			s.now, s.next = s.next, s.now
			s.damping *= dampingFall
			return true
		}
		s.damping *= dampingGrowth
	}
	return false
}

// solve finds the damped Gauss-Newton step of the free variables; false where the
// damping is too small for the matrix to be positive definite.
func (s *search) solve() bool {
	n, m := len(s.x), len(s.free)
	for a, i := range s.free {
		for b := a; b < m; b++ {
			dot := 0.0
			for r := range s.now {
				dot += s.jacobian[r*n+i] * s.jacobian[r*n+s.free[b]]
			}
			s.normal[a*m+b] = dot
		}
		s.normal[a*m+a] *= 1 + s.damping
		s.move[a] = s.gradient[i]
	}
	return solveCholesky(m, s.normal[:m*m], s.move[:m])
}

func sumOfSquares(v []float64) float64 {
	total := 0.0
	for _, r := range v {
		total += r * r
	}
	return total
}
