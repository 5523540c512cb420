package stage

import "barkwright/core/known"

// choose is choosing the boat.
var choose = Stage{
	Key: Choose, Short: "Choose", Name: "Choose the boat",
	Asked:   "What boat, for whom, and what will it ask of us?",
	Large:   []string{"weight.total", "afloat.freeboard", "root.total"},
	Verdict: WorstOfAll,
	InSight: []string{"length", "beam", "depth", "gunwaleEndHeight", "rocker", "paddlers"},
	Folds: []Fold{
		{"More of the shape", []string{"overhang", "greatestBeam", "beamFull", "beamFine", "rockerSpread"}},
		{"Aboard", []string{"paddlerMass", "posture", "stature", "seatHeight", "cargo", "cargoHeight", "cargoPosition"}},
		{"How close you work", []string{"tolLength", "tolBeam", "tolDepth", "tolFrame", "tolEnds", "tolBed", "tolBark", "tolWood",
			"girthKnown"}},
		{"Table of offsets", []string{"stations", "stationsApart"}},
	},
	Chips:    []string{"endHeight", "sheetWidth", "ribs"},
	Look:     Look{State: Finished},
	Cautions: []Hazard{noRating, teacher},
	Steps: []Step{
		{Key: "choose.record", text: "Write down what is known of the boat you follow; leave gaps empty.",
			Tool: "tape", Basis: known.CommonPractice},
		{Key: "choose.shape", text: "Set length, beam and depth, or find the boat from the record.",
			Basis: known.CommonPractice},
		{Key: "choose.aboard", text: "Say who and what goes aboard; read freeboard and steadiness.",
			Basis: known.Estimate},
		{Key: "choose.checks", text: "Clear every check that says it will not do, and read every one that is near.",
			Basis: known.CommonPractice},
		{Key: "choose.bark", text: "Hold the widest bark in reach against the width wanted.",
			Tool: "tape round a tree", Basis: known.Estimate},
		{Key: "choose.halfstick", text: "Cut a stick as long as half the gunwale, and mark the middle on it.",
			Tool: "rule", Basis: known.Published, Pages: "p. 37"},
		{Key: "choose.teacher", text: "Ask the one who teaches you what to change here.",
			Basis: known.CommonPractice},
		{Key: "choose.print", text: "Print the sheet of the boat, and save the file.",
			Basis: known.CommonPractice},
	},
}
