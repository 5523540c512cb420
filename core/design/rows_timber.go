package design

import (
	"math"

	"barkwright/core/units"
	"barkwright/core/wood"
)

func timberRows() []Param {
	g := GroupTimber
	rows := stockRows("stem", "Stem", func(d *Design) *wood.Stock { return &d.StemStock })
	rows = append(rows, stockRows("rib", "Ribs", func(d *Design) *wood.Stock { return &d.RibStock })...)
	rows = append(rows, stockRows("gunwale", "Gunwales", func(d *Design) *wood.Stock { return &d.GunwaleStock })...)
	rows = append(rows,
		row(g, "inwaleThickness", "Inwale, thickness", "").timber(1, 0.5, 2,
			func(d *Design) *float64 { return &d.InwaleThickness }),
		row(g, "inwaleDepth", "Inwale, depth", "").timber(1, 0.5, 2.5, func(d *Design) *float64 { return &d.InwaleDepth }),
		row(g, "outwaleThickness", "Outwale, thickness", "").timber(0.5, 0.25, 1.5,
			func(d *Design) *float64 { return &d.OutwaleThickness }),
		row(g, "outwaleDepth", "Outwale, depth", "").timber(1, 0.5, 2.5, func(d *Design) *float64 { return &d.OutwaleDepth }),
		row(g, "capWidth", "Cap, width", "").timber(1.5, 0.75, 3, func(d *Design) *float64 { return &d.CapWidth }),
		row(g, "capThickness", "Cap, thickness", "").timber(0.375, 0.125, 0.75,
			func(d *Design) *float64 { return &d.CapThickness }),
		// Four or more: Adney and Chapelle 1964, pp. 149-150, on outwales.
		row(g, "gunwaleEndSplits", "Gunwale ends split to bend, layers", "1 leaves them whole.").
			wholes(4, 1, 8, func(d *Design) *int { return &d.GunwaleEndSplits }),
	)
	rows = append(rows, thwartRows()...)
	rows = append(rows, ribRows()...)
	return append(rows, trunkRows()...)
}

// trunkRows are the trunks that the wood is split from: estimates, to be set to what
// grows where the builder is.
func trunkRows() []Param {
	g := GroupTimber
	return []Param{
		row(g, "cedarDiameter", "Trunk to be had, diameter at its small end",
			"Inside the bark. The hardwood for thwarts is taken as thick.").
			quantity(units.SmallLength, 11*units.Inch, 4*units.Inch, 36*units.Inch, [2]float64{0.5 * units.Inch, 0.01},
				func(d *Design) *float64 { return &d.CedarDiameter }),
		row(g, "cedarClear", "Its length free of knots", "").
			hull(204, 24, 480, func(d *Design) *float64 { return &d.CedarClear }),
		row(g, "cedarHeart", "Heart to discard, across", "").
			timber(2.5, 0, 12, func(d *Design) *float64 { return &d.CedarHeart }),
		row(g, "cedarSapwood", "Sapwood to discard, thickness", "").
			timber(0.5, 0, 4, func(d *Design) *float64 { return &d.CedarSapwood }),
	}
}

