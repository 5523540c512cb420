package design

import (
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Within is how close a boat is built to its sizes: 19 boats in 20 lie within so much of what
// was set, either way. No boat follows from it, only how far figures may be off.
type Within struct {
	Length, Beam, Depth, Frame, Ends, Bed, Bark, Wood float64
	Girth                                             GirthKnown
}

// GirthKnown says what is known of the half girth amidships.
type GirthKnown int

// What may be known, in the order of the list.
const (
	// GirthByRule is the rule's, with the spread of drawn boats.
	GirthByRule GirthKnown = iota
	// GirthRead is one read by a tape on the boat being built.
	GirthRead
)

// String is it as the form names it.
func (g GirthKnown) String() string {
	return [...]string{"by rule, not read yet", "read by a tape"}[g]
}

// withinRows are last in the table. The sizes are estimates of this project: no published
// figure for how close a canoe is built was found.
func withinRows() []Param {
	rows := []Param{
		row(stage.Choose, "tolLength", "Length comes out within", "Of what was set, either way, 19 times in 20.").
			hull(1, 0, 12, func(d *Design) *float64 { return &d.Within.Length }),
		row(stage.Choose, "tolBeam", "Beam comes out within", "At every thwart.").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.Within.Beam }),
		row(stage.Choose, "tolDepth", "Depth comes out within", "Amidships.").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.Within.Depth }),
		row(stage.Choose, "tolFrame", "Building frame comes out within", "Its breadth.").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.Within.Frame }),
		row(stage.Choose, "tolEnds", "Each height at the ends comes out within",
			"The gunwale's end, the stem head, the rise of the bottom, the heel.").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.Within.Ends }),
		row(stage.Choose, "tolBed", "Crown and blocks: each comes out within", "Their heights.").
			timber(0.25, 0, 2, func(d *Design) *float64 { return &d.Within.Bed }),
		row(stage.Choose, "tolBark", "Bark's thickness is known within", "From place to place and from sheet to sheet.").
			quantity(units.Thickness, 0.03*units.Inch, 0, 0.1*units.Inch, [2]float64{0.01 * units.Inch, 0.0001},
				func(d *Design) *float64 { return &d.Within.Bark }),
		row(stage.Choose, "tolWood", "Ribs and inwales are split within", "In thickness; sheathing within half of it.").
			timber(0.0625, 0, 0.5, func(d *Design) *float64 { return &d.Within.Wood }),
		choices(row(stage.Choose, "girthKnown", "Half girth amidships is",
			"Round the bark on the boat being built, once it stands: then ribs are cut closer."),
			names([]GirthKnown{GirthByRule, GirthRead}, GirthKnown.String),
			func(d *Design) *GirthKnown { return &d.Within.Girth }),
	}
	for i := range rows {
		rows[i].Tolerance = true
	}
	return rows
}
