package desk_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/keep"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// taught works the lesson that is open out, and is the work of its boat.
func taught(d *desk.Desk) *work.Work {
	w := d.Show()
	w.Known().Ask(pipeline.Asked{Lesson: d.OpenLesson(), On: d.LessonBase()})
	finish(w)
	return w
}

func shownLesson(d *desk.Desk) string {
	_, open := d.ShowLesson()
	return open
}

// A lesson is on a copy of the boat in hand: it holds that, sets what it says, shows the answer only
// when it is asked for, and leaves the boat and what it was held against as they were; from one to the
// next the copy is put back.
func TestLesson(t *testing.T) {
	d, w := open(&memory.Store{})
	list, lessonOpen := d.ShowLesson()
	assert.Equal(t, len(lesson.All()), strings.Count(list, "data-lesson"))
	assert.Empty(t, lessonOpen)
	d.Hold("now", "9:00")
	was, depth := w.Entered, w.Entered.Depth
	assert.True(t, d.Lesson("open:depth", "").TookUp)
	assert.Equal(t, "depth", d.OpenLesson())
	assert.Contains(t, shownLesson(d), "On a copy of "+was.Name)
	// A step waits for nothing that is still being worked out.
	d.Lesson("do:1", "")
	assert.InDelta(t, depth+2*inch, d.Show().Entered.Depth, 1e-9)
	d.Lesson("do:0", "")
	copied := taught(d)
	assert.NotEqual(t, w, copied)
	assert.Contains(t, shownLesson(d), "Guess first")
	assert.NotContains(t, shownLesson(d), "<h4>What is found")
	d.Lesson("next", "")
	d.Lesson("do:1", "")
	assert.InDelta(t, depth+2*inch, copied.Entered.Depth, 1e-9)
	assert.Contains(t, shownLesson(d), `data-watch="ribs.longest"`)
	assert.Contains(t, shownLesson(d), "+3")
	// Let go and set again, the step starts from where the lesson began.
	d.Hold("let-go", "")
	d.Lesson("do:1", "")
	assert.InDelta(t, depth+2*inch, copied.Entered.Depth, 1e-9)
	assert.NotContains(t, shownLesson(d), "<h4>What is found")
	d.Lesson("next", "")
	assert.Contains(t, shownLesson(d), "<h4>What is found")
	assert.NotContains(t, shownLesson(d), "not so")

	d.Lesson("turn:1", "")
	assert.Equal(t, "gores", d.OpenLesson())
	assert.InDelta(t, depth, copied.Entered.Depth, 1e-9)
	assert.Equal(t, was, w.Entered, "the boat itself was not touched")
	assert.True(t, d.Lesson("close", "").TookUp)
	assert.Empty(t, d.OpenLesson())
	assert.Equal(t, w, d.Show())
	assert.Equal(t, was, w.Entered)
	require.NotNil(t, w.HeldBoat())
	assert.Contains(t, w.HeldBoat().Name, "9:00")
	assert.Equal(t, 1, d.Shelf.Len())
	assert.Empty(t, d.Shelf.TakenOff(), "nothing was changed by hand")
	list, _ = d.ShowLesson()
	assert.Equal(t, 2, strings.Count(list, "· seen"))
	assert.Equal(t, 1, strings.Count(list, "· in hand last"))
}

// Where the boat in hand cannot show what a lesson says, one press takes the lesson's own, another the
// boat that it speaks of, and another the user's again, which is safe all the while.
func TestLessonsOwnBoat(t *testing.T) {
	d, _ := open(&memory.Store{})
	d.Start(2) // 24 ft: no sheet in range is wide enough
	w := d.Show()
	was := w.Entered
	d.Lesson("open:sheet", "")
	d.Lesson("next", "")
	d.Lesson("next", "")
	d.Lesson("next", "")
	taught(d)
	assert.Contains(t, shownLesson(d), "Not said of this boat")
	own, _, _ := lesson.Lookup("sheet")
	assert.Contains(t, shownLesson(d), "See all of it on the lesson&#39;s boat, "+own.Boat().Name)
	assert.Contains(t, shownLesson(d), "Take High ends")

	d.Lesson("own", "")
	taught(d)
	assert.NotContains(t, shownLesson(d), "Not said of this boat")
	assert.NotContains(t, shownLesson(d), `data-lesson="own"`)
	assert.Contains(t, shownLesson(d), "Use my boat, "+was.Name)
	assert.Equal(t, own.Boat().Length, d.Show().Entered.Length)
	d.Lesson("also", "")
	taught(d)
	assert.Equal(t, lesson.Named("High ends").EndHeight, d.Show().Entered.EndHeight)
	assert.NotContains(t, shownLesson(d), "Take High ends")
	d.Lesson("mine", "")
	assert.Equal(t, was.Length, d.Show().Entered.Length)
	d.Lesson("close", "")
	assert.Equal(t, was, d.Show().Entered)
	assert.Equal(t, 2, d.Shelf.Len())
}