func stockRows(key, label string, at func(*Design) *wood.Stock) []Param {
	g := GroupTimber
	return []Param{
		choices(row(g, key+"Species", label+": wood", ""), names(wood.AllSpecies(),
			func(s wood.SpeciesRow) string { return s.Name }),
			func(d *Design) *wood.Species { return &at(d).Species }),
		choices(row(g, key+"Condition", label+": made ready to bend", ""), names(wood.AllConditions(), wood.Condition.String),
			func(d *Design) *wood.Condition { return &at(d).Condition }),
		choices(row(g, key+"Grain", label+": grain", ""), names(wood.AllGrains(), wood.Grain.String),
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
	count := row(GroupTimber, "thwarts", "Thwarts", "An odd number: one amidships and the others in pairs.").
		wholes(5, 3, 9, func(d *Design) *int { return &d.Thwarts })
	count.Odd, count.StepInch, count.StepMetric = true, 2, 2
	rows := []Param{count}
	for i := range thwartNames {
		rows = append(rows, row(GroupTimber, thwartKeys[i], thwartNames[i],
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
	g := GroupTimber
	return []Param{
		row(g, "ribs", "Ribs", "An odd number puts one under the middle thwart.").
			wholes(44, 8, 110, func(d *Design) *int { return &d.Ribs }).
			follows(func(d Design) float64 { return 2 * math.Round(2*d.HalfGunwale()/RibEvery/2) }),
		row(g, "ribWidthMid", "Rib width amidships", "").timber(2.25, 0.5, 5,
			func(d *Design) *float64 { return &d.RibWidthMid }),
		row(g, "ribWidthEnd", "Rib width at the ends", "").timber(1.75, 0.5, 4,
			func(d *Design) *float64 { return &d.RibWidthEnd }),
		row(g, "ribTipWidth", "Rib width at its tips", "").timber(1, 0.375, 3,
			func(d *Design) *float64 { return &d.RibTipWidth }),
		row(g, "ribThickness", "Rib thickness amidships", "").timber(0.375, 0.125, 0.75,
			func(d *Design) *float64 { return &d.RibThickness }),
		row(g, "ribThicknessEnd", "Rib thickness at the ends", "").timber(0.25, 0.125, 0.75,
			func(d *Design) *float64 { return &d.RibThicknessEnd }),
		row(g, "ribTuck", "Rib tip below the top of the inwale", "").timber(0.5, 0, 2,
			func(d *Design) *float64 { return &d.RibTuck }),
		// 2 1/2 to 3 in: Adney and Chapelle 1964, p. 90. The last three: p. 104, fig. 116.
		row(g, "ribTaper", "Rib taper, length at each tip", "The rib narrows to its tip over this much.").
			timber(3, 1, 24, func(d *Design) *float64 { return &d.RibTaper }),
		row(g, "ribsBroken", "Ribs broken at the centre, each end",
			"The last ones toward either end, too sharp to bend whole.").
			wholes(3, 0, 8, func(d *Design) *int { return &d.RibsBroken }),
		row(g, "sheathingThickness", "Sheathing, thickness", "").timber(0.125, 0.0625, 0.375,
			func(d *Design) *float64 { return &d.SheathingThickness }),
		row(g, "sheathingWidth", "Sheathing, width of a strip", "").timber(3.5, 1.5, 6,
			func(d *Design) *float64 { return &d.SheathingWidth }),
		row(g, "sheathingLap", "Sheathing, lap at its ends", "").timber(1.5, 0, 6,
			func(d *Design) *float64 { return &d.SheathingLap }),
	}
}

func rootRows() []Param {
	g := GroupRoot
	return []Param{
		row(g, "groupHoles", "Holes in a group of lacing", "").wholes(4, 2, 8, func(d *Design) *int { return &d.GroupHoles }),
		row(g, "holeSpacing", "Holes apart", "").timber(0.5, 0.25, 1, func(d *Design) *float64 { return &d.HoleSpacing }),
		row(g, "passes", "Turns through each hole", "").wholes(2, 1, 3, func(d *Design) *int { return &d.Passes }),
		row(g, "pegEvery", "A peg at every n-th group", "").wholes(2, 1, 4, func(d *Design) *int { return &d.PegEvery }),
		row(g, "rootWidth", "Width of the split root", "").timber(0.1875, 0.0625, 0.5,
			func(d *Design) *float64 { return &d.RootWidth }),
		// 12 ft is an estimate between the lengths split roots are used at, 5 to 16 ft
		// (a university's canoe project, 2013), and the 20 ft that roots grow to
		// (Adney and Chapelle 1964, p. 16).
		row(g, "rootLength", "Roots as dug, usual length", "Each gives two strands as long.").
			hull(144, 48, 360, func(d *Design) *float64 { return &d.RootLength }),
		row(g, "tail", "Tail at each end of a group", "").timber(3, 0, 12, func(d *Design) *float64 { return &d.Tail }),
		row(g, "rootWaste", "Root allowed for waste", "").
			quantity(units.Percent, 0.15, 0, 1, [2]float64{0.01, 0.01}, func(d *Design) *float64 { return &d.RootWaste }),
		row(g, "goreStitch", "Stitch along a gore", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.GoreStitch }),
		row(g, "goreBite", "Bite of a gore stitch, from edge to hole twice", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.GoreBite }),
		row(g, "panelStitch", "Stitch along a side panel", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.PanelStitch }),
		row(g, "panelBite", "Bite of a side-panel stitch", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.PanelBite }),
		row(g, "jointStitch", "Stitch along an end-to-end joint", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.JointStitch }),
		row(g, "jointBite", "Bite of a joint stitch", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.JointBite }),
		row(g, "endStitch", "Stitch along the ends", "").timber(0.5, 0.25, 2,
			func(d *Design) *float64 { return &d.EndStitch }),
		row(g, "endBite", "Bite of an end stitch", "").timber(0.5, 0.25, 2, func(d *Design) *float64 { return &d.EndBite }),
	}
}
