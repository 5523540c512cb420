package plan

import "barkwright/core/known"

// Works that rates and counts are cited from. Accounts by builders now living are named by
// kind and year.
const (
	testedTrees = "two pages by the same builders, 2012: about a hundred trees tested for one good one"
	threeTrees  = "a diary of a builder, 2014: three trees for one canoe"
	museumRoots = "a museum's account of a 15 ft (4.6 m) canoe: 250 ft (76 m) of root dug in a few hours by the " +
		"three in its pictures, 25 to 60 ft (8 to 18 m) a person-hour; a rate derived, of low certainty"
	gumHours = "a teacher's page, 2011: enough for a canoe in a couple of hours where trees bleed; a kilogram takes " +
		"that of a canoe's 1.8 kg, an estimate"
)

// TreesTested is how many birches are looked at for one that serves: a builders' guess, in
// testedTrees. The largest single time of the plan rests on it.
const TreesTested = 100

// CedarTrees is how many cedars are felled: one for the long timbers, one for ribs and one
// for sheathing, as in threeTrees.
const CedarTrees = 3

// gatheringTasks are those of the woods. Their times are estimates but for roots.
func gatheringTasks() []Task {
	published := func(cited string) known.Source { return known.Source{Basis: known.Published, Cited: cited} }
	return []Task{
		{ID: AskLeave, Key: "permit", Name: "Ask for leave, and wait for the answer", Unit: "season",
			Part: Gathering, Minutes: Triangle{180, 360, 720}, Least: 1, Most: 2, Step: "gather.ask",
			Spoils: "nothing may be taken without it"},
		{ID: FindBirch, Key: "birch.find", Name: "Find the birch", Unit: "trees tested",
			Part: Gathering, Minutes: Triangle{5, 9, 16}, Least: 1, Most: 6, Lead: true, Woods: true,
			After: []Link{{AskLeave, 0}}, Step: "gather.trees", Count: published(testedTrees),
			Spoils: "without it when bark peels: a year"},
		{ID: FindCedar, Key: "cedar.find", Name: "Find the cedar", Unit: "trees",
			Part: Gathering, Minutes: Triangle{150, 270, 480}, Least: 1, Most: 4, Lead: true, Woods: true,
			After: []Link{{AskLeave, 0}}, Count: published(threeTrees)},
		{ID: GetMaple, Key: "maple.get", Name: "Get hardwood for thwarts and pegs", Unit: "log",
			Part: Gathering, Minutes: Triangle{120, 210, 360}, Least: 1, Most: 2, Woods: true,
			After: []Link{{AskLeave, 0}}, Step: "gather.hardwood"},
		{ID: FellCedar, Key: "cedar.fell", Name: "Fell the cedar, never alone", Unit: "trees",
			Part: Gathering, Minutes: Triangle{160, 270, 420}, Least: 2, Most: 3, Lead: true, Woods: true,
			After: []Link{{FindCedar, 0}}, Count: published(threeTrees), Step: "gather.cedar",
			Spoils: "winter or any time; sources disagree on splitting it green or dry"},
		{ID: CarryCedar, Key: "cedar.carry", Name: "Carry the cedar out", Unit: "loads",
			Part: Gathering, Minutes: Triangle{80, 150, 270}, Least: 2, Most: 6, Woods: true,
			After: []Link{{FellCedar, 0}}, Spoils: "easiest over frozen ground"},
		{ID: DigRoots, Key: "roots.dig", Name: "Dig roots", Unit: "ft",
			Part: Gathering, Minutes: Triangle{1, 1.6, 2.4}, Least: 1, Most: 8, Woods: true,
			After: []Link{{AskLeave, 0}}, Season: Thawed, Step: "gather.dig", Rate: published(museumRoots),
			Spoils: "keep them wet, or dry them and soak before use"},
		{ID: TakeBark, Key: "bark.take", Name: "Take the bark", Unit: "sheets",
			Part: Gathering, Minutes: Triangle{270, 450, 720}, Least: 2, Most: 4, Lead: true, Woods: true,
			After: []Link{{FindBirch, 0}}, Season: BarkPeels, Step: "gather.take",
			Spoils: "past its weeks: a year"},
		{ID: CarryBark, Key: "bark.carry", Name: "Carry the bark out, and lay it in water", Unit: "sheets",
			Part: Gathering, Minutes: Triangle{90, 160, 300}, Least: 2, Most: 4, Woods: true,
			After: []Link{{TakeBark, 0}}, Step: "gather.roll",
			Spoils: "rolled under water, or damp in the shade, until it is carried: it dries and curls"},
		{ID: GatherGum, Key: "gum.gather", Name: "Gather gum", Unit: "kg",
			Part: Gathering, Minutes: Triangle{34, 68, 205}, Least: 1, Most: 6, Woods: true,
			After: []Link{{AskLeave, 0}}, Season: Warm, Step: "gather.gum",
			Rate: known.Source{Basis: known.Estimate, Cited: gumHours}, Spoils: "runs best in the warm months"},
		{ID: CutStakes, Key: "stakes.cut", Name: "Cut stakes and posts", Unit: "stakes and posts",
			Part: Gathering, Minutes: Triangle{6, 10, 15}, Least: 1, Most: 4, Woods: true,
			After: []Link{{AskLeave, 0}}, Step: "gather.gear"},
	}
}
