// Package find looks a word up among all that stands on the page: controls, numbers,
// checks, tables, steps, lessons, words of the trade and places.
package find

import (
	"cmp"
	"slices"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Kind is what a thing on the page is.
type Kind string

// The kinds, as they are shown.
const (
	Control Kind = "set"
	Number  Kind = "number"
	Check   Kind = "check"
	Table   Kind = "table"
	Step    Kind = "step"
	Word    Kind = "word"
	Place   Kind = "place"
	Bench   Kind = "bench"
	Lesson  Kind = "lesson"
)

// Entry is one thing on the page.
type Entry struct {
	Kind Kind
	// Key is its key among those of its kind: a place's is a stage's, or the id of a part
	// of the page after a #; that of a list at the bench is its stage's, a bar and its name.
	Key, Name string
	Home      stage.Key // empty for what stands at no stage
}

// Index is all that can be found of a boat.
type Index struct{ entries []indexed }

type indexed struct {
	Entry
	// name are the words of the name, asked those it is also asked for by, and more what else
	// is said of it, of less weight: in small letters, without the plural's s.
	name, asked, more []string
	large             bool // it stands large or in sight somewhere
}

// New lists all that stands on the page of a canoe.
func New(c core.Canoe, w core.Water, s units.System) Index {
	var x Index
	large := map[string]bool{}
	for _, st := range stage.All() {
		for _, key := range append(slices.Clone(st.Large), st.InSight...) {
			large[key] = true
		}
	}
	add := func(kind Kind, key, name string, home stage.Key, more string) {
		asked := alsoAsked[string(kind)+" "+key]
		if kind == Check {
			asked += " wrong problem will"
		}
		at := indexed{Entry: Entry{kind, key, name, home}, name: stems(name), more: stems(more), asked: stems(asked)}
		at.large = large[key] && (kind == Control || kind == Number)
		x.entries = append(x.entries, at)
	}
	for _, st := range stage.All() {
		add(Place, string(st.Key), st.Name, "", st.Short+" "+st.Asked)
	}
	for _, p := range places {
		if s == units.Metric && p.metric != "" {
			p.name = p.metric
		}
		add(Place, p.key, p.name, "", p.more)
	}
	for _, p := range design.Params() {
		if p.Paddler <= 1 {
			add(Control, p.Key, p.Label, p.Home, p.Help)
		}
	}
	for _, n := range append(answer.All(c), answer.Water(c, w)...) {
		add(Number, n.Key, n.Label(s), n.Home, n.Short)
	}
	for _, check := range answer.Checks(c) {
		add(Check, check.Key, check.Label, check.Home, "")
	}
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(c, key)
		add(Table, key, t.Title, t.Home, columns(t))
	}
	for _, t := range answer.CurveTables(w) {
		add(Table, t.Key, t.Title, t.Home, columns(t))
	}
	for _, st := range stage.All() {
		for _, step := range st.Steps {
			add(Step, step.Key, step.Text(s), st.Key, step.Tool)
		}
	}
	for _, st := range stage.All() {
		for _, b := range st.Bench {
			add(Bench, string(st.Key)+"|"+b.Name, b.Name, st.Key, "next "+b.What)
		}
	}
	for _, l := range lesson.All() {
		add(Lesson, l.Key, l.Title, l.Home, "lesson teach "+lesson.Words(l.Question, s))
	}
	for _, word := range stage.Words() {
		add(Word, word.Term, word.Term, "", word.Sense(s))
	}
	return x
}

func columns(t answer.Table) string {
	var b strings.Builder
	for _, c := range t.Columns {
		b.WriteString(c.Label + " ")
	}
	return b.String()
}

