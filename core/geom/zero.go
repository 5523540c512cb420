package geom

import "math"

// Zero returns the place in [lo, hi] where f, of opposite signs at the two ends,
// passes through zero, to within tol: the secant of the two ends, the value at one
// that stays halved, and a bisection wherever three such steps have not halved the
// space. A smooth f is asked for about eight times. Where the signs agree it
// returns the end whose value is nearer zero and false. Source of the halving: the
// Illinois rule, M. Dowell and P. Jarratt, BIT 11 (1971), 168-174.
func Zero(f func(float64) float64, lo, hi, tol float64) (float64, bool) {
	flo, fhi := f(lo), f(hi)
	switch {
	case flo == 0:
		return lo, true
	case fhi == 0:
		return hi, true
	case (flo > 0) == (fhi > 0):
		if math.Abs(flo) < math.Abs(fhi) {
			return lo, false
		}
		return hi, false
	}
	const mostSteps = 300
	kept, began := 0, hi-lo
	for step := 1; step <= mostSteps && hi-lo > tol; step++ {
		mid := lo + (hi-lo)/2
		if step%4 != 0 || hi-lo <= began/2 {
			mid = lo - flo*(hi-lo)/(fhi-flo)
		}
		if step%4 == 0 {
			began = hi - lo
		}
		// A zero next to an end is closed in on from its other side too.
		mid = max(lo+tol/2, min(hi-tol/2, mid))
		if mid <= lo || mid >= hi {
			break
		}
		fm := f(mid)
		switch {
		case fm == 0:
			return mid, true
		case (fm > 0) == (flo > 0):
			lo, flo = mid, fm
			if kept > 0 {
				fhi /= 2
			}
			kept = 1
		default:
			hi, fhi = mid, fm
			if kept < 0 {
				flo /= 2
			}
			kept = -1
		}
	}
	return lo + (hi-lo)/2, true
}
