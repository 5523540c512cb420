// Package stage holds the stages of the work, in its order, and what belongs to each: its
// question, the numbers and the check that stand large there, the controls in sight, the
// picture, the caution and the steps. Page and paper both read it. What is a property of
// one parameter, number, table, check or measurement is that row's own home, a Key.
//
// It names those rows by their keys, and imports none of them; whole_test.go holds every
// key to what it names.
package stage

import (
	"strings"

	"barkwright/core/known"
	"barkwright/core/units"
)

// Key names a stage in files and addresses; it never changes.
type Key string

// The stages, in the order of the work.
const (
	Choose   Key = "choose"
	Gather   Key = "gather"
	Gunwales Key = "gunwales"
	Bed      Key = "bed"
	Bark     Key = "bark"
	Lace     Key = "lace"
	Ends     Key = "ends"
	Rib      Key = "rib"
	Pitch    Key = "pitch"
	Keep     Key = "keep"
)

// Stage is one stage of the work.
type Stage struct {
	Key Key
	// Short is its name where there is room for one word, Name its title.
	Short, Name string
	// Asked is the question that the builder has at this stage.
	Asked string
	// Large are the keys of the results that matter most here, of any home. Each has a
	// short label.
	Large []string
	// Verdict is the key of the check beside them; WorstOfAll is the worst of every
	// check, and none stands for a stage with no check.
	Verdict string
	// InSight are the keys of the parameters shown first, all at home here, at most
	// MostInSight. Folds hold the others; what stands in no fold is under More.
	InSight []string
	Folds   []Fold
	// Chips are the keys of parameters at home elsewhere that are also of use here.
	Chips []string
	// Look is the picture on entering.
	Look Look
	// Cautions are what can hurt someone here: one box. Permission is how the line on
	// asking before gathering is shown.
	Cautions   []Hazard
	Permission Asking
	Steps      []Step
	// Bench are the lists that are worked from line by line; the first opens first.
	Bench []Bench
	// Patterns are the keys of the full-size patterns used here.
	Patterns []string
}

// MostInSight is how many controls a stage shows before any fold is opened.
const MostInSight = 6

// WorstOfAll stands in place of a check's key for the worst of all checks.
const WorstOfAll = "*"

// Fold is a titled group of parameters that is folded away at first.
type Fold struct {
	Title string
	Keys  []string
}

// Look is how the boat is looked at: its state, one of the state's drawings, and the parts at the
// bow that the picture is near, by their names without numbers. Without parts the drawing is whole.
type Look struct {
	State   State
	Drawing Drawing
	Near    []string
}

// State is a state of the boat in the picture.
type State string

// The states of the picture.
const (
	Flat     State = "flat"
	OnBed    State = "bed"
	Finished State = "finished"
)

// Drawing is one of the drawings of a state.
type Drawing string

// The drawings; Every is all of them in one picture.
const (
	Every    Drawing = ""
	Top      Drawing = "top"
	Side     Drawing = "side"
	Sections Drawing = "sections"
)

// Asking is how the line on asking before gathering is shown at a stage.
type Asking int

const (
	// NotAsked is where nothing is gathered.
	NotAsked Asking = iota
	// AskedBriefly is where something more may be gathered.
	AskedBriefly
	// AskedFirst is where bark, root and cedar are gathered.
	AskedFirst
)

// Step is one thing to do and to tick.
type Step struct {
	// Key names the step in files; it never changes.
	Key string
	// text says what is done, with a # for each of sizes, in metres.
	text  string
	sizes []float64
	// Tool is what it is measured or done with; empty where it is judged by eye and hand.
	Tool string
	// Reads is the id of the kind of measurement that is read here, or empty.
	Reads string
	// Counts is the key of the table whose rows are done one by one, or empty.
	Counts string
	// From is the stage beside which it may be done early, or empty.
	From Key
	// Basis is how the step is known, with the pages of the book or the account.
	Basis   known.Basis
	Pages   string
	Account string
	// Hazard is what to beware of where it is not the stage's own caution, in a few words.
	Hazard string
}

// Text says what is done, in the reader's units.
func (s Step) Text(in units.System) string {
	text := s.text
	for _, v := range s.sizes {
		text = strings.Replace(text, "#", units.Length.Format(v, in), 1)
	}
	return text
}

var all = [...]*Stage{&choose, &gather, &gunwales, &bed, &laid, &lace, &ends, &rib, &pitch, &keep}

// All lists the stages in the order of the work.
func All() []*Stage { return all[:] }

// TableOf is the key of the table whose rows a step goes by, or empty.
func TableOf(step string) string {
	for _, st := range all {
		for i := range st.Steps {
			if st.Steps[i].Key == step {
				return st.Steps[i].Counts
			}
		}
	}
	return ""
}

// Keys lists the stages' keys in the order of the work.
func Keys() []Key {
	keys := make([]Key, len(all))
	for i, s := range all {
		keys[i] = s.Key
	}
	return keys
}

// Lookup finds a stage and its place, counted from 1; it reports false for a key that no
// stage has.
func Lookup(k Key) (s *Stage, place int, ok bool) {
	for i, s := range all {
		if s.Key == k {
			return s, i + 1, true
		}
	}
	return nil, 0, false
}

// Folded are the folds of the stage's controls: its own, and More for those of at, the
// keys at home here, that stand in none and are not in sight.
func (s *Stage) Folded(at []string) []Fold {
	placed := map[string]bool{}
	for _, k := range s.InSight {
		placed[k] = true
	}
	for _, f := range s.Folds {
		for _, k := range f.Keys {
			placed[k] = true
		}
	}
	folds := s.Folds
	more := Fold{Title: "More"}
	for _, k := range at {
		if !placed[k] {
			more.Keys = append(more.Keys, k)
		}
	}
	if len(more.Keys) > 0 {
		folds = append(folds[:len(folds):len(folds)], more)
	}
	return folds
}
