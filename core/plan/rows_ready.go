package plan

import "barkwright/core/known"

// pitchHours is how the time of a kilogram of pitch is known. It was set for a canoe, not a kilogram:
// when the pitch of a boat's seams was found to be more than twice as much, its hours stayed.
const pitchHours = "estimate, no published rate found: about three hours for a canoe's 1.8 kg, strained, tempered " +
	"and tried"

// pegHours is how the time of a peg is known. When the caps' pegs were counted too, the hours of all stayed.
const pegHours = "estimate, no published rate found: about three hours for a canoe's 78 pegs"

// readyTasks are those that make stock: nothing of them waits for the bark.
func readyTasks() []Task {
	return []Task{
		{ID: MakeSite, Key: "site.make", Name: "Clear and level the site", Unit: "site",
			Part: Preparing, Minutes: Triangle{150, 240, 420}, Least: 1, Most: 6, Step: "bed.level"},
		{ID: MakeBed, Key: "bed.make", Name: "Make the bed", Unit: "ft",
			Part: Preparing, Minutes: Triangle{8, 12, 18}, Least: 1, Most: 4,
			After: []Link{{MakeSite, 0}}, Step: "bed.crown"},
		{ID: MakeFrame, Key: "frame.make", Name: "Make the building frame", Unit: "battens and crosspieces",
			Part: Preparing, Minutes: Triangle{20, 30, 45}, Least: 1, Most: 3,
			After: []Link{{CarryCedar, 0}}, Step: "bed.tie"},
		{ID: PeelRoots, Key: "roots.peel", Name: "Boil and peel the roots", Unit: "ft",
			Part: Preparing, Minutes: Triangle{.8, 1.2, 1.8}, Least: 1, Most: 12,
			After: []Link{{DigRoots, 1}}, Spoils: "a wet store grew mould"},
		{ID: SplitSeamRoot, Key: "roots.splitSeams", Name: "Split root for the seams", Unit: "ft",
			Part: Preparing, Minutes: Triangle{.8, 1.2, 1.8}, Least: 1, Most: 8,
			After: []Link{{PeelRoots, 0}}, Step: "gather.split", Spoils: "keeps in water"},
		{ID: SplitLacingRoot, Key: "roots.splitLacing", Name: "Split root for the lacing", Unit: "ft",
			Part: Preparing, Minutes: Triangle{.8, 1.2, 1.8}, Least: 1, Most: 12,
			After: []Link{{PeelRoots, 0}}, Step: "gather.split", Spoils: "keeps in water"},
		{ID: MakeGunwales, Key: "gunwales.make", Name: "Make inwales, outwales and caps", Unit: "timbers with spares",
			Part: Preparing, Minutes: Triangle{52, 75, 115}, Least: 1, Most: 6,
			After: []Link{{CarryCedar, 0}}, Step: "gunwales.outwales"},
		{ID: MakeThwarts, Key: "thwarts.make", Name: "Make the thwarts", Unit: "thwarts",
			Part: Preparing, Minutes: Triangle{50, 75, 115}, Least: 1, Most: 5,
			After: []Link{{GetMaple, 0}}, Step: "gunwales.thwarts"},
		{ID: BendStems, Key: "stems.bend", Name: "Split, bend and bind the stem-pieces", Unit: "stem-pieces with spares",
			Part: Preparing, Minutes: Triangle{80, 120, 180}, Least: 2, Most: 3, Lead: true,
			After: []Link{{CarryCedar, 0}}, Step: "ends.bend"},
		{ID: SplitRibs, Key: "ribs.split", Name: "Split out the ribs", Unit: "ribs with spares",
			Part: Preparing, Minutes: Triangle{5.5, 8, 12}, Least: 1, Most: 6, After: []Link{{CarryCedar, 0}}},
		{ID: CarveRibs, Key: "ribs.carve", Name: "Carve the ribs", Unit: "ribs with spares",
			Part: Preparing, Minutes: Triangle{10, 15, 23}, Least: 1, Most: 10,
			After: []Link{{SplitRibs, 0}}, Step: "rib.shave",
			Spoils: "keep them wet under cover until they are bent, or soak them again"},
		{ID: SplitSheathing, Key: "sheathing.split", Name: "Split the sheathing", Unit: "strips with spares",
			Part: Preparing, Minutes: Triangle{7, 10, 15}, Least: 1, Most: 8,
			After: []Link{{CarryCedar, 0}}, Spoils: "may fill the days while the ribs dry"},
		{ID: MakeHeadboards, Key: "headboards.make", Name: "Make the headboards", Unit: "headboards",
			Part: Preparing, Minutes: Triangle{40, 60, 90}, Least: 1, Most: 2,
			After: []Link{{CarryCedar, 0}}, Step: "ends.boards"},
		{ID: MakePegs, Key: "pegs.make", Name: "Make the pegs", Unit: "pegs",
			Part: Preparing, Minutes: Triangle{1.5, 2.4, 3.5}, Least: 1, Most: 4, After: []Link{{GetMaple, 0}},
			Rate: known.Source{Basis: known.Estimate, Cited: pegHours}},
		{ID: MeltGum, Key: "gum.melt", Name: "Strain, temper and try the pitch", Unit: "kg",
			Part: Preparing, Minutes: Triangle{64, 92, 146}, Least: 1, Most: 2, Lead: true,
			After: []Link{{GatherGum, 0}}, Step: "pitch.temper",
			Spoils: "fire: outdoors, never left alone", Said: Daily,
			Rate:  known.Source{Basis: known.Estimate, Cited: pitchHours},
			Count: known.Source{Basis: known.Estimate, Cited: "the pitch of this boat's seams"}},
	}
}
