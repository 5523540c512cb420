package answer

import (
	"fmt"
	"math"
	"strings"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Room round the boat: what the bed is longer than the gunwales, and what the site is across,
// to work on both sides. Estimates.
const (
	bedLonger  = 4 * units.Foot
	siteAcross = 11 * units.Foot
)

// oneCarries is what a person carries out of the woods at a time, kg. Estimate.
const oneCarries = 20.0

// tools are what the stages' steps are done with.
const tools = "axe, saw, wedges and froe, crooked knife, knife, awl, mallet and block, a big kettle for boiling " +
	"water, rule and tape; no power is needed"

// asks is what a boat asks of whoever builds it, line by line.
type asks struct {
	core.Canoe
	o     *core.Outlook // nil while it is being worked out
	in    units.System
	boats float64
	lines []asked
}

type asked struct{ what, asks, known string }

// AsksTable is what the boats of a plan ask of whoever builds them, before anything is cut. o may
// be nil: the plan is then still being worked out, and the table is of one boat.
func AsksTable(c core.Canoe, o *core.Outlook, s units.System) Table {
	a := asks{Canoe: c, o: o, in: s, boats: 1}
	if o != nil && len(o.Faults) == 0 {
		a.boats = math.Max(1, o.Season.Number(plan.Boats))
	}
	a.gathered()
	a.carried()
	a.time()
	a.site()
	t := Table{Key: "asks", Title: "What this boat asks of you", Home: stage.Choose, Note: "Before anything is cut."}
	return fill(t, refs(a.lines),
		text("what", "What", func(l *asked) string { return l.what }),
		text("asks", "It asks", func(l *asked) string { return l.asks }),
		text("known", "How it is known", func(l *asked) string { return l.known }),
	)
}

func (a *asks) add(what, asks, known string) { a.lines = append(a.lines, asked{what, asks, known}) }

func (a *asks) length(v float64) string { return units.Length.Rough(v, a.in) }
func (a *asks) mass(v float64) string   { return units.Mass.Rough(v, a.in) }

// times is so many of something for all boats, in whole ones.
func (a *asks) times(n int) int { return int(a.boats) * n }

// gathered is what is looked for in the woods.
func (a *asks) gathered() {
	d, g := a.Design, a.Gather
	a.add("Ask first", "leave of the land's owner and of the nation whose land it is; bark for this boat and no more; "+
		"felled trees first", "common practice, no published source")
	sheet := sheetWanted(a.Canoe)
	a.add("Birch", fmt.Sprintf("%s %s round at breast height, clear for %s; %s in all",
		a.count(a.Bark.Needs.Sheets, "tree", "trees"), a.length(bark.NewStanding(sheet, d).Girth), a.length(sheet.Length),
		a.count(g.Bark.Sheets, "sheet", "sheets")),
		"a tree for each sheet on the bed, strips come off thinner ones; a hundred are looked at for one, two pages of "+
			"builders, 2012")
	roots := ""
	if g.Root.Strands.Fits {
		roots = ", " + a.count(g.Root.Strands.Roots, "root", "roots") + " of " + a.length(d.RootLength)
	}
	a.add("Spruce root", units.Run.Rough(a.boats*g.Root.Dug, a.in)+" dug"+roots, "with waste; split in half")
	bolts := 0
	for _, b := range g.Bolts {
		bolts += b.Bolts
	}
	a.add("Cedar and hardwood", fmt.Sprintf("%s from %s %s across, clear for %s", a.count(bolts, "bolt", "bolts"),
		a.count(g.Logs, "log", "logs"), units.SmallLength.Rough(d.CedarDiameter, a.in), a.length(d.CedarClear)),
		"split by halving; see Gather")
	a.add("Gum", a.mass(a.boats*g.Pitch.Low)+" to "+a.mass(a.boats*g.Pitch.High)+" of pitch",
		"estimate; no source prints an amount")
	a.add("Pegs", fmt.Sprint(a.times(g.Pegs.All())), "one to each group so pegged and to each end of a thwart, and of the caps")
	var gear []string
	for _, piece := range g.Gear {
		name, _, _ := strings.Cut(piece.Name, ",")
		name, _, _ = strings.Cut(name, ":")
		gear = append(gear, fmt.Sprintf("%d %s", piece.Count, name))
	}
	a.add("To build on", strings.Join(gear, "; "), "for each bed; taken away again")
}

// count is so many of something for all boats, in words.
func (a *asks) count(n int, one, more string) string { return many(a.times(n), one, more).text(a.in) }

// carried is what is carried out of the woods for all boats, and in how many loads.
func (a *asks) carried() {
	g := a.Gather
	skin := a.boats * (g.Bark.Mass.Typical + g.Bark.Doubled.Typical)
	cedar := a.boats * a.Asks().Units[plan.CarryCedar] * core.Load
	root, gum := a.boats*g.Root.Mass.Typical, a.boats*g.Pitch.Typical
	a.add("To carry", fmt.Sprintf("about %s of bark, %s of cedar, %s of root, %s of gum: %.0f loads of %s", a.mass(skin),
		a.mass(cedar), a.mass(root), a.mass(gum), math.Ceil((skin+cedar+root+gum)/oneCarries), a.mass(oneCarries)),
		"estimate, a load is what one person carries; trimmings and wet bark weigh more")
}

// publishedHours are the totals that the hours of a plan stand beside, by where it begins.
var publishedHours = [...]string{"published totals are 400 to 500 a boat", "published from ready stock: 200 to 280 a boat",
	"no total is published for the building alone"}

// time is how long it takes, what of it costs most, and the largest boat that can be made.
func (a *asks) time() {
	o := a.o
	switch {
	case o == nil:
		a.add("Time", notYet+": see Season", "")
		return
	case len(o.Faults) > 0 || o.State != plan.Made:
		a.add("Time", "no plan with these hands and days: see Season", "")
		return
	}
	a.add("Hours", fmt.Sprintf("about %.0f to %.0f, of practised hands", Tens(o.HoursLow), Tens(o.HoursHigh)),
		"estimate; "+publishedHours[o.Season.Int(plan.From)])
	a.add("Days", fmt.Sprintf("likely %d to %d, with %s", o.Low, o.High, plan.Hands(o.Season.Int(plan.Practised),
		o.Season.Int(plan.Learners))), "by the calendar; hands and days are set under Season")
	a.add("Costs most", a.costsMost(), "hours of practised hands")
	a.add("Largest boat", a.largest(), "of this shape, of the sheets on hand")
}

// site is the ground and the tools, and what the boat then weighs and carries.
func (a *asks) site() {
	a.add("Space", fmt.Sprintf("level ground %s by %s, shade and water near",
		a.length(2*a.Frame.Gunwales.Run+bedLonger), a.length(siteAcross)), "for each bed, with room on both sides: estimate")
	a.add("Tools", tools, "the steps of the stages")
	a.add("Weight", a.mass(a.Gather.Weight.Low)+" to "+a.mass(a.Gather.Weight.High), "each boat; see Choose")
	a.add("Load", a.mass(a.Afloat.Load.Mass-a.Afloat.Boat.Mass)+" as loaded now; freeboard and steadiness stand "+
		"under Choose", "no rating: a load is tried in warm shallow water")
}

// costsMost names the three tasks of most hours.
func (a *asks) costsMost() string {
	o := a.o
	rates := o.Season.Rates(o.Counts, o.Done)
	hours := func(id plan.ID) float64 { return o.Season.Left(o.Counts, o.Done, id) * rates[id].Mean() / 60 }
	var words []string
	named := map[plan.ID]bool{}
	for range 3 {
		most := plan.ID(-1)
		for i := range plan.Tasks {
			if !named[i] && (most < 0 || hours(i) > hours(most)) {
				most = i
			}
		}
		named[most] = true
		words = append(words, fmt.Sprintf("%s, %.0f", InSentence(plan.Of(most).Name), hours(most)))
	}
	return strings.Join(words, "; ")
}

// largest is the longest boat that the bark and the days at hand make.
func (a *asks) largest() string {
	text := "no sheets are listed"
	if a.Skin != nil && a.Skin.Makes != nil {
		if text = "the bark makes none"; a.Skin.Makes.Length > 0 {
			text = "the bark makes one of " + a.length(a.Skin.Makes.Length)
		}
	}
	days, set := a.o.DaysSet()
	switch {
	case !set:
		return text + "; no last day is set"
	case !a.o.Helped:
		return text + "; of the days, " + notYet
	}
	for _, size := range a.o.Sizes {
		if size.Days <= days {
			return text + "; the days make one of " + a.length(size.Length)
		}
	}
	return text + "; the days make none that this page tries"
}
