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

// PlanTables are the tables of the plan of the work, none where there is no plan.
func PlanTables(o *core.Outlook, s units.System) []Table {
	if o == nil || len(o.Faults) > 0 || o.State != plan.Made {
		return nil
	}
	all := []Table{daysTable(o, s), tasksTable(o, s), readyTable(o, s), sumsTable(o)}
	if o.Helped {
		all = append(all, waysTable(o, s), sizesTable(o))
	}
	return all
}

// tasksTable is every task with its days, hands and slack.
func tasksTable(o *core.Outlook, in units.System) Table {
	t := Table{Key: "plan.tasks", Title: "Tasks", Home: stage.Choose,
		Note: "Slack is how many days a task can begin later and the end stays: hands count as well as the order."}
	return fill(t, refs(o.Jobs),
		text("task", "Task", func(j *plan.Job) string { return taskName(o, j) }),
		text("count", "How much", func(j *plan.Job) string {
			s := j.Shifts
			return HowMuch(j.Task, s[len(s)-1].After-s[0].Done, in)
		}),
		text("days", "When", func(j *plan.Job) string { return o.DayWords(j.From, j.To) }),
		col("hours", "Hours of hands", units.Count, func(j *plan.Job) Cell { return num(math.Ceil(jobHours(j))) }),
		text("slack", "Slack", func(j *plan.Job) string {
			switch {
			case plan.Of(j.Task).Part == plan.Afterwards:
				return "any"
			case j.Slack == 0 && j.OnChain:
				return "none, in the chain"
			case j.Slack == 0:
				return "none"
			case j.OnChain:
				return many(j.Slack, "day", "days").text(in) + ", in the chain"
			}
			return many(j.Slack, "day", "days").text(in)
		}),
		text("keep", "Beware", func(j *plan.Job) string { return plan.Of(j.Task).Spoils }),
	)
}

func taskName(o *core.Outlook, j *plan.Job) string {
	return plan.Of(j.Task).Name + o.Season.Whose(j.Task, j.Boat)
}

func jobHours(j *plan.Job) float64 {
	h := 0.0
	for _, s := range j.Shifts {
		h += s.Hours
	}
	return h
}

// daysTable is what is done on each day, and by whom.
func daysTable(o *core.Outlook, in units.System) Table {
	t := Table{Key: "plan.days", Title: "Day by day", Home: stage.Choose,
		Note: "Hands are the most at it at a time. Every task needs its caution: see its stage. What to beware of stands " +
			"where it begins, what hurts on each day."}
	return fill(t, refs(o.Entries()),
		text("day", "Day", func(e *plan.Entry) string { return o.DayWords(e.Day, e.Day) }),
		text("task", "Task", func(e *plan.Entry) string { return taskName(o, e.Job) }),
		text("count", "To do", func(e *plan.Entry) string {
			s := e.Job.Shifts
			done, all := e.Shift.After-s[0].Done, s[len(s)-1].After-s[0].Done
			if e.Shift.Done == s[0].Done && e.Shift.After == s[len(s)-1].After {
				return HowMuch(e.Job.Task, all, in)
			}
			return upTo(e.Job.Task, done, all, in)
		}),
		text("hands", "Hands", func(e *plan.Entry) string {
			text := plan.Hands(e.Shift.Practised, e.Shift.Others)
			if n := e.Shift.Lent; n > 0 {
				text += ", " + strconv.Itoa(n) + " lent by another team"
			}
			if n := e.Shift.Borrowed; n > 0 {
				text += ", borrow " + strconv.Itoa(n)
			}
			return text
		}),
		text("keep", "Beware", func(e *plan.Entry) string {
			if !e.Begins && e.Beware() != "" {
				return said
			}
			return bewareWords(o, e)
		}),
	)
}

// said stands where what to beware of was said before and goes on: not a dash, which says that there is none.
const said = "\u00a0"

// bewareWords are what to beware of at an entry, with the last day that the work is to be kept so.
func bewareWords(o *core.Outlook, e *plan.Entry) string {
	text := e.Beware()
	if e.Said() == plan.Throughout && e.Until > e.Day {
		text += " (until " + o.DayWords(e.Until, e.Until) + ")"
	}
	return text
}

// StillToBeware is by row of the list of days what began in the rows before it and holds there, for the head of
// a page that begins with the row; empty where nothing does.
func StillToBeware(o *core.Outlook) []string {
	all := o.Entries()
	out := make([]string, len(all))
	for i := range all {
		var texts []string
		for _, e := range plan.Still(all, i) {
			texts = append(texts, bewareWords(o, &e))
		}
		if len(texts) > 0 {
			out[i] = "Still to beware of: " + strings.Join(texts, "; ") + "."
		}
	}
	return out
}

// upTo is so much of a task's units as are done by an evening, of all. Of things that are counted, a part of
// one is told as a share: no third of a tree is found. What is not done is never told as all of it.
func upTo(id plan.ID, done, all float64, in units.System) string {
	of := " of " + HowMuch(id, all, in)
	whole := math.Abs(done-math.Round(done)) <= nearWhole || all-done <= nearWhole
	if _, _, _, measured := plan.Of(id).Measure(); !measured && done < 10 && !whole {
		const step = 5 // percent: no plan is finer
		return fmt.Sprintf("up to about %.0f %%", min(100-step, max(step, step*math.Round(100/step*done/all)))) + of
	}
	number, _ := howMuch(id, done, in)
	return "up to " + number + of
}

