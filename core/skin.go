package core

import (
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/geom"
)

// Skin is what the bark laid flat tells, and what bark on hand makes of the boat.
type Skin struct {
	Flat bark.Flat
	// Curve is the stretch left by each number of gores a side, from none upward;
	// empty until it is worked out.
	Curve []bark.CurvePoint
	// Sheets are those the boat is laid out with: the list, or without one as many
	// of the design's as reach from end to end. Coverage is how they lie.
	Sheets   []bark.Sheet
	Coverage bark.Coverage
	// Makes is what the list makes of the design, and Narrower what is left of it
	// with every sheet narrower by bark.NarrowerBy; nil without a list and until
	// they are worked out.
	Makes, Narrower *bark.Outcome
}

// MostCurved is the number of gores the curve of stretch goes up to: past it slits
// stand closer than a hand.
const MostCurved = 13

// SameSkin tells whether the bark of two designs is laid flat alike: they differ
// at most in name, notes, root, crew and the limit of stretch.
func SameSkin(a, b design.Design) bool {
	if bark.GoresByRule(a) != bark.GoresByRule(b) {
		return false
	}
	for _, d := range []*design.Design{&a, &b} {
		d.Name, d.Notes = "", ""
		d.Root, d.Crew = design.Root{}, design.Crew{}
		d.StretchLimit = 0
		d.Own = 0
	}
	return a == b
}

// LayFlat works out the bark laid flat; bark.Flatten tells what warm and w are.
// It takes longer than a step of a slider may.
func LayFlat(c Canoe, res bark.Resolution, warm *bark.Flat, w *geom.FlattenWorkspace) bark.Flat {
	return bark.Flatten(c.Hull, bark.Plan(c.Hull), res, warm, w)
}

// WithFlat is the canoe with its skin: seams, root and the bark to gather follow
// the flat lengths. The boat's weight, and how she floats with it, do not wait for
// it: the laps of joints an inch from where they were thought to be weigh grams.
func (c Canoe) WithFlat(f bark.Flat) Canoe {
	c.Bark = bark.Plan(c.Hull).OnFlat(c.Hull, f)
	s := Skin{Flat: f, Sheets: onHand(c.Design)}
	if len(s.Sheets) > 0 {
		s.Coverage = bark.Cover(c.Hull, c.Bark, s.Sheets)
		c.Bark = c.Bark.OnSheets(c.Hull, s.Coverage)
	} else {
		s.Sheets, s.Coverage = c.ofOneSize()
	}
	weight, centre := c.Gather.Weight, c.Gather.Centre
	c.Gather = gather.Gather(c.Hull, c.Frame, c.Bark)
	c.Gather.Weight, c.Gather.Centre = weight, centre
	c.Skin = &s
	return c
}

// onHand is the list of sheets, nil where there is none.
func onHand(d design.Design) []bark.Sheet {
	var sheets []bark.Sheet
	for _, s := range d.OnHand.List() {
		sheets = append(sheets, bark.Sheet(s))
	}
	return sheets
}

// ofOneSize covers the boat with sheets of the design's size, one more at a time
// for panels once they reach from end to end. Where a dozen more leave something
// wanting the sheet is too narrow, and more of it would not help.
func (c Canoe) ofOneSize() ([]bark.Sheet, bark.Coverage) {
	var sheets []bark.Sheet
	var cover bark.Coverage
	for len(sheets) < c.Bark.Needs.Sheets+design.MostSheets {
		sheets = append(sheets, bark.Sheet{Width: c.Design.SheetWidth, Length: c.Design.SheetLength})
		if len(sheets) < c.Bark.Needs.Sheets {
			continue
		}
		if cover = bark.Cover(c.Hull, c.Bark, sheets); cover.Covers() {
			break
		}
	}
	return sheets, cover
}

// WithCurve is a canoe that has its skin, with the curve of stretch.
func (c Canoe) WithCurve(curve []bark.CurvePoint) Canoe {
	s := *c.Skin
	s.Curve = curve
	c.Skin = &s
	return c
}

// WithMakes is a canoe that has its skin, with what the sheets on hand make. It
// changes nothing without a list.
func (c Canoe) WithMakes() Canoe {
	if c.Design.OnHand.Count == 0 {
		return c
	}
	s := *c.Skin
	makes, narrower := bark.Makes(c.Design, s.Sheets), bark.Makes(c.Design, bark.Narrower(s.Sheets, bark.NarrowerBy))
	s.Makes, s.Narrower = &makes, &narrower
	c.Skin = &s
	return c
}
