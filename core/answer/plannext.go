package answer

import (
	"strings"

	"barkwright/core"
	"barkwright/core/plan"
)

// NextWork are the day of a plan that has work first, as it is said, and the tasks of that day; the plan goes
// from today once something is done. Both are empty where there is no plan. First is the task named first.
func NextWork(o *core.Outlook) (when, tasks string, first plan.ID) {
	if o == nil || len(o.Faults) > 0 || o.State != plan.Made {
		return "", "", 0
	}
	all := o.Entries()
	if len(all) == 0 {
		return "", "", 0
	}
	day := all[0].Day
	when = "Next: "
	if o.TodayAt() == day {
		when = "Today: "
	}
	var names []string
	for i := range all {
		if e := &all[i]; e.Day == day {
			name := taskName(o, e.Job)
			if len(names) > 0 {
				name = strings.ToLower(name[:1]) + name[1:]
			}
			names = append(names, name)
		}
	}
	return when + o.DayWords(day, day), strings.Join(names, "; "), all[0].Job.Task
}
