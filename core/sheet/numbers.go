package sheet

import "strconv"

// decimal writes a number with so many places.
func decimal(v float64, places int) string { return strconv.FormatFloat(v, 'f', places, 64) }
