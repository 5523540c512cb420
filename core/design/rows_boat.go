package design

import (
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
)

func boatRows() []Param {
	return []Param{
		row(stage.Choose, "length", "Length overall", "From one foremost point of the bark to the other.").
			hull(192, 96, 444, func(d *Design) *float64 { return &d.Length }),
		row(stage.Choose, "overhang", "Ends beyond the gunwales, each",
			"How far the foremost point stands beyond the end of the gunwales.").
			hull(9, 0, 30, func(d *Design) *float64 { return &d.Overhang }),
		row(stage.Choose, "beam", "Beam inside the gunwales",
			"Amidships, between the inner faces of the gunwales: the middle thwart from shoulder to shoulder.").
			hull(33, 18, 72, func(d *Design) *float64 { return &d.Beam }),
		greatestBeam(),
		row(stage.Choose, "beamFull", "Fullness of the gunwales in the middle",
			"More keeps the breadth further toward the ends.").
			shape(2.1, 1.2, 4, 0.05, func(d *Design) *float64 { return &d.BeamFull }),
		row(stage.Choose, "beamFine", "Fineness of the gunwales at the ends",
			"More draws the ends in finer; over 1 the gunwales turn hollow there.").
			shape(1.3, 0.9, 2.3, 0.05, func(d *Design) *float64 { return &d.BeamFine }),
		row(stage.Choose, "depth", "Depth amidships",
			"From the outside of the bark on the bottom to the top of the inwale.").
			hull(12.5, 7, 34, func(d *Design) *float64 { return &d.Depth }),
		row(stage.Choose, "stations", "Stations in half the boat",
			"Of the table of offsets, equally apart; one more stands amidships.").
			wholes(12, 2, 40, func(d *Design) *int { return &d.Stations }),
		stationsApart(),
	}
}

func stationsApart() Param {
	p := row(stage.Choose, "stationsApart", "Or stations so far apart",
		"From amidships, at round places along the boat; the last one stands where the others end. None: by their number.").
		hull(0, 0, 60, func(d *Design) *float64 { return &d.StationsApart })
	p.NoneAtMin = true
	return p
}

func greatestBeam() Param {
	p := row(stage.Choose, "greatestBeam", "Greatest breadth of bark",
		"Where the sides bulge beyond the gunwales; none where they do not.").
		hull(0, 0, 84, func(d *Design) *float64 { return &d.GreatestBeam })
	p.NoneAtMin = true
	return p
}

func sheerRows() []Param {
	return []Param{
		row(stage.Choose, "gunwaleEndHeight", "Height of the gunwale at its ends",
			"Top of the inwale there, over the bottom amidships.").
			hull(20, 9, 48, func(d *Design) *float64 { return &d.GunwaleEndHeight }).
			follows(func(d Design) float64 { return d.Depth + GunwaleEndRise }),
		row(stage.Lace, "sheerSweep", "Shape of the sheer, even curve to flat with lifted ends",
			"Low: the sheer rises evenly from the middle. High: flat for most of its length and lifted at the ends.").
			shape(5, 1.5, 10, 0.1, func(d *Design) *float64 { return &d.SheerSweep }),
		row(stage.Choose, "rocker", "Rocker: rise of the bottom at the heels",
			"Height of the bottom at the stem's heel over the bottom amidships.").
			hull(1.5, 0, 12, func(d *Design) *float64 { return &d.Rocker }),
		row(stage.Choose, "rockerSpread", "How far the rocker reaches in",
			"Low: the rise begins near amidships. High: it stays near the ends.").
			shape(4, 2, 8, 0.1, func(d *Design) *float64 { return &d.RockerSpread }),
	}
}

