package record

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// label is what a row's name says.
type label struct {
	kind  Kind
	known bool
	// thwart is a thwart's number, endThwart for the outermost; middle tells that the
	// middle is named, end the gunwale's end, and headboard that a height is taken there.
	thwart                 int
	middle, end, headboard bool
	side                   Side
	from                   Origin
	// unit is the one that the name ends in, for the bare numbers under or beside it.
	unit string
	// height is the text of the one it was taken at, and half tells that half is named.
	height string
	half   bool
	// unsure asks for the word that is missing; "" where the kind is known.
	unsure string
}

// placed tells whether the name itself says where a placed measurement was taken.
func (l label) placed() bool { return l.thwart != 0 || l.middle || l.end || l.headboard }

// wordsOf splits a name at everything that is no letter or digit.
func wordsOf(name string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return !unicode.IsLetter(r) &&
			!unicode.IsDigit(r)
	}) {
		set[w] = true
	}
	return set
}

func anyOf(set map[string]bool, list []string) bool {
	for _, w := range list {
		if set[w] {
			return true
		}
	}
	return false
}

// readLabel reads a row's name. The words before "from" say what is measured and where,
// those after it where the station is counted from.
func readLabel(name string) label {
	height, rest := cutHeight(name)
	if set := wordsOf(rest); height != "" && anyOf(set, widths) {
		name = rest
	} else {
		height = ""
	}
	set := wordsOf(name)
	what, _, _ := strings.Cut(strings.ToLower(name), "from")
	where := wordsOf(what)
	l := label{from: readOrigin(name), unit: unitIn(name), height: height, half: set["half"]}
	if height != "" {
		set[heightMark] = true
	}
	var strange []string
	if l.kind, l.known, strange = kindNamed(set); !l.known {
		l.unsure = missingWord(set, strange)
		return l
	}
	if l.kind.Sided() {
		l.side = readSide(set)
	}
	if l.kind.Placed() && set["headboard"] {
		l.headboard = true
		return l
	}
	// A digit alone may be a station.
	numbered := anyOf(where, thwarts) || l.kind == Bay || !strings.ContainsAny(what, "0123456789")
	for w := range where {
		if numbered {
			l.thwart = max(l.thwart, numbers[w])
		}
	}
	l.middle = anyOf(where, middles)
	if l.kind.Placed() && l.thwart == 0 && strings.ContainsAny(what, "0123456789") {
		l.known, l.unsure = false, "Put the station in a cell of its own, after the name."
		return l
	}
	switch {
	case l.thwart != 0 || !anyOf(where, ends):
	case anyOf(where, thwarts):
		l.thwart = endThwart
	case l.kind.atEnds() && !l.middle:
		l.end = true
	}
	return l
}

// unitIn is the unit that a name ends in, to stand after its bare numbers.
func unitIn(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return !unicode.IsLetter(r) &&
			!unicode.IsDigit(r)
	})
	if len(words) > 1 {
		switch last := words[len(words)-1]; last {
		case "mm", "cm", "m", "in", "inch", "inches", "ft", "feet":
			return " " + last
		}
	}
	return ""
}

func readSide(set map[string]bool) Side {
	switch {
	case anyOf(set, []string{"aft", "after", "stern"}):
		return Aft
	case anyOf(set, []string{"forward", "fore", "bow"}):
		return Forward
	}
	return BothEnds
}

// missingWord says which word a name lacks, or which of its words is not understood.
func missingWord(set map[string]bool, strange []string) string {
	beam := anyOf(set, widths) && !anyOf(set, thwarts)
	switch {
	case beam && (anyOf(set, []string{"max", "maximum"}) || len(strange) == 0):
		return "Say whether the beam is inside or outside the gunwales, or the greatest breadth of bark."
	case len(strange) > 0:
		kinds := nearKinds(set)
		return fmt.Sprintf("This may be %s or, by the word %q, something else: use only words that name the measurement.",
			strings.Join(kinds, " or "), strange[0])
	case anyOf(set, thwarts):
		return "Say whether this is the thwart's position or its clear length."
	}
	return "What this measures is not understood."
}

// nearKinds names at most two kinds that a name would fit with some words left out.
func nearKinds(set map[string]bool) []string {
	var near []string
	for _, n := range namings {
		if name := fmt.Sprintf("%q", n.kind); n.fits(set) && !slices.Contains(near, name) && len(near) < 2 {
			near = append(near, name)
		}
	}
	return near
}

// readOrigin is where a row's name counts stations from.
func readOrigin(name string) Origin {
	_, after, _ := strings.Cut(strings.ToLower(name), "from")
	return originOf(after)
}

// originOf returns the origin that words name, or else FromMiddle.
func originOf(words string) Origin {
	set := wordsOf(words)
	switch {
	case anyOf(set, middles):
		return FromMiddle
	case anyOf(set, gunwale) && anyOf(set, ends):
		return FromGunwaleEnd
	case anyOf(set, append([]string{"stem", "bow", "stern", "point", "tip"}, ends...)):
		return FromEnd
	}
	return FromMiddle
}
