package lesson

import "barkwright/core/stage"

func stem() Lesson {
	return Lesson{
		Key: "stem", Title: "The stem", Question: "Why is a stem split?", Home: stage.Ends, Minutes: 15,
		Steps: []Step{
			{Does: "Leave the stem whole.", Sets: []Setting{{Key: "stemLaminations", To: 1}}},
			{Does: "Split it in 2.", Sets: []Setting{{Key: "stemLaminations", To: 2}}},
			{Does: "Split it in 4.", Sets: []Setting{{Key: "stemLaminations", To: 4}}},
			{Does: "Split it in 8.", Sets: []Setting{{Key: "stemLaminations", To: 8}}},
		},
		Watch:  []string{"stem.strain", "stem.laminationThickness", "stem.verdict"},
		Claims: stemClaims(),
		Found: "Whole it is strained by {stem.strain@1}: {stem.verdict@1}. In 2, 4 and 8 by {stem.strain@2}, " +
			"{stem.strain@3}, {stem.strain@4}: {stem.verdict@2}, {stem.verdict@3}, {stem.verdict@4}.",
		Why: "The strain is the thickness over twice the radius: half as thick, half the stretch of its face. " +
			"Six layers are recorded.",
		Next:    "Raise the stem head and see how many layers it saves.",
		Mistake: "Layers are lashed and not glued, and spring back one by one; the heel stays solid.",
		Source:  published("p. 49; the rest worked out"),
	}
}

// stemClaims hold what is said of each number of layers against that of the whole stem.
func stemClaims() []Claim {
	layers := []float64{1, 2, 4, 8}
	var out []Claim
	for i, n := range layers {
		step := i + 1
		out = append(out, same("the layers make up the stem", 1e-9, at("stem.laminationThickness", step).times(n),
			at("stemDepth", step))...)
		if step == 1 {
			continue
		}
		out = append(out,
			claim("so many layers, nearly so many times less strain", 0, at("stem.strain", 1),
				at("stem.strain", step).times(-0.85*n)),
			claim("but no less than that", 0, at("stem.strain", step).times(n), less("stem.strain", 1)),
			claim("more layers are never worse", 0, at("stem.verdict", step-1), less("stem.verdict", step)))
	}
	return out
}

func root() Lesson {
	return Lesson{
		Key: "root", Title: "Root", Question: "How does root add up?", Home: stage.Lace, Minutes: 12,
		Steps: []Step{
			{Does: "Set one turn through each hole.", Sets: []Setting{{Key: "passes", To: 1}}},
			{Does: "Put it back. Set the gores to none.", Sets: []Setting{{Key: "gores", To: 0}}},
			{Does: "Put them back. Leave out 8 ribs.", Sets: []Setting{{Key: "ribs", By: -8}}},
		},
		Watch: []string{"root.total", "lacing.groups", "lacing.group", "root.seams"},
		Claims: all(
			same("groups times the root in one is the lacing", 1e-6, at("root.byGroups", 0), at("root.gunwales", 0)),
			same("lacing and seams with their waste are all of it", 1e-6, at("root.added", 0), at("root.total", 0)),
			one(claim("a turn fewer saves twice what no gores would", 0, at("root.total", 0).times(-1), less("root.total", 1),
				at("root.total", 2).times(2)),
				claim("fewer ribs save root too", 1e-6, at("root.total", 0), less("root.total", 3)))),
		Found: "{lacing.groups@0} groups of {lacing.group@0} are {root.gunwales@0}, the seams {root.seams@0}; with " +
			"waste {root.total@0}. A turn fewer saves {root.total@0-1}, no gores {root.total@0-2}, 8 ribs fewer " +
			"{root.total@0-3}.",
		Why:     "Each group goes round wood and bark many times, and the edge is laced over its whole length.",
		Next:    "Set how long your own roots are as dug.",
		Mistake: "A root dug gives two halves.",
		Source:  published("root for one boat, p. 16; the rest worked out"),
	}
}

