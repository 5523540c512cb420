package plan

import (
	"slices"
	"strings"
)

// Stop is why a plan does not end within three years.
type Stop struct {
	// Task is the one whose season is too short; BySeason is false where the work as a whole takes too long.
	Task     ID
	BySeason bool
	// Unworked tells that no day of its season is one of work.
	Unworked bool
	// Hours are of practised hands, the way there with them.
	Hours float64
}

// stop finds what keeps a plan of a crew from ending: the first task whose season alone does, else the first
// of those whose seasons do together.
func (n *network) stop(crew hands) (out Stop) {
	r := newRun(n, crew)
	rank, deal := n.orders(0).of(&r.reach)[0], dealings()[0]
	ends := func(n *network) bool { return newRun(n, crew).finish(rank, deal, never) < never }
	r.finish(rank, deal, never)
	var waiting []int
	for _, i := range n.topo {
		if n.jobs[i].season != AnyTime && r.end[i] < 0 && r.waiting[i] == 0 {
			waiting = append(waiting, i)
		}
	}
	free := *n
	free.clock.dated = false
	if len(waiting) == 0 || !ends(&free) {
		return out
	}
	at := max(0, slices.IndexFunc(waiting, func(i int) bool {
		free := *n
		free.clock.open[n.jobs[i].season] = [][2]int{{0, horizon}}
		return ends(&free)
	}))
	j := &n.jobs[waiting[at]]
	opens := n.clock.opening(0, j.season)
	return Stop{j.task, true, opens == never || n.clock.day(opens) > horizon, j.work / perHour}
}

// within is how a season is said.
func (w Window) within() string {
	return [...]string{"at any time", "while the ground is thawed", "while bark peels", "while gum runs"}[w]
}

// remarkStop says what keeps a plan from ending, and what would help.
func (p *Plan) remarkStop(say func(string, string, ...any)) {
	if !p.Stop.BySeason {
		say("outOfSeason", "No plan: with these hands the work takes more than three years. One more pair of hands, longer "+
			"days, more of them in a week or stock made before would help.")
		return
	}
	t := &table[p.Stop.Task]
	text := "No plan: within three years this is not finished, and it is worked only %s: %s. "
	if p.Stop.Unworked {
		say("outOfSeason", text+"None of those days is one of work: widen them, work on more days of the week, or set the "+
			"task as at hand.", t.Season.within(), strings.ToLower(t.Name))
		return
	}
	there, help := p.Season.Int(Practised)+p.Season.Int(Learners), "Longer"
	if there < t.Most {
		help = "One more pair of hands on those days would help; so would longer"
	}
	say("outOfSeason", text+"It takes about %.0f hours of practised hands, the way there with them, and is work for "+
		"%d to %d hands; this crew has %d. %s days, a camp in the woods, a longer season, or the task set as at hand.",
		t.Season.within(), strings.ToLower(t.Name), p.Stop.Hours, t.Least, t.Most, there, help)
}
