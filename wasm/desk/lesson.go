package desk

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/wasm/markup"
)

// taught is the lesson that is open, if one is. It is on a boat of its own, which stands on the shelf
// while it is open: the user's is not touched, whatever becomes of the page.
type taught struct {
	lessonsKept
	// base is the boat that the steps start from.
	base design.Design
	// says is what is said over the list of lessons.
	says string
}

// onLesson begins the name of a lesson's boat.
const onLesson = "Lesson: "

// OpenLesson is the key of the lesson that is open, or empty.
func (d *Desk) OpenLesson() string {
	if d.taught.Boat == "" || d.taught.Boat != d.Shelf.ID() {
		return ""
	}
	return d.taught.Last
}

// LessonBase is the boat that the steps of the lesson that is open start from.
func (d *Desk) LessonBase() design.Design { return d.taught.base }

// Lesson answers the buttons of the lessons.
func (d *Desk) Lesson(what, date string) Reply {
	what, arg, _ := strings.Cut(what, ":")
	t := &d.taught
	l, at, ok := lesson.Lookup(d.OpenLesson())
	switch {
	case what == "open":
		return d.openLesson(arg)
	case !ok:
		return Reply{}
	}
	switch what {
	case "close":
		return d.closeLesson()
	case "turn":
		by, _ := strconv.Atoi(arg)
		if to := at - 1 + by; to >= 0 && to < len(lesson.All()) {
			return d.openLesson(lesson.All()[to].Key)
		}
	case "next":
		t.Part = min(markup.LessonParts-1, t.Part+1)
		d.keepLessons()
	case "do":
		n, _ := strconv.Atoi(arg)
		return d.doStep(l, n)
	case "own":
		return d.lessonOn(l.Boat().Name)
	case "also":
		return d.lessonOn(l.Also)
	case "mine":
		return d.lessonOn("")
	case "print":
		return d.printLesson(l, date)
	}
	return Reply{}
}

// openLesson opens a lesson on a copy of the boat in hand, which is held as it stands. From one lesson
// to the next the copy is put back first.
func (d *Desk) openLesson(key string) Reply {
	l, _, ok := lesson.Lookup(key)
	if !ok {
		return Reply{}
	}
	t := &d.taught
	r := Reply{Changed: true}
	if d.OpenLesson() == "" {
		d.leaveLesson()
		t.Mine, t.Own = d.Shelf.ID(), ""
		t.base = d.shown.Canoe().Design
		t.base.Name = d.shown.Entered.Name
		if d.shown.None {
			t.Own, t.base = l.Boat().Name, l.Boat()
		}
		d.Shelf.Add(named(t.base))
		t.Boat, r = d.Shelf.ID(), Reply{TookUp: true, Shelf: true}
	}
	t.Last, t.Part, t.says = key, markup.PartQuestion, ""
	t.see(key)
	d.startLesson()
	return r
}

// named is the copy of a boat that a lesson is on. A name as long as can be loses its end.
func named(of design.Design) design.Design {
	name := []rune(onLesson + of.Name)
	of.Name = string(name[:min(len(name), design.MaxName)])
	return of
}

// startLesson puts the lesson's boat to where the steps start from, and holds that.
func (d *Desk) startLesson() {
	w := d.Show()
	w.Replace(named(d.taught.base))
	w.Hold(d.taught.base, "this boat as the lesson began")
	d.taught.Did = 0
	d.keepLessons()
}

// lessonOn goes on with the lesson on another boat: one that the page comes with, or the user's own
// for an empty name.
func (d *Desk) lessonOn(name string) Reply {
	d.taught.Own = name
	d.taught.base = d.lessonBase()
	d.startLesson()
	return Reply{TookUp: true, Shelf: true}
}

// lessonBase is the boat that the lesson is on, read anew: the user's own as it stands on the shelf.
func (d *Desk) lessonBase() design.Design {
	t := &d.taught
	if t.Own != "" {
		return lesson.Named(t.Own)
	}
	if mine, err := d.Shelf.DesignAt(d.Shelf.Place(t.Mine)); err == nil && len(core.Validate(mine)) == 0 {
		return mine
	}
	// It has gone: the copy is what there is of it.
	base, err := d.Shelf.DesignAt(d.Shelf.Place(t.Boat))
	if err != nil || len(core.Validate(base)) > 0 {
		return design.Default()
	}
	base.Name = strings.TrimPrefix(base.Name, onLesson)
	return base
}

// followLesson goes on with the lesson where the boat it is on is kept under another ID, for another window is on it
// too; so with the boat that it was opened from.
func (d *Desk) followLesson(was, now string) {
	t := &d.taught
	switch was {
	case t.Boat:
		t.Boat = now
	case t.Mine:
		t.Mine = now
	default:
		return
	}
	d.keepLessons()
}

// closeLesson takes the user's boat in hand again, as it was left.
func (d *Desk) closeLesson() Reply {
	if !d.Shelf.TakeID(d.taught.Mine) {
		// It is gone from the shelf: the lesson's boat stays in hand.
		d.taught.Boat = ""
		d.keepLessons()
		return Reply{Changed: true}
	}
	d.leaveLesson()
	d.Show()
	return Reply{TookUp: true, Shelf: true}
}

// leaveLesson takes the lesson's boat off the shelf. One that stands as the lesson sets it is gone for
// good, one changed by hand can be brought back.
func (d *Desk) leaveLesson() {
	t := &d.taught
	if t.Boat == "" {
		return
	}
	t.says = ""
	if d.byHand() {
		d.Shelf.TakeOff(t.Boat)
		t.says = "The lesson's boat was changed by hand. It can be brought back among the boats that were taken off the shelf."
	} else {
		d.Shelf.Discard(t.Boat)
	}
	t.Boat = ""
	d.keepLessons()
}

// byHand tells whether the lesson's boat is not as the lesson sets it.
func (d *Desk) byHand() bool {
	t := &d.taught
	now, err := d.Shelf.DesignAt(d.Shelf.Place(t.Boat))
	if err != nil || now == named(t.base) {
		return false
	}
	l, _, _ := lesson.Lookup(t.Last)
	start := baseRun(t.base)
	for _, step := range l.Steps {
		if now == named(step.Apply(start)) {
			return false
		}
	}
	return true
}

// baseRun is a boat as it stands before any step: all that a step needs.
func baseRun(of design.Design) *lesson.Run {
	return lesson.NewRun(lesson.Lesson{}, core.Evaluate(of), nil)
}

// doStep brings the boat to a step of the lesson, or back to where it began.
func (d *Desk) doStep(l lesson.Lesson, n int) Reply {
	t := &d.taught
	if n < 0 || n > len(l.Steps) {
		return Reply{}
	}
	next := t.base
	if n > 0 {
		next = l.Steps[n-1].Apply(baseRun(t.base))
	}
	d.shown.Replace(named(next))
	t.Did = n
	d.keepLessons()
	return Reply{Changed: true}
}
