package work_test

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/units"
	"barkwright/core/weigh"
	"barkwright/wasm/work"
)

func change(w *work.Work, key string) string {
	var n work.Numbers
	for _, s := range n.Update(w) {
		if s.Key == key {
			return s.Change()
		}
	}
	return "no such number"
}

// What is held stays through any number of changes, undo and redo, until it is let go; then the
// change since the control was taken up is shown again.
func TestHeldStays(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	_, ok := w.Hold(w.Canoe().Design, "as it stood at 10:42")
	require.True(t, ok)
	w.Set("depth", 13.5*inch)
	w.Set("beam", 34*inch)
	w.Set("depth", 14.5*inch)
	assert.Equal(t, `+2"`, change(w, "post.middle"))
	costs, _ := w.Costs(false)
	assert.Equal(t, "beam", costs.Controls[0].Key, "as they were last taken up")
	assert.Equal(t, "depth", costs.Controls[1].Key)
	require.True(t, w.Undo())
	assert.Equal(t, `+1"`, change(w, "post.middle"), "undo moves the boat")
	assert.Equal(t, "as it stood at 10:42", w.HeldBoat().Name)
	require.True(t, w.Redo())
	w.Set("ribs", 40)
	w.Commit()
	assert.Equal(t, `+2"`, change(w, "post.middle"))
	w.LetGo()
	assert.Nil(t, w.HeldBoat())
	assert.Empty(t, change(w, "post.middle"), "since the ribs were taken up it has not moved")
	assert.Equal(t, "−4", change(w, "ribs.count"))
}

// Another boat held replaces the first and says which; one undo brings that back, and so does one
// after letting go. A design that cannot be built is not held.
func TestHoldingIsUndone(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("depth", 13*inch)
	w.Hold(w.Canoe().Design, "first")
	undo := w.CanUndo()
	assert.True(t, undo)
	instead, ok := w.Hold(w.Opened(), "as opened")
	assert.True(t, ok)
	assert.Equal(t, "first", instead)
	require.True(t, w.Undo())
	assert.Equal(t, "first", w.HeldBoat().Name)
	assert.InDelta(t, 13*inch, w.Entered.Depth, 1e-9, "the boat is as it was")
	require.True(t, w.Redo())
	assert.Equal(t, "as opened", w.HeldBoat().Name)
	w.LetGo()
	require.True(t, w.Undo())
	assert.Equal(t, "as opened", w.HeldBoat().Name)

	bad := design.Default()
	bad.Length = 1
	_, ok = w.Hold(bad, "bad")
	assert.False(t, ok)
	assert.Equal(t, "as opened", w.HeldBoat().Name)
}

// The hours of the work are among what it costs: all of them and by stage, which add up as shown,
// and which control they came from.
func TestHoursAmongTheCosts(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Hold(w.Canoe().Design, "as opened")
	w.Set("ribs", 50)
	w.Set("depth", 14.5*inch)
	costs, ok := w.Costs(false)
	require.True(t, ok)
	sum, total, from := 0, 0, []weigh.Share(nil)
	for _, r := range costs.Rows {
		if !strings.HasPrefix(r.Key, "hours.") {
			continue
		}
		held, err := strconv.Atoi(r.Held)
		require.NoError(t, err)
		now, err := strconv.Atoi(r.Now)
		require.NoError(t, err)
		assert.Contains(t, r.Change, strconv.Itoa(now-held))
		if r.Key == "hours.total" {
			total, from = now-held, r.From
		} else {
			sum += now - held
		}
	}
	assert.Greater(t, total, 5)
	assert.Equal(t, total, sum)
	require.GreaterOrEqual(t, len(from), 2)
	assert.Equal(t, []string{"ribs"}, from[0].Keys)
}

// What is held is kept with the boat, in its file too.
func TestHeldIsKept(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("depth", 13*inch)
	w.Hold(w.Opened(), "as opened")
	text, err := file.File{Boats: []file.Boat{w.Boat()}}.Encode()
	require.NoError(t, err)
	f, err := file.Decode(text)
	require.NoError(t, err)
	again := work.Open(f.Boats[0], units.Imperial16)
	require.NotNil(t, again.HeldBoat())
	assert.Equal(t, "as opened", again.HeldBoat().Name)
	assert.Equal(t, `+1/2"`, change(again, "post.middle"))
	snapshot := again.Snapshot()
	again.LetGo()
	snapshot.Restore()
	assert.Equal(t, "as opened", again.HeldBoat().Name)
	assert.Equal(t, `+1/2"`, change(again, "post.middle"))
}

// With followers held, depth moves nothing else; freed, what was marked follows again, and what
// the user had set stays set.
func TestStill(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("ribs", 40)
	end, head := w.Entered.GunwaleEndHeight, w.Entered.EndHeight
	assert.Equal(t, 2, w.Still("depth", true), "the gunwale's end and the stem head")
	assert.True(t, w.Stilled())
	w.Set("depth", 14*inch)
	assert.InDelta(t, end, w.Entered.GunwaleEndHeight, 1e-9)
	assert.InDelta(t, head, w.Entered.EndHeight, 1e-9)
	w.Still("depth", false)
	assert.False(t, w.Stilled())
	assert.InDelta(t, end+1.5*inch, w.Entered.GunwaleEndHeight, 1e-9)
	assert.InDelta(t, head+1.5*inch, w.Entered.EndHeight, 1e-9)
	ribs, _ := design.Lookup("ribs")
	assert.True(t, ribs.Owned(w.Entered))
	require.True(t, w.Undo())
	assert.InDelta(t, end, w.Entered.GunwaleEndHeight, 1e-9)
}
