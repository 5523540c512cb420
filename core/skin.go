package core

import (
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/onhand"
)

// Skin is what the bark laid flat tells, and what bark on hand makes of the boat.
type Skin struct {
	Flat bark.Flat
	// Curve is the stretch left by each number of gores a side, from zero upward. It is
	// empty until it is worked out.
	Curve []bark.CurvePoint
	// Makes is what the list makes of the design, and Narrower what is left of it
	// with every sheet narrower by onhand.NarrowerBy; nil without a list and until
	// they are worked out.
	Makes, Narrower *onhand.Outcome
}

// MostCurved is the number of gores the curve of stretch goes up to: past it slits
// stand closer than a hand.
const MostCurved = 13

// SameSkin tells whether the bark of two designs is laid flat alike: they differ
// at most in name, notes, root, crew, the limit of stretch, the trees and how panels
// are pieced and lapped.
func SameSkin(a, b design.Design) bool {
	if bark.GoresByRule(a) != bark.GoresByRule(b) {
		return false
	}
	for _, d := range []*design.Design{&a, &b} {
		d.Name, d.Notes = "", ""
		d.Root, d.Crew = design.Root{}, design.Crew{}
		d.StretchLimit = 0
		d.Panels, d.PanelLap, d.TreeAllowance, d.TreeRule = 0, 0, 0, 0
		d.Within = design.Within{}
		d.Own = 0
	}
	return a == b
}

// LayFlat works out the bark laid flat; bark.Flatten tells what warm and w are.
// It takes longer than a step of a slider may.
func LayFlat(c Canoe, res bark.Resolution, warm *bark.Flat, w *geom.FlattenWorkspace) bark.Flat {
	return bark.Flatten(c.Hull, c.Bark, res, warm, w)
}

// WithFlat is the canoe with its skin: seams, root and the bark to gather follow
// the flat lengths. The boat's weight, and how it floats with that, do not wait for
// it: the laps of joints an inch from where they were thought to be weigh grams.
func (c Canoe) WithFlat(f bark.Flat) Canoe {
	c.Bark = c.Bark.OnFlat(c.Hull, f)
	c.Gather = c.Gather.OnBark(c.Hull, c.Frame, c.Bark)
	c.Skin = &Skin{Flat: f}
	return c
}

// WithCurve is a canoe that has its skin, with the curve of stretch.
func (c Canoe) WithCurve(curve []bark.CurvePoint) Canoe {
	s := *c.Skin
	s.Curve = curve
	c.Skin = &s
	return c
}

// WithOutcomes is a canoe that has its skin, with what the sheets on hand were found
// to make for another canoe with the same bark.
func (c Canoe) WithOutcomes(of Canoe) Canoe {
	s := *c.Skin
	s.Makes, s.Narrower = of.Skin.Makes, of.Skin.Narrower
	c.Skin = &s
	return c
}

// WithMakes is a canoe that has its skin, with what the sheets on hand make. It
// changes nothing without a list. w is memory to work in, or nil; where its pause ends the work
// what it says means nothing.
func (c Canoe) WithMakes(w *geom.FlattenWorkspace) Canoe {
	if c.Design.OnHand.Count == 0 {
		return c
	}
	s := *c.Skin
	sheets := c.Design.OnHand.List()
	makes := onhand.Makes(c.Design, sheets, w)
	narrower := onhand.Makes(c.Design, onhand.Narrower(sheets, onhand.NarrowerBy), w)
	if narrower.Largest > makes.Largest {
		// A sheet can be cut narrower: the rule of cutting missed that it helps.
		makes = narrower
	}
	makes = makes.Agreeing(c.Design, sheets, c.Bark.Verdict() != bark.CannotBeBuilt, w)
	if narrower.Largest > makes.Largest {
		narrower = makes
	}
	s.Makes, s.Narrower = &makes, &narrower
	c.Skin = &s
	return c
}
