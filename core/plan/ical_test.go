package plan_test

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// entry is one entry of a calendar as read back: its properties by name.
type entry map[string]string

// readCalendar reads an iCalendar text by RFC 5545: lines unfolded by section 3.1, text
// unescaped by 3.3.11, components by 3.6. It stops the test at anything else.
func readCalendar(t *testing.T, text string) (entries []entry, names []string) {
	t.Helper()
	require.True(t, strings.HasSuffix(text, "\r\n"))
	for _, l := range strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		require.LessOrEqual(t, len(l), 75, "3.1: no line over 75 octets")
		require.True(t, utf8.ValidString(l), "no letter is cut in two")
		require.NotContains(t, l, "\n")
		require.NotContains(t, l, "\r")
	}
	open := ""
	var e entry
	for _, l := range strings.Split(strings.TrimSuffix(strings.ReplaceAll(text, "\r\n ", ""), "\r\n"), "\r\n") {
		name, value, found := strings.Cut(l, ":")
		require.True(t, found, l)
		name, _, _ = strings.Cut(name, ";")
		switch {
		case name == "BEGIN" && value == "VCALENDAR":
			open = value
		case name == "BEGIN" && value == "VEVENT":
			require.Equal(t, "VCALENDAR", open)
			open, e = value, entry{}
		case name == "END" && value == "VEVENT":
			require.Equal(t, value, open)
			open = "VCALENDAR"
			entries = append(entries, e)
		case name == "END" && value == "VCALENDAR":
			require.Equal(t, value, open)
			open = ""
		case open == "VEVENT":
			require.NotContains(t, e, name, "each property once")
			e[name] = unescaped(t, value)
		default:
			require.Equal(t, "VCALENDAR", open)
			names = append(names, name)
		}
	}
	require.Empty(t, open)
	return entries, names
}

func unescaped(t *testing.T, value string) string {
	var b strings.Builder
	for i := 0; i < len(value); i++ {
		if value[i] != '\\' {
			require.NotContains(t, ";,", string(value[i]), "3.3.11: escaped in a text")
			b.WriteByte(value[i])
			continue
		}
		i++
		require.Less(t, i, len(value))
		switch value[i] {
		case 'n', 'N':
			b.WriteByte('\n')
		case '\\', ';', ',':
			b.WriteByte(value[i])
		default:
			require.Fail(t, "no such escape", value)
		}
	}
	return b.String()
}

var hostile = []string{
	"", "Boat; no. 1, by the lake", `back\slash\n`, "two\nlines", "two\r\nEND:VCALENDAR\r\nBEGIN:VALARM",
	strings.Repeat("é", 200), strings.Repeat("木", 90), "a\x00b\x07c\x1b[2J", "bad \xff utf8", "\u202Eright to left",
	"BEGIN:VEVENT", "🛶" + strings.Repeat("x", 60) + "🛶", `\`, ";", ",", ":", `"`, " leading", "tab\there",
}

// Whatever a boat is called, the calendar reads back with its name and nothing beside it: no
// alarm, no note, no address.
func TestCalendarReadsBack(t *testing.T) {
	s, c := fromGathered(2, 0), asks(nil)
	p := planned(t, s, c, "2026-06-15")
	now := time.Date(2026, 5, 1, 12, 30, 0, 0, time.UTC)
	shifts := 0
	for _, j := range p.Jobs {
		shifts += len(j.Shifts)
	}
	for _, name := range hostile {
		entries, names := readCalendar(t, p.Calendar("x1", name, now))
		assert.Equal(t, []string{"VERSION", "PRODID", "CALSCALE"}, names)
		require.Len(t, entries, shifts)
		uids := map[string]bool{}
		for _, e := range entries {
			assert.Len(t, e, 6, "%v", e)
			for _, name := range []string{"UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY", "TRANSP"} {
				assert.Contains(t, e, name)
			}
			from, err1 := time.Parse("20060102", e["DTSTART"])
			to, err2 := time.Parse("20060102", e["DTEND"])
			require.NoError(t, err1)
			require.NoError(t, err2)
			assert.Equal(t, 24*time.Hour, to.Sub(from), "a whole day; the end is the day after, 3.6.1")
			assert.Equal(t, "20260501T123000Z", e["DTSTAMP"])
			assert.False(t, uids[e["UID"]], "each entry its own UID")
			uids[e["UID"]] = true
		}
		want := strings.ToValidUTF8(strings.ReplaceAll(name, "\r\n", "\n"), "\uFFFD")
		want = strings.Map(func(r rune) rune {
			if r < ' ' && r != '\n' && r != '\t' {
				return -1
			}
			return r
		}, want)
		if want != "" {
			assert.True(t, strings.HasPrefix(entries[0]["SUMMARY"], want+": "), "%q", entries[0]["SUMMARY"])
		}
	}
}

// An entry has the same UID at every export, so that a calendar moves it and adds none.
func TestUIDsStay(t *testing.T) {
	s, c := fromGathered(2, 0), asks(nil)
	uids := func(first string, hour int) (out []string) {
		p := planned(t, s, c, first)
		entries, _ := readCalendar(t, p.Calendar("x1", "Boat", time.Date(2026, 5, 1, hour, 0, 0, 0, time.UTC)))
		for _, e := range entries {
			out = append(out, e["UID"])
		}
		return out
	}
	assert.Equal(t, uids("2026-06-15", 1), uids("2026-06-18", 2))
}

// A plan without dates has a calendar without entries.
func TestNoDatesNoEntries(t *testing.T) {
	p := planned(t, fromGathered(2, 0), asks(nil), "")
	entries, _ := readCalendar(t, p.Calendar("x1", "Boat", time.Time{}))
	assert.Empty(t, entries)
}
