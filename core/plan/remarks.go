package plan

import (
	"fmt"
	"strings"
	"time"
)

// Remark is something about a plan that its user has to know. Its key names the kind of it.
type Remark struct{ Key, Text string }

// nearestLong is how many days of waiting make it worth saying that a class leaves them out.
const nearestLong = 2

// Remarks are what a plan does not meet, and what would help. today is the day on the page,
// or empty.
func (p *Plan) Remarks(today string) []Remark {
	var out []Remark
	say := func(key, text string, args ...any) { out = append(out, Remark{key, fmt.Sprintf(text, args...)}) }
	s := &p.Season
	switch p.State {
	case NoHands:
		say("noHands", "Nobody is there to work: one pair of hands at the least.")
		return out
	case OutOfSeason:
		p.remarkStop(say)
		return out
	case NothingLeft:
		if p.Sums.Of(Afterwards) > done {
			say("nothingLeft", "Nothing is left to do but to dry %s and lay %s up for winter.", s.boats("the boat"),
				map[bool]string{true: "it", false: "them"}[s.Int(Boats) == 1])
		} else {
			say("nothingLeft", "Nothing is left to do.")
		}
		return out
	}
	if began, ok := day(s.Days[Begin]); ok && today != "" && s.Days[Begin] < today {
		say("beginPast", "The first day, %s, is past: planned from today.", p.Say(began))
	}
	end, ended := day(s.Days[End])
	if ended = ended && today != "" && s.Days[End] < today; ended {
		say("endPast", "The last day, %s, is past: no crew meets it. Set a later one, or leave it empty.", p.Say(end))
	}
	late := false
	if s.Days[Begin] == "" && s.Days[End] != "" && p.Dated && !ended {
		begin := p.First.Format(time.DateOnly)
		if late = today != "" && begin < today; late {
			say("beginLate", "To end in time it had to begin by %s. Take more hands, have stock made, or end later.",
				p.Say(p.First))
		} else {
			say("beginBy", "Begin by %s to end in time.", p.Say(p.First))
		}
	}
	if set, ok := p.DaysSet(); ok && !ended && !late {
		switch over := p.Days - set; {
		case over > 0 && p.Floor > set:
			say("floor", "It ends %s after the day set, and no crew would meet it: waits, seasons and the order of the work "+
				"take %d days. Have stock made, or bind the ribs for less.", days(over), p.Floor)
		case over > 0:
			say("late", "It ends %s after the day set: more hands, longer days or stock made before would help.",
				days(over))
		default:
			say("inTime", "It ends in time, with %s to spare.", days(-over))
		}
	}
	if p.Short >= 0 {
		say("short", "Hands are shortest %s: there is work for %.0f hours more than they have.",
			p.On(p.Short), p.ShortHours)
	}
	p.remarkSeason(say)
	p.remarkHands(say)
	if wait := s.Number(RibsDry) + s.Number(Settle); wait > nearestLong {
		say("waits", "Drying and settling take %s days of it. A class of 15 days bound its ribs one night and let nothing "+
			"settle; the advice is two to four days, then a few days more.", number(wait))
	}
	for i := range table {
		id := ID(i)
		switch asked := s.Asked(p.Counts, id); {
		case asked > 0 && s.Have[i] > asked:
			say("haveMore", "More is at hand than is needed for %s: %s.", s.boats("this boat"),
				strings.ToLower(table[i].Name))
		case s.Suspect(p.Done, id):
			say("suspect", "Look at the hours entered again, they are not counted: %s.", strings.ToLower(table[i].Name))
		}
	}
	return out
}

// remarkSeason says which seasons are missed, and by what.
func (p *Plan) remarkSeason(say func(string, string, ...any)) {
	const year = 365
	if !p.Dated {
		return
	}
	for _, w := range [][2]Date{{Thaw, Freeze}, {PeelFrom, PeelTo}, {WarmFrom, WarmTo}} {
		if from, to := p.Season.Days[w[0]], p.Season.Days[w[1]]; to < from {
			say("overNewYear", "%s %s, until %s of the next year: if that is not meant, change the one or the other.",
				dateRows[w[0]].Label, from, to)
		}
	}
	if id, n := p.mostMissed(); n > 0 {
		say("mayMiss", "In %d of the hundred plans that the range of days is made of, the season ends before this is "+
			"done, and %s for a year: %s. They are not in the range. Begin earlier, or have more hands.", n,
			map[bool]string{true: "the boat waits", false: "the boats wait"}[p.Season.Int(Boats) == 1],
			strings.ToLower(table[id].Name))
	}
	s, laidUp := &p.Season, -1
	for i := range p.Jobs {
		o := &p.Jobs[i]
		if o.Task == FellCedar && p.within(Thawed, o.To) {
			say("cedarLate", "Cedar is felled on %s, the ground thawed. Sources differ: winter, when it is carried out over "+
				"frozen ground, or any time. Where it is wanted in winter, have it felled before and set it as at hand.",
				p.Say(p.Date(o.From)))
		}
		if o.Task == KeepWinter && !p.within(Thawed, o.To) {
			laidUp = max(laidUp, o.To)
		}
		if p.net.jobs[o.index].season == AnyTime || o.From < year/2 {
			continue
		}
		switch o.Task {
		case TakeBark:
			say("nextYear", "The bark comes off on %s: the days when it peels are over, or too few, before. A dry roll that is "+
				"at hand needs no season.", p.Say(p.Date(o.From)))
		case GatherGum:
			say("gumNextYear", "Gum runs too late for %s: it is gathered on %s. Have it from the summer before.",
				s.boats("this boat"), p.Say(p.Date(o.From)))
		default:
			say("nextThaw", "Roots wait for the thaw: they are dug on %s. Have them from the autumn before.",
				p.Say(p.Date(o.From)))
		}
	}
	if laidUp >= 0 {
		say("frost", "On %s, when the ground is frozen, %s would still be wet: dry and lay it up before frost.",
			p.Say(p.Date(laidUp)), s.boats("the boat"))
	}
}

// within tells that a day lies in a season, past the end of the plan too.
func (p *Plan) within(w Window, d int) bool {
	for _, s := range p.net.clock.open[w] {
		if d >= s[0] && d <= s[1] {
			return true
		}
	}
	return false
}

// boats names one boat as it is said, and several.
func (s *Season) boats(one string) string {
	if n := s.Int(Boats); n > 1 {
		return fmt.Sprintf("these %d boats", n)
	}
	return one
}

// On names a day of the plan: its date where there is one, else its number.
func (p *Plan) On(d int) string {
	if p.Dated {
		return "on " + p.Say(p.Date(d))
	}
	return fmt.Sprintf("on day %d", d+1)
}

// Say is a date as its reader writes it.
func (p *Plan) Say(t time.Time) string { return p.Dates.Of(t) }

func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return fmt.Sprintf("%d days", n)
}

// number is a number with at most one place after the point.
func number(v float64) string { return strings.TrimSuffix(fmt.Sprintf("%.1f", v), ".0") }

// DayWords name a stretch of days of the plan: by dates where there are any.
func (p *Plan) DayWords(from, to int) string {
	name := func(d int) string {
		if p.Dated {
			return p.Dates.Short(p.Date(d))
		}
		return fmt.Sprint(d + 1)
	}
	text := name(from)
	if to != from {
		text += " to " + name(to)
	}
	if !p.Dated {
		text = "day " + text
	}
	return text
}
