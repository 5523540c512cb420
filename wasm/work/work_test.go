package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

const inch = units.Inch

func beam(w *work.Work) float64 { return w.Entered.Beam / inch }

// One drag is one step of undo, however many values it went through.
func TestOneDragIsOneStep(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	for _, v := range []float64{34, 35, 36} {
		w.Set("beam", v*inch)
	}
	w.Set("depth", 13*inch)
	w.Commit()
	assert.True(t, w.Undo())
	assert.InDelta(t, 36, beam(w), 1e-9)
	assert.InDelta(t, 12.5, w.Entered.Depth/inch, 1e-9)
	assert.True(t, w.Undo())
	assert.InDelta(t, 33, beam(w), 1e-9)
	assert.False(t, w.Undo())
	assert.True(t, w.Redo())
	assert.InDelta(t, 36, beam(w), 1e-9)
	w.Set("beam", 30*inch)
	assert.False(t, w.CanRedo(), "a new change ends what could be made again")
}

// With a fault the last canoe stays, and so does the entry.
func TestFaultKeepsTheCanoe(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("depth", 300*inch)
	f, ok := w.Fault("depth")
	assert.True(t, ok)
	assert.NotEmpty(t, f.Message(units.Imperial16))
	assert.InDelta(t, 12.5, w.Canoe().Design.Depth/inch, 1e-9)
	assert.InDelta(t, 300, w.Entered.Depth/inch, 1e-9)
	w.Set("depth", 13*inch)
	assert.Empty(t, w.Faults)
	assert.InDelta(t, 13, w.Canoe().Design.Depth/inch, 1e-9)
}

// A fault that several controls cause is named at the one that was moved.
func TestFaultAtTheControlMoved(t *testing.T) {
	for key, v := range map[string]float64{"bilge": 0.56, "frameWidth": 48 * inch, "beam": 45 * inch} {
		w := work.New(design.Starting()[2], units.Imperial16)
		w.Set("frameWidth", 45*inch)
		w.Commit()
		assert.Empty(t, w.Faults)
		w.Set(key, v)
		_, ok := w.Fault(key)
		assert.True(t, ok, key)
		assert.Len(t, w.Faults, 1)
	}
}

// The comparison is with the boat as it was when the control was taken up.
func TestComparisonStartsWithTheControl(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("beam", 34*inch)
	w.Set("beam", 35*inch)
	assert.InDelta(t, 33, w.Before().Design.Beam/inch, 1e-9)
	w.Set("depth", 13*inch)
	assert.InDelta(t, 35, w.Before().Design.Beam/inch, 1e-9)
}

func TestStepGoesToTheNextStep(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("beam", 33.1*inch)
	w.Step("beam", 1)
	assert.InDelta(t, 33.25, beam(w), 1e-9)
	w.Step("beam", -1)
	assert.InDelta(t, 33, beam(w), 1e-9)
	w.Set("beam", 18*inch)
	w.Step("beam", -1)
	assert.InDelta(t, 18, beam(w), 1e-9)
	w.Set("thwarts", 5)
	w.Step("thwarts", 1)
	assert.Equal(t, 7, w.Entered.Thwarts, "thwarts go by twos")
}

func TestResetTiesAgain(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.Set("endHeight", 27*inch)
	w.Set("gunwaleEndHeight", 21*inch)
	assert.InDelta(t, 27, w.Entered.EndHeight/inch, 1e-9, "a set one stays")
	w.Reset("endHeight")
	assert.InDelta(t, 26, w.Entered.EndHeight/inch, 1e-9, "a reset one follows")
}

// Each change of the list of sheets is undone by itself.
func TestSheetsOnHandAreUndone(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	one := design.OnHand{}.Put(0, design.Sheet{Width: 1, Length: 3})
	w.SetOnHand(one)
	w.SetOnHand(one.Put(1, design.Sheet{Width: 0.9, Length: 2}))
	assert.Equal(t, 2, w.Canoe().Design.OnHand.Count)
	assert.True(t, w.Undo())
	assert.Equal(t, one, w.Entered.OnHand)
	assert.True(t, w.Undo())
	assert.Zero(t, w.Entered.OnHand)
	assert.False(t, w.Undo())
}
