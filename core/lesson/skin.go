package lesson

import "barkwright/core/stage"

func gores() Lesson {
	return Lesson{
		Key: "gores", Title: "Gores", Question: "Why gores?", Home: stage.Bark, Minutes: 15,
		Steps: []Step{
			{Does: "Set the gores to none.", Sets: []Setting{{Key: "gores", To: 0}}},
			{Does: "Set 3 a side.", Sets: []Setting{{Key: "gores", To: 3}}},
			{Does: "Set 5 a side.", Sets: []Setting{{Key: "gores", To: 5}}},
			{Does: "Set 7 a side, and look at the bark laid flat.", Sets: []Setting{{Key: "gores", To: 7}}},
		},
		Watch: []string{stretch, "seams.gores", "root.total"},
		Claims: all(
			one(claim("with none the bark is stretched twice as much and more", 0, at(stretch, 1), at(stretch, 0).times(-2)),
				claim("and more than the limit set", 0, at(stretch, 1), less("stretchLimit", 1))),
			falls("each pair of gores eases it", stretch, 1, 2, 3, 4),
			rises("and takes root", "root.total", 1, 2, 3, 4)),
		Found: "With none the bark is stretched by {bark.stretch@1}; with 3, 5 and 7 a side by {bark.stretch@2}, " +
			"{bark.stretch@3}, {bark.stretch@4}; as the boat stands by {bark.stretch@0}. The gores of the boat as it " +
			"stands take {root.total@0-1} of root.",
		Why: "A flat sheet has too much edge for the shorter line of a rail where it turns in and up; a slit lets " +
			"the edges pass over each other.",
		Next: "Fold a strip of paper round a bowl, then slit its edge.",
		Mistake: "Gores take edge out, they do not stretch bark. No limit of stretch is published: the limit is this " +
			"page's guess.",
		Source: published("slashes, p. 41; the rest worked out"),
	}
}

func sheet() Lesson {
	return Lesson{
		Key: "sheet", Title: "The sheet", Home: stage.Bark, Minutes: 15,
		Question: "Where must the sheet be widest, and what does a narrow one cost?",
		Steps: []Step{
			{Does: "Set the sheet {40in} wide.", Sets: []Setting{{Key: "sheetWidth", To: narrowSheet}}},
			{Does: "Set it as wide as one sheet wants to be.",
				Sets: []Setting{{Key: "sheetWidth", Times: 1, Of: "bark.width", Up: inch / 4}}},
		},
		Watch:  []string{"seams.panels", "seams.total", "root.total", "tree.girth"},
		Claims: sheetClaims(),
		Found: "A sheet {40in} wide wants {seams.panels@1} of panel seam, {seams.total@1} in all and {root.total@1} " +
			"of root. One sheet {sheetWidth@2} wide wants {seams.total@2} and {root.total@2}, and a tree " +
			"{tree.girth@2} round instead of {tree.girth@1}.",
		Why:     "The half girth is largest amidships, unless the ends are high. A narrow tree is paid for in root.",
		Next:    "Start from the boat with high ends: where is its sheet widest?",
		Mistake: "A sheet's width over pi is the tree's thickness at the height of the sheet, not at the chest.",
		Source:  published("from girth to sheet, pp. 96-98; the rest worked out"),
		Also:    "High ends",
	}
}

// sheetClaims are made where one sheet so wide can be set.
func sheetClaims() []Claim {
	return limited("where one sheet so wide can be set", oneSheetInRange, one(
		claim("a wide sheet needs no side panels", 0, less("seams.panels", 2)),
		claim("it saves most of the panels' seam", 0, at("seams.total", 1), less("seams.total", 2),
			at("seams.panels", 1).times(-0.7)),
		claim("it saves root", 1e-6, at("root.total", 1), less("root.total", 2)),
		claim("it never asks for a thinner tree", 0, at("tree.girth", 2), less("tree.girth", 1))))
}
