package record

import (
	"fmt"
	"strings"
)

// remarkBegins is where remarks begin after a value that stands in no cell of its own.
var remarkBegins = lazily(`(?i)\s+(?:±|\+/-|\+-|(?:locked|keep|lettered|scaled)\b)`)

// unparted splits a line that nothing parts into cells, a name and its value: beam inside 33.
// A line that is so in two ways is refused: parts is then nil and why names both. Where it is
// so in none, the line comes back whole, or why says what its name lacks.
func (t *table) unparted(line string) (parts []string, why string) {
	body, remarks := line, []string(nil)
	if cuts := remarkBegins().FindAllStringIndex(line, -1); cuts != nil {
		body = line[:cuts[0][0]]
		for i, cut := range cuts {
			end := len(line)
			if i+1 < len(cuts) {
				end = cuts[i+1][0]
			}
			remarks = append(remarks, strings.TrimSpace(line[cut[0]:end]))
		}
	}
	words := strings.Fields(body)
	var ways []string
	for i := 1; i < len(words); i++ {
		name, value := strings.Join(words[:i], " "), strings.Join(words[i:], " ")
		if !isNumber(value) || !endsName(words[:i]) {
			continue
		}
		l := readLabel(name)
		switch _, _, err := l.kind.ValueKind().Parse(l.withUnit(value), t.system); {
		case !l.known:
			why = l.unsure
		case l.kind.Placed() && !l.placed():
			why = "Say where: a thwart in the name, or a station before the value, in cells of their own."
		case err == nil:
			parts = append([]string{name, value}, remarks...)
			ways = append(ways, fmt.Sprintf("%q", name+": "+value))
		}
	}
	switch {
	case len(ways) > 1:
		return nil, "This may be " + strings.Join(ways, " or ") + ": put a colon or comma after the name."
	case len(ways) == 1:
		return parts, ""
	case why != "":
		return nil, why
	}
	return []string{line}, ""
}

var (
	digit      = lazily(`[0-9½¼¾⅛⅜⅝⅞]`)
	unitOfName = lazily(`(?i)^(mm|cm|m|km|in|inch|inches|ft|feet|foot)[.]?$`)
)

// endsName tells whether words may be all of a name: a number at their end, with its unit or
// not, is part of the value, but for that of a thwart.
func endsName(words []string) bool {
	last := len(words) - 1
	if unitOfName().MatchString(words[last]) && last > 0 && digit().MatchString(words[last-1]) {
		return false
	}
	return !digit().MatchString(words[last]) || last > 0 && anyOf(wordsOf(words[last-1]), thwarts)
}
