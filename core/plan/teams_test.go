package plan

import (
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// inTeams deals the jobs of a network out to so many teams at random, some of them to everyone.
func inTeams(r *rand.Rand, n *network, teams int) *network {
	n.teams, n.boats = teams, teams
	for i := range n.jobs {
		boat := r.IntN(teams + 1)
		n.jobs[i].boat, n.jobs[i].shared = boat%teams, boat == teams
	}
	return n
}

// More hands never end later in teams either: every crew that can be shared out at all.
func TestMoreHandsNeverEndLaterInTeams(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 300 {
		n := inTeams(r, randomNetwork(r, 9), 2+r.IntN(2))
		p, l := r.IntN(4), 4+r.IntN(3)
		now, _ := n.best(p, l, 2, n.orders(0), never, nil)
		more, _ := n.best(p+1, l, 2, n.orders(0), never, nil)
		learner, _ := n.best(p, l+1, 2, n.orders(0), never, nil)
		require.Less(t, now.end, never)
		require.LessOrEqual(t, more.end, now.end)
		require.LessOrEqual(t, learner.end, now.end)
		require.GreaterOrEqual(t, now.end, n.reach(now.crew).end)
	}
}

// What several teams can do, all together can: one team ends no later than any number of them. It follows
// from the model, whose teams are the same hands and may each do less; the search has to see it. Random
// crews, of one hand and of the most among them.
func TestOneTeamEndsNoLater(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	sooner := 0
	for i := range 300 {
		teams := 2 + r.IntN(2)
		n := inTeams(r, randomNetwork(r, 9), teams)
		p, l := r.IntN(5), r.IntN(7)
		switch i % 5 {
		case 0:
			p, l = teams, 0
		case 1:
			p, l = 1, teams
		}
		several, _ := n.best(p, l, 2, n.orders(0), never, nil)
		n.teams = 1
		together, _ := n.best(p, l, 2, n.orders(0), never, nil)
		require.LessOrEqual(t, together.end, several.end)
		if together.end < several.end {
			sooner++
		}
	}
	assert.Positive(t, sooner, "teams do cost something")
}

// The same of whole seasons from gathered stock: four practised of many hands, a teacher with a class, a small crew.
func TestOneTeamBuildsNoLater(t *testing.T) {
	for _, v := range [][3]int{{4, 12, 4}, {1, 8, 3}, {2, 5, 2}} {
		boats := v[2]
		one, _ := Make(teamSeason(v[0], v[1], boats, 1, boats), someCounts(), Progress{}, "", nil)
		for teams := 2; teams <= boats; teams++ {
			s := teamSeason(v[0], v[1], boats, teams, boats)
			require.Empty(t, s.Faults())
			several, _ := Make(s, someCounts(), Progress{}, "", nil)
			assert.LessOrEqual(t, one.won.end, several.won.end, "%v in %d teams", v, teams)
		}
	}
}

// Both laws hold of plans that are so large that few orders are tried: seven boats, by small crews. With more than three
// learners to each, those who lead work half, so that a smaller crew may end first. The fewest practised hands that
// make two teams alone and the most that may be set are among them.
func TestLargePlansKeepTheLaws(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 18))
	c := someCounts()
	end := func(practised, learners, teams int) int {
		s := teamSeason(practised, learners, 7, teams, 3)
		rates := s.Rates(c, Progress{})
		n := s.newNetwork(c, Progress{}, means(&rates), newClock(&s, time.Time{}, false))
		require.Greater(t, len(n.jobs), many)
		won, ok := n.best(practised, learners, s.Number(Factor), n.orders(shaken), never, nil)
		require.True(t, ok)
		return won.end
	}
	for i := range 11 {
		p, l, teams := 1+r.IntN(2), 2+r.IntN(6), 2
		switch {
		case i == 9:
			p, l = 2, 0
		case i == 10:
			p, l = int(rows[Practised].High)-1, 0
		case i%3 == 0:
			l = teachesMost * p
		}
		several := end(p, l, teams)
		assert.LessOrEqual(t, end(p, l, 1), several, "%d and %d in %d teams", p, l, teams)
		assert.LessOrEqual(t, end(p+1, l, teams), several)
		assert.LessOrEqual(t, end(p, l+1, teams), several)
	}
}

