package answer

import (
	"fmt"
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Room round the boat: what the bed is longer than the gunwales, and what it is across, as the
// stage of the bed has it, and as much again to work on both sides. Estimates.
const (
	bedLonger  = 4 * units.Foot
	siteAcross = 3*3.5*units.Foot + 0.5*units.Foot
)

// tools are what the stages' steps are done with.
const tools = "axe, saw, wedges and froe, crooked knife, knife, awl, mallet and block, a big kettle for boiling water, rule and tape; " +
	"no power is needed"

// AsksTable is what the boat asks of whoever builds it, before anything is cut. o may be nil:
// the plan is then still being worked out.
func AsksTable(c core.Canoe, o *core.Outlook, s units.System) Table {
	type line struct{ what, asks, known string }
	var all []line
	add := func(what, asks, known string) { all = append(all, line{what, asks, known}) }
	d, g := c.Design, c.Gather
	length := func(v float64) string { return units.Length.Rough(v, s) }
	boats := 1.0
	if o != nil && len(o.Faults) == 0 {
		boats = math.Max(1, o.Season.Number(plan.Boats))
	}
	trees, sheets := c.Bark.Needs.Sheets, g.Bark.Sheets
	sheet := sheetWanted(c)
	tree := bark.NewStanding(sheet, d)
	add("Ask first", "leave of the land's owner and of the nation whose land it is; bark for this boat and no more; felled "+
		"trees first", "common practice, no published source")
	add("Birch", fmt.Sprintf("%.0f trees %s round at breast height, clear for %s; %.0f sheets in all",
		boats*float64(trees), length(tree.Girth), length(sheet.Length), boats*float64(sheets)), "a tree for each sheet on the bed; "+
		"about a hundred are looked at for one, two pages of builders, 2012")
	add("Spruce root", fmt.Sprintf("%s dug, %d roots of %s", units.Run.Rough(boats*g.Root.Dug, s),
		int(math.Ceil(boats*float64(g.Root.Strands.Roots))), length(d.RootLength)), "with waste; split in half")
	bolts := 0
	for _, b := range g.Bolts {
		bolts += b.Bolts
	}
	add("Cedar and hardwood", fmt.Sprintf("%d bolts from %d logs %s across, clear for %s", int(boats)*bolts, int(boats)*g.Logs,
		units.SmallLength.Rough(d.CedarDiameter, s), length(d.CedarClear)), "split by halving; see Gather")
	add("Gum", units.Mass.Rough(boats*g.Pitch.Low, s)+" to "+units.Mass.Rough(boats*g.Pitch.High, s)+" of pitch", "estimate; no source prints an amount")
	add("Pegs", fmt.Sprintf("%.0f", boats*float64(g.Pegs.Outwales+g.Pegs.Caps)), "")
	carried(c, s, add)
	switch {
	case o == nil:
		add("Time", notYet, "")
	case len(o.Faults) > 0 || o.State != plan.Made:
		add("Time", "no plan with these hands and days: see Season", "")
	default:
		add("Hours", fmt.Sprintf("about %.0f to %.0f, of practised hands", tens(o.HoursLow), tens(o.HoursHigh)), "estimate; published "+
			"totals are 400 to 500")
		add("Days", fmt.Sprintf("likely %d to %d, with %s", o.Low, o.High, Hands(o.Season.Int(plan.Practised),
			o.Season.Int(plan.Learners))), "by the calendar, drying and days off with it; hands and days are set under Season")
		add("Costs most", costsMost(o), "hours of practised hands")
		add("Largest boat", largest(c, o, s), "of this shape; the sheets are those on hand")
	}
	add("Space", fmt.Sprintf("level ground %s by %s, shade and water near", length(2*c.Frame.Gunwales.Run+bedLonger), length(siteAcross)),
		"the bed, and room on both sides: estimate")
	add("Tools", tools, "the steps of the stages")
	add("It will weigh", units.Mass.Rough(g.Weight.Low, s)+" to "+units.Mass.Rough(g.Weight.High, s), "see Choose")
	add("And carry", units.Mass.Rough(c.Afloat.Load.Mass-c.Afloat.Boat.Mass, s)+" as loaded now; freeboard and steadiness stand under Choose",
		"no rating: a load is tried in warm shallow water")
	t := Table{Key: "asks", Title: "What this boat asks of you", Home: stage.Choose, Note: "Before anything is cut."}
	return fill(t, refs(all),
		text("what", "What", func(l *line) string { return l.what }),
		text("asks", "It asks", func(l *line) string { return l.asks }),
		text("known", "How it is known", func(l *line) string { return l.known }),
	)
}

// oneCarries is what a person carries out of the woods at a time, kg. Estimate.
const oneCarries = 20.0

// carried is what is carried out of the woods and in how many loads.
func carried(c core.Canoe, s units.System, add func(what, asks, known string)) {
	g := c.Gather
	bark := g.Bark.Mass.Typical + g.Bark.Doubled.Typical
	cedar := c.Asks().Units[plan.CarryCedar] * core.Load
	root := g.Root.Mass.Typical
	all := bark + cedar + root + g.Pitch.Typical
	add("To carry", fmt.Sprintf("about %s of bark, %s of cedar, %s of root, %s of gum: %.0f trips of %s each",
		units.Mass.Rough(bark, s), units.Mass.Rough(cedar, s), units.Mass.Rough(root, s), units.Mass.Rough(g.Pitch.Typical, s),
		math.Ceil(all/oneCarries), units.Mass.Rough(oneCarries, s)), "for one boat; what is trimmed off and bark still wet weigh more: estimate")
}

// costsMost names the three tasks of most hours.
func costsMost(o *core.Outlook) string {
	rates := o.Season.Rates(o.Counts, o.Done)
	hours := func(id plan.ID) float64 { return o.Season.Left(o.Counts, o.Done, id) * rates[id].Mean() / 60 }
	text := ""
	named := map[plan.ID]bool{}
	for n := range 3 {
		most := plan.ID(-1)
		for i := range plan.Tasks {
			if !named[i] && (most < 0 || hours(i) > hours(most)) {
				most = i
			}
		}
		named[most] = true
		if n > 0 {
			text += "; "
		}
		text += fmt.Sprintf("%s, %.0f", lower(plan.Of(most).Name), hours(most))
	}
	return text
}

// largest is the longest boat that the bark and the days at hand make.
func largest(c core.Canoe, o *core.Outlook, s units.System) string {
	text := "no sheets are listed"
	if c.Skin != nil && c.Skin.Makes != nil {
		if text = "the bark makes none"; c.Skin.Makes.Length > 0 {
			text = "the bark makes one of " + units.Length.Rough(c.Skin.Makes.Length, s)
		}
	}
	days, set := o.DaysSet()
	if !set {
		return text + "; no last day is set"
	}
	for _, size := range o.Sizes {
		if size.Days <= days {
			return text + "; the days make one of " + units.Length.Rough(size.Length, s)
		}
	}
	return text + "; the days make none that this page tries"
}
