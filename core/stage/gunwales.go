package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// gunwales is gunwales and thwarts.
var gunwales = Stage{
	Key: Gunwales, Short: "Gunwales", Name: "Gunwales and thwarts",
	Asked:   "Where does every mark go?",
	Large:   []string{"gunwale.length", "ribs.count", "ribs.spacing"},
	Verdict: "gunwales.verdict",
	InSight: []string{
		"ribs", "thwarts", "inwaleThickness", "inwaleDepth", "outwaleThickness", "gunwaleEndSplits",
	},
	Folds: []Fold{
		{"More of the timber", []string{
			"outwaleDepth", "capWidth", "capThickness", "gunwaleSpecies", "gunwaleCondition", "gunwaleGrain",
		}},
		{"Places of the thwarts", []string{"thwart1", "thwart2", "thwart3", "thwart4"}},
	},
	Chips:      []string{"beam", "beamFull", "beamFine", "groupHoles", "passes"},
	Look:       Look{State: Finished, Drawing: Top, Near: []string{"thwart", "stem"}},
	Cautions:   []Hazard{edgeTools},
	Permission: AskedBriefly,
	Patterns:   []string{"stick"},
	Bench:      gunwaleLists,
	Steps: []Step{
		{Key: "gunwales.inwales", text: "Split the inwales out and shave them to size at the middle and the ends.",
			Tool: "crooked knife, rule", Reads: "inwaleThickness", Basis: known.Published, Pages: "p. 38"},
		{Key: "gunwales.taper", text: "Taper them from the end thwarts out; shape the last # to half an arrowhead.",
			sizes: []float64{3 * units.Inch}, Tool: "rule", Basis: known.Published, Pages: "pp. 38-40"},
		{Key: "gunwales.bevel", text: "Bevel the lower outer corner for the rib tips (see Joinery).",
			Tool: "rule", Basis: known.Published, Pages: "p. 38"},
		{Key: "gunwales.marks",
			text: "Mark the middle, then every place from the middle on both rails together; never from mark to mark.",
			Tool: "story stick", Counts: "marks", Basis: known.CommonPractice},
		{Key: "gunwales.mortises", text: "Cut the mortises of the thwarts.",
			Tool: "chisel", Counts: "thwarts", Basis: known.Published, Pages: "pp. 38-40"},
		{Key: "gunwales.thwarts",
			text: "Shape each thwart to its clear length, shoulder to shoulder, and its tenons.",
			Tool: "rule", Reads: "clearWidth", Counts: "thwarts", Basis: known.Published, Pages: "pp. 38-40"},
		{Key: "gunwales.holes", text: "Bore the holes for lashing in the thwarts' ends.",
			Tool: "awl", Basis: known.Published, Pages: "pp. 38-40"},
		{Key: "gunwales.join", text: "Fit the thwarts and join the ends; both diagonals measure the same.",
			Tool: "tape", Basis: known.Published, Pages: "p. 38"},
		{Key: "gunwales.read", text: "Read the clear lengths and the length over the gunwales.",
			Tool: "tape", Reads: "lengthOverGunwales", Basis: known.CommonPractice},
		{Key: "gunwales.outwales", text: "Shave outwales and caps, split their ends, bend them and tie them.",
			Basis: known.Published, Pages: "pp. 48, 52"},
		{Key: "gunwales.lift", text: "Wet the ends, tie in their lift, and leave them so.",
			Basis: known.Published, Pages: "p. 48"},
	},
}
