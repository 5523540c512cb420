package record

import (
	"strings"
	"unicode"
)

// naming says by which words of a row's name a kind is known: one of each list.
type naming struct {
	kind Kind
	all  [][]string
}

var (
	widths  = []string{"width", "widths", "wide", "breadth", "beam"}
	lengths = []string{"length", "long", "loa"}
	heights = []string{"height", "heights", "high"}
	gunwale = []string{"gunwale", "gunwales", "inwale", "inwales"}
	middles = []string{"middle", "mid", "centre", "center", "amidships", "midships"}
	ends    = []string{"end", "ends", "last", "outer"}
	ribs    = []string{"rib", "ribs"}
	thwarts = []string{"thwart", "thwarts", "bar", "crossbar"}
)

// namings are tried in order: the more particular come first.
var namings = []naming{
	{FrameWidth, [][]string{{"frame"}, widths}},
	{FrameLength, [][]string{{"frame"}, lengths}},
	{RibSpacing, [][]string{ribs, {"spacing", "apart", "centres", "centers", "space"}}},
	{RibWidthEnd, [][]string{ribs, widths, ends}},
	{RibWidthMid, [][]string{ribs, widths}},
	{RibCount, [][]string{ribs}},
	{StemLaminations, [][]string{{"lamination", "laminations", "splits", "layers"}}},
	{StemDepth, [][]string{{"stem"}, {"depth", "deep"}}},
	{CapThickness, [][]string{{"cap"}}},
	{InwaleThickness, [][]string{gunwale, {"thickness", "thick"}}},
	{EndPoint, [][]string{{"profile"}}},
	{Bay, [][]string{{"bay", "bays", "spacing"}}},
	{BottomRise, [][]string{{"rise", "rocker", "bottom"}}},
	{DepthRail, [][]string{{"depth"}, {"rail", "cap"}}},
	{DepthInwale, [][]string{{"depth"}}},
	{RailHeight, [][]string{{"rail"}}},
	{SheerHeight, [][]string{{"sheer"}}},
	{SheerHeight, [][]string{gunwale, heights}},
	{EndHeight, [][]string{{"stem", "head", "end", "ends", "prow"}, heights}},
	{HeadboardPosition, [][]string{{"headboard"}}},
	{ClearWidth, [][]string{{"clear"}}},
	{ClearWidth, [][]string{thwarts, append(append([]string{}, lengths...), widths...)}},
	{ClearWidth, [][]string{gunwale, {"width", "widths"}}},
	{ThwartPosition, [][]string{thwarts, {"position", "from", "stands", "place", "distance", "station"}}},
	{GreatestBeam, [][]string{widths, {"greatest", "max", "maximum", "bark", "extreme", "overall"}}},
	{BeamInside, [][]string{widths, {"inside", "inner"}}},
	{BeamOutside, [][]string{widths, {"outside", "outer", "out", "over"}}},
	{LengthOverGunwales, [][]string{lengths, gunwale}},
	{LengthOverall, [][]string{lengths}},
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
	// middle is named and headboard that a height is taken at the headboard.
	thwart            int
	middle, headboard bool
	side              Side
	from              Origin
	// unsure asks for the word that is missing; "" where the kind is known.
	unsure string
}

// wordsOf splits a name at everything that is no letter or digit.
func wordsOf(name string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
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

// readLabel makes out a row's name. What stands before the word from says what is
// measured and where, what stands after it where the station is counted from.
func readLabel(name string) label {
	set := wordsOf(name)
	what, _, _ := strings.Cut(strings.ToLower(name), "from")
	where := wordsOf(what)
	l := label{from: readOrigin(name)}
	for _, n := range namings {
		fits := true
		for _, list := range n.all {
			fits = fits && anyOf(set, list)
		}
		if fits {
			l.kind, l.known = n.kind, true
			break
		}
	}
	if !l.known {
		l.unsure = missingWord(set)
		return l
	}
	if l.kind.Sided() {
		l.side = readSide(set)
	}
	if l.kind.Placed() && set["headboard"] {
		l.headboard = true
		return l
	}
	for w := range where {
		l.thwart = max(l.thwart, numbers[w])
	}
	l.middle = anyOf(where, middles)
	if l.middle && l.thwart == 0 && strings.ContainsAny(what, "0123456789") {
		l.known, l.unsure = false, "Put the station in a cell of its own, after the name."
		return l
	}
	if l.thwart == 0 && anyOf(where, ends) && anyOf(where, thwarts) {
		l.thwart = endThwart
	}
	return l
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

// missingWord says what a name would have to say besides.
func missingWord(set map[string]bool) string {
	switch {
	case anyOf(set, thwarts):
		return "Say whether this is the thwart's position or its clear length."
	case anyOf(set, widths):
		return "Say whether the beam is inside or outside the gunwales, or the greatest breadth of bark."
	}
	return "What this measures is not understood."
}

// readOrigin is where a row's name counts stations from.
func readOrigin(name string) Origin {
	_, after, _ := strings.Cut(strings.ToLower(name), "from")
	return originOf(after)
}

// originOf is the origin that words mean, the middle where they say nothing.
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
