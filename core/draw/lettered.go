package draw

import "strings"

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

// otherWidth is the breadth of letters past ASCII, such as arrows. boldWider is how much
// broader the bold face is: 1.10 to 1.15 in lines of words and figures.
const (
	otherWidth = 84
	boldWider  = 1.16
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

// Wrapped breaks a text at spaces into lines no broader than a width, in the size's unit,
// by their letters' breadth in a broad face. What belongs together stays on one line
// where it can; a word broader than the width is broken.
func Wrapped(text string, size float64, bold bool, width float64) []string {
	var lines []string
	line := ""
	add := func(word string) {
		switch longer := line + " " + word; {
		case line == "":
			line = word
		case Lettered(longer, size, bold) <= width:
			line = longer
		default:
			lines = append(lines, line)
			line = word
		}
	}
	for _, word := range words(text) {
		for _, part := range fitting(word, size, bold, width) {
			add(part)
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// WidestWord is the breadth of the widest piece of a text that Wrapped does not break.
func WidestWord(text string, size float64, bold bool) float64 {
	most := 0.0
	for _, word := range words(text) {
		most = max(most, Lettered(word, size, bold))
	}
	return most
}

// words parts a text at the spaces at which it may be broken.
func words(text string) []string {
	var out []string
	for _, f := range strings.Fields(text) {
		if n := len(out); n > 0 && Together(out[n-1], f) {
			out[n-1] += " " + f
		} else {
			out = append(out, f)
		}
	}
	return out
}

// fitting parts a word that is broader than a width, at its spaces first.
func fitting(word string, size float64, bold bool, width float64) []string {
	if Lettered(word, size, bold) <= width {
		return []string{word}
	}
	if before, after, ok := strings.Cut(word, " "); ok {
		return append(fitting(before, size, bold, width), fitting(after, size, bold, width)...)
	}
	var out []string
	part := ""
	for _, r := range word {
		if part != "" && Lettered(part+string(r), size, bold) > width {
			out = append(out, part)
			part = ""
		}
		part += string(r)
	}
	return append(out, part)
}

// Together reports whether what stands on both sides of a space stays on one line: feet
// with their inches, a figure with its fraction or its unit, and a word with its arrow.
func Together(before, after string) bool {
	figure := after != "" && after[0] >= '0' && after[0] <= '9'
	return figure && before != "" && !letter(before[len(before)-1]) || strings.HasPrefix(after, "mm") ||
		strings.HasPrefix(after, "→") || strings.HasSuffix(before, "←")
}

func letter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == ',' || c == ':' }
