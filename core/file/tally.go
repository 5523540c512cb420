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
	// Mended is what was mended of the boat.
	Mended *damageJSON `json:"mended,omitempty"`
}

// damageJSON is what is broken and where as written, metres: from the middle along the gunwale, forward positive,
// and round the bark from the centre line, starboard negative.
type damageJSON struct {
	Damage string  `json:"damage"`
	At     float64 `json:"at"`
	Up     float64 `json:"up"`
	Along  float64 `json:"along,omitempty"`
	Round  float64 `json:"round,omitempty"`
	Groups int     `json:"groups,omitempty"`
}

func writeDamage(d tally.Damage) *damageJSON {
	if d.Kind == tally.NoDamage {
		return nil
	}
	return &damageJSON{d.Kind.Key(), d.At, d.Up, d.Along, d.Round, d.Groups}
}

// read refuses a kind that it does not know: what would be mended there is not known either.
func (j *damageJSON) read() (tally.Damage, error) {
	if j == nil {
		return tally.Damage{}, nil
	}
	kind, ok := tally.DamageOf(j.Damage)
	if !ok {
		return tally.Damage{}, fmt.Errorf("The file holds a repair of %.40q, which is no damage.", j.Damage)
	}
	d := tally.Damage{Kind: kind, At: j.At, Up: j.Up, Along: j.Along, Round: j.Round, Groups: j.Groups}
	if max(d.Along, d.Round, d.At, -d.At, d.Up, -d.Up) > tally.MostDamage || min(d.Along, d.Round, float64(d.Groups)) < 0 ||
		d.Groups > tally.MostGroups {
		return d, fmt.Errorf("The file holds a repair of a %s that no boat has room for.", kind)
	}
	return d, nil
}

// longestKey bounds a step's or a row's key, in letters.
const longestKey = 80

func writeTally(l tally.Log) []entryJSON {
	var list []entryJSON
	for _, e := range l {
		list = append(list, entryJSON{e.When, e.Step, e.Row, e.Done, e.Note, e.Units, e.Hours, e.Learners,
			writeDamage(e.Damage)})
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
		damage, err := j.Mended.read()
		if err != nil {
			return nil, err
		}
		l = append(l, tally.Entry{When: j.When, Step: j.Step, Row: j.Row, Done: j.Done, Note: tally.ShortNote(j.Note),
			Units: j.Units, Hours: j.Hours, Learners: j.Learners, Damage: damage})
	}
	return l, nil
}
