package stage

import "barkwright/core/known"

// ends is closing the ends.
var ends = Stage{
	Key: Ends, Short: "Ends", Name: "Close the ends",
	Asked:   "How thin is the stem split, and what shape is cut?",
	Large:   []string{"stem.blank", "stem.laminationThickness", "stem.minRadius"},
	Verdict: "stem.verdict",
	InSight: []string{"stemLaminations", "stemDepth", "endHeight", "endFull", "headSetback", "headboard"},
	Folds: []Fold{
		{"Stem", []string{
			"stemWidth", "stemSolid", "heelLength", "stemOpening", "stemSpecies", "stemCondition", "stemGrain",
		}},
		{"Headboard and sewing", []string{"headboardFoot", "headboardBelly", "endStitch", "endBite"}},
	},
	Chips:    []string{"overhang", "gunwaleEndHeight"},
	Look:     Look{State: Finished, Drawing: Side, Near: []string{"stem", "headboard"}},
	Cautions: []Hazard{bending, scalds},
	Patterns: []string{"stem", "form", "trim", "headboard"},
	Bench:    endLists,
	Steps: []Step{
		{Key: "ends.blank", text: "Split and shave the blanks of the stems.",
			Tool: "rule", Reads: "stemDepth", From: Gunwales, Basis: known.Published, Pages: "pp. 48-49"},
		{Key: "ends.split", text: "Split each into its laminations, as far as the solid heel.",
			Tool: "knife, wedge", Reads: "stemLaminations", Counts: "laminations", From: Gunwales,
			Basis: known.Published, Pages: "pp. 49-50"},
		{Key: "ends.trial", text: "Bend a trial strip on the form, let it dry, and read how far it opens.",
			Tool: "rule", From: Gunwales, Basis: known.Estimate},
		{Key: "ends.bend", text: "Boil and bend the stems on the form, tie them, and let them dry.",
			Tool: "hot water", From: Gunwales, Basis: known.Published, Pages: "p. 49"},
		{Key: "ends.clear", text: "Take out stones, frame and posts.",
			Basis: known.Published, Account: "a time-line of a 15-day class, 2018"},
		{Key: "ends.trim", text: "Trim the bark's ends by the pattern.",
			Tool: "knife", Basis: known.CommonPractice},
		{Key: "ends.set", text: "Set the stems in, their heels on the bottom bark; read the height of the heads.",
			Tool: "rule", Reads: "endHeight", Basis: known.Published, Pages: "pp. 49-50"},
		{Key: "ends.sew", text: "Sew the ends, through bark and stem.",
			Tool: "awl, root", Counts: "closing", Basis: known.Published, Pages: "pp. 43, 49"},
		{Key: "ends.lash", text: "Lash the outwales three times at each end.",
			Tool: "root", Basis: known.Published, Pages: "pp. 49-50"},
		{Key: "ends.read", text: "Read the length overall and the height of both heads.",
			Tool: "tape", Reads: "lengthOverall", Basis: known.CommonPractice},
		{Key: "ends.boards", text: "Cut the headboards, with notch and tenon.",
			Tool: "rule", Counts: "headboard", Basis: known.Published, Pages: "pp. 49, 52"},
		{Key: "ends.spring", text: "Spring them in, each on its mark.",
			Tool: "plumb line", Reads: "headboardPosition", Basis: known.Published, Pages: "p. 52"},
	},
}