// readyTable is what must be ready before the bark is laid.
func readyTable(o *core.Outlook, in units.System) Table {
	t := Table{Key: "plan.ready", Title: "To be ready before the bark is laid", Home: stage.Choose,
		Note: "Bark comes off in its weeks alone; what stands here must not keep it waiting."}
	need := o.Season.Before(o.Counts, plan.LayBark)
	last := map[plan.ID]*plan.Job{}
	for i := range o.Jobs {
		last[o.Jobs[i].Task] = &o.Jobs[i]
	}
	return fill(t, refs(need),
		text("task", "Task", func(id *plan.ID) string { return plan.Of(*id).Name }),
		text("count", "How much", func(id *plan.ID) string { return HowMuch(*id, o.Season.Asked(o.Counts, *id), in) }),
		text("by", "Done by", func(id *plan.ID) string {
			if j := last[*id]; j != nil {
				return o.DayWords(j.To, j.To)
			}
			return "there already"
		}),
	)
}

// waysTable is what would bring the end forward.
func waysTable(o *core.Outlook, in units.System) Table {
	t := Table{Key: "plan.ways", Title: "What would end it sooner", Home: stage.Choose,
		Note: "Each by itself, from the same first day. " + leastCrews(o)}
	return fill(t, refs(o.Ways),
		text("way", "With", func(w *plan.Way) string { return wayWords(w, in) }),
		col("days", "Days", units.Count, func(w *plan.Way) Cell { return whole(w.Days) }),
		text("sooner", "Sooner by", func(w *plan.Way) string {
			if w.Days >= o.Days {
				return "nothing"
			}
			return many(o.Days-w.Days, "day", "days").text(in)
		}),
	)
}

// wayWords say what is done otherwise.
func wayWords(w *plan.Way, s units.System) string {
	switch {
	case w.Shorter == 0:
		return w.Text
	case s == units.Metric:
		return fmt.Sprintf("a boat %.0f cm shorter", w.Shorter/units.Centimetre)
	}
	return "a boat " + units.Run.Format(w.Shorter, s) + " shorter"
}

// leastCrews says what crew meets the day set, and how few days any crew takes.
func leastCrews(o *core.Outlook) string {
	floor := fmt.Sprintf("No crew, however large, takes fewer than %d days.", o.Floor)
	if _, set := o.DaysSet(); !set {
		return floor
	}
	var crews []string
	for _, c := range o.Crews {
		crews = append(crews, plan.Hands(c.Practised, c.Learners))
	}
	if len(crews) == 0 {
		return floor + " None that this page tries meets the day set."
	}
	return floor + " The least that meets the day set: " + strings.Join(crews, ", or ") + "."
}

// PlanRemarks are what a plan does not meet. Where it is late they name what would bring it in time by itself.
func PlanRemarks(o *core.Outlook, s units.System) []plan.Remark {
	all := o.Remarks(o.Today)
	for i := range all {
		if all[i].Key == "late" && o.Helped {
			all[i].Text += " " + inTime(o, s)
		}
	}
	return all
}

// inTime names the ways, and the least crews, that meet the day set.
func inTime(o *core.Outlook, s units.System) string {
	set, _ := o.DaysSet()
	var words []string
	for i := range o.Ways {
		if o.Ways[i].Days <= set {
			words = append(words, wayWords(&o.Ways[i], s))
		}
	}
	for _, c := range o.Crews {
		words = append(words, "a crew of "+plan.Hands(c.Practised, c.Learners))
	}
	if len(words) == 0 {
		return "None of what is tried under What would end it sooner does it by itself."
	}
	return "By itself would do: " + strings.Join(words, "; ") + "."
}

// sumsTable is the hours by part of the work.
func sumsTable(o *core.Outlook) Table {
	t := Table{Key: "plan.sums", Title: "Hours by part of the work", Home: stage.Choose,
		Note: "Hours of practised hands, at the mean of each time: " + fromRates + "."}
	type row struct {
		name        string
		work, total float64
	}
	var all []row
	for p := range plan.Parts {
		all = append(all, row{p.String(), o.Sums.Work[p], o.Sums.Of(p)})
	}
	all = append(all, row{"all of it", o.Sums.Total() - o.Sums.Travel[plan.Gathering], o.Sums.Total()})
	return fill(t, refs(all),
		text("part", "Part", func(r *row) string { return r.name }),
		col("work", "At the work", units.Count, func(r *row) Cell { return num(math.Round(r.work)) }),
		col("total", "With the way there", units.Count, func(r *row) Cell { return num(math.Round(r.total)) }),
	)
}

// sizesTable is what boats of other lengths take.
func sizesTable(o *core.Outlook) Table {
	t := Table{Key: "plan.sizes", Title: "Boats of this shape by length", Home: stage.Choose,
		Note: "The same hands from the same first day."}
	return fill(t, refs(o.Sizes),
		col("length", "Length", units.Length, func(s *core.Size) Cell { return num(s.Length) }),
		col("days", "Days", units.Count, func(s *core.Size) Cell { return whole(s.Days) }),
		text("meets", "By the day set", func(s *core.Size) string {
			days, set := o.DaysSet()
			switch {
			case !set:
				return "none set"
			case s.Days <= days:
				return "in time"
			}
			return "too late"
		}),
	)
}
