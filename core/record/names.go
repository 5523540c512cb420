package record

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// naming says by which words a row's name is known to be of a kind. The name must have
// one word of each list in all. Its other words must be in also, in anyName or, for a
// kind that is taken at a place, in placeWords.
type naming struct {
	kind Kind
	all  [][]string
	also []string
}

var (
	widths  = []string{"width", "widths", "wide", "breadth", "beam"}
	lengths = []string{"length", "lengths", "long", "loa"}
	heights = []string{"height", "heights", "high"}
	gunwale = []string{"gunwale", "gunwales", "inwale", "inwales"}
	middles = []string{"middle", "mid", "centre", "center", "amidships", "midships"}
	ends    = []string{"end", "ends", "last", "outer", "outermost"}
	ribs    = []string{"rib", "ribs"}
	thwarts = []string{"thwart", "thwarts", "bar", "crossbar"}
	thick   = []string{"thickness", "thick"}
	stem    = []string{"stem", "piece", "fore", "aft"}
	counts  = []string{"number", "count"}
	// above is where heights are counted from, and over what else they are.
	above = []string{"height", "heights", "above", "over", "base", "baseline", "line", "bottom", "top", "gunwale",
		"gunwales", "inwale", "inwales", "rail", "cap"}

	// anyName are words without a meaning of their own.
	anyName = []string{"the", "a", "an", "of", "at", "in", "to", "on", "from", "and", "is", "by", "boat", "canoe", "hull",
		"measured", "lettered", "scaled", "about", "approx", "approximately", "mm", "cm", "m", "ft", "feet", "foot",
		"inch", "inches"}
	// placeWords say where, or of which half.
	placeWords = joined(middles, ends, gunwale, thwarts, []string{"headboard", "stem", "bow", "stern", "point", "tip",
		"head",
		"forward", "fore", "aft", "after", "position", "station", "stands", "distance", "foremost"})
)

