package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
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
	for _, want := range []string{"Most of all", `data-cost="post.end"`, "what followed", "depth amidships",
		"it followed", "Hardly changed",
		"piece by piece"} {
		assert.Contains(t, costs, want)
	}
	assert.Less(t, strings.Index(costs, "Most of all"), strings.Index(costs, "Lift and lace"))
	print := d.PrintCosts("2026-11-26").Print
	assert.Contains(t, print, "<svg")
	assert.Equal(t, 1, strings.Count(print, `<section class="tile">`), "one page")
	assert.Contains(t, print, "What was set otherwise")
	assert.Contains(t, print, ">Most of all<")
	assert.Contains(t, print, "more changed less, or hardly, and are left out.")

	assert.Contains(t, said(d.Hold("opened", ""), "held-says"), "in place of this boat as it stood at 10:05")
	assert.Contains(t, said(d.Hold("start:2", ""), "held-says"), "Long freight canoe")
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
	for _, want := range []string{`data-beside="afloat.gm"`, "Long freight canoe", "Where all agree"} {
		assert.Contains(t, beside, want)
	}
	assert.NotContains(t, beside, "NaN")
}
