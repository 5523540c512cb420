package answer

import "barkwright/core/known"

// Sources shown beside results, each written once.
const (
	fromShape   = "the boat's shape as designed: plan, sheer, rocker and sections of this calculator"
	fromBending = "limits from workshop rules (from memory) and bends measured off published drawings by this " +
		"project, not from bend tests: none on white cedar was found. The USDA Wood Handbook (2021), table 5-3b, " +
		"only compares woods. A trial piece decides"
	fromAdney     = known.BarkCanoes
	fromDrawn     = "scaled off the drawings of seven boats in Adney and Chapelle 1964, figures 31 to 106"
	fromBuilders  = known.NoSource
	fromGeometry  = "plane geometry"
	fromOwnChoice = known.OwnEstimate
)
