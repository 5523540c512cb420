package plan

import (
	"fmt"
	"strings"
)

// remarkHands says where hands are short, idle or not practised.
func (p *Plan) remarkHands(say func(string, string, ...any)) {
	s := &p.Season
	if s.Int(Teams) > 1 {
		say("teams", "%s", p.teamWords())
	}
	if s.Int(Practised) == 0 {
		say("noPractised", "Nobody is practised: planned at a learner's pace. Have someone who has built one beside you.")
	}
	if _, names, _ := p.few(func(s *Shift) int { return s.Lent }); len(names) > 0 {
		say("lent", "A team is too few for some of the tasks, and others lend it hands: %s.", strings.Join(names, "; "))
	}
	most, names, first := p.few(func(s *Shift) int { return s.Borrowed })
	switch {
	case len(names) == 1:
		say("borrow", "%s to borrow %s: %s.", hand(most), p.On(first), names[0])
	case most > 0:
		say("borrow", "%s to borrow for %d of the tasks, the first %s: %s.", hand(most), len(names), p.On(first),
			strings.Join(names, "; "))
	}
	if idle := s.Int(Practised) + s.Int(Learners) - p.Practised - p.Learners; idle > 0 {
		say("idle", "%s would have nothing to do: the same crew without ends no later.", hand(idle))
	}
}

// few are the tasks that want hands from elsewhere, each once however many boats, with the most that one
// wants and the first day.
func (p *Plan) few(wanted func(*Shift) int) (most int, names []string, first int) {
	var named [Tasks]bool
	first = -1
	for i := range p.Jobs {
		o := &p.Jobs[i]
		for k := range o.Shifts {
			n := wanted(&o.Shifts[k])
			if n == 0 {
				continue
			}
			most = max(most, n)
			if d := o.Shifts[k].Day; first < 0 || d < first {
				first = d
			}
			if !named[o.Task] {
				named[o.Task] = true
				names = append(names, strings.ToLower(table[o.Task].Name))
			}
		}
	}
	return most, names, first
}

func hand(n int) string {
	if n == 1 {
		return "One pair of hands"
	}
	return fmt.Sprintf("%d pairs of hands", n)
}
