package stage

import "barkwright/core/known"

// laid is the bark on the bed.
var laid = Stage{
	Key: Bark, Short: "Bark", Name: "Lay the bark",
	Asked:   "Where do we slit, piece and sew?",
	Large:   []string{"bark.goresCut", "bark.pieces", "seams.total"},
	Verdict: "bark.joinGap",
	InSight: []string{"gores", "goreFoot", "gunwaleTurn", "panels", "panelLap", "seamLap"},
	Folds: []Fold{
		{"Sewing", []string{"goreStitch", "goreBite", "panelStitch", "panelBite", "jointStitch", "jointBite"}},
		{"Stretch", []string{"stretchLimit"}},
	},
	Chips:      []string{"frameWidth", "sheetWidth"},
	Look:       Look{State: Flat},
	Cautions:   []Hazard{scalds, edgeTools},
	Permission: AskedBriefly,
	Patterns:   []string{"outline", "gores"},
	Bench:      barkLists,
	Steps: []Step{
		{Key: "bark.wet", text: "Wet and warm the bark until it bends without a sound.",
			Tool: "hot water", Basis: known.CommonPractice},
		{Key: "bark.unroll", text: "Unroll it, white side up, along the centre line.",
			Tool: "line", Counts: "cutting", Basis: known.Published, Pages: "p. 41"},
		{Key: "bark.frame",
			text: "Lay the frame on it and weigh it down from the middle outward; the same margin on both sides.",
			Tool: "rule", Basis: known.CommonPractice},
		{Key: "bark.slash", text: "Slash the gores at their marks, to just outside the frame.",
			Tool: "knife, rule", Counts: "gores", Basis: known.Published, Pages: "p. 41"},
		{Key: "bark.turn", text: "Turn the sides up; stakes in pairs, tops tied, inside stakes against them.",
			Counts: "stakes", Basis: known.Published, Pages: "pp. 41-45"},
		{Key: "bark.fair", text: "Fair the sides with long battens, and look for folds.",
			Basis: known.Published, Pages: "pp. 41-46"},
		{Key: "bark.trim", text: "Write down what rides over at each gore, then trim edge to edge.",
			Tool: "rule, knife", Counts: "gores", Basis: known.Published, Pages: "p. 46"},
		{Key: "bark.panels",
			text: "Fit the side panels: the middle one inside, the next ones outside, with their lap.",
			Tool: "rule", Counts: "panels", Basis: known.Published, Pages: "pp. 42-45"},
		{Key: "bark.sew", text: "Sew panels and joints; trim the lap.",
			Tool: "awl, root", Counts: "seams", Basis: known.Published, Pages: "pp. 43-45"},
		{Key: "bark.edge", text: "See that the edge stands above the sheer everywhere by what is left to trim.",
			Tool: "rule", Basis: known.CommonPractice},
		{Key: "bark.keepwet", text: "Keep the bark wet until the ribs are in.",
			Basis: known.Published, Pages: "p. 52"},
	},
}
