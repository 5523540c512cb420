package work_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// Each tick and each note is one step of undo, and one that changes nothing is none.
func TestLogIsUndone(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Tick("rib.drive", "rib.18", "2026-06-14", true)
	w.Tick("rib.drive", "rib.18", "2026-06-15", true)
	w.Note("rib.drive", "2026-06-15", "a knot")
	w.Note("rib.drive", "2026-06-15", "  ")
	assert.Len(t, w.Notebook.Log, 2)

	assert.True(t, w.Undo())
	assert.Len(t, w.Notebook.Log, 1)
	_, done := w.Notebook.Log.Done("rib.drive", "rib.18")
	assert.True(t, done)
	assert.True(t, w.Undo())
	assert.Empty(t, w.Notebook.Log)
	assert.False(t, w.Undo())
	assert.True(t, w.Redo())
	assert.Len(t, w.Notebook.Log, 1)
}

// A tick does not end up in the change of a control that was in hand before it.
func TestTickBesideAControl(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	was := w.Entered.Length
	w.Step("length", 1)
	w.Tick("rib.drive", "", "2026-06-14", true)
	w.Undo()
	assert.NotEqual(t, was, w.Entered.Length)
	assert.Empty(t, w.Notebook.Log)
	w.Undo()
	assert.Equal(t, was, w.Entered.Length)
}

// The box of a step and the lines at the bench say the same: the box ticks every line, a
// line taken back leaves the others, and the box taken back takes all of them back.
func TestStepsAndLinesAgree(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	keys := lines.Keys(w.Canoe(), "ribs")
	ticked := func() (n int) {
		for _, key := range keys {
			if _, done := w.Notebook.Log.Done("rib.drive", key); done {
				n++
			}
		}
		return n
	}
	says := func() string {
		for _, s := range w.Steps(stage.Rib) {
			if s.Key == "rib.drive" {
				return fmt.Sprint(s.Done, " ", s.Says)
			}
		}
		return ""
	}
	w.Tick("rib.drive", "", "2026-06-14", true)
	assert.Equal(t, len(keys), ticked())
	assert.Equal(t, "true done 14 June 2026", says())

	w.Tick("rib.drive", keys[3], "2026-06-15", false)
	assert.Equal(t, len(keys)-1, ticked())
	assert.Equal(t, "false 43 of 44", says())
	day, _ := w.Notebook.Log.Done("rib.drive", keys[0])
	assert.Equal(t, "2026-06-14", day, "the others keep their day")
	assert.True(t, w.Undo())
	assert.Equal(t, "true done 14 June 2026", says(), "in one step of undo")
	assert.True(t, w.Redo())

	w.Tick("rib.drive", keys[3], "2026-06-16", true)
	assert.Equal(t, "true 44 of 44", says())
	w.Tick("rib.drive", "", "2026-06-17", false)
	assert.Zero(t, ticked())
	assert.Equal(t, "false ", says())
	w.Tick("rib.drive", "", "2026-06-17", false)
	assert.True(t, w.Undo())
	assert.Equal(t, len(keys), ticked(), "what changed nothing was no step of undo")
}