func joined(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

// namings are tried in order: the more particular come first.
var namings = []naming{
	{FrameWidth, [][]string{{"frame"}, widths}, joined([]string{"building"}, middles)},
	{FrameLength, [][]string{{"frame"}, lengths}, []string{"building"}},
	{RibSpacing, [][]string{ribs, {"spacing", "apart", "centres", "centers", "space"}},
		[]string{"centre", "center", "between"}},
	{RibWidthEnd, [][]string{ribs, widths, ends}, nil},
	{RibWidthMid, [][]string{ribs, widths}, middles},
	{RibCount, [][]string{ribs}, counts},
	{StemLaminations, [][]string{{"lamination", "laminations", "splits", "layers"}}, joined(stem, counts)},
	{StemDepth, [][]string{{"stem"}, {"depth", "deep", "fore"}}, stem},
	{CapThickness, [][]string{{"cap"}}, thick},
	{InwaleThickness, [][]string{gunwale, thick}, nil},
	{EndPoint, [][]string{{"profile"}}, joined([]string{"point", "outer", "edge"}, heights)},
	{Bay, [][]string{{"bay", "bays", "spacing"}}, []string{"between"}},
	{BottomRise, [][]string{{"rise", "rocker", "bottom"}}, joined([]string{"rise", "rocker", "bottom"}, heights)},
	{DepthRail, [][]string{{"depth"}, {"rail", "cap"}}, joined(middles, []string{"top"})},
	{DepthInwale, [][]string{{"depth"}}, joined(middles, gunwale, []string{"top"})},
	{RailHeight, [][]string{{"rail"}}, above},
	{RailHeight, [][]string{{"cap"}, heights}, above},
	{SheerHeight, [][]string{{"sheer"}}, above},
	{SheerHeight, [][]string{gunwale, heights}, above},
	{EndHeight, [][]string{{"stem", "head", "end", "ends", "prow"}, heights},
		[]string{"stem", "head", "end", "ends", "prow", "above", "base", "line"}},
	{HeadboardPosition, [][]string{{"headboard"}}, nil},
	{HalfBreadth, [][]string{widths, {heightMark}}, []string{"half", "outside", "bark"}},
	{HalfBreadth, [][]string{{"half"}, {"breadth", "breadths", "width", "widths"}}, []string{"outside", "bark", "height"}},
	{HalfGirth, [][]string{{"half"}, {"girth", "girths"}}, []string{"inside", "bark", "strip"}},
	{ClearWidth, [][]string{{"clear"}}, joined(lengths, widths, []string{"between", "inside"})},
	{ClearWidth, [][]string{thwarts, joined(lengths, widths)}, []string{"between", "inside"}},
	{ClearWidth, [][]string{gunwale, {"width", "widths"}}, []string{"between", "inside"}},
	{ThwartPosition, [][]string{thwarts, {"position", "from", "stands", "place", "distance", "station"}}, nil},
	{GreatestBeam, [][]string{widths, {"bark"}}, joined(middles,
		[]string{"greatest", "extreme", "max", "maximum", "overall", "over", "all", "outside"})},
	{GreatestBeam, [][]string{widths, {"greatest", "extreme", "overall"}}, []string{"over", "all"}},
	{BeamInside, [][]string{widths, {"inside", "inner"}}, joined(middles, gunwale)},
	{BeamOutside, [][]string{widths, {"outside", "outer", "out", "over"}}, joined(middles, gunwale)},
	{LengthOverGunwales, [][]string{lengths, gunwale}, joined(ends, []string{"over", "between", "overall"})},
	{LengthOverall, [][]string{lengths}, []string{"overall", "over", "all", "total", "stem", "stern", "extreme"}},
}

// numbers are the words for a thwart's number; endThwart stands for the outermost.
var numbers = map[string]int{
	"1": 1, "first": 1, "1st": 1, "2": 2, "second": 2, "2nd": 2, "3": 3, "third": 3, "3rd": 3,
	"4": 4, "fourth": 4, "4th": 4, "5": 5, "fifth": 5, "5th": 5,
}

const endThwart = 100

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

// kindNamed finds the kind that explains every word of a name. Otherwise it returns false
// and the words that the nearest kind does not explain.
func kindNamed(set map[string]bool) (kind Kind, known bool, strange []string) {
	nearest := -1
	for _, n := range namings {
		if !n.fits(set) {
			continue
		}
		over := n.leftOver(set)
		if len(over) == 0 {
			return n.kind, true, nil
		}
		if nearest < 0 || len(over) < nearest {
			nearest, strange = len(over), over
		}
	}
	return 0, false, strange
}

// stationsRow is the name of a row of stations; it is of no kind.
var stationsRow = naming{LengthOverall, [][]string{{"station", "stations"}},
	joined(middles, ends, gunwale, []string{"distance", "stem", "bow", "stern", "point", "tip", "foremost"})}

// explains tells whether a name is the naming's and holds no other word.
func (n naming) explains(set map[string]bool) bool { return n.fits(set) && len(n.leftOver(set)) == 0 }

// fits tells whether a name has a word of each of the naming's lists.
func (n naming) fits(set map[string]bool) bool {
	for _, list := range n.all {
		if !anyOf(set, list) {
			return false
		}
	}
	return true
}

// leftOver are the words of a name that the naming does not explain, in order.
func (n naming) leftOver(set map[string]bool) []string {
	known := map[string]bool{}
	for _, list := range append([][]string{n.also, anyName}, n.all...) {
		for _, w := range list {
			known[w] = true
		}
	}
	if n.kind.Sided() {
		for _, w := range placeWords {
			known[w] = true
		}
	}
	var over []string
	for w := range set {
		_, number := numbers[w]
		digits := strings.Trim(w, "0123456789") == ""
		if !known[w] && !(n.kind.Sided() && (number || digits)) {
			over = append(over, w)
		}
	}
	slices.Sort(over)
	return over
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
