package record

import (
	"fmt"
	"strings"

	"barkwright/core/units"
)

var (
	wideGap = lazily(` {2,}`)
	// A comma with a space after it parts cells; one without, between digits, may be a
	// decimal comma or part thousands.
	spacedComma = lazily(`,\s`)
	tightComma  = lazily(`[0-9]+(,[0-9]+)+`)
)

// cells splits a line into cells at the separator it uses, empty cells included. A line
// whose commas may be either in its numbers or between its cells is refused: parts is
// then nil and why names both readings.
func cells(line string) (parts []string, why string) {
	switch {
	case strings.Contains(line, "\t"):
		parts = split(line, '\t')
	case strings.Contains(outsideQuotes(line), ";"):
		parts = split(line, ';')
	default:
		if parts = nameFirst(line); parts != nil {
			break
		}
		bare := outsideQuotes(line)
		if !strings.Contains(bare, ",") {
			if parts = wideGap().Split(line, -1); len(parts) == 1 {
				parts = strings.SplitN(line, ":", 2)
			}
			break
		}
		if tight := tightComma().FindString(bare); tight != "" && spacedComma().MatchString(bare) {
			return nil, fmt.Sprintf("%s may be one number, or %s in cells of their own: put a number in quotes, or part the "+
				"cells by semicolons.",
				tight, strings.ReplaceAll(tight, ",", " and "))
		}
		parts = split(line, ',')
	}
	for i, p := range parts {
		parts[i] = unquoted(strings.TrimSpace(p))
	}
	return parts, ""
}

// nameFirst splits a line whose name ends in a colon or a wide gap, and returns nil for
// other lines. A comma after the name belongs to the value, begins a remark or, with a
// space, stands between station and value.
func nameFirst(line string) []string {
	end, next := strings.Index(line, ":"), strings.Index(line, ":")+1
	if end < 0 || !readLabel(line[:end]).known {
		gap := wideGap().FindStringIndex(line)
		if gap == nil || !readLabel(line[:gap[0]]).known {
			return nil
		}
		end, next = gap[0], gap[1]
	}
	parts := []string{line[:end]}
	l := readLabel(line[:end])
	stationed := l.kind.Placed() && !l.placed()
	for _, cell := range wideGap().Split(line[next:], -1) {
		begin := 0
		for i, r := range cell {
			after := cell[min(i+1, len(cell)):]
			spaced := strings.TrimLeft(after, " ")
			if r == ',' && spaced != "" && (stationed && spaced != after || !strings.ContainsAny(spaced[:1], "0123456789")) {
				parts = append(parts, cell[begin:i])
				begin = i + 1
			}
		}
		parts = append(parts, cell[begin:])
	}
	return parts
}

// split parts a line at a separator that stands in no quoted cell.
func split(line string, sep rune) []string {
	var parts []string
	begin := 0
	for i, r := range outsideQuotes(line) {
		if r == sep {
			parts = append(parts, line[begin:i])
			begin = i + 1
		}
	}
	return append(parts, line[begin:])
}

// outsideQuotes returns a line with the text of quoted cells blanked, byte for byte. A
// quote that does not begin a cell is an inch mark.
func outsideQuotes(line string) string {
	out := []byte(line)
	for i := 0; i < len(line); i++ {
		if line[i] != '"' || strings.TrimRight(line[:i], " ") != "" &&
			!strings.ContainsAny(lastOf(strings.TrimRight(line[:i], " ")), ",;\t") {
			continue
		}
		end := closing(line, i)
		for k := i; k < end; k++ {
			out[k] = ' '
		}
		i = max(i, end-1)
	}
	return string(out)
}

// closing returns the index after the quote that closes the one at i, or i. A closing
// quote stands before a separator or the line's end; quotes inside a cell are doubled.
func closing(line string, i int) int {
	for k := i + 1; k < len(line); k++ {
		if line[k] != '"' {
			continue
		}
		if k+1 < len(line) && line[k+1] == '"' {
			k++
			continue
		}
		rest := strings.TrimLeft(line[k+1:], " ")
		if rest == "" || strings.ContainsAny(rest[:1], ",;\t") {
			return k + 1
		}
		return i
	}
	return i
}

func lastOf(text string) string { return text[max(0, len(text)-1):] }

// unquoted takes off the quotes a spreadsheet puts round a cell that holds inch
// marks, and halves those inside.
func unquoted(cell string) string {
	if len(cell) > 1 && closing(cell, 0) == len(cell) && cell[0] == '"' {
		return strings.ReplaceAll(cell[1:len(cell)-1], `""`, `"`)
	}
	return cell
}

// filled returns the cells up to the last that is not empty.
func filled(parts []string) []string {
	for len(parts) > 0 && parts[len(parts)-1] == "" {
		parts = parts[:len(parts)-1]
	}
	return parts
}

var numberAlone = lazily(`(?i)^[−-]?[0-9.,½¼¾⅛⅜⅝⅞][^a-z]*(mm|cm|m|km|in|inch|inches|ft|feet|foot)?[.]?$`)

// isNumber tells whether a cell is a number or a length and nothing else, whether or
// not it can be read.
func isNumber(cell string) bool {
	_, _, err := units.Offset.Parse(cell, units.Imperial16)
	return err == nil || numberAlone().MatchString(cell)
}

var (
	inFeet   = lazily(`(?i)[0-9]\s*('|′|’|ft\.?|feet|foot)$`)
	inInches = lazily(`(?i)("|″|”|''|in\.?|inch|inches)$`)
)

// feetAndInches joins two cells of which one holds feet and the other inches, by their
// marks.
func feetAndInches(value, next string) (string, bool) {
	both := value + " " + next
	if !inFeet().MatchString(value) || !inInches().MatchString(next) {
		return "", false
	}
	_, _, err := units.Length.Parse(both, units.Imperial16)
	return both, err == nil
}

// readings names what a value and a number in the cell after it may be together.
func readings(k units.Kind, value, next string, s units.System) []string {
	var all []string
	digits := strings.Trim(value, "0123456789") == "" && strings.ContainsAny(next[:1], "0123456789")
	for _, together := range []string{value + " " + next, value + "." + next, value + next} {
		whole := together == value+next && leading(next) != thousand
		if v, _, err := k.Parse(together, s); err == nil && !whole && (digits || strings.Contains(together, " ")) {
			if text := k.Format(v, s); len(all) == 0 || all[len(all)-1] != text {
				all = append(all, text)
			}
		}
	}
	return all
}

// thousand is how many digits stand between the marks that part thousands.
const thousand = 3

func leading(text string) int {
	return len(text) - len(strings.TrimLeft(text, "0123456789"))
}
