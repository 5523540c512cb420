package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A step is done once it is ticked, or every row of it; undo takes a tick back; what a
// boat's log holds is its own.
func TestProgress(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	done, of := work.Done(w.Steps(stage.Lace)), len(w.Steps(stage.Lace))
	s, _, _ := stage.Lookup(stage.Lace)
	assert.Zero(t, done)
	assert.Equal(t, len(s.Steps), of)
	w.Tick("lace.flush", "", "2026-06-14", true)
	posts := w.Canoe().Frame.Bed.Posts
	require.NotEmpty(t, posts)
	for i := range posts {
		w.Tick("lace.posts", string(rune('a'+i)), "2026-06-15", true)
		done = work.Done(w.Steps(stage.Lace))
		want := 1
		if i == len(posts)-1 {
			want = 2
		}
		assert.Equal(t, want, done, "%d of %d posts", i+1, len(posts))
	}
	steps := w.Steps(stage.Lace)
	assert.Equal(t, work.StepShown{Key: "lace.posts", Text: steps[0].Text, Done: true, Says: "4 of 4"}, steps[0])
	w.Undo()
	assert.Equal(t, "3 of 4", w.Steps(stage.Lace)[0].Says)
	for _, s := range w.Steps(stage.Lace) {
		if s.Key == "lace.flush" {
			assert.Equal(t, "done 14 June 2026", s.Says)
		}
	}
	w.Note("lace.posts", "2026-06-15", "ground is soft at the stern")
	w.Note("lace", "2026-06-16", "rain")
	notes := w.Noted(stage.Lace)
	require.Len(t, notes, 2)
	assert.Equal(t, "rain", notes[0].Note, "the newest first")
	assert.Equal(t, "3 of 11 done", work.Counted(3, 11))
}
