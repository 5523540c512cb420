package plan

import (
	"fmt"
	"strings"
	"time"
	"unicode/utf8"
)

// Internet Calendaring and Scheduling Core Object Specification (iCalendar), RFC 5545, 2009.
const (
	// lineOctets is the most a line holds before its end; section 3.1.
	lineOctets = 75
	dateForm   = "20060102"
	stampForm  = "20060102T150405Z"
)

// Calendar is the plan as an iCalendar text: an entry of a whole day for each task and day,
// with no alarm, note or address. id names the boat for good, so that an entry has the same
// UID whenever it is written; name is the boat's. now is when it is written, in UTC. A plan
// without dates has no entries.
func (p *Plan) Calendar(id, name string, now time.Time) string {
	var b strings.Builder
	line := func(text string) { b.WriteString(folded(text)) }
	line("BEGIN:VCALENDAR")
	line("VERSION:2.0")
	line("PRODID:-//Barkwright//plan of a boat//EN")
	line("CALSCALE:GREGORIAN")
	for i := range p.Jobs {
		if !p.Dated {
			break
		}
		o := &p.Jobs[i]
		for n, s := range o.Shifts {
			line("BEGIN:VEVENT")
			line("UID:" + escaped(fmt.Sprintf("%s.%s.%d.%d@barkwright", id, table[o.Task].Key, o.Boat+1, n+1)))
			line("DTSTAMP:" + now.Format(stampForm))
			line("DTSTART;VALUE=DATE:" + p.Date(s.Day).Format(dateForm))
			line("DTEND;VALUE=DATE:" + p.Date(s.Day+1).Format(dateForm))
			line("SUMMARY:" + escaped(p.summary(o, name)))
			line("TRANSP:TRANSPARENT")
			line("END:VEVENT")
		}
	}
	line("END:VCALENDAR")
	return b.String()
}

// summary says what task is done, and of which boat.
func (p *Plan) summary(o *Job, name string) string {
	text := table[o.Task].Name
	if name != "" {
		text = name + ": " + text
	}
	return text + p.Season.Whose(o.Task, o.Boat)
}

// escaped is a text as section 3.3.11 has it. What no calendar shows, control characters
// among them, is left out.
func escaped(text string) string {
	text = strings.ToValidUTF8(text, "\uFFFD")
	text = strings.ReplaceAll(text, "\r\n", "\n")
	text = strings.Map(func(r rune) rune {
		switch {
		case r == '\r':
			return '\n'
		case r == '\n', r == '\t':
			return r
		case r < ' ', r == 0x7F:
			return -1
		}
		return r
	}, text)
	return strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`).Replace(text)
}

// folded is a content line with its end, cut so that no line is over lineOctets long and no
// letter is cut in two.
func folded(text string) string {
	var b strings.Builder
	room := lineOctets
	for _, r := range text {
		n := utf8.RuneLen(r)
		if n > room {
			b.WriteString("\r\n ")
			room = lineOctets - 1
		}
		b.WriteRune(r)
		room -= n
	}
	b.WriteString("\r\n")
	return b.String()
}
