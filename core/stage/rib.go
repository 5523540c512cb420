package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// rib is sheathing and ribs.
var rib = Stage{
	Key: Rib, Short: "Rib", Name: "Line and rib",
	Asked:   "Which strip, which rib, how long, and which is next?",
	Large:   []string{"ribs.longest", "ribs.minRadius", "hull.halfGirth"},
	Verdict: "ribs.verdict",
	InSight: []string{"ribThickness", "ribThicknessEnd", "ribWidthMid", "ribWidthEnd", "ribsBroken", "bilge"},
	Folds: []Fold{
		{"Rib", []string{"ribTipWidth", "ribTuck", "ribTaper", "ribSpecies", "ribCondition", "ribGrain"}},
		{"Section", []string{"turnWidth", "ease"}},
		{"Sheathing", []string{"sheathingThickness", "sheathingWidth", "sheathingLap"}},
	},
	Chips:    []string{"ribs", "depth", "frameWidth"},
	Look:     Look{State: Finished, Drawing: Sections},
	Cautions: []Hazard{scalds, bending},
	Patterns: []string{"sections", "tip"},
	Bench:    ribLists,
	Steps: []Step{
		{Key: "rib.shave", text: "Split the ribs and shave them to width and thickness, with spares.",
			Tool: "rule", Reads: "ribWidthMid", Counts: "ribs", From: Gunwales, Basis: known.Published, Pages: "pp. 18, 51"},
		{Key: "rib.bend",
			text: "Mark the bends; bend two together in boiling water, a little past their shape, and tie them.",
			Tool: "boiling water", Counts: "pairs", Basis: known.Published, Pages: "pp. 51, 92"},
		{Key: "rib.dry", text: "Leave them tied to dry two to four days.",
			Basis: known.Published, Account: "accounts of builders and a class, 2011 to 2018"},
		{Key: "rib.inside", text: "Pitch the seams inside and lay strips of bark over them.",
			Tool: "brush", Hazard: "hot pitch burns: see Pitch", Basis: known.Published, Pages: "p. 50"},
		{Key: "rib.sheathe", text: "Lay the sheathing wet, the centre strip first, ends lapped.",
			Counts: "sheathing", Basis: known.Published, Pages: "pp. 50-52"},
		{Key: "rib.hold", text: "Hold it with temporary ribs.",
			Basis: known.Published, Pages: "pp. 51-52"},
		{Key: "rib.try", text: "Try the next rib in fitting order; leave # at each tip, then shorten it.",
			sizes: []float64{units.Inch}, Tool: "rule", Counts: "ribs", Basis: known.Published, Pages: "p. 52"},
		{Key: "rib.drive",
			text: "Drive it with its foot toward the middle, hull wet and hot, until it stands nearly upright.",
			Tool: "mallet, block", Counts: "ribs", Basis: known.Published, Pages: "p. 52"},
		{Key: "rib.last", text: "Drive the last three or four, amidships.",
			Tool: "mallet, block", Basis: known.Published, Pages: "p. 52"},
		{Key: "rib.settle", text: "Let them stand some days, wet, and set the uneven ones again.",
			Basis: known.Published, Pages: "p. 52"},
		{Key: "rib.caps", text: "Put the caps on, pegged clear of the lashings, their ends lashed.",
			Tool: "pegs, root", Reads: "capThickness", Basis: known.Published, Pages: "p. 53"},
		{Key: "rib.read", text: "Read half girth, breadth and beam.",
			Tool: "strip, tape", Reads: "halfGirth", Basis: known.CommonPractice},
	},
}
