package file

import (
	"fmt"
	"unicode/utf8"

	"barkwright/core/tally"
)

// entryJSON is one entry of the log as written.
type entryJSON struct {
	When string `json:"when"`
	Step string `json:"step"`
	Row  string `json:"row,omitempty"`
	Done bool   `json:"done,omitempty"`
	Note string `json:"note,omitempty"`
	// Units done of a task, and the hours of practised hands and of learners.
	Units    float64 `json:"units,omitempty"`
	Hours    float64 `json:"hours,omitempty"`
	Learners float64 `json:"learners,omitempty"`
}

// longestKey bounds a step's or a row's key, in letters.
const longestKey = 80

func writeTally(l tally.Log) []entryJSON {
	var list []entryJSON
	for _, e := range l {
		list = append(list, entryJSON(e))
	}
	return list
}

// readTally takes an entry of a step that this version does not know as it stands, so
// that a newer page finds it again; what it cannot hold is refused.
func readTally(list []entryJSON) (tally.Log, error) {
	if len(list) > tally.MostEntries {
		return nil, fmt.Errorf("The file holds a log of %d entries; %d are kept.", len(list), tally.MostEntries)
	}
	var l tally.Log
	for _, j := range list {
		switch {
		case !tally.Day(j.When):
			return nil, fmt.Errorf("The file holds an entry of the day %.40q, which is none.", j.When)
		case j.Step == "" || utf8.RuneCountInString(j.Step) > longestKey || utf8.RuneCountInString(j.Row) > longestKey:
			return nil, fmt.Errorf("The file holds an entry of the step %.40q, which no work has.", j.Step)
		case j.Units < 0 || j.Hours < 0 || j.Learners < 0:
			return nil, fmt.Errorf("The file holds less than no work on %.40q.", j.Step)
		}
		j.Note = tally.ShortNote(j.Note)
		l = append(l, tally.Entry(j))
	}
	return l, nil
}
