package draw

// LineHeight is the height of a line of lettering as a share of its size.
const LineHeight = 1.15

// glyphWidths are the breadths of the letters of ASCII from the space on, in hundredths of
// their size: the advances in DejaVu Sans, the broadest face that a browser is likely to
// letter with unasked. Other faces take less room.
var glyphWidths = [...]uint8{
	32, 40, 46, 84, 64, 95, 78, 28, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84,
	84, 53, 100, 68, 69, 70, 77, 63, 58, 78, 75, 30, 30, 66, 56, 86, 75, 79, 60, 79, 70, 64, 61, 73, 68, 99, 69, 61, 69, 39,
	34, 39, 84, 50, 50, 61, 64, 55, 64, 62, 35, 64, 63, 28, 28, 58, 28, 97, 63, 61, 64, 64, 41, 52, 39, 63, 59, 82, 59, 59,
	53, 64, 34, 64, 84,
}

// otherWidth is the breadth of letters past ASCII, such as arrows, and boldWider how much
// broader the bold face is.
const (
	otherWidth = 84
	boldWider  = 1.1
)

// Lettered is how broad a line of lettering of a size is, in the size's unit.
func Lettered(text string, size float64, bold bool) float64 {
	sum := 0
	for _, r := range text {
		if i := int(r) - ' '; i >= 0 && i < len(glyphWidths) {
			sum += int(glyphWidths[i])
		} else {
			sum += otherWidth
		}
	}
	w := size * float64(sum) / 100
	if bold {
		w *= boldWider
	}
	return w
}
