package design

import (
	"math"

	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
)

func timberRows() []Param {
	rows := stockRows(stage.Ends, "stem", "Stem", func(d *Design) *wood.Stock { return &d.StemStock })
	rows = append(rows, stockRows(stage.Rib, "rib", "Ribs", func(d *Design) *wood.Stock { return &d.RibStock })...)
	rows = append(rows, stockRows(stage.Gunwales, "gunwale", "Gunwales",
		func(d *Design) *wood.Stock { return &d.GunwaleStock })...)
	rows = append(rows,
		row(stage.Gunwales, "inwaleThickness", "Inwale, thickness", "Across the boat, at the middle.").
			timber(1, 0.5, 2, func(d *Design) *float64 { return &d.InwaleThickness }),
		row(stage.Gunwales, "inwaleDepth", "Inwale, depth", "Up and down, at the middle.").
			timber(1, 0.5, 2.5, func(d *Design) *float64 { return &d.InwaleDepth }),
		row(stage.Gunwales, "outwaleThickness", "Outwale, thickness", "Across the boat, at the middle.").
			timber(0.5, 0.25, 1.5, func(d *Design) *float64 { return &d.OutwaleThickness }),
		row(stage.Gunwales, "outwaleDepth", "Outwale, depth", "Up and down, at the middle.").
			timber(1, 0.5, 2.5, func(d *Design) *float64 { return &d.OutwaleDepth }),
		row(stage.Gunwales, "capWidth", "Cap, width", "The flat strip that is pegged on top of inwale and outwale.").
			timber(1.5, 0.75, 3, func(d *Design) *float64 { return &d.CapWidth }),
		// 1/4 to 3/8 in: Adney and Chapelle 1964, p. 52.
		row(stage.Gunwales, "capThickness", "Cap, thickness", "The cap is bent along with the gunwales.").
			timber(0.3125, 0.125, 0.75, func(d *Design) *float64 { return &d.CapThickness }),
		// Four or more: Adney and Chapelle 1964, pp. 149-150, on outwales.
		row(stage.Gunwales, "gunwaleEndSplits", "Gunwale ends split to bend, layers", "1 leaves them whole.").
			wholes(4, 1, 8, func(d *Design) *int { return &d.GunwaleEndSplits }),
	)
	rows = append(rows, thwartRows()...)
	rows = append(rows, ribRows()...)
	return append(rows, trunkRows()...)
}

// trunkRows are the trunks that the wood is split from: estimates, to be set to what
// grows where the builder is.
func trunkRows() []Param {
	return []Param{
		row(stage.Gather, "cedarDiameter", "Trunk to be had, diameter at its small end",
			"Inside the bark. The hardwood for thwarts is taken as thick.").
			quantity(units.SmallLength, 11*units.Inch, 4*units.Inch, 36*units.Inch, [2]float64{0.5 * units.Inch, 0.01},
				func(d *Design) *float64 { return &d.CedarDiameter }),
		row(stage.Gather, "cedarClear", "Its length free of knots",
			"The length from which every long piece must come.").
			hull(204, 24, 480, func(d *Design) *float64 { return &d.CedarClear }),
		row(stage.Gather, "cedarHeart", "Heart to discard, across",
			"Loose or rotten wood round the middle of the trunk.").
			timber(2.5, 0, 12, func(d *Design) *float64 { return &d.CedarHeart }),
		row(stage.Gather, "cedarSapwood", "Sapwood to discard, thickness", "The outer ring, where it is not used.").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.CedarSapwood }),
	}
}

func stockRows(home stage.Key, key, label string, at func(*Design) *wood.Stock) []Param {
	return []Param{
		choices(row(home, key+"Species", label+": wood", "Woods differ in how tight they bend before they break."),
			names(wood.AllSpecies(), func(s wood.SpeciesRow) string { return s.Name }),
			func(d *Design) *wood.Species { return &at(d).Species }),
		choices(row(home, key+"Condition", label+": made ready to bend", "Wet and hot wood bends tighter than dry."),
			names(wood.AllConditions(), wood.Condition.String),
			func(d *Design) *wood.Condition { return &at(d).Condition }),
		choices(row(home, key+"Grain", label+": grain", "Grain that runs out at the face breaks there first."),
			names(wood.AllGrains(), wood.Grain.String),
			func(d *Design) *wood.Grain { return &at(d).Grain }),
	}
}

