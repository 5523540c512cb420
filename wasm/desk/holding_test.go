package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// finish works out all that is asked for.
func finish(w *work.Work) {
	for {
		if _, _, worked := w.Known().Next(); !worked {
			return
		}
	}
}

// One press holds, the next lets go; another boat held says what it stands in place of; what it
// costs lists what differs, and prints on one page.
func TestHoldAndCosts(t *testing.T) {
	d, w := open(&memory.Store{})
	assert.Contains(t, d.Costs(false), "No boat is held")
	assert.Empty(t, d.PrintCosts("2026-11-26").Print)
	assert.Equal(t, "No boat is held.", said(d.Hold("let-go", ""), "held-says"))
	button, _ := desk.Against(w.HeldBoat())
	assert.Equal(t, "Hold", button)
	assert.Contains(t, said(d.Hold("turn", desk.Clock(10, 5)), "held-says"), "10:05")
	button, line := desk.Against(w.HeldBoat())
	assert.Equal(t, "Let go", button)
	assert.Contains(t, line, "10:05")
	assert.Contains(t, d.Costs(false), "Nothing differs")

	w.Set("depth", w.Entered.Depth+2*inch)
	costs := d.Costs(false)
	for _, want := range []string{"Most of all", `data-cost="post.end"`, "what followed", "depth amidships", "it followed", "Hardly changed",
		"piece by piece"} {
		assert.Contains(t, costs, want)
	}
	assert.Less(t, strings.Index(costs, "Most of all"), strings.Index(costs, "Lift and lace"))
	print := d.PrintCosts("2026-11-26").Print
	assert.Contains(t, print, "<svg")
	assert.Contains(t, print, `data-cost="post.end"`)
	assert.NotContains(t, print, "Hardly changed")
	assert.LessOrEqual(t, strings.Count(print, "<tr"), 52, "one page")
	assert.Equal(t, 1, strings.Count(print, `data-cost="post.end"`))

	assert.Contains(t, said(d.Hold("opened", ""), "held-says"), "in place of this boat as it stood at 10:05")
	assert.Contains(t, said(d.Hold("start:2", ""), "held-says"), "24 ft")
	assert.Contains(t, d.HoldChoices(), "Small solo, 12 ft")
	d.Hold("turn", "")
	assert.Nil(t, w.HeldBoat())
	w.Undo()
	assert.NotNil(t, w.HeldBoat())
	assert.Contains(t, said(d.Still("depth", true), "held-says"), "2 controls")
	assert.Contains(t, said(d.Still("depth", false), "held-says"), "moves again")
	assert.Contains(t, said(d.Still("barkThickness", true), "held-says"), "Nothing follows")
	assert.Equal(t, desk.Reply{}, d.Hold("no such", ""))
}

// With more than four controls moved, what came from what is shown when it is asked for.
func TestManyControlsMoved(t *testing.T) {
	d, w := open(&memory.Store{})
	d.Hold("now", "10:00")
	for _, key := range []string{"depth", "beam", "rocker", "ribs", "stemDepth"} {
		w.Step(key, 2)
	}
	assert.Contains(t, d.Costs(false), "step by step")
	assert.NotContains(t, d.Costs(false), "what followed")
	assert.Contains(t, d.Costs(true), "what followed")
}

// Boats of the shelf stand side by side once two are chosen.
func TestBeside(t *testing.T) {
	d, _ := open(&memory.Store{})
	_, beside := d.Beside(nil, draw.Screen())
	assert.Contains(t, beside, "one boat")
	d.Start(2)
	d.Start(0)
	choices, beside := d.Beside(map[int]bool{}, draw.Screen())
	assert.Equal(t, 3, strings.Count(choices, "checkbox"))
	assert.Contains(t, beside, "two boats or more")
	_, beside = d.Beside(map[int]bool{0: true, 1: true, 2: true}, draw.Screen())
	assert.Equal(t, 3, strings.Count(beside, "<svg"))
	for _, want := range []string{`data-beside="afloat.gm"`, "Long freight canoe, 24 ft", "Where all agree"} {
		assert.Contains(t, beside, want)
	}
	assert.NotContains(t, beside, "NaN")
}

// A lesson holds the boat, sets what it says, shows the answer only when it is asked for, and leaves
// the boat and what was held as they were; from one to the next the boat is put back.
func TestLesson(t *testing.T) {
	d, w := open(&memory.Store{})
	list, lessonOpen := d.ShowLesson()
	assert.Equal(t, len(lesson.All()), strings.Count(list, "data-lesson"))
	assert.Empty(t, lessonOpen)
	d.Hold("now", "9:00")
	depth := w.Entered.Depth
	d.Lesson("open:depth", "")
	assert.Equal(t, "depth", d.OpenLesson())
	assert.Equal(t, desk.Reply{}, d.Lesson("do:1", ""), "it is being worked out")
	w.Known().Ask(pipeline.Asked{Lesson: "depth"})
	finish(w)
	_, lessonOpen = d.ShowLesson()
	assert.Contains(t, lessonOpen, "Guess first")
	assert.NotContains(t, lessonOpen, "<h4>What is found")
	d.Lesson("next", "")
	d.Lesson("do:1", "")
	assert.InDelta(t, depth+2*inch, w.Entered.Depth, 1e-9)
	_, lessonOpen = d.ShowLesson()
	assert.Contains(t, lessonOpen, `data-watch="ribs.longest"`)
	assert.Contains(t, lessonOpen, "+3")
	assert.NotContains(t, lessonOpen, "<h4>What is found")
	d.Lesson("next", "")
	_, lessonOpen = d.ShowLesson()
	assert.Contains(t, lessonOpen, "<h4>What is found")
	assert.NotContains(t, lessonOpen, "not so")
	paper := d.Lesson("print", "2026-11-26").Print
	assert.Equal(t, 2, strings.Count(paper, "lesson-sheet"))
	assert.Contains(t, paper, "My guess")

	d.Lesson("turn:1", "")
	assert.Equal(t, "gores", d.OpenLesson())
	assert.InDelta(t, depth, w.Entered.Depth, 1e-9)
	d.Lesson("close", "")
	assert.Empty(t, d.OpenLesson())
	require.NotNil(t, w.HeldBoat())
	assert.Contains(t, w.HeldBoat().Name, "9:00")
	list, _ = d.ShowLesson()
	assert.Equal(t, 2, strings.Count(list, "seen"))
}
