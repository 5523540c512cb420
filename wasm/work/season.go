package work

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core/plan"
	"barkwright/core/units"
)

// Season is what is set for the plan of the work on the boat in hand.
func (w *Work) Season() plan.Season { return w.Notebook.Planned() }

// SetSeason reads what is typed for a field of the plan, a key of plan's, and sets it in one
// step of undo. It returns what is wrong with it, and then sets nothing: the text is half typed.
func (w *Work) SetSeason(key, text string) string {
	s, wrong := w.seasonWith(key, text)
	if wrong != "" {
		w.SetTyped(SeasonKey(key), text)
		return wrong
	}
	w.SetTyped(SeasonKey(key), "")
	w.setSeason(s)
	return ""
}

// SeasonKey is the name of a field of the plan among what is half typed.
func SeasonKey(key string) string { return "season." + key }

// TypeSeason remembers what is being typed in a field of the plan, where it is not what stands there.
func (w *Work) TypeSeason(key, text string) {
	if text == w.SeasonText(key) {
		text = ""
	}
	w.SetTyped(SeasonKey(key), text)
}

// HalfSeason is what is half typed in a field of the plan, and why it does not count; false for nothing.
func (w *Work) HalfSeason(key string) (text, why string, half bool) {
	if text, half = w.Typed[SeasonKey(key)]; !half {
		return "", "", false
	}
	if _, why = w.seasonWith(key, text); why == "" {
		why = HalfTyped
	}
	return text, why, true
}

// seasonWith is what is set for the plan with what is typed for one of its fields, or what is wrong with that.
func (w *Work) seasonWith(key, text string) (s plan.Season, wrong string) {
	s = w.Season()
	text = strings.TrimSpace(text)
	if into := seasonDay(&s, key); into != nil {
		*into = text
	} else if into := seasonNumber(&s, key); into != nil {
		if *into, wrong = w.readSeason(key, text); wrong != "" {
			return s, wrong
		}
	}
	if s.Outside() {
		for _, f := range s.Faults() {
			if f.Key == key {
				return s, w.outside(f)
			}
		}
	}
	return s, ""
}

// readSeason reads a number of the plan; of a task it is in what the reader counts it by. It returns
// what is wrong.
func (w *Work) readSeason(key, text string) (v float64, wrong string) {
	kind, id, ofTask := taskKey(key)
	if ofTask && kind == atHand {
		return readUnits(id, text, w.System)
	}
	v, err := readNumber(text)
	switch {
	case err != nil:
		return 0, "A number, such as 2 or 2.5."
	case !ofTask:
		return v, ""
	case v == 0 && text != "":
		return 0, "A time of 0 is none: leave it empty for the usual one."
	}
	_, own := plan.Of(id).Counted(w.System)
	return v / own, ""
}

// readUnits reads how much of a task there is in what a reader of some units counts it by, or with a unit after it,
// and returns it in the task's own; nothing is 0.
func readUnits(id plan.ID, text string, s units.System) (v float64, wrong string) {
	kind, _, si, measured := plan.Of(id).Measure()
	if !measured || text == "" {
		v, err := readNumber(text)
		if err != nil {
			return 0, "A number, such as 2 or 2.5."
		}
		return v, ""
	}
	v, _, err := kind.Parse(text, s)
	if err != nil {
		return 0, err.Error()
	}
	// What is typed in the task's own unit is kept as it is typed: the way over the SI is rounded off.
	return figures(v/si, 12), ""
}

// outside is a fault of a number out of its range, its ends in what the reader counts by.
func (w *Work) outside(f plan.Fault) string {
	kind, id, ofTask := taskKey(f.Key)
	if !ofTask {
		return f.Text
	}
	t := plan.Of(id)
	unit, own := t.Counted(w.System)
	if kind == atHand {
		return fmt.Sprintf("%s, %s: from 0 to %.0f.", t.Name, unit, math.Floor(plan.MostUnits/own))
	}
	return fmt.Sprintf("%s, minutes for one, %s: more than 0, and no more than %.0f.", t.Name, unit,
		math.Floor(plan.MostMinutes*own))
}

// readNumber reads a number with a point or a comma; nothing is 0.
func readNumber(text string) (float64, error) {
	if text == "" {
		return 0, nil
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err == nil && (math.IsNaN(v) || math.IsInf(v, 0)) {
		return 0, strconv.ErrRange
	}
	return v, err
}

// DoneIn writes how much of a task is typed for a reader of other units, where it would be read as another amount.
func (w *Work) DoneIn(task, text string, s units.System) string {
	id, ok := plan.Lookup(task)
	v, wrong := readUnits(id, strings.TrimSpace(text), w.System)
	if then, _ := readUnits(id, strings.TrimSpace(text), s); !ok || wrong != "" || then == v {
		return text
	}
	_, own := plan.Of(id).Counted(s)
	return asTyped(v / own)
}

func (w *Work) setSeason(s plan.Season) {
	if s == w.Season() {
		return
	}
	n := *w.Notebook
	n.Season = &s
	w.setNotebook(n)
}

// SeasonText is a field of the plan as it stands.
func (w *Work) SeasonText(key string) string {
	s := w.Season()
	if day := seasonDay(&s, key); day != nil {
		return *day
	}
	v := seasonNumber(&s, key)
	if v == nil || *v == 0 && strings.Contains(key, ".") {
		return ""
	}
	switch kind, id, ofTask := taskKey(key); {
	case ofTask && kind == atHand:
		_, own := plan.Of(id).Counted(w.System)
		return asTyped(*v / own)
	case ofTask:
		_, own := plan.Of(id).Counted(w.System)
		return asTyped(*v * own)
	}
	return strconv.FormatFloat(*v, 'f', -1, 64)
}

// asTyped is a number that was typed as it was; one that was typed in another unit is rounded.
func asTyped(v float64) string {
	out := figures(v, 8)
	if math.Abs(out-v) > 1e-10*math.Abs(v) {
		out = figures(v, 4)
	}
	return strconv.FormatFloat(out, 'f', -1, 64)
}

// figures is a number rounded to n figures.
func figures(v float64, n int) float64 {
	out, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', n, 64), 64)
	return out
}

// seasonDay and seasonNumber are a field's place, nil for a key of none.
func seasonDay(s *plan.Season, key string) *string {
	for _, r := range plan.DateRows() {
		if r.Key == key {
			return &s.Days[r.Date]
		}
	}
	return nil
}

func seasonNumber(s *plan.Season, key string) *float64 {
	for _, r := range plan.Rows() {
		if r.Key == key {
			return &s.Numbers[r.Field]
		}
	}
	switch kind, id, ok := taskKey(key); {
	case ok && kind == atHand:
		return &s.Have[id]
	case ok:
		return &s.Likely[id]
	}
	return nil
}

// What is set of a task, by the first part of its key.
const atHand, rate = "have", "rate"

// taskKey is the task that a key is of, and what of it.
func taskKey(key string) (kind string, id plan.ID, ok bool) {
	kind, task, _ := strings.Cut(key, ".")
	id, ok = plan.Lookup(task)
	return kind, id, ok && (kind == atHand || kind == rate)
}