// thwartPlaces are where the thwarts outside the middle one stand unless they
// are set, as shares of the half gunwale, by how many there are a side. Two a
// side are close to the survey's mean; the others are an even fan. Estimates.
var thwartPlaces = [5][4]float64{
	1: {0.55},
	2: {0.41, 0.78},
	3: {0.29, 0.57, 0.82},
	4: {0.22, 0.44, 0.65, 0.85},
}

var thwartNames = [4]string{"First thwart from the middle", "Second thwart from the middle",
	"Third thwart from the middle", "Fourth thwart from the middle"}

func thwartRows() []Param {
	count := row(stage.Gunwales, "thwarts", "Thwarts", "An odd number: one amidships and the others in pairs.").
		wholes(5, 3, 9, func(d *Design) *int { return &d.Thwarts })
	count.Odd, count.StepInch, count.StepMetric = true, 2, 2
	rows := []Param{count}
	for i := range thwartNames {
		rows = append(rows, row(stage.Gunwales, thwartKeys[i], thwartNames[i],
			"Share of the half gunwale along its curve, from its middle.").
			shape(thwartPlaces[2][min(i, 1)], 0.1, 0.97, 0.01, func(d *Design) *float64 { return &d.ThwartAt[i] }).
			follows(func(d Design) float64 {
				// Places that this number of thwarts does not use stay where no
				// drawing and no check looks at them.
				places := thwartPlaces[max(1, min(4, d.OuterThwarts()))]
				if places[i] == 0 {
					return 0.97
				}
				return places[i]
			}))
	}
	return rows
}

// ThwartKeys are the keys of the thwarts' places, from the one next to the middle
// outward; as many are of use as there are thwarts a side.
func ThwartKeys() []string { return thwartKeys[:] }

var thwartKeys = [4]string{"thwart1", "thwart2", "thwart3", "thwart4"}

func ribRows() []Param {
	return []Param{
		row(stage.Gunwales, "ribs", "Ribs", "An odd number puts one under the middle thwart.").
			wholes(44, 8, 110, func(d *Design) *int { return &d.Ribs }).
			follows(func(d Design) float64 { return 2 * math.Round(2*d.HalfGunwale()/RibEvery/2) }),
		row(stage.Rib, "ribWidthMid", "Rib width amidships", "Across the grain, at the middle rib.").
			timber(2.25, 0.5, 5, func(d *Design) *float64 { return &d.RibWidthMid }),
		row(stage.Rib, "ribWidthEnd", "Rib width at the ends", "Across the grain, at the last rib of an end.").
			timber(1.75, 0.5, 4, func(d *Design) *float64 { return &d.RibWidthEnd }),
		row(stage.Rib, "ribTipWidth", "Rib width at its tips",
			"At the very tip, where it goes up under the inwale's bevel.").
			timber(1, 0.375, 3, func(d *Design) *float64 { return &d.RibTipWidth }),
		row(stage.Rib, "ribThickness", "Rib thickness amidships",
			"At the middle rib. Thinner ribs take a tighter bend.").
			timber(0.375, 0.125, 0.75, func(d *Design) *float64 { return &d.RibThickness }),
		row(stage.Rib, "ribThicknessEnd", "Rib thickness at the ends", "At the last rib of an end.").
			timber(0.25, 0.125, 0.75, func(d *Design) *float64 { return &d.RibThicknessEnd }),
		row(stage.Rib, "ribTuck", "Rib tip below the top of the inwale",
			"A rib's tip stands this far under the inwale's top.").
			timber(0.5, 0, 2, func(d *Design) *float64 { return &d.RibTuck }),
		// 2 1/2 to 3 in: Adney and Chapelle 1964, p. 90. The last three: p. 104, fig. 116.
		row(stage.Rib, "ribTaper", "Rib taper, length at each tip", "The rib narrows to its tip over this much.").
			timber(3, 1, 24, func(d *Design) *float64 { return &d.RibTaper }),
		row(stage.Rib, "ribsBroken", "Ribs broken at the centre, each end",
			"The last ones toward either end, too sharp to bend whole.").
			wholes(3, 0, 8, func(d *Design) *int { return &d.RibsBroken }),
		row(stage.Rib, "sheathingThickness", "Sheathing, thickness",
			"The thin strips between bark and ribs; they spread the ribs' push.").
			timber(0.125, 0.0625, 0.375, func(d *Design) *float64 { return &d.SheathingThickness }),
		row(stage.Rib, "sheathingWidth", "Sheathing, width of a strip", "Across the grain.").
			timber(3.5, 1.5, 6, func(d *Design) *float64 { return &d.SheathingWidth }),
		// About 2 in: Adney and Chapelle 1964, pp. 50-51.
		row(stage.Rib, "sheathingLap", "Sheathing, lap at its ends",
			"How far one strip lies over the next where they meet end to end.").
			timber(2, 0, 6, func(d *Design) *float64 { return &d.SheathingLap }),
	}
}

