package units

import (
	"fmt"
	"strconv"
	"strings"
)

// thousand is how many digits stand between the marks that part thousands.
const thousand = 3

var groupMarks = strings.NewReplacer(" ", "", "'", "")

// twoReadings is digits that may mean either of two numbers: reading the wrong one
// wastes bark, so both are named.
type twoReadings struct {
	raw string
	// parted is the number where the mark parts thousands; first and second are both
	// as they can be written instead.
	parted        float64
	first, second string
}

// Error names both.
func (e *twoReadings) Error() string {
	return fmt.Sprintf("%s may mean %s or %s: write one of them.", e.raw, e.first, e.second)
}

// endOfGroups returns where the groups of a number that starts at i end: one to three
// digits, and then three at a time, each after the same mark. It returns i where there
// are no groups. Digits over a slash are a fraction's.
func endOfGroups(runes []rune, i int) int {
	first := i
	for i < len(runes) && isDigit(runes[i]) {
		i++
	}
	if runes[first] == '0' || i == first || i-first > thousand || i == len(runes) {
		return first
	}
	mark, groupsEnd := runes[i], first
	for (mark == ' ' || mark == '\'') && i < len(runes) && runes[i] == mark {
		next := i + 1
		for next < len(runes) && isDigit(runes[next]) {
			next++
		}
		after := strings.TrimLeft(string(runes[next:]), " ")
		if next-i-1 != thousand || strings.HasPrefix(after, "/") {
			break
		}
		i, groupsEnd = next, next
	}
	return groupsEnd
}

// readDecimal reads digits with a decimal point or comma and with points or commas
// between thousands. One comma before exactly three digits may be either and is
// refused; of one such point other is the reading in thousands, for who knows the unit
// to judge. A leading zero leaves one meaning.
func readDecimal(t token) (v float64, other *twoReadings, err error) {
	notOne := fmt.Errorf("%s is not one number.", t.raw)
	text := t.text
	last := strings.LastIndexAny(text, ".,")
	if last < 0 {
		v, err = strconv.ParseFloat(text, 64)
		if err != nil {
			err = fmt.Errorf("%s is not a number.", t.raw)
		}
		return v, nil, err
	}
	mark := text[last : last+1]
	before, after := text[:last], text[last+1:]
	switch {
	case after == "" && mark == ",":
		return 0, nil, notOne
	case strings.Contains(before, mark):
		// The same mark twice parts thousands, and there is no decimal one.
		if t.grouped || !parted(text, mark) {
			return 0, nil, notOne
		}
		before, after = text, ""
	case strings.ContainsAny(before, ".,"):
		if t.grouped || !parted(before, before[strings.IndexAny(before, ".,"):][:1]) {
			return 0, nil, notOne
		}
	case !t.grouped && parted(text, mark):
		whole := before + after
		other = &twoReadings{raw: t.raw, first: whole, second: before + "." + after}
		if mark == "," {
			return 0, nil, other
		}
		other.second = before + "." + strings.TrimRight(after, "0")
		other.second = strings.TrimSuffix(other.second, ".")
		other.parted, _ = strconv.ParseFloat(whole, 64)
	}
	digits := strings.NewReplacer(".", "", ",", "").Replace(before)
	v, err = strconv.ParseFloat(digits+"."+after, 64)
	if err != nil {
		return 0, nil, notOne
	}
	return v, other, nil
}

// parted tells whether a mark, and no other, parts digits into thousands.
func parted(digits, mark string) bool {
	groups := strings.Split(digits, mark)
	for i, g := range groups {
		if strings.Trim(g, "0123456789") != "" || i > 0 && len(g) != thousand {
			return false
		}
	}
	return groups[0] != "" && groups[0][0] != '0' && len(groups[0]) <= thousand
}