// What was changed by hand on a lesson's boat can be brought back, and the list says so.
func TestLessonsBoatChangedByHand(t *testing.T) {
	d, w := open(&memory.Store{})
	w.SetText("name", strings.Repeat("é", design.MaxName))
	w.Commit()
	d.Lesson("open:rocker", "")
	copied := d.Show()
	assert.Empty(t, copied.Faults, "as long a name as can be has room for what it is")
	copied.Set("beam", copied.Entered.Beam+3*inch)
	copied.Commit()
	d.Lesson("close", "")
	require.Len(t, d.Shelf.TakenOff(), 1)
	assert.Contains(t, d.Shelf.TakenOff()[0], "Lesson: ")
	list, _ := d.ShowLesson()
	assert.Contains(t, list, "changed by hand")
}

// Until the lesson turned to is worked out, nothing of the one before shows under it, whose steps are others.
func TestLessonTurnedTo(t *testing.T) {
	d, _ := open(&memory.Store{})
	d.Lesson("open:"+lesson.All()[0].Key, "")
	for range lesson.All()[1:] {
		taught(d)
		d.Lesson("turn:1", "")
		for range markup.LessonParts {
			d.Lesson("next", "")
		}
		assert.NotContains(t, shownLesson(d), "data-watch")
	}
}

// Whatever is held meanwhile, what is watched is told from the boat that the lesson began with; and the step that
// is marked as set is the one that the boat stands at: after an undo the one before, by hand none.
func TestLessonWhateverIsHeld(t *testing.T) {
	d, _ := open(&memory.Store{})
	d.Lesson("open:depth", "")
	d.Lesson("next", "")
	set := func() (steps []string) {
		taught(d)
		for _, m := range regexp.MustCompile(`data-lesson="(do:\d)">Set<`).FindAllStringSubmatch(shownLesson(d), -1) {
			steps = append(steps, m[1])
		}
		return steps
	}
	watch := func() string {
		taught(d)
		_, table, _ := strings.Cut(shownLesson(d), "<tbody>")
		table, _, _ = strings.Cut(table, "</tbody>")
		return table
	}
	d.Lesson("do:2", "")
	two := watch()
	d.Lesson("do:1", "")
	one := watch()
	assert.Contains(t, one, "+3 13/16&#34;")
	assert.NotEqual(t, one, two)
	d.Hold("let-go", "")
	assert.Equal(t, one, watch())
	d.Lesson("do:2", "")
	assert.Equal(t, two, watch())
	d.Hold("now", "9:00")
	assert.Equal(t, two, watch())
	d.Hold("start:0", "")
	assert.Equal(t, two, watch())
	assert.Equal(t, []string{"do:2"}, set())
	for range 3 { // two boats that were held, and the step
		d.Show().Undo()
	}
	assert.Equal(t, []string{"do:1"}, set())
	assert.Equal(t, one, watch())
	w := d.Show()
	w.Set("beam", w.Entered.Beam+inch)
	w.Commit()
	assert.Empty(t, set())
}

