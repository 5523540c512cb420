package plan

// Way is one thing that may bring the end forward, and how many days the plan then takes.
type Way struct {
	// Text is empty where the boat is smaller: Shorter then says by how much, m.
	Text    string
	Shorter float64
	Days    int
}

// Ways are what would bring the end of a plan forward, with the days each would take: no
// more than the plan's, since the plan can still be kept to. smaller is a smaller boat, or
// nil; shorter says by how much, m.
func (p *Plan) Ways(smaller *Counts, shorter float64, pause func() bool) ([]Way, bool) {
	var out []Way
	if p.State != Made {
		return nil, true
	}
	try := func(text string, c Counts, set func(s *Season)) bool {
		s := p.Season
		set(&s)
		if s == p.Season && c == p.Counts {
			return true // it is so already
		}
		end, ok := p.quick(&s, c, p.Days, pause)
		if ok {
			out = append(out, Way{Text: text, Days: end})
		}
		return ok
	}
	ok := try("one more practised hand", p.Counts, func(s *Season) { s.Numbers[Practised]++ }) &&
		try("one more learner", p.Counts, func(s *Season) { s.Numbers[Learners]++ })
	if teams := p.Season.Numbers[Teams]; ok && teams > 1 {
		ok = try("all together at every boat", p.Counts, func(s *Season) { s.Numbers[Teams] = 1 })
		if ok && p.Season.Numbers[Beds] < teams {
			ok = try("a bed for each team", p.Counts, func(s *Season) { s.Numbers[Beds] = teams })
		}
	}
	if ok && p.Season.Int(From) < 2 {
		ok = try("all root peeled and split beforehand", p.Counts, func(s *Season) {
			s.ready(p.Counts, DigRoots, PeelRoots, SplitSeamRoot, SplitLacingRoot)
		}) && try("ribs split and carved beforehand", p.Counts, func(s *Season) {
			s.ready(p.Counts, SplitRibs, CarveRibs)
		}) && try("everything gathered and made before the first day", p.Counts, func(s *Season) { s.Numbers[From] = 2 })
	}
	if ok && p.Season.Int(DaysAWeek) < daysOfWeek {
		ok = try("every day of the week", p.Counts, func(s *Season) { s.Numbers[DaysAWeek] = daysOfWeek })
	}
	const long = 10
	if ok && p.Season.Int(Hours) < long {
		ok = try("ten hours a day", p.Counts, func(s *Season) { s.Numbers[Hours] = long })
	}
	if ok {
		ok = try("ribs bound one night, and no settling", p.Counts, func(s *Season) {
			s.Numbers[RibsDry], s.Numbers[Settle] = min(s.Numbers[RibsDry], 0.5), 0
		})
	}
	if ok && smaller != nil && *smaller != p.Counts {
		if ok = try("", *smaller, func(*Season) {}); ok {
			out[len(out)-1].Shorter = shorter
		}
	}
	return out, ok
}

// ready puts tasks down as done.
func (s *Season) ready(c Counts, ids ...ID) {
	for _, id := range ids {
		s.Have[id] = max(s.Have[id], s.Asked(c, id))
	}
}

// quick is how many days a season takes from the plan's first day, with few orders tried; so many where
// it is not found to take fewer.
func (p *Plan) quick(s *Season, c Counts, most int, pause func() bool) (days int, ok bool) {
	rates := s.Rates(c, p.Done)
	n := s.newNetwork(c, p.Done, means(&rates), newClock(s, p.First, p.Dated))
	limit := n.clock.slotAt((most - 1) * ticksADay)
	won, ok := n.best(s.Int(Practised), s.Int(Learners), s.Number(Factor), n.few(), limit+1, pause)
	if !ok || won.end > limit {
		return most, ok
	}
	return n.clock.day(won.end-1) + 1, true
}

// Crew is so many practised hands and learners.
type Crew struct{ Practised, Learners int }

// Least are the fewest hands that end within so many days: of practised ones alone, and of
// learners beside the practised ones that there are. A crew that cannot is left out.
func (p *Plan) Least(days int, pause func() bool) (crews []Crew, ok bool) {
	if p.State != Made {
		return nil, true
	}
	most := func(f Field) int { return int(rows[f].High) }
	o := p.net.few()
	for n := 1; n <= most(Practised); n++ {
		meets, ok := p.meets(n, 0, days, o, pause)
		if !ok {
			return nil, false
		}
		if meets {
			crews = append(crews, Crew{n, 0})
			break
		}
	}
	practised := p.Season.Int(Practised)
	for n := 1; n <= most(Learners); n++ {
		meets, ok := p.meets(practised, n, days, o, pause)
		if !ok {
			return nil, false
		}
		if meets {
			crews = append(crews, Crew{practised, n})
			break
		}
	}
	return crews, true
}

// meets tells whether a crew ends within so many days.
func (p *Plan) meets(practised, learners, days int, o *orders, pause func() bool) (meets, ok bool) {
	limit := p.net.clock.slotAt(days * ticksADay)
	out := found{end: limit + 1}
	if !p.net.tryCrew(practised, learners, p.Season.Number(Factor), o, &out, pause) {
		return false, false
	}
	return out.end <= limit, true
}

// Quick is how many days the same season takes another boat, with few orders tried; so many where it is
// not found to take fewer, three years where none are said.
func (p *Plan) Quick(c Counts, most int, pause func() bool) (days int, ok bool) {
	if most == 0 {
		most = horizon
	}
	return p.quick(&p.Season, c, most, pause)
}

// DaysSet is how many days there are from the plan's first to the last one set; it reports
// false without one, or without dates.
func (p *Plan) DaysSet() (days int, ok bool) {
	last, ok := p.DayOf(p.Season.Days[End])
	return last + 1, ok
}
