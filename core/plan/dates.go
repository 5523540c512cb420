package plan

import "time"

// DayOf is the day of the plan that a date is, also before its first and past its last; it
// reports false for what is no date, and without dates.
func (p *Plan) DayOf(date string) (d int, ok bool) {
	at, ok := day(date)
	if !ok || !p.Dated {
		return 0, false
	}
	return daysBetween(p.First, at), true
}

// Date is the calendar day of a day of the plan; the zero time without dates.
func (p *Plan) Date(d int) time.Time {
	if !p.Dated {
		return time.Time{}
	}
	return p.First.AddDate(0, 0, d)
}

// Through is how many days there are until the last one on which anything is done: winter keeping
// comes after the end.
func (p *Plan) Through() int {
	days := p.Days
	for i := range p.Jobs {
		days = max(days, p.Jobs[i].To+1)
	}
	return days
}

// Open are the spans of days of a season within the plan.
func (p *Plan) Open(w Window) [][2]int {
	var out [][2]int
	for _, s := range p.net.clock.open[w] {
		if s[0] < p.Days {
			out = append(out, [2]int{s[0], min(s[1], p.Days-1)})
		}
	}
	return out
}
