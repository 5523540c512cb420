package shape

import "math"

// The bits of a float64: where its exponent begins, the root of a half, the least normal
// number and infinity.
const (
	exponentAt   = 52
	rootHalf     = 0x3fe6a09e667f3bcd
	leastNormal  = 1 << exponentAt
	infinity     = 0x7ff << exponentAt
	mostExponent = 1000
)

// Power returns x^p as math.Pow does but for the last bits, in less than half the time in a
// browser, where it calls nothing. By Taylor's series of the logarithm and, between eighths
// of an exponent, of the exponential.
func Power(x, p float64) float64 {
	bits := math.Float64bits(x)
	if bits-leastNormal >= infinity-leastNormal {
		return math.Pow(x, p) // zero, too small to be normal, negative, infinite or no number
	}
	// x is f times two to the power k, f between the roots of a half and of two.
	k := int64(bits-rootHalf) >> exponentAt
	f := math.Float64frombits(bits - uint64(k)<<exponentAt)
	// ln f = 2 (s + s^3/3 + s^5/5 + ...), summed in parts that do not wait for each other.
	s := (f - 1) / (f + 1)
	z := s * s
	w := z * z
	q := w * w
	even := 1 + w*(1.0/5) + q*(1.0/9+w*(1.0/13)+q*(1.0/17+w*(1.0/21)))
	odd := 1.0/3 + w*(1.0/7) + q*(1.0/11+w*(1.0/15)+q*(1.0/19))
	y := p * (float64(k) + 2*math.Log2E*s*(even+z*odd))
	if !(y > -mostExponent && y < mostExponent) {
		return math.Pow(x, p)
	}
	n := math.Floor(8*y + 0.5)
	u := (y - n/8) * math.Ln2
	v := u * u
	e := 1 + u + v*(1.0/2+u*(1.0/6)) + v*v*(1.0/24+u*(1.0/120)+v*(1.0/720+u*(1.0/5040)))
	i := int64(n)
	return math.Float64frombits(math.Float64bits(e*eighths[i&7]) + uint64(i>>3)<<exponentAt)
}

// eighths are two to the power of so many eighths.
var eighths = [8]float64{
	1.000000000000000000000,
	1.090507732665257659207,
	1.189207115002721066717,
	1.296839554651009665934,
	1.414213562373095048802,
	1.542210825407940823612,
	1.681792830507429086062,
	1.834008086409342463487,
}