// Marks and the lesson in hand outlast the page; the boat comes back with them. Another window adds its
// own marks. A store that refuses loses nothing while the page is open, and the list says what it does not
// keep.
func TestLessonsAreKept(t *testing.T) {
	shared := &memory.Store{}
	d, w := open(shared)
	was := w.Entered
	d.Lesson("open:stem", "")
	d.Lesson("next", "")
	d.Lesson("do:3", "")
	taught(d)
	d.Kept()

	again, _ := open(shared)
	assert.Equal(t, "stem", again.OpenLesson())
	taught(again)
	assert.Contains(t, shownLesson(again), "What to set")
	assert.Contains(t, shownLesson(again), `data-lesson="do:3">Set<`)
	again.Lesson("close", "")
	assert.Equal(t, was.Name, again.Show().Entered.Name)
	again.Kept()

	third, _ := open(shared)
	assert.Empty(t, third.OpenLesson())
	list, _ := third.ShowLesson()
	assert.Equal(t, 1, strings.Count(list, "· seen"))
	other, _ := open(shared)
	other.Lesson("open:root", "")
	other.Lesson("close", "")
	third.Lesson("open:log", "")
	third.Lesson("close", "")
	list, _ = third.ShowLesson()
	assert.Equal(t, 3, strings.Count(list, "· seen"))

	refused, first := open(&memory.Store{Refuses: true})
	was = first.Entered
	refused.Lesson("open:stem", "")
	refused.Lesson("close", "")
	list, _ = refused.ShowLesson()
	assert.Contains(t, list, "· seen")
	assert.Contains(t, list, "keeps nothing")
	assert.Equal(t, was, refused.Show().Entered)

	// What cannot be read is as if there were nothing.
	shared.Set("barkwright.lessons", "{torn")
	torn, _ := open(shared)
	list, _ = torn.ShowLesson()
	assert.NotContains(t, list, "· seen")
}

// A lesson's paper is worked out before it is printed: it has its table, two sets of axes to draw in
// and the same with what was found, for every lesson, in both units' words; no slot and no axis is empty.
func TestLessonPaper(t *testing.T) {
	d, _ := open(&memory.Store{})
	for _, l := range lesson.All() {
		d.Lesson("open:"+l.Key, "")
		paper := d.Lesson("print", "26 November 2026").Print
		assert.Equal(t, 2, strings.Count(paper, `class="sheet lesson-sheet"`), l.Key)
		for _, want := range []string{"My guess", "What we found", design.Default().Name, "26 November 2026"} {
			assert.Contains(t, paper, want, l.Key)
		}
		for _, not := range []string{"NaN", "Inf", "{", "…", "not worked out"} {
			assert.NotContains(t, strings.ReplaceAll(paper, "<style", "<s"), not, l.Key)
		}
		// The outline, and as many axes to draw in as were drawn in: one or two.
		strips := strings.Count(paper, "<svg") - 1
		assert.Contains(t, []int{2, 4}, strips, l.Key)
		assert.Equal(t, strips/2, strings.Count(paper, "to be drawn in."), l.Key)
		d.Lesson("close", "")
	}
}

// A second window goes on with the lesson of the first, and each with its own boat once both have set a step: neither
// loses its lesson, each takes its own boat away, and the user's is as it was.
func TestLessonInTwoWindows(t *testing.T) {
	shared := &memory.Store{}
	one, w := open(shared)
	was := w.Entered
	one.Lesson("open:stem", "")
	one.Kept()
	two, _ := open(shared)
	require.Equal(t, "stem", two.OpenLesson())
	one.Lesson("do:1", "")
	one.Kept()
	two.Heard(keep.KeyOf(two.Shelf.ID()))
	two.Lesson("do:3", "")
	notice(t, two.Kept(), "split")
	for _, d := range []*desk.Desk{one, two} {
		assert.Equal(t, "stem", d.OpenLesson())
	}
	again, _ := open(shared)
	assert.Equal(t, two.Shelf.ID(), again.Shelf.ID(), "the one set last")
	assert.Equal(t, "stem", again.OpenLesson())
	one.Heard(keep.KeyOf(two.Shelf.ID()))
	for _, d := range []*desk.Desk{one, two} {
		d.Lesson("close", "")
		assert.Equal(t, was, d.Show().Entered)
		d.Kept()
	}
	last, _ := open(shared)
	assert.Equal(t, []string{was.Name}, last.Shelf.Names())
}
