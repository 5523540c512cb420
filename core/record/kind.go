package record

import "barkwright/core/units"

// Kind is what a measurement is of.
type Kind int

// The kinds, in the order a record lists them.
const (
	LengthOverall Kind = iota
	LengthOverGunwales
	// BeamInside is between the inner faces of the inwales amidships,
	// BeamOutside over their outer faces.
	BeamInside
	BeamOutside
	// GreatestBeam is the breadth of the bark where it stands out beyond the gunwales.
	GreatestBeam
	// DepthInwale is amidships, from the outside of the bark to the top of the
	// inwale; DepthRail to the top of the cap.
	DepthInwale
	DepthRail
	// ThwartPosition is where thwart Number stands.
	ThwartPosition
	// Bay is the run from thwart Number-1 to thwart Number; the one after the last
	// thwart runs to the gunwale's end.
	Bay
	// ClearWidth is between the inner faces of the gunwales at a thwart or a station.
	ClearWidth
	// SheerHeight is to the top of the inwale, RailHeight to the top of the cap, at
	// a thwart or a station.
	SheerHeight
	RailHeight
	// BottomRise is the height of the outside of the bark on the centre line.
	BottomRise
	EndHeight
	// EndPoint is a point of the bark's outer edge past the heel: its height, at a
	// station.
	EndPoint
	HeadboardPosition
	FrameLength
	FrameWidth
	RibCount
	// RibSpacing is from centre to centre.
	RibSpacing
	RibWidthMid
	RibWidthEnd
	StemDepth
	StemLaminations
	InwaleThickness
	CapThickness

	kindCount
)

// class is how well a measurement is known where the record does not say.
type class int

const (
	lettered class = iota
	scaled
	timber
	counted
)

// usual is the tolerance of a class, metres or a count. Lettered and scaled are
// those of the published drawings (common practice; the survey's own note says
// scaled figures are good to about half an inch); timber is read with a rule.
var usual = [...]float64{lettered: units.Inch / 4, scaled: units.Inch / 2, timber: units.Inch / 16, counted: 0.5}

type kindRow struct {
	name string
	class
	// key is the parameter the measurement states outright; "" where it does not.
	key string
	// placed tells whether the measurement is taken somewhere along the boat.
	placed bool
}

var kindRows = [kindCount]kindRow{
	LengthOverall:      {name: "Length overall", key: "length"},
	LengthOverGunwales: {name: "Length over the gunwales"},
	BeamInside:         {name: "Beam inside the gunwales", key: "beam"},
	BeamOutside:        {name: "Beam outside the gunwales"},
	GreatestBeam:       {name: "Greatest breadth of bark", key: "greatestBeam"},
	DepthInwale:        {name: "Depth to the gunwale", key: "depth"},
	DepthRail:          {name: "Depth to the rail"},
	ThwartPosition:     {name: "Thwart position"},
	Bay:                {name: "Bay between thwarts"},
	ClearWidth:         {name: "Thwart clear length", class: scaled, placed: true},
	SheerHeight:        {name: "Sheer height", class: scaled, placed: true},
	RailHeight:         {name: "Rail height", class: scaled, placed: true},
	BottomRise:         {name: "Bottom rise", class: scaled, placed: true},
	EndHeight:          {name: "Height of the stem head", class: scaled, key: "endHeight"},
	EndPoint:           {name: "Point of the end profile", class: scaled, placed: true},
	HeadboardPosition:  {name: "Headboard position"},
	FrameLength:        {name: "Building frame, length", key: "frameLength"},
	FrameWidth:         {name: "Building frame, width", key: "frameWidth"},
	RibCount:           {name: "Ribs", class: counted, key: "ribs"},
	RibSpacing:         {name: "Rib spacing"},
	RibWidthMid:        {name: "Rib width amidships", class: timber, key: "ribWidthMid"},
	RibWidthEnd:        {name: "Rib width at the ends", class: timber, key: "ribWidthEnd"},
	StemDepth:          {name: "Stem-piece, fore and aft", class: timber, key: "stemDepth"},
	StemLaminations:    {name: "Laminations of the stem", class: counted, key: "stemLaminations"},
	InwaleThickness:    {name: "Inwale, thickness", class: timber, key: "inwaleThickness"},
	CapThickness:       {name: "Cap, thickness", class: timber, key: "capThickness"},
}

// Kinds lists them in their order.
func Kinds() []Kind {
	all := make([]Kind, kindCount)
	for i := range all {
		all[i] = Kind(i)
	}
	return all
}

// String is the kind as a record's row names it.
func (k Kind) String() string { return kindRows[k].name }

// Counted tells whether the value is a whole number and not a length.
func (k Kind) Counted() bool { return kindRows[k].class == counted }

// Placed tells whether the measurement is taken at a station or a thwart.
func (k Kind) Placed() bool { return kindRows[k].placed }

// UsualTolerance is how well the kind is known where the record does not say:
// 1/4 in for what is lettered on a drawing, 1/2 in for what is scaled off one,
// 1/16 in for a size of timber, metres; half of one for a count.
func (k Kind) UsualTolerance() float64 { return usual[kindRows[k].class] }
