package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A finger has a direction once it has moved more than an unsteady finger does, and
// keeps it.
func TestSwipe(t *testing.T) {
	for _, row := range []struct {
		name string
		path [][2]float64
		want work.Way
	}{
		{"a tap", [][2]float64{{101, 202}, {98, 199}}, work.Nowhere},
		{"up", [][2]float64{{101, 190}}, work.UpOrDown},
		{"up and then sideways", [][2]float64{{101, 190}, {180, 190}}, work.UpOrDown},
		{"sideways", [][2]float64{{109, 202}}, work.Sideways},
		{"sideways, wandering off", [][2]float64{{109, 202}, {112, 260}}, work.Sideways},
		{"between the two is a scroll", [][2]float64{{110, 210}}, work.UpOrDown},
	} {
		s := work.SwipeFrom(100, 200)
		for _, at := range row.path {
			s.To(at[0], at[1])
		}
		assert.Equal(t, row.want, s.Way(), row.name)
	}
}

// A change goes as far as the finger does past its unsteadiness, 8 pixels either way,
// whether the browser tells of every pixel or of the last alone.
func TestSwipeAlong(t *testing.T) {
	for _, end := range []float64{150, 50} {
		often, once := work.SwipeFrom(100, 200), work.SwipeFrom(100, 200)
		assert.Zero(t, once.Along(105), "nowhere yet")
		for x := 100.0; x != end; x += (end - 100) / 50 {
			often.To(x, 200)
		}
		once.To(end, 200)
		want := map[float64]float64{150: 42, 50: -42}[end]
		assert.Equal(t, want, often.Along(end))
		assert.Equal(t, want, once.Along(end))
		assert.Equal(t, want/42*-8, once.Along(100), "and back past where it counted from")
	}
	up := work.SwipeFrom(100, 200)
	up.To(100, 220)
	assert.Zero(t, up.Along(150))
}

// Cancelling restores everything: the value, whether it was set, and the steps of undo.
func TestCancel(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("length", 4.5)
	w.Commit()
	before := w.Entered
	w.Set("endHeight", 27*inch)
	w.Set("endHeight", 28*inch)
	w.Cancel()
	assert.Equal(t, before, w.Entered)
	assert.Equal(t, before, w.Canoe().Design)
	assert.True(t, w.Undo())
	assert.Equal(t, design.Default(), w.Entered)
	assert.False(t, w.Undo())
	w.Cancel()
	assert.Equal(t, design.Default(), w.Entered, "nothing in hand, nothing to cancel")
}
