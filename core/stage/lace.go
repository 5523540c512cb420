package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// lace is lifting the gunwales and lacing.
var lace = Stage{
	Key: Lace, Short: "Lace", Name: "Lift and lace",
	Asked:    "How high does the edge stand, and where is each hole?",
	Large:    []string{"post.middle", "post.end", "lacing.groups"},
	InSight:  []string{"sheerSweep", "groupHoles", "holeSpacing", "passes", "pegEvery", "tail"},
	Chips:    []string{"depth", "gunwaleEndHeight", "bedCrown", "rootWidth"},
	Look:     Look{State: OnBed, Drawing: Side},
	Cautions: []Hazard{awl},
	Bench:    laceLists,
	Steps: []Step{
		{Key: "lace.posts", text: "Set the posts from the middle outward, with stones beside them.",
			Tool: "rule", Counts: "posts", Basis: known.Published, Pages: "pp. 46-47"},
		{Key: "lace.lift", text: "Lift the gunwales onto them; read the sheer at each post over a level line.",
			Tool: "level, tape", Reads: "sheerHeight", Counts: "posts", Basis: known.Published, Pages: "p. 47"},
		{Key: "lace.clear", text: "Read the clear lengths again.",
			Tool: "tape", Reads: "clearWidth", Basis: known.CommonPractice},
		{Key: "lace.pegs", text: "Bark between the rails, outwale on, pegs through both; none past the end thwarts.",
			Basis: known.Published, Pages: "p. 48"},
		{Key: "lace.flush", text: "Trim the bark's edge flush.",
			Tool: "knife", Basis: known.CommonPractice},
		{Key: "lace.holes", text: "Make the holes by the marks, just under the inwale.",
			Tool: "awl", Counts: "holes", Basis: known.CommonPractice},
		{Key: "lace.lace", text: "Lace group by group from the middle; the root wet.",
			Tool: "root", Counts: "holes", Basis: known.Published, Pages: "p. 48"},
		{Key: "lace.lash", text: "Lash the thwarts.",
			Tool: "root", Counts: "thwarts", Basis: known.Published, Pages: "pp. 38-40"},
		{Key: "lace.gores", text: "Sew the gores.",
			Tool: "root", Counts: "gores", Basis: known.Published, Pages: "p. 48"},
		{Key: "lace.read", text: "Read depth and beam as they now stand.",
			Tool: "tape", Reads: "depthInwale", Basis: known.CommonPractice},
		{Key: "lace.built", text: "More than # off: bring the boat to it and see what changes.",
			sizes: []float64{units.Inch / 2}, Basis: known.Estimate},
	},
}
