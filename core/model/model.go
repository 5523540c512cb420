package model

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Least sizes of what is cut and sewn by pupils, m. Estimates.
const (
	LeastStrip   = 3 * units.Millimetre // breadth of a strip
	Lap          = 5 * units.Millimetre // of a seam
	Trim         = 3 * units.Millimetre // left outside an edge
	HoleIn       = 3 * units.Millimetre // a sewing hole from its edge
	HoleSpacing  = 4 * units.Millimetre // between sewing holes
	RibSpacing   = 8 * units.Millimetre // between ribs; nearer, every second is left out
	FootFromFold = 2 * units.Millimetre // a slit's foot from the fold at the frame
)

// What the model is made of, m. Estimates.
const (
	card       = 0.3 * units.Millimetre
	veneer     = 0.6 * units.Millimetre
	veneerFrom = 7 // 1 to this and larger: there card is too limp
	stick      = 3 * units.Millimetre
	ribStrip   = 1.3 * units.Millimetre
)

// Boat is a model of a canoe.
type Boat struct {
	// Canoe is the canoe worked out with the model's thicknesses, at full size, its bark laid flat.
	core.Canoe
	// Of is the boat it is a model of.
	Of design.Design
	// Scale is how many times smaller it is made.
	Scale float64
	// Card is the thickness of what stands for bark, m, and CardOf what that is.
	Card   float64
	CardOf string
	// RibEvery is 1 where every rib is made, 2 where every second is.
	RibEvery int
	// Panelled tells that side panels are sewn on as on the boat; else its bark is one piece.
	Panelled bool
}

// widest is a sheet that no boat is wider or longer than, m.
const widest = 20

// New makes a model at 1 to a scale. The bark's outside stays where it is on the boat, so the
// gunwales move in or out by what their thickness and the bark's differ.
func New(of design.Design, scale float64, panelled bool) Boat {
	b := Boat{Of: of, Scale: scale, Card: card, CardOf: "card", Panelled: panelled}
	if scale < veneerFrom {
		b.Card, b.CardOf = veneer, "veneer or heavy card"
	}
	d := of
	d.Own = design.Decisions()
	d.BarkThickness = b.Card * scale
	d.InwaleThickness, d.InwaleDepth = max(of.InwaleThickness, stick*scale), max(of.InwaleDepth, stick*scale)
	d.OutwaleThickness, d.OutwaleDepth = max(of.OutwaleThickness, stick*scale), max(of.OutwaleDepth, stick*scale)
	d.Beam += 2 * (of.InwaleThickness + of.BarkThickness - d.InwaleThickness - d.BarkThickness)
	d.RibThickness, d.RibThicknessEnd = ribStrip*scale, ribStrip*scale
	for _, width := range []*float64{&d.StemDepth, &d.RibWidthMid, &d.RibWidthEnd, &d.RibTipWidth, &d.StemWidth} {
		*width = max(*width, LeastStrip*scale)
	}
	d.SheathingThickness = 0
	d.GoreFoot = max(d.GoreFoot, FootFromFold*scale)
	d.SeamLap, d.GunwaleTurn = Lap*scale, Trim*scale
	d.OnHand = design.OnHand{}
	d.SheetLength = widest
	if !panelled {
		d.SheetWidth = widest
	}
	h := hull.New(d)
	plan := bark.Plan(h)
	flat := bark.Flatten(h, plan, bark.ForFigures, nil, nil)
	// Nothing is gathered for a model, and it is weighed and floated in a tray.
	b.Canoe = core.Canoe{Design: d, Hull: h, Frame: frame.Build(h), Bark: plan.OnFlat(h, flat),
		Skin: &core.Skin{Flat: flat}}
	b.RibEvery = 1
	for _, r := range b.Frame.Ribs {
		if b.OnModel(r.Spacing) < RibSpacing {
			b.RibEvery = 2
		}
	}
	return b
}

// OnModel is a size of the boat on the model.
func (b Boat) OnModel(v float64) float64 { return v / b.Scale }

// Flat tells whether the model's bark could be laid flat.
func (b Boat) Flat() bool { return b.Skin.Flat.State == geom.Converged }

// Scales are those offered besides the ones that fit a number of paper pages.
var Scales = [...]float64{6, 8, 10}

// Page is the room on a page of paper, m, its longer side first.
type Page struct{ Long, Wide float64 }

// FitTo is the least scale, in tenths, at which a boat's bark goes on so many pages side by side,
// the way they lie that makes it larger.
func (p Page) FitTo(length, breadth float64, pages int) float64 {
	scale := func(along, across float64) float64 {
		// The trim is as broad at any scale.
		return max(length/(float64(pages)*along), breadth/(across-2*Trim))
	}
	return geom.Ceil(10*min(scale(p.Long, p.Wide), scale(p.Wide, p.Long))) / 10
}
