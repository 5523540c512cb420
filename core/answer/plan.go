package answer

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
)

const (
	fromRates = "times of each task, estimates set so that all together agree with published totals: 400 to 500 hours " +
		"with gathering, near half of it gathering; two builders' figures of 2004 and 2010, a university's project of 2013"
	fromDealing = "tasks dealt out by the half hour, the best of several hundred orders; the range is that of a " +
		"hundred plans with times drawn from their ranges"
)

// Planned lists the numbers of the plan of the work; without one they are not there yet.
func Planned(o *core.Outlook) []Number {
	none := o == nil
	if none {
		o = &core.Outlook{}
	}
	planned := func(n *Number) *Number {
		switch {
		case none:
			return n.later()
		case len(o.Faults) > 0:
			return n.absent("the crew or its days will not do")
		case o.State != plan.Made:
			return n.absent(planStates[o.State])
		}
		return n
	}
	number := func(key, label string, k units.Kind, v, low, high float64, cited string,
		how func(units.System) string) *Number {
		n := number(stage.Choose, key, label, k, v, cited, how)
		return planned(n.between(low, high))
	}
	return values([]*Number{
		number("plan.days", "Days of work and waiting, with these hands", units.Count, float64(o.Days), float64(o.Low),
			float64(o.High), fromDealing, func(units.System) string {
				return fmt.Sprintf("planned: %d days by the calendar, %d of them worked, by %s, %d days a week and %d hours a day",
					o.Days, o.Working, plan.Hands(o.Practised, o.Learners), o.Season.Int(plan.DaysAWeek), o.Season.Int(plan.Hours))
			}).short("Days"),
		number("plan.hours", "Hours of work, of practised hands", units.Count, Tens(o.Sums.Total()), Tens(o.HoursLow),
			Tens(o.HoursHigh), fromRates, func(units.System) string {
				return fmt.Sprintf("gathering %.0f, of it on the way %.0f; making ready %.0f; building %.0f; afterwards %.0f; "+
					"these hands are at work %.0f hours", o.Sums.Of(plan.Gathering), o.Sums.Travel[plan.Gathering],
					o.Sums.Of(plan.Preparing), o.Sums.Of(plan.Building), o.Sums.Of(plan.Afterwards), o.Hours)
			}),
		number("plan.longest", "Days of the longest chain of tasks", units.Count, float64(chainDays(o)),
			float64(chainDays(o)-o.Days+o.Low), float64(chainDays(o)-o.Days+o.High), fromDealing,
			func(units.System) string { return ChainWords(o) }),
		number("plan.gatherShare", "Gathering's share of the hours", units.Percent, hundredths(o.Sums.GatherShare()),
			hundredths(o.ShareLow), hundredths(o.ShareHigh), fromRates, func(units.System) string {
				return fmt.Sprintf("%.0f of %.0f hours, the way to the woods with it; a university's project of 2013 has about half",
					o.Sums.Of(plan.Gathering), o.Sums.Total())
			}),
	})
}

// planStates say why there is no plan.
var planStates = map[plan.State]string{
	plan.NothingLeft: "nothing is left to do", plan.NoHands: "nobody is there to work",
	plan.OutOfSeason: "a season is missed or too short",
}

// Tens are hours as an estimate is told.
func Tens(v float64) float64       { return 10 * math.Round(v/10) }
func hundredths(v float64) float64 { return math.Round(100*v) / 100 }

func chainDays(o *core.Outlook) int {
	if len(o.Chain) == 0 {
		return 0
	}
	return o.Days - o.Jobs[o.Chain[0].Job].From
}

// heldBy says what held the start of a job of the longest chain.
var heldBy = map[plan.Cause]string{
	plan.FromTheFirst: "", plan.ByOrder: "then ", plan.ByWait: "after a wait ", plan.BySeason: "when its season comes ",
	plan.ByHands: "when hands are free ",
}

// ChainWords are the longest chain in words.
func ChainWords(o *core.Outlook) string {
	var words []string
	for _, h := range o.Chain {
		j := o.Jobs[h.Job]
		words = append(words, heldBy[h.By]+InSentence(plan.Of(j.Task).Name)+" ("+o.DayWords(j.From, j.To)+")")
	}
	text := strings.Join(words, "; ")
	if o.HandsDecide() {
		text = "hands set the date, not the order: " + text
	}
	return text
}

// HowMuch is a count of a task's units as the reader counts them.
func HowMuch(id plan.ID, v float64, s units.System) string {
	number, unit := howMuch(id, v, s)
	return strings.TrimSpace(number + " " + unit)
}

// nearWhole is how near to a whole number a count is told as that: others are told with a tenth.
const nearWhole = 0.05

// howMuch is the count apart from the unit where the unit is no measure.
func howMuch(id plan.ID, v float64, s units.System) (number, unit string) {
	switch kind, of, si, measured := plan.Of(id).Measure(); {
	case measured && kind == units.Mass:
		return kind.Rough(v*si, s), of
	case measured:
		return kind.Format(v*si, s), of
	}
	number = strconv.FormatFloat(math.Round(v), 'f', -1, 64)
	if v < 10 && math.Abs(v-math.Round(v)) > nearWhole {
		number = strconv.FormatFloat(v, 'f', 1, 64)
	}
	return number, plan.Of(id).Unit
}
