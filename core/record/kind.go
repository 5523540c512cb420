package record

import (
	"barkwright/core/units"
)

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
	// HalfGirth is from the centre line to the top edge along the inside of the bark, at
	// a thwart or a station.
	HalfGirth
	// HalfBreadth is from the centre line to the outside of the bark at a height over the
	// base line, at a thwart or a station.
	HalfBreadth
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
	// id names the kind in files.
	id, name string
	class
	// key is the parameter that the measurement states outright, or "".
	key string
	// placed tells whether the measurement is taken somewhere along the boat.
	placed bool
}

var kindRows = [kindCount]kindRow{
	LengthOverall:      {id: "lengthOverall", name: "Length overall", key: "length"},
	LengthOverGunwales: {id: "lengthOverGunwales", name: "Length over the gunwales"},
	BeamInside:         {id: "beamInside", name: "Beam inside the gunwales", key: "beam"},
	BeamOutside:        {id: "beamOutside", name: "Beam outside the gunwales"},
	GreatestBeam:       {id: "greatestBeam", name: "Greatest breadth of bark", key: "greatestBeam"},
	DepthInwale:        {id: "depthInwale", name: "Depth to the inwale", key: "depth"},
	DepthRail:          {id: "depthRail", name: "Depth to the cap top"},
	ThwartPosition:     {id: "thwartPosition", name: "Thwart position"},
	Bay:                {id: "bay", name: "Bay between thwarts"},
	ClearWidth:         {id: "clearWidth", name: "Thwart clear length", class: scaled, placed: true},
	SheerHeight:        {id: "sheerHeight", name: "Sheer height", class: scaled, placed: true},
	RailHeight:         {id: "railHeight", name: "Cap top height", class: scaled, placed: true},
	BottomRise:         {id: "bottomRise", name: "Bottom rise", class: scaled, placed: true},
	HalfGirth:          {id: "halfGirth", name: "Half girth inside the bark", placed: true},
	HalfBreadth:        {id: "halfBreadth", name: "Half breadth at a height", placed: true},
	EndHeight: {id: "endHeight", name: "Stem-head height", class: scaled,
		key: "endHeight"},
	EndPoint:          {id: "endPoint", name: "Point of the end profile", class: scaled, placed: true},
	HeadboardPosition: {id: "headboardPosition", name: "Headboard position"},
	FrameLength:       {id: "frameLength", name: "Building frame, length", key: "frameLength"},
	FrameWidth:        {id: "frameWidth", name: "Building frame, width", key: "frameWidth"},
	RibCount:          {id: "ribCount", name: "Ribs", class: counted, key: "ribs"},
	RibSpacing:        {id: "ribSpacing", name: "Rib spacing"},
	RibWidthMid: {id: "ribWidthMid", name: "Rib width amidships", class: timber,
		key: "ribWidthMid"},
	RibWidthEnd: {id: "ribWidthEnd", name: "Rib width at the ends", class: timber,
		key: "ribWidthEnd"},
	StemDepth: {id: "stemDepth", name: "Stem-piece, fore and aft", class: timber,
		key: "stemDepth"},
	StemLaminations: {id: "stemLaminations", name: "Laminations of the stem", class: counted,
		key: "stemLaminations"},
	InwaleThickness: {id: "inwaleThickness", name: "Inwale, thickness", class: timber,
		key: "inwaleThickness"},
	CapThickness: {id: "capThickness", name: "Cap, thickness", class: timber,
		key: "capThickness"},
}

// Kinds lists them in their order.
func Kinds() []Kind {
	all := make([]Kind, kindCount)
	for i := range all {
		all[i] = Kind(i)
	}
	return all
}

// ID names the kind in files; it never changes.
func (k Kind) ID() string { return kindRows[k].id }

// LookupKind finds a kind by its ID.
func LookupKind(id string) (Kind, bool) {
	for i, row := range kindRows {
		if row.id == id {
			return Kind(i), true
		}
	}
	return 0, false
}

// String is the kind as a record's row names it.
func (k Kind) String() string { return kindRows[k].name }

// Parameter returns the key of the parameter that the measurement states outright,
// or "".
func (k Kind) Parameter() string { return kindRows[k].key }

// Counted tells whether the value is a whole number and not a length.
func (k Kind) Counted() bool { return kindRows[k].class == counted }

// ValueKind is what a value of the kind is typed and shown as.
func (k Kind) ValueKind() units.Kind {
	switch {
	case k.Counted():
		return units.Count
	case k == BottomRise:
		return units.Offset
	}
	return units.Length
}

// ToleranceKind is what a tolerance of the kind is typed and shown as.
func (k Kind) ToleranceKind() units.Kind {
	if k.Counted() {
		return units.Ratio
	}
	return units.SmallLength
}

// AsBuilt tells whether a tape reads the kind off a boat being built and AsBuilt
// can bring the boat to it.
func (k Kind) AsBuilt() bool {
	switch k {
	case LengthOverall, BeamInside, DepthInwale, DepthRail, EndHeight:
		return true
	}
	return k.Placed() && !k.AtHeight()
}

// AtHeight tells whether the measurement is taken at a height over the base line.
func (k Kind) AtHeight() bool { return k == HalfBreadth }

// atEnds tells whether "at the ends" of such a measurement means the gunwales' ends.
func (k Kind) atEnds() bool { return k == SheerHeight || k == RailHeight || k == ClearWidth }

// Placed tells whether the measurement is taken at a station or a thwart.
func (k Kind) Placed() bool { return kindRows[k].placed }

// UsualTolerance is how well the kind is known where the record does not say:
// 1/4 in for what is lettered on a drawing, 1/2 in for what is scaled off one,
// 1/16 in for a size of timber, metres; half of one for a count.
func (k Kind) UsualTolerance() float64 { return usual[kindRows[k].class] }
