package stage

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// pitch is pitch and the first water.
var pitch = Stage{
	Key: Pitch, Short: "Pitch", Name: "Pitch and first water",
	Asked:    "Is it tight, and how will it float?",
	Large:    []string{"afloat.freeboard", "afloat.gm", "materials.pitch"},
	Verdict:  "afloat.state",
	InSight:  []string{"waterTemperature"},
	Chips:    []string{"paddlers", "posture", "seatHeight", "cargo"},
	Look:     Look{State: Finished, Drawing: Side},
	Cautions: []Hazard{hotPitch, coldWater, trialSwamp},
	Bench:    pitchLists,
	Steps: []Step{
		{Key: "pitch.temper",
			text:    "Dip a strip of bark in the pitch, chill it, bend it: more fat if it cracks, more gum if it runs.",
			Basis:   known.Published,
			Account: "accounts of learners and museums, 1911 to 2013; one page of the book says the reverse"},
		{Key: "pitch.dry", text: "Wait for dry seams and a warm day.",
			Basis: known.CommonPractice},
		{Key: "pitch.outside", text: "Pitch gores, joints, panels and ends outside.",
			Tool: "brush, stick", Counts: "seams", Basis: known.Published, Pages: "pp. 50, 53"},
		{Key: "pitch.smooth", text: "Smooth it with a wet thumb.",
			Basis: known.Published, Pages: "p. 50"},
		{Key: "pitch.leaks", text: "On trestles, # of water inside: mark leaks from below, dry, pitch again.",
			sizes: []float64{units.Inch}, Basis: known.Published,
			Account: "a time-line of a 15-day class, 2018, and a handbook of 1911"},
		{Key: "pitch.weigh", text: "Weigh it.",
			Tool: "scale", Basis: known.CommonPractice},
		{Key: "pitch.launch", text: "Launch it empty, then load it by steps; read the freeboard at the lowest place.",
			Tool: "rule", Basis: known.Estimate},
		{Key: "pitch.level", text: "Move people until it lies level.",
			Basis: known.CommonPractice},
		{Key: "pitch.swamp", text: "Swamp it in warm shallow water, with help.",
			Hazard: "only with help at hand", Basis: known.Estimate},
		{Key: "pitch.write", text: "Write down what changed, and save the file.",
			Basis: known.CommonPractice},
	},
}
