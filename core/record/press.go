package record

import (
	"slices"

	"barkwright/core/geom"
)

// What is pressed on a picture to read it by, by its ID.
const (
	BaseLine       = "base"
	MiddlePoint    = "middle"
	LetteredSize   = "size"
	KnownRectangle = "rectangle"
)

// taking is how a value is taken from points of a view, along and up in metres.
type taking int

const (
	none     taking = iota
	span            // how far apart two are along
	straight        // how far apart two are
	height          // how high one is
	out             // how far one is from the middle
	breadth         // how far apart two are across the boat, or one from its other side
	beside          // how far one is from the centre line of a section, at its height
)

// Press is something that is pressed on a picture: what it is read by, a measurement, or a
// curve of them.
type Press struct {
	ID, Name string
	Views    []View
	Kind
	// Curve tells that as many points are pressed as one likes.
	Curve  bool
	taking taking
	points int
	ask    string
}

var (
	everywhere = []View{FromSide, FromAbove, InSection}
	lengthwise = []View{FromSide, FromAbove}
	inSide     = []View{FromSide}
	planOnly   = []View{FromAbove}
	upward     = []View{FromSide, InSection}
	crosswise  = []View{FromAbove, InSection}
	sections   = []View{InSection}
)

var presses = []Press{
	{ID: BaseLine, Name: "Base line", Views: everywhere, points: 2},
	{ID: MiddlePoint, Name: "Middle", Views: everywhere, points: 1},
	{ID: LetteredSize, Name: "A lettered size", Views: everywhere, points: 2,
		ask: "Press the two points, then type what lies between them."},
	{ID: KnownRectangle, Name: "A rectangle to set it square by", Views: everywhere, points: 4,
		ask: "Press its four corners in order, along the boat first; type both sizes. It lies in the plane that is read."},

	{ID: "sheerCurve", Name: "Sheer, top of the inwale", Views: inSide, Kind: SheerHeight, Curve: true, taking: height},
	{ID: "railCurve", Name: "Rail, top of the cap", Views: inSide, Kind: RailHeight, Curve: true, taking: height},
	{ID: "bottomCurve", Name: "Bottom", Views: inSide, Kind: BottomRise, Curve: true, taking: height},
	{ID: "endCurve", Name: "End's profile, past the heel", Views: inSide, Kind: EndPoint, Curve: true, taking: height},
	{ID: "gunwaleCurve", Name: "Gunwale, inner face", Views: planOnly, Kind: ClearWidth, Curve: true, taking: breadth},
	{ID: "sectionCurve", Name: "Section, outside of the bark", Views: sections, Kind: HalfBreadth, Curve: true,
		taking: beside,
		ask:    "Press up one side, from the centre line to the top edge."},

	of(LengthOverall, lengthwise, span), of(LengthOverGunwales, lengthwise, span),
	of(BeamInside, crosswise, breadth), of(BeamOutside, crosswise, breadth), of(GreatestBeam, crosswise, breadth),
	of(DepthInwale, upward, height), of(DepthRail, upward, height),
	of(ThwartPosition, lengthwise, out), of(ClearWidth, crosswise, breadth),
	of(SheerHeight, upward, height), of(RailHeight, upward, height), of(BottomRise, upward, height),
	of(HalfBreadth, sections, beside), of(EndHeight, inSide, height), of(EndPoint, inSide, height),
	of(HeadboardPosition, lengthwise, out), of(FrameLength, planOnly, span), of(FrameWidth, planOnly, breadth),
	of(RibSpacing, lengthwise, span), of(RibWidthMid, lengthwise, straight), of(RibWidthEnd, lengthwise, straight),
	of(StemDepth, inSide, straight), of(InwaleThickness, crosswise, straight), of(CapThickness, upward, straight),
}

// of is the press of a kind by itself.
func of(k Kind, in []View, t taking) Press {
	p := Press{ID: k.ID(), Name: k.String(), Views: in, Kind: k, taking: t, points: 1}
	if t == span || t == straight || t == breadth {
		p.points = 2
	}
	return p
}

// Presses are what can be pressed in a view of a picture of a sort.
func Presses(v View, s Sort) []Press {
	var list []Press
	for _, p := range presses {
		if slices.Contains(p.Views, v) && (p.ID != KnownRectangle || s == SetSquare) {
			list = append(list, p)
		}
	}
	return list
}

// LookupPress finds one by its ID.
func LookupPress(id string) (Press, bool) {
	for _, p := range presses {
		if p.ID == id {
			return p, true
		}
	}
	return Press{}, false
}

// Reads tells whether it gives rows of the record, and is not what they are read by.
func (p Press) Reads() bool { return p.taking != none }

// Single tells whether there is one of it in a view.
func (p Press) Single() bool { return !p.Reads() && p.ID != LetteredSize }

// Points is how many points it takes, 0 for as many as one likes. One side of a half plan
// stands for both.
func (p Press) Points(half bool) int {
	if half && p.taking == breadth {
		return min(p.points, 1)
	}
	return p.points
}

// Ask says what to press.
func (p Press) Ask(v View, half bool) string {
	if p.ask != "" {
		return p.ask
	}
	switch {
	case p.ID == BaseLine && v == FromAbove:
		return "Press two points of the centre line, the one toward the stern first."
	case p.ID == BaseLine && v == InSection:
		return "Press two points of the level line under the lowest point of the bottom, the left one first."
	case p.ID == BaseLine:
		return "Press two points of the level line under the lowest point of the bottom, the one toward the stern first."
	case p.ID == MiddlePoint && v == InSection:
		return "Press a point of the centre line."
	case p.ID == MiddlePoint:
		return "Press a point amidships."
	case p.Curve:
		return "Press along it, point by point, outward from the middle. Points lie closer where it bends more."
	case p.taking == breadth && half:
		return "Press it on the side that is drawn; the other side is taken to be the same."
	case p.points == 2:
		return "Press both ends of it."
	case p.taking == out:
		return "Press it: its distance from the middle is taken, level."
	}
	return "Press it."
}

// Where tells whether the place of a press is said and not read off the picture: by its
// number of a thwart, by its station of a section.
func (p Press) Where(v View) bool {
	return p.Numbered() || v == InSection && p.Reads() && p.Placed()
}

// value is what is taken of points in a view.
func (p Press) value(v View, at []geom.Vec2) float64 {
	first, last := at[0], at[len(at)-1]
	switch p.taking {
	case span:
		return abs(last.X - first.X)
	case straight:
		return last.Sub(first).Len()
	case height:
		return first.Y
	case breadth:
		if len(at) == 1 {
			return 2 * abs(across(v, first))
		}
		return abs(across(v, last) - across(v, first))
	}
	return abs(first.X)
}

// across is how far a point lies from the centre line.
func across(v View, at geom.Vec2) float64 {
	if v == InSection {
		return at.X
	}
	return at.Y
}
