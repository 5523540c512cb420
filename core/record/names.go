package record

import (
	"slices"
	"strings"
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
