package pipeline

import (
	"barkwright/core"
	"barkwright/core/design"
)

// Piece is one of the things worked out after a step, in the order in which they are.
type Piece int

const (
	// Drawing is the bark laid flat for the picture, wanted while the picture is of it.
	Drawing Piece = iota
	// Figures is the bark laid flat for the figures: seams, root and gores follow it.
	Figures
	// Water is the boat heeled, loaded and moving.
	Water
	// Beside is the record stood beside the boat.
	Beside
	// Strips are the results over the range of the control in hand, where they are asked for.
	Strips
	// Spreads are how far cut figures may be off, Inches what an inch of each length costs, and
	// Taught is a lesson worked out, each where it is asked for.
	Spreads
	Inches
	Taught
	// Curve is the stretch left by each number of gores.
	Curve
	// Makes is what the sheets on hand make.
	Makes
	// Held is the bark of the boat that is held, laid flat for the figures.
	Held
	// Season is the plan of the work, wanted while the page shows it.
	Season
	// Sooner is what would change the plan, wanted with it.
	Sooner
	pieces
)

func (p Piece) String() string {
	return [...]string{"drawing", "figures", "water", "beside", "strips", "spreads", "inches", "taught", "curve", "makes",
		"held", "season", "sooner"}[p]
}

// sameFor tells whether a piece that was worked out for one design holds for another.
func (p Piece) sameFor(a, b design.Design) bool {
	switch p {
	case Drawing, Figures, Curve, Held:
		return core.SameSkin(a, b)
	case Makes:
		return core.SameSkin(a, b) && a.Panels == b.Panels && a.PanelLap == b.PanelLap
	default:
		return a == b
	}
}
