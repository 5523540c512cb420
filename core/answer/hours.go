package answer

import (
	"fmt"
	"math"
	"strings"

	"barkwright/core"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// withoutStep are the homes of the tasks that no step of the log ends.
var withoutStep = map[plan.ID]stage.Key{
	plan.FindCedar: stage.Gather, plan.CarryCedar: stage.Gather, plan.PeelRoots: stage.Gather,
	plan.SplitRibs: stage.Rib, plan.SplitSheathing: stage.Rib, plan.MakePegs: stage.Gunwales,
}

// homeOf is the stage of the work that a task belongs to.
func homeOf(t *plan.Task) stage.Key {
	if home, ok := withoutStep[t.ID]; ok {
		return home
	}
	home, _, _ := strings.Cut(t.Step, ".")
	return stage.Key(home)
}

// Hours lists the hours of practised hands that one such boat takes from the first day, stage by
// stage and all together, at the times that the season has set and the log has shown. Each stage's
// are in whole hours, and all of it is their sum.
func Hours(c core.Canoe, s plan.Season, p plan.Progress) []Number {
	each := s.Whole(c.Asks(), p)
	at := map[stage.Key]float64{}
	for i, t := range plan.All() {
		at[homeOf(&t)] += each[i]
	}
	var all []Number
	total := 0.0
	for _, st := range stage.All() {
		hours := math.Round(at[st.Key])
		if hours == 0 {
			continue
		}
		total += hours
		all = append(all, *number(st.Key, "hours."+string(st.Key), "Hours of work: "+InSentence(st.Name),
			units.Count, hours, fromRates,
			func(units.System) string {
				return fmt.Sprintf("%.1f hours of practised hands, the way there with them", at[st.Key])
			}))
	}
	return append(all, *number(stage.Choose, "hours.total", "Hours of work, all of it", units.Count, total, fromRates,
		func(units.System) string { return "the hours of all stages added up, each in whole hours" }))
}
