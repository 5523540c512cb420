package geom

import "math"

// Bisect returns the place between lo and hi, either of which may be the greater, where f, of opposite signs at the two
// ends, passes through zero, to within tol. Where the signs agree it returns the
// end whose value is nearer zero and false.
func Bisect(f func(float64) float64, lo, hi, tol float64) (float64, bool) {
	flo, fhi := f(lo), f(hi)
	if flo == 0 {
		return lo, true
	}
	if fhi == 0 {
		return hi, true
	}
	if (flo > 0) == (fhi > 0) {
		if math.Abs(flo) < math.Abs(fhi) {
			return lo, false
		}
		return hi, false
	}
	for range 200 {
		mid := lo + (hi-lo)/2
		if math.Abs(hi-lo) <= tol || mid == lo || mid == hi {
			return mid, true
		}
		if fm := f(mid); (fm > 0) == (flo > 0) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo + (hi-lo)/2, true
}

// invPhi is the golden section, (sqrt 5 - 1)/2.
const invPhi = 0.6180339887498949

// leastFound is the share of the space between two samples to which a minimum is placed. It
// is not known more closely: values next to it differ by less than rounding.
const leastFound = 1e-8

// leastSteps is more than golden section alone takes to leastFound.
const leastSteps = 45

// Least returns where f is least on [lo, hi] and its value there. It takes the best of n
// equal steps and refines it between the neighbouring samples. It finds the deepest minimum
// that is wider than two steps.
func Least(f func(float64) float64, lo, hi float64, n int) (at, value float64) {
	step := (hi - lo) / float64(n)
	at, value = lo, f(lo)
	for i := 1; i <= n; i++ {
		x := lo + float64(i)*step
		if v := f(x); v < value {
			at, value = x, v
		}
	}
	return refine(f, max(lo, at-step), min(hi, at+step), at, value)
}

// refine returns the minimum of f on [a, b] from its value at a place between them, by
// parabolas through the three lowest places and, where those do not close in, by golden
// section. Brent 1973, Algorithms for Minimization without Derivatives, chapter 5.
func refine(f func(float64) float64, a, b, at, value float64) (float64, float64) {
	tol := leastFound * (b - a) / 2
	second, third := at, at
	fSecond, fThird := value, value
	step, before := 0.0, 0.0
	for range leastSteps {
		mid := (a + b) / 2
		if math.Abs(at-mid) <= 2*tol-(b-a)/2 {
			break
		}
		// The parabola's vertex lies p/q from the lowest place.
		r, q := (at-second)*(value-fThird), (at-third)*(value-fSecond)
		p := (at-third)*q - (at-second)*r
		if q = 2 * (q - r); q > 0 {
			p = -p
		} else {
			q = -q
		}
		last := before
		before = step
		if math.Abs(p) < math.Abs(q*last/2) && p > q*(a-at) && p < q*(b-at) {
			step = p / q
			if x := at + step; x-a < 2*tol || b-x < 2*tol {
				step = math.Copysign(tol, mid-at)
			}
		} else {
			if before = b - at; at >= mid {
				before = a - at
			}
			step = (1 - invPhi) * before
		}
		x := at + step
		if math.Abs(step) < tol {
			x = at + math.Copysign(tol, step)
		}
		v := f(x)
		if v <= value {
			if x < at {
				b = at
			} else {
				a = at
			}
			third, fThird, second, fSecond, at, value = second, fSecond, at, value, x, v
			continue
		}
		if x < at {
			a = x
		} else {
			b = x
		}
		switch {
		case v <= fSecond || second == at:
			third, fThird, second, fSecond = second, fSecond, x, v
		case v <= fThird || third == at || third == second:
			third, fThird = x, v
		}
	}
	return at, value
}
