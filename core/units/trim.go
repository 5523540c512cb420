package units

import (
	"strconv"
	"strings"
)

// Trimmed writes x with at most so many decimals, without zeros at the end and without a
// sign before zero: the form of numbers in files, drawings and attributes.
func Trimmed(x float64, places int) string {
	text := withoutZeros(strconv.FormatFloat(x, 'f', places, 64))
	if text == "-0" {
		return "0"
	}
	return text
}

// withoutZeros takes the zeros after a decimal point off a number's end, and the point
// where nothing is left after it.
func withoutZeros(text string) string {
	if !strings.Contains(text, ".") {
		return text
	}
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}