// A team too few for a task is lent hands by the others, and by nobody else: all of the crew are enough.
func TestTeamsLendHands(t *testing.T) {
	p, ok := Make(teamSeason(3, 3, 3, 3, 3), someCounts(), Progress{}, "", nil)
	require.True(t, ok)
	lent := map[ID]int{}
	for _, j := range p.Jobs {
		for _, s := range j.Shifts {
			assert.Zero(t, s.Borrowed)
			assert.Equal(t, max(0, table[j.Task].Least-2) > 0, s.Lent > 0, table[j.Task].Key)
			lent[j.Task] = max(lent[j.Task], s.Lent)
		}
	}
	assert.Equal(t, 1, lent[LayBark], "three for the bark, and two in the team")
	said := ""
	for _, r := range p.Remarks("") {
		if r.Key == "lent" {
			said = r.Text
		}
		assert.NotEqual(t, "borrow", r.Key)
	}
	assert.Contains(t, said, "lend it hands: clean, unroll and weight the bark.")
}

// Two teams alike, each with a network of its own, work as one team does with one, by every way of
// dealing. It follows from the model: they share nothing, and no task needs more than a team's two.
func TestTeamsThatShareNothingWorkAsOne(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for range 50 {
		one := randomNetwork(r, 9)
		var jobs []job
		for team := 1; team <= 2; team++ {
			for _, j := range one.jobs {
				j.boat, j.before = team-1, nil
				after := j.after
				j.after = nil
				for _, w := range after {
					j.after = append(j.after, wait{w.job + (team-1)*len(one.jobs), w.hours})
				}
				jobs = append(jobs, j)
			}
		}
		two := newTestNetwork(jobs, one.clock)
		two.teams, two.boats = 2, 2
		p, l := 2+r.IntN(2), r.IntN(3)
		alone, both := newHands(p, l, 2), newHands(2*p, 2*l, 2).in(2)
		for _, deal := range dealings() {
			a, b := newRun(one, alone), newRun(two, both)
			want := a.finish(one.ranked(one.tails(&a.reach, 1)), deal, never)
			assert.Equal(t, want, b.finish(two.ranked(two.tails(&b.reach, 1)), deal, never))
		}
		assert.GreaterOrEqual(t, two.reach(both).end, one.reach(alone).end)
	}
}

// Hands are shared out whole: each team's own and those who go round are everyone, and no team has
// two more than another.
func TestHandsAreSharedOut(t *testing.T) {
	for teams := 1; teams <= 12; teams++ {
		for p := range 13 {
			for l := range 31 {
				crew := newHands(p, l, 2).in(teams)
				var leads, rest int
				low, high := 1000, 0
				for i, pool := range crew.share() {
					leads, rest = leads+pool.leads, rest+pool.rest
					if i > 0 {
						low, high = min(low, pool.leads+pool.rest), max(high, pool.leads+pool.rest)
					}
				}
				require.Equal(t, [2]int{crew.leads, crew.rest}, [2]int{leads, rest})
				if teams > 1 {
					require.LessOrEqual(t, high-low, 1)
					require.Equal(t, low > 0, crew.enough(), "%d and %d in %d teams", p, l, teams)
				}
			}
		}
	}
}

// teamSeason is a season of so many boats, beds and teams from gathered stock.
func teamSeason(practised, learners, boats, teams, beds int) Season {
	s := NewSeason()
	for f, v := range map[Field]int{Practised: practised, Learners: learners, Boats: boats, Teams: teams, Beds: beds,
		From: 1} {
		s.Numbers[f] = float64(v)
	}
	return s
}

// someCounts are a boat's, small enough to plan many of.
func someCounts() (c Counts) {
	for i := range c.Units {
		c.Units[i] = 4
	}
	return c
}