func endRibs() Lesson {
	return Lesson{
		Key: "end-ribs", Title: "Ribs near the ends", Question: "Why are the ribs near the ends broken?", Home: stage.Rib, Minutes: 12,
		Steps: []Step{
			{Does: "Make the ribs at the ends {0.125in} thick.", Sets: []Setting{{Key: "ribThicknessEnd", To: inch / 8}}},
			{Does: "Make them {0.25in}.", Sets: []Setting{{Key: "ribThicknessEnd", To: inch / 4}}},
			{Does: "Make them {0.375in}.", Sets: []Setting{{Key: "ribThicknessEnd", To: 3 * inch / 8}}},
		},
		Watch: []string{"rib.tight", "rib.lastRadius", "rib.middleRadius"},
		Claims: all(
			one(claim("the last rib bends harder than the middle one", 1e-6, at("rib.middleRadius", 0), less("rib.lastRadius", 0)),
				claim("and is shorter", 1e-6, at("rib.middleLength", 0), less("rib.lastLength", 0)),
				claim("thicker ribs are no easier", 0, at("rib.tight", 2), less("rib.tight", 1)),
				claim("thicker ribs are no easier", 0, at("rib.tight", 3), less("rib.tight", 2)),
				claim("the thickest are too tight for more of them", 1, at("rib.tight", 3), less("rib.tight", 1)))),
		Found: "The middle rib bends to {rib.middleRadius@0}, the last to {rib.lastRadius@0}. At {0.125in}, {0.25in} " +
			"and {0.375in} thick {rib.tight@1}, {rib.tight@2}, {rib.tight@3} at each end are too tight to bend whole.",
		Why: "The boat closes to a V there, and the bend is a hand's breadth and less. Thin wood helps; past that a " +
			"crease is made on purpose.",
		Next:    "How thin would the end ribs have to be for all of them to bend whole?",
		Mistake: "Broken is not failed: the last three were broken in published boats.",
		Source:  published("p. 104; the rest worked out"),
	}
}

func log() Lesson {
	return Lesson{
		Key: "log", Title: "One log", Question: "One log, how many ribs?", Home: stage.Gather, Minutes: 12,
		Steps: []Step{
			{Does: "Take away 6 ribs.", Sets: []Setting{{Key: "ribs", By: -6}}},
			{Does: "Add 6 ribs.", Sets: []Setting{{Key: "ribs", By: 6}}},
			{Does: "Put them back. Make the ribs {0.5in} thick.", Sets: []Setting{{Key: "ribThickness", To: inch / 2}}},
			{Does: "Put them back. Set a trunk {3in} thicker.", Sets: []Setting{{Key: "cedarDiameter", By: 3 * inch}}},
		},
		Watch: []string{"materials.billets", "logs.bolts", "ribs.count"},
		Claims: one(
			claim("a billet gives four ribs at most", 0, at("materials.billets", 0).times(4), less("ribs.count", 0)),
			claim("fewer ribs never want more billets", 0, at("materials.billets", 0), less("materials.billets", 1)),
			claim("more ribs never want fewer", 0, at("materials.billets", 2), less("materials.billets", 0)),
			claim("a thicker trunk never wants more bolts", 0, at("logs.bolts", 0), less("logs.bolts", 4)).
				where("where the trunk is long enough for every piece", boltsCounted),
		),
		Found: "{ribs.count@1}, {ribs.count@0} and {ribs.count@2} ribs want {materials.billets@1}, " +
			"{materials.billets@0}, {materials.billets@2} billets. All the wood comes out of {logs.bolts@0} bolts, " +
			"out of {logs.bolts@4} of a trunk {3in} thicker.",
		Why:     "A billet two ribs thick and two wide gives four; spares come on top by how hard the ribs bend.",
		Next:    "Set the trunk that you have.",
		Mistake: "The middle of a log is not rib wood.",
		Source:  published("p. 18; the rest worked out"),
	}
}
