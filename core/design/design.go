package design

import (
	"barkwright/core/shape"
	"barkwright/core/wood"
)

// Design is every number a user can set: metres, kilograms, degrees Celsius,
// and plain numbers for shapes and counts. It is comparable: two designs that
// are == give the same boat.
type Design struct {
	Name, Notes string

	Boat
	Sheer
	Bed
	Ends
	Timber
	Root
	Crew

	// Within is how close the boat is built to its sizes.
	Within Within

	// OnHand is the bark there is, if any is listed.
	OnHand OnHand

	// Corrected are the corrections of the curves, where a tape read otherwise than the
	// numbers above can follow.
	Corrected Corrections

	// Own marks the dependent parameters that no longer follow.
	Own Owned
}

// Boat is the size and the plan of the gunwales.
type Boat struct {
	Length, Overhang, Beam float64
	// GreatestBeam is the breadth of the bark where it bulges beyond the
	// gunwales; 0 for none.
	GreatestBeam       float64
	BeamFull, BeamFine float64
	Depth              float64
	// Stations is in how many equal spaces the table of offsets divides half the boat.
	Stations int
	// StationsApart is how far apart the stations stand instead, from amidships; 0 for by their number.
	StationsApart float64
}

// Sheer is the rise of the gunwales and of the bottom toward the ends.
type Sheer struct {
	GunwaleEndHeight, SheerSweep float64
	Rocker, RockerSpread         float64
}

// Bed is the bark, the building frame that weighs it down and the bed under it.
type Bed struct {
	FrameWidth, FrameLength, FrameFull, FrameFine float64
	// BuiltOn is what the bark is folded up round, and Ease by how much the half girth
	// there is more than the finished one, while TurnWidth follows.
	BuiltOn                                BuiltOn
	TurnWidth, Bilge, Ease                 float64
	BedLength, BedCrown, EndBlocking       float64
	BarkThickness, SheetWidth, SheetLength float64
	Gores                                  int
	GoreFoot, SeamLap, GunwaleTurn         float64
	// Panels is the least number of pieces that a side panel amidships is made of,
	// and PanelLap the lap it is fitted with before that is trimmed to SeamLap.
	Panels   int
	PanelLap float64
	// TreeAllowance is how much wider than the sheet the bark is taken off the tree.
	TreeAllowance float64
	TreeRule      TreeRule
	// StretchLimit is the stretch, as a share, up to which gores are enough.
	StretchLimit float64
}

// TreeRule says how much of a sheet's length its full width is wanted over.
type TreeRule int

// The rules, in the order of their list.
const (
	// WideInTheMiddle wants the full width at the middle of the sheet's length.
	WideInTheMiddle TreeRule = iota
	// WideAllAlong wants it up to the sheet's upper end.
	WideAllAlong
)

// treeRules lists them in their order.
func treeRules() []TreeRule { return []TreeRule{WideInTheMiddle, WideAllAlong} }

// String is the rule as the form names it.
func (r TreeRule) String() string {
	return [...]string{"at the middle of its length", "over its whole length"}[r]
}

// Ends are the stems and headboards.
type Ends struct {
	EndHeight, HeadSetback, HeelLength, EndFull float64
	StemDepth, StemWidth                        float64
	StemLaminations                             int
	StemSolid                                   float64
	// StemOpening is by what share a trial piece's radius grew when it was let go; 0
	// where none was tried.
	StemOpening float64
	// Headboard is how far inside the gunwale's end its mark stands, along the gunwale;
	// HeadboardFoot how much farther out its foot stands than its top, and
	// HeadboardBelly how far its middle is sprung outboard.
	Headboard, HeadboardFoot, HeadboardBelly float64
}

