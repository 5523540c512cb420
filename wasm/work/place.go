package work

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Place is where on the page the user is: a stage's key, the season, the shed, or all of it.
type Place string

// The places that are no stage.
const (
	Shed   Place = "shed"
	Season Place = "season"
	// Compare is where boats are compared, and Lessons where lessons are.
	Compare Place = "compare"
	Lessons Place = "lessons"
	All     Place = "all"
)

// AtStage is the place of a stage.
func AtStage(k stage.Key) Place { return Place(k) }

// PlaceOf is a place by its name, and the first stage for a name that is none.
func PlaceOf(name string) Place {
	p := Place(name)
	_, is := p.Stage()
	if is || slices.Contains([]Place{Shed, Season, Compare, Lessons, All}, p) {
		return p
	}
	return AtStage(stage.Choose)
}

// Stage is the stage of the place; the others are none.
func (p Place) Stage() (*stage.Stage, bool) {
	s, _, ok := stage.Lookup(stage.Key(p))
	return s, ok
}

// Shows tells whether something stands there that is at home at places, their names with
// spaces between them.
func (p Place) Shows(places string) bool {
	for _, at := range strings.Fields(places) {
		if p == All || Place(at) == p {
			return true
		}
	}
	return false
}

// Turned is the place n stages further on; past either end and from no stage it is the
// nearest there is.
func (p Place) Turned(n int) Place {
	keys := stage.Keys()
	_, at, ok := stage.Lookup(stage.Key(p))
	if !ok {
		return AtStage(keys[0])
	}
	return AtStage(keys[max(0, min(len(keys)-1, at-1+n))])
}

// Short is the place as its notch has it, a stage with its number.
func (p Place) Short() string {
	if s, n, ok := stage.Lookup(stage.Key(p)); ok {
		return strconv.Itoa(n) + " " + s.Short
	}
	return answer.AtStart(string(p))
}

// Name says where that is.
func (p Place) Name() string {
	switch s, ok := p.Stage(); {
	case ok:
		return s.Name + ". " + s.Asked
	case p == Season:
		return "Season: the crew, the days and the plan of the work."
	case p == Compare:
		return "Compare: what a change costs, and boats side by side."
	case p == Lessons:
		return "Lessons: ten questions, answered on the boat."
	case p == Shed:
		return "Shed: boats, files, records and paper."
	}
	return "All of it on one page."
}

// First is the parameter to take in hand on coming there, or empty.
func (p Place) First() string {
	if s, ok := p.Stage(); ok && len(s.InSight) > 0 {
		return s.InSight[0]
	}
	return ""
}

// Held is what the control in hand reads.
type Held struct{ Name, Value, Was string }

// Held is the control in hand by its key: its value, and what it was before the change
// that is under way. It reports false where there is none.
func (w *Work) Held(key string) (Held, bool) {
	p, ok := design.Lookup(key)
	if !ok {
		return Held{}, false
	}
	before := w.Before().Design
	h := Held{Name: p.Label, Value: w.Reads(p)}
	if was := w.reads(p, &before); was != h.Value {
		h.Was = "was " + was
	}
	return h, true
}

// Reads is what a parameter's control shows now.
func (w *Work) Reads(p design.Param) string { return w.reads(p, &w.Entered) }

// reads is a parameter's value in a design as its control shows it.
func (w *Work) reads(p design.Param, d *design.Design) string {
	if p.Options != nil {
		return p.Options[int(p.Get(d))]
	}
	return p.Format(p.Get(d), w.System)
}

// Verdict is a check as a cell shows it: its state and words. For stage.WorstOfAll it is
// the worst of all of them and how many are no better than near the limit.
func Verdict(checks []answer.Warning, key string, s units.System) (answer.State, string) {
	worst, word, more := answer.Within, "all within guide", 0
	for _, c := range checks {
		if c.Key == key {
			return c.State, c.Word
		}
		if c.State == answer.Near || c.State == answer.Beyond {
			if more++; c.State > worst || more == 1 {
				worst, word = c.State, c.Label+": "+c.Word
			}
		}
	}
	if more > 1 {
		word += ", and " + units.Count.Format(float64(more-1), s) + " more"
	}
	return worst, word
}

// lessonKeys are what keys do while a lesson fills the window.
var lessonKeys = map[string]string{" ": "next", "ArrowLeft": "turn:-1", "ArrowRight": "turn:1", "Escape": "big"}

// LessonByKey is what a key does while a lesson fills the window, or empty.
func LessonByKey(key string) string { return lessonKeys[key] }
