package desk

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// taught is the lesson that is open, if one is.
type taught struct {
	key       string
	part, did int
	seen      map[string]bool
	// former is the boat as it stood before, and held what it was held against.
	former design.Design
	held   *work.Holding
	// of is the work that the lesson is on.
	of *work.Work
}

// OpenLesson is the key of the lesson that is open, or empty.
func (d *Desk) OpenLesson() string {
	if d.taught.of != d.shown {
		return ""
	}
	return d.taught.key
}

// Lesson answers the buttons of the lessons.
func (d *Desk) Lesson(what, date string) Reply {
	what, arg, _ := strings.Cut(what, ":")
	t := &d.taught
	switch what {
	case "open":
		return d.openLesson(arg)
	case "close":
		return d.closeLesson()
	case "turn":
		_, at, ok := lesson.Lookup(d.OpenLesson())
		by, _ := strconv.Atoi(arg)
		if to := at - 1 + by; ok && to >= 0 && to < len(lesson.All()) {
			return d.openLesson(lesson.All()[to].Key)
		}
	case "next":
		t.part = min(markup.LessonParts-1, t.part+1)
	case "do":
		n, _ := strconv.Atoi(arg)
		return d.doStep(n)
	case "print":
		return d.printLesson(date)
	}
	return Reply{}
}

// openLesson opens a lesson on the boat in hand, which is held as it stands. From one lesson to the
// next the boat is put back first.
func (d *Desk) openLesson(key string) Reply {
	if _, _, ok := lesson.Lookup(key); !ok || d.shown.None {
		return Reply{}
	}
	t := &d.taught
	if d.OpenLesson() == "" {
		t.former, t.held, t.of = d.shown.Entered, d.shown.HeldBoat(), d.shown
	} else {
		d.shown.Replace(t.former)
	}
	if t.seen == nil {
		t.seen = map[string]bool{}
	}
	t.key, t.part, t.did, t.seen[key] = key, markup.PartQuestion, 0, true
	d.shown.Hold(d.shown.Canoe().Design, "this boat as the lesson began")
	return Reply{Changed: true}
}

// closeLesson puts the boat and what was held back.
func (d *Desk) closeLesson() Reply {
	if d.OpenLesson() == "" {
		return Reply{}
	}
	t := &d.taught
	d.shown.Replace(t.former)
	if t.held != nil {
		d.shown.Hold(t.held.Design, t.held.Name)
	} else {
		d.shown.LetGo()
	}
	t.key = ""
	return Reply{Changed: true}
}

// doStep brings the boat to a step of the lesson, or back to where it began.
func (d *Desk) doStep(n int) Reply {
	l, _, ok := lesson.Lookup(d.OpenLesson())
	run := d.shown.Known().Taught()
	switch {
	case !ok || n > len(l.Steps):
		return Reply{}
	case n == 0:
		d.shown.Replace(d.taught.former)
	case run == nil:
		return Reply{} // it is being worked out
	default:
		next := l.Steps[n-1].Apply(run)
		next.Name, next.Notes = d.taught.former.Name, d.taught.former.Notes
		d.shown.Replace(next)
	}
	d.taught.did = n
	return Reply{Changed: true}
}

// ShowLesson is the lesson that is open, and the list of them where none is, as HTML.
func (d *Desk) ShowLesson() (list, open string) {
	s := d.shown.System
	l, _, ok := lesson.Lookup(d.OpenLesson())
	if !ok {
		return markup.LessonList(d.taught.seen, s), ""
	}
	run := d.shown.Known().Taught()
	return "", markup.Lesson(l, run, d.watched(l, run), d.taught.part, d.taught.did, s)
}

// watched are the results that a lesson watches, of the boat in hand.
func (d *Desk) watched(l lesson.Lesson, run *lesson.Run) []markup.Watched {
	if run == nil {
		return nil
	}
	s := d.shown.System
	now, held := numbersOf(d.shown.Canoe()), numbersOf(d.shown.Against())
	var out []markup.Watched
	for _, key := range l.Watch {
		w := markup.Watched{Key: key, Name: run.Name(key, s)}
		if n, ok := now[key]; ok {
			w.Now, w.Change = n.Text(s), answer.Change(held[key], n, s)
		} else {
			w.Now = run.Shown(key, d.taught.did, s)
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

// printLesson is the lesson on two pages.
func (d *Desk) printLesson(date string) Reply {
	l, _, ok := lesson.Lookup(d.OpenLesson())
	if !ok {
		return Reply{}
	}
	known := d.shown.Known()
	known.Need(pipeline.Taught)
	run := known.Taught()
	if run == nil {
		return Reply{}
	}
	outline := ""
	for _, picture := range view.Outlines([]core.Canoe{run.Canoes[0]}, paperOutline) {
		outline = markup.SVG("lesson-boat", draw.Screen(), picture)
	}
	return Reply{Print: markup.LessonPaper(l, run, d.watched(l, run), outline, d.shown.Entered.Name, date, d.shown.System)}
}

// paperOutline is the width of the boat's outline on paper, CSS pixels.
const paperOutline = 640