// places are those that are no stage, with another name for a metric reader where there is one.
var places = []struct{ key, name, more, metric string }{
	{"#designs", "Boats and files", "shelf copy remove save open file line of text reset sunlight contrast settings", ""},
	{"#starting", "Start from a boat", "starting boats examples invented", ""},
	{"#measured-boat", "A measured boat", "record measurements fit paste picture drawing plan photograph scan", ""},
	{"#trace-open", "Read it off a picture", "trace tracing drawing plan photograph photo scan scale points press measure", ""},
	{"#season", "The season and the crew", "plan days hours weeks crew class learners schedule when calendar longest chain", ""},
	{"#crew", "Crew and days", "hands learners days a week hours a day first day bark peels gum thaw drying settle boats beds", ""},
	{"#asks-fold", "What this boat asks of you", "how long hours days trees root gum tools space before cost largest boat", ""},
	{"#mend-fold", "What a repair takes", "crack hole patch torn lacing broken rib mend repair", ""},
	{"#compare-title", "Compare", "what a change costs held boat against difference trade off", ""},
	{"#beside-title", "Boats side by side", "compare columns kept boats shelf", ""},
	{"#inches-title", "What an inch costs", "compare which dimension matters most rank slope", "What 10 mm costs"},
	{"#lessons-title", "Lessons", "teach class teacher projector question learn why", ""},
	{"#whatif", "What if", "try curves strips control range", ""},
	{"#sure", "How sure these figures are", "tolerance error spread leave long measure", ""},
	{"#built", "As built", "readings tape corrections", ""},
	{"#paper-model", "A model a class can sew", "card paper small scale cut fold glue teach class", ""},
	{"#paper", "Paper and files", "print build sheets patterns full size scale SVG CSV roll A4 Letter", ""},
	{"#words", "Words used here", "glossary terms meaning first minute help", ""},
	{"#letters", "Keys of one letter", "keyboard shortcut key", ""},
	{"#units", "Units", "feet inches millimetres metric", ""},
	{"#licences", "Licences", "notices", ""},
}

// alsoAsked are words that a thing is asked for by and that stand nowhere on it.
var alsoAsked = map[string]string{
	"table marks": "rib thwart story stick where", "bench gunwales|Gunwale marks": "rib thwart lacing story stick",
	"bench rib|Ribs to fit": "rib order which fit drive", "table ribs": "cut list", "table pairs": "heat boil past shape",
	"bench rib|Pairs to bend": "heat boil past shape", "table posts": "height", "bench bed|Posts to cut": "height length",
	"bench lace|Posts to set": "height", "table carries": "weight people", "table logs": "gather bring list cedar",
	"place gather": "list shopping woods bring", "table trees": "size girth", "table pieces": "cut list wood",
	"table offsets": "shape lines", "table stationposts": "height", "number afloat.draught": "deep float sink",
	"check stem.verdict": "bend break snap crack", "check ribs.verdict": "bend break snap crack",
	"check gunwales.verdict": "bend break snap crack", "number ribs.longest": "length",
	"table seams": "sew", "number weight.total": "boat", "set length": "boat long", "set beam": "boat wide",
	"table riving": "split", "table holes": "where drill awl", "number bark.area": "how much", "table cutting": "cut list",
}

// MostLines is how many things are shown at once, mostOfAKind how many of one kind before
// the best of the others.
const (
	MostLines   = 8
	mostOfAKind = 2
)

// Find lists what answers a question best, the best first, MostLines at most.
func (x Index) Find(question string) []Entry {
	wanted := asked(question)
	if len(wanted) == 0 {
		return nil
	}
	type found struct {
		Entry
		score float64
	}
	var all []found
	for i := range x.entries {
		if score := x.entries[i].score(wanted, question); score > 0 {
			all = append(all, found{x.entries[i].Entry, score})
		}
	}
	slices.SortStableFunc(all, func(a, b found) int { return cmp.Compare(b.score, a.score) })
	var lines, others []Entry
	of := map[Kind]int{}
	for _, f := range all {
		if of[f.Kind]++; of[f.Kind] <= mostOfAKind {
			lines = append(lines, f.Entry)
		} else {
			others = append(others, f.Entry)
		}
	}
	lines = append(lines, others...)
	return lines[:min(len(lines), MostLines)]
}
