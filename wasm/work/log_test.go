package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
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
