package plan

import (
	"fmt"
	"math"
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

// lead and rest are the practised hands and the learners of a pool.
func lead(p *pool) *int { return &p.leads }
func rest(p *pool) *int { return &p.rest }

// take takes a hand of a kind for a team's task: one of its own before one who goes from team to
// team; for everyone's, one of the team that has the least to do at its own boats.
func (r *run) take(team int, kind func(*pool) *int) {
	from := team
	if team == 0 {
		least := math.Inf(1)
		for i := 1; i < len(r.free); i++ {
			if *kind(&r.free[i]) > 0 && r.owed[i] < least {
				from, least = i, r.owed[i]
			}
		}
	}
	if *kind(&r.free[from]) == 0 {
		from = 0
	}
	*kind(&r.free[from])--
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
