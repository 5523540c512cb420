package stage

import "barkwright/core/known"

// keep is keeping and mending.
var keep = Stage{
	Key: Keep, Short: "Keep", Name: "Keep and mend",
	Asked:      "It leaks, it cracked, winter comes: what now?",
	Large:      []string{"materials.pitch", "weight.total", "afloat.freeboard"},
	Chips:      []string{"barkThickness", "ribThickness", "rootWidth"},
	Look:       Look{State: Finished},
	Cautions:   []Hazard{flames, hotPitch},
	Permission: AskedBriefly,
	Steps: []Step{
		{Key: "keep.look", text: "Look along every seam before each launch.",
			Basis: known.Published, Account: "a teacher's page, 2011"},
		{Key: "keep.find", text: "Find a leak: suck at the place, or water inside on trestles; mark it.",
			Basis: known.Published, Account: "a book of 1864 and a handbook of 1911"},
		{Key: "keep.seal", text: "Dry it, melt the old pitch over or lay fresh.",
			Tool: "torch", Basis: known.Published, Account: "a book of 1864 and a handbook of 1911"},
		{Key: "keep.patch", text: "Patch a hole with thin bark, inside, on hot pitch.",
			Basis: known.Published, Pages: "pp. 50-51"},
		{Key: "keep.resew", text: "Sew a torn seam or lacing again.",
			Tool: "awl, root", Basis: known.Published, Pages: "pp. 42-48"},
		{Key: "keep.rerib", text: "Change a rib: wet, out from the bilge, and in again.",
			Tool: "mallet, block", Counts: "ribs", Basis: known.Estimate},
		{Key: "keep.sun", text: "Never leave it in hot sun: pitch ran at about 30 C (86 F).",
			Basis: known.Published, Account: "a learner's account, 2009"},
		{Key: "keep.winter", text: "For winter dry it fully; mouth down over two poles, under cover.",
			Basis: known.Published, Account: "a fur trader's article, about 1900"},
		{Key: "keep.slack",
			text: "A new or large boat: slacken the ribs, but for the last three or four at each end.",
			Tool: "block, mallet", Counts: "ribs", Basis: known.Published, Account: "a fur trader's article, about 1900"},
		{Key: "keep.spring", text: "In spring tighten them gently: bark is stiff after winter.",
			Tool: "block, mallet", Basis: known.Published, Account: "a fur trader's article, about 1900"},
	},
}