// Nobody is at the boat of another team, no slot has more hands than there are, the hours of the
// teams and of everyone together are all hours, and every unit is done.
func TestTeamsKeepToTheirBoats(t *testing.T) {
	for _, crew := range [][2]int{{1, 2}, {3, 0}, {2, 1}, {0, 3}} {
		s, c := teamSeason(crew[0], crew[1], 3, 2, 2), someCounts()
		s.Numbers[From] = 0
		require.Empty(t, s.Faults())
		// As Make does, without the slack and the range.
		rates := s.Rates(c, Progress{})
		p := Plan{Season: s, Counts: c, net: s.newNetwork(c, Progress{}, means(&rates), newClock(&s, time.Time{}, false))}
		won, ok := p.net.best(crew[0], crew[1], s.Number(Factor), p.net.orders(0), never, nil)
		require.True(t, ok)
		require.Less(t, won.end, never)
		p.won = won
		type at struct{ slot, team int }
		had, all := map[at]pool{}, map[int]pool{}
		r := p.record()
		for _, h := range r.stints {
			all[h.slot] = pool{all[h.slot].leads + h.leads, all[h.slot].rest + h.rest}
			if r.short[h.job] {
				// A task that a whole team is too few for has no more hands than it needs.
				assert.Equal(t, r.need[h.job], h.leads+h.rest)
				continue
			}
			k := at{h.slot, r.team[h.job]}
			had[k] = pool{had[k].leads + h.leads, had[k].rest + h.rest}
		}
		for k, of := range had {
			// Those who are not in one team's pool are the other's, or go round.
			there := p.won.crew.of(k.team)
			assert.LessOrEqual(t, of.leads, there.leads)
			assert.LessOrEqual(t, of.rest, there.rest)
		}
		for _, of := range all {
			assert.LessOrEqual(t, of.leads, p.won.crew.leads)
			assert.LessOrEqual(t, of.rest, p.won.crew.rest)
		}
		p.lay(r)
		hours, units := 0.0, map[ID]float64{}
		for _, j := range p.Jobs {
			assert.Equal(t, s.Team(j.Task, j.Boat), r.team[j.index])
			units[j.Task] += j.Shifts[len(j.Shifts)-1].After - j.Shifts[0].Done
			for _, sh := range j.Shifts {
				if table[j.Task].Part != Afterwards {
					hours += sh.Hours
				}
			}
		}
		assert.InDelta(t, p.Hours, hours, 1e-9)
		for id, n := range units {
			if table[id].Part == Afterwards {
				continue // it goes on past the end
			}
			// Work of less than 1e-9 slots counts as none, in each of the three boats, and in a slot no more than a
			// hundred units are done.
			assert.InDelta(t, s.Asked(c, id), n, 3e-7, table[id].Key)
		}
		one := s
		one.Numbers[Teams] = 1
		assert.Equal(t, one.Sum(c, Progress{}), s.Sum(c, Progress{}), "teams change who works, not how much there is to do")
	}
}

// Teams take turns at one bed; a bed for each ends no later.
func TestTeamsShareTheBeds(t *testing.T) {
	c := someCounts()
	end := func(beds int) int {
		p, ok := Make(teamSeason(2, 2, 2, 2, beds), c, Progress{}, "", nil)
		require.True(t, ok)
		if beds == 1 {
			var laid, freed [2]int
			for _, j := range p.Jobs {
				switch j.Task {
				case LayBark:
					laid[j.Boat] = j.start
				case SetStems:
					freed[j.Boat] = j.end
				}
			}
			assert.True(t, laid[0] > freed[1] || laid[1] > freed[0], "one bed: %v %v", laid, freed)
		}
		return p.Days
	}
	assert.LessOrEqual(t, end(2), end(1))
}

// More teams than boats or than hands are named at the field; a shared teacher and each team's boats
// are said.
func TestTeamsAreNamed(t *testing.T) {
	fault := func(s Season) string {
		f := s.Faults()
		if len(f) == 0 {
			return ""
		}
		require.Len(t, f, 1)
		require.Equal(t, "teams", f[0].Key)
		return f[0].Text
	}
	assert.Contains(t, fault(teamSeason(2, 9, 2, 3, 1)), "than boats: each builds one, so 2")
	assert.Contains(t, fault(teamSeason(1, 2, 3, 3, 1)), "than there are hands for")
	assert.Contains(t, fault(teamSeason(0, 3, 3, 3, 1)), "than there are hands for", "one of the learners leads")
	for _, good := range []Season{teamSeason(1, 3, 3, 3, 1), teamSeason(3, 0, 3, 3, 1), teamSeason(0, 4, 3, 3, 1),
		teamSeason(1, 0, 1, 1, 1), teamSeason(12, 30, 12, 12, 12)} {
		assert.Empty(t, fault(good))
	}
	p, ok := Make(teamSeason(1, 4, 3, 2, 2), someCounts(), Progress{}, "", nil)
	require.True(t, ok)
	said := ""
	for _, r := range p.Remarks("") {
		if r.Key == "teams" {
			said = r.Text
		}
	}
	for _, want := range []string{"team 1 (2 learners), boats 1, 3", "team 2 (1 learner), boat 2",
		"From team to team: 1 practised"} {
		assert.Contains(t, said, want)
	}
	s := p.Season
	assert.Equal(t, ", boat 2, team 2", s.Whose(Lace, 1))
	assert.Equal(t, ", boat 3, team 1", s.Whose(Lace, 2))
	assert.Empty(t, s.Whose(DigRoots, 0))
	ways, ok := p.Ways(nil, 0, nil)
	require.True(t, ok)
	var words []string
	for _, w := range ways {
		words = append(words, w.Text)
	}
	assert.Contains(t, strings.Join(words, "; "), "all together at every boat")
}
