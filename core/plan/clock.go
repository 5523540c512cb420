package plan

import "time"

// A slot is half a working hour of the whole crew, counted from the first. Whole hours would
// lose half an hour with every task: 26 of 267 for one building from ready stock. The clock
// sets slots on days and says which days lie in which window of the year.

const (
	perHour    = 2
	ticksADay  = 24 * perHour // by the clock, as long as a slot
	daysOfWeek = 7
	// horizon is how many days a plan may reach: a bark window missed twice still has a third.
	horizon = 3 * 366
	// never is a slot past every plan.
	never = 1 << 30
)

// clock is a season's way of counting time.
type clock struct {
	slots, days int // worked a day, and days a week
	// open are the spans of days from the first, both ends included, by window. None means
	// that no season is held to.
	open [Windows][][2]int
	// dated tells that a first day is set, so that seasons hold.
	dated bool
}

// newClock counts from a first day. Without one no season is held to.
func newClock(s *Season, first time.Time, dated bool) clock {
	c := clock{slots: s.Int(Hours) * perHour, days: s.Int(DaysAWeek), dated: dated}
	if !dated {
		return c
	}
	for _, w := range []struct {
		window   Window
		from, to Date
	}{{Thawed, Thaw, Freeze}, {BarkPeels, PeelFrom, PeelTo}, {Warm, WarmFrom, WarmTo}} {
		c.open[w.window] = spans(s.Days[w.from], s.Days[w.to], first)
	}
	return c
}

// spans are the stretches of days within the horizon that lie between two days of the year.
// A window that ends before it begins goes over the new year.
func spans(from, to string, first time.Time) [][2]int {
	m1, d1, ok1 := yearDay(from)
	m2, d2, ok2 := yearDay(to)
	if !ok1 || !ok2 {
		return nil
	}
	var out [][2]int
	for year := first.Year() - 1; year <= first.Year()+3; year++ {
		a := time.Date(year, m1, d1, 0, 0, 0, 0, time.UTC)
		b := time.Date(year, m2, d2, 0, 0, 0, 0, time.UTC)
		if b.Before(a) {
			b = b.AddDate(1, 0, 0)
		}
		lo, hi := daysBetween(first, a), daysBetween(first, b)
		if hi >= 0 && lo < horizon {
			out = append(out, [2]int{max(0, lo), hi})
		}
	}
	return out
}

// worked is the share of all time that is worked.
func (c *clock) worked() float64 {
	return float64(c.slots) / ticksADay * float64(c.days) / daysOfWeek
}

// day is the calendar day of a slot, the first being 0.
func (c *clock) day(slot int) int {
	worked := slot / c.slots
	return worked/c.days*daysOfWeek + worked%c.days
}

// tick is when a slot begins by the clock, counted from the first in half hours.
func (c *clock) tick(slot int) int { return c.day(slot)*ticksADay + slot%c.slots }

// slotAt is the first slot that begins no earlier than a tick.
func (c *clock) slotAt(tick int) int {
	d, h := tick/ticksADay, tick%ticksADay
	if h > 0 && h >= c.slots {
		d, h = d+1, 0
	}
	if d%daysOfWeek >= c.days {
		d, h = (d/daysOfWeek+1)*daysOfWeek, 0
	}
	return (d/daysOfWeek*c.days+d%daysOfWeek)*c.slots + h
}

// after is the first slot after a task that ended with a slot, and a wait of hours.
func (c *clock) after(slot, wait int) int {
	if wait == 0 {
		return slot + 1
	}
	return max(slot+1, c.slotAt(c.tick(slot)+1+wait*perHour))
}

// opening is the first slot from one on that lies in a window.
func (c *clock) opening(slot int, w Window) int {
	if w == AnyTime || !c.dated {
		return slot
	}
	d := c.day(slot)
	for _, span := range c.open[w] {
		switch {
		case d > span[1]:
		case d >= span[0]:
			return slot
		default:
			if s := c.slotAt(span[0] * ticksADay); c.day(s) <= span[1] {
				return s
			}
		}
	}
	return never
}

// span is which of the spans of a window a day lies in, or comes before.
func (c *clock) span(w Window, d int) int {
	for k, s := range c.open[w] {
		if d <= s[1] {
			return k
		}
	}
	return len(c.open[w])
}

// idle is the fewest slots that a wait of hours after a slot passes over, wherever in the week it begins.
func (c *clock) idle(hours int) int {
	least := never
	for slot := range c.slots * c.days {
		least = min(least, c.after(slot, hours)-slot-1)
	}
	return least
}
