// Package tally is the log of a boat being built: what is done, when, and what was noted.
// It is kept with the design and in its file, and goes into no line of text and no pattern.
package tally

import (
	"slices"
	"strings"
	"time"
	"unicode/utf8"
)

// Most entries of a log, and the longest note, in letters: they bound a file.
const (
	MostEntries = 4000
	LongestNote = 500
)

// Entry is one thing that was done or noted.
type Entry struct {
	// When is the day, as 2026-06-14.
	When string
	// Step is a step's key, or a stage's for a note on the whole of it.
	Step string
	// Row is the part that was done of a step that goes row by row, or empty.
	Row string
	// Done tells that it was ticked, and not that the tick was taken back.
	Done bool
	// Note is what was written down, or empty for a tick.
	Note string
	// Units is how many of a task's units were done, Step then the task's key. Hours are
	// those of practised hands over them, Learners those of learners; 0 where not written down.
	Units, Hours, Learners float64
	// Damage is what was mended; its kind is none for any other entry.
	Damage Damage
}

// ticks tells that the entry is a tick, or one taken back.
func (e Entry) ticks() bool { return e.Note == "" && e.Units == 0 && e.Damage.Kind == NoDamage }

// Log is what was entered, the oldest first. It is never changed in place, so that an
// earlier one can be gone back to.
type Log []Entry

// Tick adds that a row of a step, or all of it where row is empty, is done or is not. It
// returns the log as it is where nothing changes or no more fits.
func (l Log) Tick(step, row, when string, done bool) Log {
	if _, was := l.Done(step, row); was == done {
		return l
	}
	return l.add(Entry{When: when, Step: step, Row: row, Done: done})
}

// Note adds a note to a step or a stage; blank text adds nothing.
func (l Log) Note(step, when, text string) Log {
	if text = ShortNote(text); text == "" {
		return l
	}
	return l.add(Entry{When: when, Step: step, Note: text})
}

// Work adds units done of a task, and the hours they took; no units add nothing.
func (l Log) Work(task, when string, units, hours, learners float64) Log {
	if units <= 0 || hours < 0 || learners < 0 {
		return l
	}
	return l.add(Entry{When: when, Step: task, Units: units, Hours: hours, Learners: learners})
}

func (l Log) add(e Entry) Log {
	if len(l) >= MostEntries {
		return l
	}
	return append(slices.Clip(l), e)
}

// Done tells whether a row of a step is ticked, by itself or with all of the step, or all of
// the step where row is empty, and on which day that was.
func (l Log) Done(step, row string) (when string, done bool) {
	if when, done = l.last(step, row); !done && row != "" {
		return l.last(step, "")
	}
	return when, done
}

// last is the last that was entered of a row, or of all of the step where row is empty.
func (l Log) last(step, row string) (when string, done bool) {
	for _, e := range slices.Backward(l) {
		if e.Step == step && e.Row == row && e.ticks() {
			return e.When, e.Done
		}
	}
	return "", false
}

// Rows counts how many rows of a step are ticked by themselves.
func (l Log) Rows(step string) int {
	done := map[string]bool{}
	for _, e := range l {
		if e.Step == step && e.Row != "" && e.ticks() {
			done[e.Row] = e.Done
		}
	}
	n := 0
	for _, ticked := range done {
		if ticked {
			n++
		}
	}
	return n
}

// Notes are the entries that say something of a step or a stage, by the start of its key.
func (l Log) Notes(of string) []Entry {
	var out []Entry
	for _, e := range l {
		if e.Note != "" && (e.Step == of || strings.HasPrefix(e.Step, of+".")) {
			out = append(out, e)
		}
	}
	return out
}

// ShortNote is a note on one line, no longer than is kept.
func ShortNote(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	if utf8.RuneCountInString(text) > LongestNote {
		text = string([]rune(text)[:LongestNote])
	}
	return text
}

// Day tells whether a text is a day as entries have it.
func Day(text string) bool {
	_, err := time.Parse(time.DateOnly, text)
	return err == nil
}