// Timber is the wood: what each part is made of and its sizes.
type Timber struct {
	StemStock, RibStock, GunwaleStock wood.Stock

	InwaleThickness, InwaleDepth, OutwaleThickness, OutwaleDepth float64
	CapWidth, CapThickness                                       float64
	GunwaleEndSplits                                             int

	// Thwarts is odd. ThwartAt holds, from the one next to the middle outward,
	// their places as shares of the half gunwale along its curve.
	Thwarts  int
	ThwartAt [4]float64

	// CedarDiameter is inside the bark at the small end of the trunks to be had, and
	// CedarClear their length free of knots; CedarHeart is discarded at the middle,
	// across, and CedarSapwood outside.
	CedarDiameter, CedarClear, CedarHeart, CedarSapwood float64

	Ribs                                   int
	RibWidthMid, RibWidthEnd, RibTipWidth  float64
	RibThickness, RibThicknessEnd, RibTuck float64
	// RibTaper is the length over which a rib narrows to its tip, and RibsBroken how
	// many at either end are broken at the centre.
	RibTaper                                         float64
	RibsBroken                                       int
	SheathingThickness, SheathingWidth, SheathingLap float64
}

// Root is the lacing of the gunwales and the stitches of each kind of seam.
type Root struct {
	GroupHoles, Passes, PegEvery            int
	HoleSpacing, RootWidth, Tail, RootWaste float64
	// RootLength is how long roots usually are as dug.
	RootLength float64

	GoreStitch, GoreBite, PanelStitch, PanelBite float64
	JointStitch, JointBite, EndStitch, EndBite   float64
}

// Posture is how a paddler is placed.
type Posture int

// The postures, in the order of their list.
const (
	// Kneeling on the bottom, on the heels or against a seat.
	Kneeling Posture = iota
	// SittingOnBottom with the legs forward.
	SittingOnBottom
	// SittingOnSeat with the feet on the bottom.
	SittingOnSeat
)

// postures lists them in their order.
func postures() []Posture { return []Posture{Kneeling, SittingOnBottom, SittingOnSeat} }

// String is the posture as the form names it.
func (p Posture) String() string {
	return [...]string{"kneeling", "sitting on the bottom", "sitting on a seat"}[p]
}

// MostPaddlers is how many a boat carries at most: the crew of the largest freight
// canoes, 14 (Adney and Chapelle 1964, p. 8).
const MostPaddlers = 14

// Crew is who and what the boat carries.
type Crew struct {
	Paddlers                          int
	PaddlerMass                       float64
	Posture                           Posture
	Stature, SeatHeight               float64
	Cargo, CargoHeight, CargoPosition float64
	WaterTemperature                  float64
	// Aboard holds the paddlers from the bow aft; those beyond Paddlers stay ashore.
	Aboard [MostPaddlers]Paddler
}

// Paddler is one of the crew: mass, height of the seat over the bottom, and place
// forward of amidships.
type Paddler struct{ Mass, SeatHeight, X float64 }

// OuterThwarts is the number of thwarts each side of the middle one.
func (d Design) OuterThwarts() int { return (d.Thwarts - 1) / 2 }

// EndThwart is the place of the thwart next to the end, as a share of the half gunwale.
func (d Design) EndThwart() float64 {
	return d.ThwartAt[max(1, min(len(d.ThwartAt), d.OuterThwarts()))-1]
}

// HalfGunwale is the distance from amidships to the gunwale's end along x.
func (d Design) HalfGunwale() float64 { return d.Length/2 - d.Overhang }

// HeelX is the distance from amidships to the heel of the stem along x.
func (d Design) HeelX() float64 { return d.Length/2 - d.HeelLength }

// HeadboardX is the station of the headboard's mark along the gunwale.
func (d Design) HeadboardX() float64 {
	g := d.Gunwale()
	return g.Inboard(d.Headboard)
}

// HeadX is the distance from amidships to the stem head along x.
func (d Design) HeadX() float64 { return d.Length/2 - d.HeadSetback }

// Gunwale is the inner top edge of the inwale.
func (d Design) Gunwale() shape.Gunwale {
	return shape.Gunwale{
		Half:     d.HalfGunwale(),
		HalfBeam: d.Beam / 2, Plan: shape.NewRise(d.BeamFull), Fine: d.BeamFine,
		Depth: d.Depth, End: d.GunwaleEndHeight, Sweep: shape.NewRise(d.SheerSweep),
		PlanBy: d.Corrected.Plan, SheerBy: d.Corrected.Sheer,
	}
}

// Bulges tells whether the bark is to stand out beyond the gunwales.
func (d Design) Bulges() bool { return d.GreatestBeam > 0 }
