package design

import (
	"math"

	"barkwright/core/shape"
	"barkwright/core/units"
)

// BuiltOn is what the bark is folded up round on the bed.
type BuiltOn int

// What a boat is built on, in the order of the list.
const (
	// OnFrame is a building frame of its own, taken out again.
	OnFrame BuiltOn = iota
	// OnGunwales is the frame of the gunwales and thwarts, raised to the sheer later.
	OnGunwales
)

// String is what a boat is built on as the form names it.
func (b BuiltOn) String() string {
	return [...]string{"a building frame", "the gunwale frame"}[b]
}

const (
	// MostTurn is how broad the turn line may be of a boat built on a frame, as a
	// share of the breadth outside the gunwales. The broadest of eight midsections as
	// drawn is 1.04. A choice of this project.
	MostTurn = 1.12
	// LeastEase and MostEase bound the half girth that ribs take up between bed and
	// boat. Nine drawn boats with a lettered frame have -0.1 to 1.5 in, mean 0.6,
	// and the fold on the bed is rounded: derived from Adney and Chapelle 1964.
	LeastEase = -0.2 * units.Inch
	MostEase  = 1.5 * units.Inch
	usualEase = 0.6 * units.Inch
	// GirthSpread and BilgeSpread are what is not known of a finished section amidships:
	// one standard deviation of the half girth that the ribs take up, over nine drawn
	// midsections, and of the bilge, over thirteen. Same source.
	GirthSpread = 0.6 * units.Inch
	BilgeSpread = 0.06
)

// amidships is the outline of the finished section there, with no corner yet.
func (d *Design) amidships() shape.Outline {
	return shape.Outline{Top: d.Depth, Half: d.OutsideBreadth() / 2, Bilge: d.Bilge}
}

// BedHalfGirth is the half girth of the bark as it stands folded on the bed, at a
// half-breadth of the fold, of the top edge and its height over the bottom, m: flat
// to the fold and straight up from there.
func BedHalfGirth(fold, half, height float64) float64 {
	return fold + math.Hypot(half-fold, height)
}

// HalfGirthOnBed is that of the bark on the bed amidships.
func (d *Design) HalfGirthOnBed() float64 {
	half := d.OutsideBreadth() / 2
	if d.BuiltOn == OnGunwales {
		return BedHalfGirth(half, half, d.Depth)
	}
	return BedHalfGirth(d.FrameWidth/2, half, d.Depth)
}

// girthAsked is the finished half girth amidships where it decides the section.
func (d *Design) girthAsked() float64 {
	if d.BuiltOn == OnGunwales {
		return d.HalfGirthOnBed()
	}
	return d.HalfGirthOnBed() - d.Ease
}

// turnOwn marks the turn line as set.
var turnOwn = ownedBy("turnWidth")

// TurnSet tells whether the breadth of the turn line is the one set: otherwise it is
// what the greatest breadth of bark or the half girth on the bed asks for.
func (d *Design) TurnSet() bool {
	return d.Own&turnOwn != 0 && !d.Bulges() && d.BuiltOn == OnFrame
}

// Midsection returns the outline of the finished section amidships. A half girth that
// was read there corrects it. Where no section has what the design asks for it is
// the nearest.
func (d *Design) Midsection() shape.Outline {
	o, _ := d.MidsectionByNumbers()
	return GirthCorrected(o, d.Corrected.Girth.Of(0))
}

// GirthCorrected returns the outline whose section has a half girth that is greater by
// the amount, or the nearest where no section has.
func GirthCorrected(o shape.Outline, by float64) shape.Outline {
	if by != 0 {
		o, _ = o.WithHalfGirth(shape.New(o).HalfGirth()+by, o.MostCorner())
	}
	return o
}

// MidsectionByNumbers is Midsection without what was read of it; false where it is the nearest alone.
func (d *Design) MidsectionByNumbers() (shape.Outline, bool) {
	if d.TurnSet() {
		return d.amidships().At(d.TurnWidth / 2), true
	}
	return d.midsectionAsked()
}

// midsectionAsked is Midsection where the turn line is not set.
func (d *Design) midsectionAsked() (shape.Outline, bool) {
	o := d.amidships()
	if d.Bulges() {
		return o.WithBreadth(d.GreatestBeam / 2)
	}
	most := o.MostCorner()
	if d.BuiltOn == OnFrame {
		most = MostTurn * o.Half
	}
	return o.WithHalfGirth(d.girthAsked(), most)
}

// HalfGirth is that of the finished section amidships, m.
func (d *Design) HalfGirth() float64 {
	o := d.Midsection()
	return shape.New(o).HalfGirth()
}

// EaseLeft is by how much the half girth on the bed is more than the finished one: the
// ease set, or what the numbers set in its place leave.
func (d *Design) EaseLeft() float64 { return d.HalfGirthOnBed() - d.HalfGirth() }

// GirthsAgree tells whether the ease lies where those of drawn boats do: outside, the
// building frame and the finished section do not agree.
func (d *Design) GirthsAgree() bool {
	e := d.EaseLeft()
	return e > LeastEase-Rounding && e < MostEase+Rounding
}