func bedRows() []Param {
	return []Param{
		choices(row(stage.Bed, "builtOn", "Built on",
			"What is weighed down on the bark and the bark folded up round: a frame of its own, or the gunwales with their "+
				"thwarts, raised to the sheer afterwards."),
			names([]BuiltOn{OnFrame, OnGunwales}, BuiltOn.String), func(d *Design) *BuiltOn { return &d.BuiltOn }),
		row(stage.Bed, "frameWidth", "Building frame, out to out",
			"Breadth of the frame that is weighed down on the bark.").
			hull(27, 10, 64, func(d *Design) *float64 { return &d.FrameWidth }).
			follows(func(d Design) float64 { return FrameShare * d.Beam }),
		row(stage.Bed, "frameLength", "Building frame, length",
			"From one end of the frame to the other; it stops short of the gunwale ends.").
			hull(160, 20, 420, func(d *Design) *float64 { return &d.FrameLength }).
			follows(func(d Design) float64 { return 2*d.HalfGunwale() - FrameShorter }),
		row(stage.Bed, "frameFull", "Fullness of the frame in the middle",
			"More keeps the frame's breadth further toward its ends.").
			shape(2.1, 1.2, 4, 0.05, func(d *Design) *float64 { return &d.FrameFull }).
			follows(func(d Design) float64 { return d.BeamFull }),
		row(stage.Bed, "frameFine", "Fineness of the frame at its ends", "A bent batten is not hollow: 1 or less.").
			shape(1, 0.8, 1.6, 0.05, func(d *Design) *float64 { return &d.FrameFine }),
		row(stage.Rib, "bilge", "Turn of the bilge, easy to hard", "How sharply the side turns up out of the bottom.").
			shape(0.70, 0.56, 0.85, 0.01, func(d *Design) *float64 { return &d.Bilge }),
		row(stage.Rib, "ease", "Half girth that the ribs take up",
			"How much less bark goes round the finished half of the boat amidships than lies folded on the bed: ribs round "+
				"the fold off.").
			timber(usualEase/units.Inch, LeastEase/units.Inch, MostEase/units.Inch,
				func(d *Design) *float64 { return &d.Ease }).signed(),
		row(stage.Rib, "turnWidth", "Breadth of the turn line",
			"Where the lines of bottom and side of the finished boat would meet, amidships: by rule what the bark folded on "+
				"the bed, less its ease, goes round.").
			hull(32, 8, 86, func(d *Design) *float64 { return &d.TurnWidth }).
			exactly(func(d Design) float64 { o, _ := d.midsectionAsked(); return 2 * o.Corner }),
		row(stage.Bed, "bedLength", "Building bed, length",
			"The levelled ground and its raised middle; "+units.Length.Both(bedLonger)+" longer than the gunwales by rule.").
			hull(222, 60, 500, func(d *Design) *float64 { return &d.BedLength }).
			follows(func(d Design) float64 { return 2*d.HalfGunwale() + bedLonger }),
		row(stage.Bed, "bedCrown", "Crown of the bed", "How much higher the bed is amidships than at its ends.").
			hull(1.75, 0, 5, func(d *Design) *float64 { return &d.BedCrown }),
		row(stage.Bed, "endBlocking", "Blocks under the heels",
			"Height of the blocks that lift the bark's ends off the bed.").
			hull(1.5, 0, 12, func(d *Design) *float64 { return &d.EndBlocking }).
			follows(func(d Design) float64 { return d.Rocker }),
		row(stage.Gather, "barkThickness", "Thickness of the bark",
			"Of the layer that is taken, without the rough outside.").
			quantity(units.Thickness, 0.14*units.Inch, 5.0/64*units.Inch, 5.0/16*units.Inch,
				[2]float64{units.Inch / 64, 0.0001}, func(d *Design) *float64 { return &d.BarkThickness }),
		row(stage.Gather, "sheetWidth", "Sheet of bark, width", "Across the boat: round the tree.").
			hull(40, 16, 80, func(d *Design) *float64 { return &d.SheetWidth }),
		row(stage.Gather, "sheetLength", "Sheet of bark, length", "Along the boat: up the tree.").
			hull(120, 36, 320, func(d *Design) *float64 { return &d.SheetLength }),
		row(stage.Bark, "gores", "Gores each side",
			"By rule one at each thwart end and one half-way between; set a number and they stand evenly.").
			wholes(9, 0, 24, func(d *Design) *int { return &d.Gores }).
			follows(func(d Design) float64 { return float64(2*d.timberThwarts() - 1) }),
		row(stage.Bark, "goreFoot", "Gores stop this far outside the frame",
			"The slash stops here, short of the frame.").
			timber(1, 0, 4, func(d *Design) *float64 { return &d.GoreFoot }),
		row(stage.Bark, "seamLap", "Lap at a seam", "How far two edges lie over each other once a seam is trimmed.").
			timber(0.5, 0, 3, func(d *Design) *float64 { return &d.SeamLap }),
		// One to three a side: Adney and Chapelle 1964, p. 43; fitted with a lap of a
		// couple of inches that is trimmed to about half an inch, p. 45.
		row(stage.Bark, "panels", "Pieces in a side panel amidships, at least",
			"More where no sheet is long enough. With three the middle one ends just past the first thwarts.").
			wholes(1, 1, 3, func(d *Design) *int { return &d.Panels }),
		row(stage.Bark, "panelLap", "Lap a side panel is fitted with", "Trimmed to the lap at a seam once it fits.").
			timber(2, 0, 6, func(d *Design) *float64 { return &d.PanelLap }),
		row(stage.Gather, "treeAllowance", "Bark taken wider than the sheet",
			"For torn edges and bad places, round the tree. An estimate.").
			timber(2, 0, 12, func(d *Design) *float64 { return &d.TreeAllowance }),
		choices(row(stage.Gather, "treeRule", "Sheet as wide as set",
			"A trunk is thinner higher up, and a canoe widest amidships. Where sheets meet near amidships the whole length "+
				"is wanted."),
			names(treeRules(), TreeRule.String), func(d *Design) *TreeRule { return &d.TreeRule }),
		row(stage.Bark, "gunwaleTurn", "Bark left to trim at the gunwale",
			"How far the bark stands above the rails before it is cut flush.").
			timber(1.5, 0, 3, func(d *Design) *float64 { return &d.GunwaleTurn }),
		row(stage.Bark, "stretchLimit", "Stretch that gores may leave in the bark",
			"An estimate: no published limit of birch bark was found. It only decides which number of gores is named as "+
				"enough.").
			quantity(units.Strain, 0.005, 0.001, 0.03, [2]float64{0.0005, 0.0005},
				func(d *Design) *float64 { return &d.StretchLimit }),
	}
}

