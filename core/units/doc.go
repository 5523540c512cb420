// Package units is the one place where numbers change units: SI inside, feet,
// inches and fractions or millimetres where a number is typed or shown.
//
// A Kind says what a number measures, a System how the user wants it shown.
// Rounding happens here and only in the text, in whole steps, halves away from
// zero, from a value first brought to whole nanometres so that the last bit of
// a float cannot change a printed digit.
package units

// System is how the user wants numbers shown.
type System int

const (
	// Imperial16 is feet and inches to the nearest 1/16 inch, pounds, degrees F.
	Imperial16 System = iota
	// Imperial8 is the same to the nearest 1/8 inch.
	Imperial8
	// Metric is millimetres, kilograms, degrees C.
	Metric
)

// denominator returns the parts an inch is divided into.
func (s System) denominator() int64 {
	if s == Imperial8 {
		return 8
	}
	return 16
}

// Step returns the step, in metres, to which a Length or SmallLength is shown:
// 1/16 inch, 1/8 inch or 1 mm.
func (s System) Step() float64 {
	if s == Metric {
		return Millimetre
	}
	return Inch / float64(s.denominator())
}
