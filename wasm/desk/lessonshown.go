package desk

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/wasm/markup"
)

// ShowLesson is the lesson that is open, and the list of them where none is, as HTML.
func (d *Desk) ShowLesson() (list, open string) {
	s, t := d.shown.System, &d.taught
	l, _, ok := lesson.Lookup(d.OpenLesson())
	if !ok {
		return markup.LessonList(t.Seen, t.Last, t.says, !d.keeper.Refuses(), s), ""
	}
	run := d.shown.Known().Taught()
	if run != nil && (run.Lesson.Key != l.Key || run.Canoes[0].Design != t.base) {
		run = nil // of the lesson before: this one is not asked for yet
	}
	did, set := d.stands(l)
	shown := markup.LessonShown{Lesson: l, Run: run, Watched: d.watched(l, run, did), Part: t.Part, Did: did,
		ByHand: !set, On: t.base.Name}
	if t.Own != "" {
		if i := d.Shelf.Place(t.Mine); i >= 0 {
			shown.Mine = d.Shelf.Names()[i]
		}
	}
	if own := l.Boat(); !sameBoat(t.base, own) {
		shown.Own = own.Name
	}
	if l.Also != "" && !sameBoat(t.base, lesson.Named(l.Also)) {
		shown.Also = l.Also
	}
	return "", markup.Lesson(shown, s)
}

// sameBoat tells whether two designs differ in nothing but what is written of them.
func sameBoat(a, b design.Design) bool {
	a.Name, a.Notes = b.Name, b.Notes
	return a == b
}

// stands is the step that the boat in hand stands at, whatever brought it there; the last that was set and false
// where it was changed by hand.
func (d *Desk) stands(l lesson.Lesson) (step int, set bool) {
	t := &d.taught
	start := baseRun(t.base)
	at := func(n int) bool {
		if n == 0 {
			return d.shown.Entered == named(t.base)
		}
		return d.shown.Entered == named(l.Steps[n-1].Apply(start))
	}
	if at(t.Did) {
		return t.Did, true
	}
	for n := range len(l.Steps) + 1 {
		if at(n) {
			return n, true
		}
	}
	return t.Did, false
}

// began is the boat that the lesson began with, with what is known of its bark.
func (d *Desk) began(run *lesson.Run) core.Canoe {
	if c := d.shown.Against(); sameBoat(c.Design, d.taught.base) {
		return c
	}
	return run.Canoes[0]
}

// watched are the results that a lesson watches, of the boat in hand at a step, beside those it began with: whatever
// it is held against meanwhile.
func (d *Desk) watched(l lesson.Lesson, run *lesson.Run, did int) []markup.Watched {
	if run == nil {
		return nil
	}
	s := d.shown.System
	now, held := numbersOf(d.shown.Canoe()), numbersOf(d.began(run))
	var out []markup.Watched
	for _, key := range l.Watch {
		w := markup.Watched{Key: key, Name: run.Name(key, s)}
		if n, ok := now[key]; ok {
			w.Now, w.Change = n.Text(s), answer.Change(held[key], n, s)
		} else {
			w.Now = run.Shown(key, did, s)
		}
		out = append(out, w)
	}
	return out
}

func numbersOf(c core.Canoe) map[string]answer.Number {
	out := map[string]answer.Number{}
	for _, n := range answer.All(c) {
		out[n.Key] = n
	}
	return out
}
