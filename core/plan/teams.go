package plan

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Team is the team that works at a task of a boat, counted from 1; 0 is everyone. Boats are dealt
// out to the teams in turn. What is done for all boats at a time is done by everyone.
func (s *Season) Team(id ID, boat int) int {
	if n := s.Int(Teams); n > 1 && !together(id) {
		return boat%n + 1
	}
	return 0
}

// team is the team of a crew that works at a job.
func (n *network) team(j *job, crew hands) int {
	if crew.teams < 2 || j.shared {
		return 0
	}
	return j.boat%crew.teams + 1
}

// Whose names a task's boat and team where there are several, after a comma; else it is empty.
func (s *Season) Whose(id ID, boat int) string {
	text := ""
	if s.BoatByBoat(id) {
		text = fmt.Sprintf(", boat %d", boat+1)
	}
	if team := s.Team(id, boat); team > 0 {
		text += fmt.Sprintf(", team %d", team)
	}
	return text
}

// crew are so many hands as they work in a season.
func (s *Season) crew(practised, learners int) hands {
	return newHands(practised, learners, s.Number(Factor)).in(s.Int(Teams))
}

// in are the same hands in so many teams.
func (h hands) in(teams int) hands {
	h.teams = teams
	return h
}

// own are a team's own hands. Each team has as many of the practised as the next; those who are over
// belong to none and go from team to team. Learners who are over go to the first teams.
func (h hands) own(team int) hands {
	over := 0
	if team <= h.rest%h.teams {
		over = 1
	}
	h.leads, h.rest = h.leads/h.teams, h.rest/h.teams+over
	return h
}

// of are all the hands that may be at a team's task, those who go from team to team among them.
func (h hands) of(team int) hands {
	if team == 0 || h.teams < 2 {
		return h
	}
	own := h.own(team)
	own.leads += h.leads % h.teams
	return own
}

// enough tells that each team has a hand of its own.
func (h hands) enough() bool { return h.teams < 2 || max(h.leads, h.rest) >= h.teams }

// mingle tells that the same hands may be at tasks of two teams.
func (h hands) mingle(a, b int) bool {
	return a == b || a == 0 || b == 0 || h.teams < 2 || h.leads%h.teams > 0
}

// short tells that a job's whole team is too few for it, and others are not: they lend it hands.
func (n *network) short(j *job, crew hands) bool {
	return crew.of(n.team(j, crew)).all() < min(j.least, crew.all())
}

// pool are hands that are not yet dealt out.
type pool struct{ leads, rest int }

// share is a crew in its pools: at 0 those who belong to no team, then each team's own.
func (h hands) share() []pool {
	if h.teams < 2 {
		return []pool{{h.leads, h.rest}}
	}
	out := []pool{{h.leads % h.teams, 0}}
	for team := 1; team <= h.teams; team++ {
		own := h.own(team)
		out = append(out, pool{own.leads, own.rest})
	}
	return out
}

// count is how many are free for a team's task.
func (r *run) count(team int) (leads, rest int) {
	f := r.free
	if team > 0 {
		return f[0].leads + f[team].leads, f[0].rest + f[team].rest
	}
	for _, p := range f {
		leads, rest = leads+p.leads, rest+p.rest
	}
	return leads, rest
}

// kind is practised hands or the others.
type kind bool

const (
	lead  kind = true
	other kind = false
)

// of is how many of a kind are in a pool.
func (k kind) of(p *pool) *int {
	if k == lead {
		return &p.leads
	}
	return &p.rest
}

// take takes hands of a kind for a job: of its team's own before those who go from team to team; for
// everyone's, of the teams that have the least to do at their own boats first.
func (r *run) take(i int, k kind, n int) {
	if team := r.team[i]; team > 0 {
		n = r.move(i, team, k, n)
	} else if len(r.free) > 1 {
		n = r.fromLeast(i, k, n)
	}
	r.move(i, 0, k, n)
}

// borrow takes hands of other teams for a job that a whole team is too few for.
func (r *run) borrow(i, n int) {
	k := lead
	if r.deal.learnersFirst {
		k = other
	}
	r.fromLeast(i, !k, r.fromLeast(i, k, n))
}

// fromLeast takes hands of the teams that have the least to do, and returns how many are still wanted.
func (r *run) fromLeast(i int, k kind, n int) int {
	if r.moved {
		slices.SortFunc(r.byOwed, func(a, b int) int { return cmp.Or(cmp.Compare(r.owed[a], r.owed[b]), a-b) })
		r.moved = false
	}
	for _, team := range r.byOwed {
		if n == 0 {
			break
		}
		n = r.move(i, team, k, n)
	}
	return n
}

// move takes hands of one pool, and returns how many are still wanted.
func (r *run) move(i, from int, k kind, n int) int {
	there := k.of(&r.free[from])
	got := min(n, *there)
	*there -= got
	r.idle -= got
	if k == lead {
		r.leads[i] += got
	} else {
		r.rest[i] += got
	}
	return n - got
}

// teamWords say who is in each team and which boats it builds, for the hands that the plan uses.
func (p *Plan) teamWords() string {
	crew, boats := p.won.crew, p.Season.Int(Boats)
	var teams []string
	for team := 1; team <= crew.teams; team++ {
		own := crew.own(team)
		var of []string
		for b := team; b <= boats; b += crew.teams {
			of = append(of, strconv.Itoa(b))
		}
		boat := "boat "
		if len(of) > 1 {
			boat = "boats "
		}
		teams = append(teams, fmt.Sprintf("team %d (%s), %s", team, p.crewWords(own.leads, own.rest),
			boat+strings.Join(of, ", ")))
	}
	text := "All gather together, then each team builds its own: " + strings.Join(teams, "; ") + "."
	if over := crew.leads % crew.teams; over > 0 {
		text += fmt.Sprintf(" From team to team: %s.", p.crewWords(over, 0))
	}
	return text
}

// crewWords are hands in words; without anyone practised those who lead are learners.
func (p *Plan) crewWords(leads, rest int) string {
	return Hands(p.named(stint{leads: leads, rest: rest}))
}

// Hands is a crew in words.
func Hands(practised, learners int) string {
	var parts []string
	if practised > 0 {
		parts = append(parts, fmt.Sprintf("%d practised", practised))
	}
	if learners == 1 {
		parts = append(parts, "1 learner")
	} else if learners > 1 {
		parts = append(parts, fmt.Sprintf("%d learners", learners))
	}
	if len(parts) == 0 {
		return "nobody"
	}
	return strings.Join(parts, " and ")
}
