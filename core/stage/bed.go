package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// bed is the building frame and the bed.
var bed = Stage{
	Key: Bed, Short: "Bed", Name: "Frame and bed",
	Asked:   "What do we build it on?",
	Large:   []string{"frame.width", "bed.stakes", "bed.slack"},
	Verdict: "hull.ease",
	InSight: []string{"builtOn", "frameWidth", "frameLength", "bedCrown", "endBlocking", "bedLength"},
	Folds: []Fold{
		{"Plan of the frame", []string{"frameFull", "frameFine"}},
	},
	Chips:    []string{"beam", "rocker", "gunwaleEndHeight"},
	Look:     Look{State: OnBed, Drawing: Top},
	Cautions: []Hazard{lifting},
	Patterns: []string{"frame"},
	Bench:    bedLists,
	Steps: []Step{
		{Key: "bed.level", text: "Clear and level the ground, as long and as broad as the bed.",
			Tool: "line, tape", Basis: known.Published, Pages: "p. 40"},
		{Key: "bed.crown", text: "Raise the middle by the crown under a string.",
			Tool: "string, rule", Basis: known.Published, Pages: "p. 40"},
		{Key: "bed.battens", text: "Split the battens of the frame and its crosspieces.",
			Tool: "rule", Basis: known.Published, Pages: "p. 54"},
		{Key: "bed.tie", text: "Tie the frame, and read its width at every crosspiece.",
			Tool: "tape", Reads: "frameWidth", Counts: "frame", Basis: known.Published, Pages: "p. 54"},
		{Key: "bed.lay", text: "Lay it on the centre line of the bed.",
			Tool: "string", Reads: "frameLength", Basis: known.Published, Pages: "p. 40"},
		{Key: "bed.stakes", text: "Drive the stakes # off the frame, none at a thwart.",
			sizes: []float64{units.Inch}, Tool: "mallet", Counts: "stakes", Basis: known.Published, Pages: "pp. 40-41"},
		{Key: "bed.number", text: "Number the stakes, draw them, and lay each beside its hole.",
			Basis: known.Published, Pages: "pp. 40-46"},
		{Key: "bed.posts", text: "Cut the posts to the heights of the stage Lift and lace, and name them.",
			Tool: "rule, saw", Counts: "posts", Basis: known.Published, Pages: "pp. 46-47"},
		{Key: "bed.blocks", text: "Set the blocks under the heels.",
			Tool: "rule", Basis: known.Published, Pages: "pp. 63, 91"},
		{Key: "bed.stones", text: "Bring stones enough that the frame cannot lift.",
			Basis: known.CommonPractice},
	},
}