func rootRows() []Param {
	return []Param{
		row(stage.Lace, "groupHoles", "Holes in a group of lacing", "Holes that are laced together between two ribs.").
			wholes(4, 2, 8, func(d *Design) *int { return &d.GroupHoles }),
		row(stage.Lace, "holeSpacing", "Holes apart", "From the middle of one hole to the next, in one group.").
			timber(0.5, 0.25, 1, func(d *Design) *float64 { return &d.HoleSpacing }),
		row(stage.Lace, "passes", "Turns through each hole",
			"How many times the root goes through each hole, round the gunwale.").
			wholes(2, 1, 3, func(d *Design) *int { return &d.Passes }),
		row(stage.Lace, "pegEvery", "Peg, every so many groups",
			"1 puts a peg beside every group, 2 beside every second one.").
			wholes(2, 1, 4, func(d *Design) *int { return &d.PegEvery }),
		row(stage.Gather, "rootWidth", "Width of the split root",
			"Across its flat side, once it is split and scraped.").
			timber(0.1875, 0.0625, 0.5, func(d *Design) *float64 { return &d.RootWidth }),
		// 12 ft is an estimate between the lengths split roots are used at, 5 to 16 ft
		// (a university's canoe project, 2013), and the 20 ft that roots grow to
		// (Adney and Chapelle 1964, p. 16).
		row(stage.Gather, "rootLength", "Roots as dug, usual length", "Each gives two strands as long.").
			hull(144, 48, 360, func(d *Design) *float64 { return &d.RootLength }),
		row(stage.Lace, "tail", "Tail at each end of a group", "What is left over at each end of a group, to tuck in.").
			timber(3, 0, 12, func(d *Design) *float64 { return &d.Tail }),
		row(stage.Gather, "rootWaste", "Root allowed for waste", "For what breaks, runs out or is scraped away.").
			quantity(units.Percent, 0.15, 0, 1, [2]float64{0.01, 0.01},
				func(d *Design) *float64 { return &d.RootWaste }),
		row(stage.Bark, "goreStitch", "Gore stitch, hole to hole along", "From hole to hole along the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.GoreStitch }),
		row(stage.Bark, "goreBite", "Gore stitch, hole to hole across", "From hole to hole across the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.GoreBite }),
		row(stage.Bark, "panelStitch", "Side-panel stitch, hole to hole along", "From hole to hole along the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.PanelStitch }),
		row(stage.Bark, "panelBite", "Side-panel stitch, hole to hole across", "From hole to hole across the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.PanelBite }),
		row(stage.Bark, "jointStitch", "Joint stitch, hole to hole along", "From hole to hole along the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.JointStitch }),
		row(stage.Bark, "jointBite", "Joint stitch, hole to hole across", "From hole to hole across the seam.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.JointBite }),
		row(stage.Ends, "endStitch", "End stitch, hole to hole along", "From hole to hole along the edge of the end.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.EndStitch }),
		row(stage.Ends, "endBite", "End stitch, hole to hole across", "From hole to hole through bark and stem-piece.").
			timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.EndBite }),
	}
}