// timberThwarts is the number of thwarts, of use before the table has set it.
func (d Design) timberThwarts() int { return max(d.Thwarts, 3) }

func endRows() []Param {
	return []Param{
		row(stage.Ends, "endHeight", "Stem-head height", "Over the bottom amidships.").
			hull(25, 12, 60, func(d *Design) *float64 { return &d.EndHeight }).
			follows(func(d Design) float64 { return d.GunwaleEndHeight + HeadRise }),
		row(stage.Ends, "headboard", "Headboard inside the gunwale end",
			"Along the gunwale, to the mark that its top stands under.").
			hull(3.5, 1, 12, func(d *Design) *float64 { return &d.Headboard }),
		row(stage.Ends, "headboardFoot", "Headboard's foot farther out than its top",
			"Nothing: the board stands plumb under its mark.").
			timber(0, 0, 2, func(d *Design) *float64 { return &d.HeadboardFoot }),
		row(stage.Ends, "headboardBelly", "Headboard sprung outboard by",
			"How far its middle bellies out when it is sprung in; nothing where it is left straight.").
			timber(1.75, 0, 6, func(d *Design) *float64 { return &d.HeadboardBelly }),
		row(stage.Ends, "heelLength", "Foremost point back to the heel",
			"Where the straight of the bottom ends and the stem's curve begins; by rule "+
				units.SmallLength.Both(HeelInboard)+" inboard of the headboard.").
			hull(14.25, 8, 48, func(d *Design) *float64 { return &d.HeelLength }).
			exactly(func(d Design) float64 { return d.Length/2 - d.HeadboardX() + HeelInboard }),
		row(stage.Ends, "headSetback", "Stem head inboard of the foremost point", "How far the end tumbles home.").
			hull(3, 0, 14, func(d *Design) *float64 { return &d.HeadSetback }).
			follows(func(d Design) float64 {
				return min(HeadBack, (d.Overhang-headRoom)/2, headBackShare*d.HeelLength)
			}),
		row(stage.Ends, "endFull", "Shape of the ends, slender to full",
			"Low: the end reaches out, slender. High: it stands full and round.").
			shape(0.6, 0.2, 1, 0.02, func(d *Design) *float64 { return &d.EndFull }),
		row(stage.Ends, "stemDepth", "Stem-piece, fore and aft",
			"Of the whole stem-piece, before it is split into laminations.").
			timber(1.25, 0.5, 3, func(d *Design) *float64 { return &d.StemDepth }),
		row(stage.Ends, "stemWidth", "Stem-piece, across", "Its breadth between the two sides of bark.").
			timber(0.75, 0.375, 1.5, func(d *Design) *float64 { return &d.StemWidth }),
		row(stage.Ends, "stemLaminations", "Laminations of the stem",
			"How many layers the stem-piece is split into, all but its heel.").
			wholes(8, 1, wood.MaxSplits, func(d *Design) *int { return &d.StemLaminations }),
		row(stage.Ends, "stemSolid", "Heel of the stem left solid",
			"From its inboard end, inboard of the headboard; the laminations run from there to the head.").
			timber(4, 2, 12, func(d *Design) *float64 { return &d.StemSolid }),
		trialOpening(),
	}
}

// trialOpening is what a trial piece did; the bending form is drawn tighter by it.
func trialOpening() Param {
	p := row(stage.Ends, "stemOpening", "Trial piece opened when let go: its radius grew by",
		"Bend a spare lamination on a form, let it dry and let it go. None until it is tried.").
		quantity(units.Percent, 0, 0, 1.5, [2]float64{0.01, 0.01}, func(d *Design) *float64 { return &d.StemOpening })
	p.NoneAtMin = true
	return p
}

// HeelInboard is how far inboard of the headboard the heel stands by rule, and how far
// inboard of the board's foot the stem-piece begins at most: drawn boats 0.8 to 2.8
// in. Scaled off the drawings of Adney and Chapelle 1964, figures 31 to 106.
const HeelInboard = 2 * units.Inch
