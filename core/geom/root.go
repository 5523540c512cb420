package geom

import "math"

// Bisect returns the place in [lo, hi] where f, of opposite signs at the two
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
		if hi-lo <= tol || mid == lo || mid == hi {
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

// goldenSteps narrows the space between two samples by a factor of 2e8. A minimum is not
// known more closely: values next to it differ by less than rounding.
const goldenSteps = 40

// Least returns where f is least on [lo, hi] and its value there. It takes the best of n
// equal steps and refines it by golden section between the neighbouring samples. It
// finds the deepest minimum that is wider than two steps.
func Least(f func(float64) float64, lo, hi float64, n int) (at, value float64) {
	step := (hi - lo) / float64(n)
	at, value = lo, f(lo)
	for i := 1; i <= n; i++ {
		x := lo + float64(i)*step
		if v := f(x); v < value {
			at, value = x, v
		}
	}
	a, b := max(lo, at-step), min(hi, at+step)
	c, d := b-invPhi*(b-a), a+invPhi*(b-a)
	fc, fd := f(c), f(d)
	for range goldenSteps {
		if fc < fd {
			b, d, fd = d, c, fc
			c = b - invPhi*(b-a)
			fc = f(c)
		} else {
			a, c, fc = c, d, fd
			d = a + invPhi*(b-a)
			fd = f(d)
		}
	}
	mid := (a + b) / 2
	if v := f(mid); v < value {
		return mid, v
	}
	return at, value
}
