package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// gather is the gathering of what the boat is made of.
var gather = Stage{
	Key: Gather, Short: "Gather", Name: "Gather",
	Asked:   "What do we look for in the woods, and how much of it?",
	Large:   []string{"tree.girth", "logs.bolts", "root.dug"},
	Verdict: "bark.verdict",
	InSight: []string{"sheetWidth", "sheetLength", "barkThickness", "cedarDiameter", "cedarClear", "rootLength"},
	Folds: []Fold{
		{"Tree", []string{"treeAllowance", "treeRule"}},
		{"Cedar", []string{"cedarHeart", "cedarSapwood"}},
		{"Root", []string{"rootWidth", "rootWaste"}},
	},
	Chips:      []string{"length", "depth", "beam"},
	Look:       Look{State: Flat},
	Cautions:   []Hazard{felling, edgeTools},
	Permission: AskedFirst,
	Bench:      gatherLists,
	Steps: []Step{
		{Key: "gather.ask", text: "Ask, and wait for the answer.",
			Basis: known.CommonPractice},
		{Key: "gather.trees",
			text: "Tape trees at breast height; straight, few eyes, clear for the length of a sheet.",
			Tool: "tape", Counts: "trees", Basis: known.Published, Pages: "p. 14"},
		{Key: "gather.trial",
			text:  "Try a piece of the bark: more than # thick, and its layers hold when it is bent.",
			sizes: []float64{units.Inch / 8}, Tool: "rule", Basis: known.Published, Pages: "p. 14"},
		{Key: "gather.take", text: "Take the bark in its season; tape its width at both ends and the middle.",
			Tool: "tape", Basis: known.Published, Pages: "pp. 14-15"},
		{Key: "gather.roll", text: "Roll it and keep it under water, or damp in the shade.",
			Basis: known.Published, Pages: "p. 24"},
		{Key: "gather.dig", text: "Dig roots as thick as a pencil or a little more; add up their length.",
			Tool: "tape", Basis: known.Published, Pages: "p. 16"},
		{Key: "gather.split", text: "Peel them, split them in half, coil them and keep them wet.",
			Counts: "roots", Basis: known.Published, Pages: "pp. 24, 42-43"},
		{Key: "gather.cedar",
			text: "Find or fell cedar; read its clear length and its small end, and split a trial piece.",
			Tool: "tape, froe", Basis: known.Published, Pages: "pp. 17-18"},
		{Key: "gather.bolts", text: "Halve it into bolts and billets, broad faces parallel to the bark.",
			Tool: "wedge, froe", Counts: "logs", Basis: known.Published, Pages: "p. 18"},
		{Key: "gather.hardwood", text: "Find wood for the thwarts and the pegs.",
			Basis: known.Published, Pages: "pp. 38, 48"},
		{Key: "gather.gum", text: "Gather gum, and fat and charcoal to temper it.",
			Tool: "scale", Basis: known.Published, Pages: "pp. 24-25"},
		{Key: "gather.gear", text: "Make or borrow battens, stakes, posts, stones and clamps.",
			Counts: "gear", Basis: known.Published, Pages: "pp. 40-41, 54"},
		{Key: "gather.compare", text: "Hold what was found against what is wanted, and bring the boat to it.",
			Basis: known.CommonPractice},
	},
}
