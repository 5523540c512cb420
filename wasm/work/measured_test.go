package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// small is an invented record.
var small = []record.Datum{
	{Kind: record.LengthOverall, Value: 180 * inch},
	{Kind: record.LengthOverGunwales, Value: 164 * inch},
	{Kind: record.BeamInside, Value: 31 * inch},
	{Kind: record.DepthInwale, Value: 12 * inch},
}

// Every change of a list is one step of undo, and lists already held stay as they were.
func TestMeasurementsAreUndone(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	for i, d := range small {
		w.PutMeasurement(work.Recorded, i, d)
	}
	held := w.Measurements(work.Recorded)
	narrow := small[2]
	narrow.Value = 30 * inch
	w.PutMeasurement(work.Recorded, 2, narrow)
	w.DropMeasurement(work.Recorded, 0)
	assert.Equal(t, small, held)
	assert.Equal(t, []record.Datum{small[1], narrow, small[3]}, w.Measurements(work.Recorded))
	w.PutMeasurement(work.Recorded, 9, narrow)
	w.DropMeasurement(work.Recorded, 9)
	assert.Len(t, w.Measurements(work.Recorded), 3, "no such place")

	w.PutMeasurement(work.AsBuilt, 0, small[2])
	w.Set("beam", 34*inch)
	assert.True(t, w.Undo())
	assert.True(t, w.Undo())
	assert.Empty(t, w.Measurements(work.AsBuilt))
	assert.True(t, w.Undo())
	assert.True(t, w.Undo())
	assert.Equal(t, small, w.Measurements(work.Recorded))
	assert.True(t, w.Redo())
	assert.Equal(t, narrow, w.Measurements(work.Recorded)[2])
}

// A boat is found beside the one in hand; found again from a changed record it is
// changed in its place, and what is not of the record is kept.
func TestFindBoat(t *testing.T) {
	s := shelfOf(t, &memory.Store{}, named("mine"))
	s.FindBoat()
	require.Len(t, s.Names(), 1, "nothing is recorded")
	s.InHand().SetRecord("theirs", small)
	first := s.InHand()
	assert.Equal(t, "4 of 4 inside tolerance; kept as a new design, with the one before it among the designs.",
		s.FindBoat())
	require.Equal(t, []string{"mine", "theirs"}, s.Names())
	assert.Empty(t, first.Measurements(work.Recorded))
	found := s.InHand()
	assert.InDelta(t, 31, beam(found), 1e-9)
	found.Known().Need(pipeline.Beside)
	for _, row := range found.Measured() {
		assert.InDelta(t, 0, row.Difference/inch, 1e-9, row.Kind)
	}

	found.Set("beam", 33*inch)
	found.Known().Need(pipeline.Beside)
	assert.InDelta(t, 2*inch, found.Measured()[2].Difference, 1e-9, "the table follows")
	found.Set("paddlers", 3)
	found.Set("sheetWidth", 55*inch)
	found.Set("rootWaste", 0.3)
	found.SetText("notes", "kept")
	found.SetText("name", "renamed")
	wide := small[2]
	wide.Value = 32 * inch
	found.PutMeasurement(work.Recorded, 2, wide)
	s.FindBoat()
	require.Len(t, s.Names(), 2)
	assert.InDelta(t, 32, beam(s.InHand()), 1e-9)
	assert.Equal(t, 3, s.InHand().Entered.Paddlers)
	assert.InDelta(t, 55*inch, s.InHand().Entered.SheetWidth, 1e-9)
	assert.InDelta(t, 0.3, s.InHand().Entered.RootWaste, 1e-9)
	assert.Equal(t, "kept", s.InHand().Entered.Notes)
	assert.Equal(t, "renamed", s.InHand().Entered.Name)
	found.PutMeasurement(work.Recorded, 2, wide)
	found.SetRecord("theirs", found.Measurements(work.Recorded))
	assert.True(t, found.Undo(), "the same again is no step")
	assert.InDelta(t, 33, beam(found), 1e-9)

	s.Take(0)
	assert.True(t, s.InHand().Undo())
	assert.Equal(t, small, s.InHand().Measurements(work.Recorded), "the record was given over, not lost")
}

// A measurement that stands against the rest is marked whatever the boat in hand.
func TestWhatDisagreesIsMarked(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	data := append([]record.Datum{}, small...)
	for _, x := range []float64{0, 20, 35, 45, 55, 65, 75} {
		v := 12 + 6*(x/82)*(x/82)*(x/82)
		if x == 45 {
			v += 5
		}
		data = append(data, record.Datum{Kind: record.SheerHeight, At: record.Place{Distance: x * inch},
			Value: v * inch})
	}
	w.SetRecord("", data)
	var marked []float64
	w.Known().Need(pipeline.Beside)
	for _, row := range w.Measured() {
		if row.Disagrees {
			marked = append(marked, row.At.Distance/inch)
		}
	}
	require.Len(t, marked, 1)
	assert.InDelta(t, 45, marked[0], 1e-9)
}

// The boat is brought to what a tape reads in one step, or kept where it cannot be.
func TestBringToReadings(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	w.PutMeasurement(work.AsBuilt, 0, record.Datum{Kind: record.BeamInside, Value: 33.5 * inch})
	r := w.BringToReadings()
	assert.True(t, r.Builds)
	assert.InDelta(t, 33, r.Before.Design.Beam/inch, 1e-9)
	assert.InDelta(t, 33.5, r.After.Design.Beam/inch, 1e-9)
	assert.True(t, w.Undo())
	assert.InDelta(t, 33, beam(w), 1e-9)
	assert.Len(t, w.Measurements(work.AsBuilt), 1, "the reading stays")

	w.PutMeasurement(work.AsBuilt, 0, record.Datum{Kind: record.EndHeight, Value: 13 * inch})
	r = w.BringToReadings()
	assert.False(t, r.Builds)
	assert.Equal(t, r.Before.Design, r.After.Design)
	assert.NotEmpty(t, w.Faults)
}

// A copy has the record too, and its changes are its own.
func TestCopyTakesTheRecordAlong(t *testing.T) {
	s := shelfOf(t, &memory.Store{}, named("mine"))
	s.InHand().SetRecord("theirs", small)
	first := s.InHand()
	s.Copy()
	assert.Equal(t, []string{"mine", "mine (copy)"}, s.Names())
	s.InHand().DropMeasurement(work.Recorded, 0)
	assert.Equal(t, small, first.Measurements(work.Recorded))
	assert.Equal(t, small[1:], s.InHand().Measurements(work.Recorded))
}

// What was measured is kept with its design.
func TestNotebooksAreKept(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("mine"))
	s.InHand().SetRecord("theirs", small)
	s.FindBoat()
	s.InHand().PutMeasurement(work.AsBuilt, 0, small[0])
	require.NoError(t, s.Keep().Err)
	again := openShelf(store)
	assert.Equal(t, all(t, s), all(t, again))
	assert.Equal(t, small, again.InHand().Measurements(work.Recorded))
	assert.True(t, again.InHand().Notebook.Found)
}

// A boat that is found and cannot be built stands beside nothing.
func TestFoundAndNotBuilt(t *testing.T) {
	s := shelfOf(t, &memory.Store{}, named("mine"))
	s.InHand().SetRecord("theirs", []record.Datum{
		{Kind: record.LengthOverall, Value: 232 * inch}, {Kind: record.BeamInside, Value: 40 * inch},
		{Kind: record.EndHeight, Value: 13 * inch},
	})
	s.FindBoat()
	require.NotEmpty(t, s.InHand().Faults, "as this test needs it")
	assert.True(t, s.InHand().None, "no canoe of this boat")
	assert.Nil(t, s.InHand().Measured())
	s.InHand().Set("endHeight", 27*inch)
	require.Empty(t, s.InHand().Faults)
	assert.False(t, s.InHand().None)
	assert.Equal(t, s.InHand().Canoe().Design, s.InHand().Before().Design, "compared with no other boat")
	s.InHand().Known().Need(pipeline.Beside)
	assert.Len(t, s.InHand().Measured(), 3)
}

// A correction is said, undone with the readings' step, kept through other changes and
// taken off at will.
func TestCorrectionsAreSaidAndUndone(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	assert.Empty(t, w.Corrections())
	g := w.Entered.Gunwale()
	w.PutMeasurement(work.AsBuilt, 0, record.Datum{Kind: record.ClearWidth, At: record.Place{Distance: 40 * inch},
		Value: 2*g.Breadth(40*inch) + inch/2})
	plain := w.Entered
	w.BringToReadings()
	assert.Equal(t, `Corrected where a tape read otherwise: width +1/2" 3' 4" from the middle.`, w.Corrections())
	w.Set("cargo", 40)
	assert.NotEmpty(t, w.Corrections())
	w.DropCorrections()
	assert.Empty(t, w.Corrections())
	assert.True(t, w.Undo())
	assert.NotEmpty(t, w.Corrections())
	assert.True(t, w.Undo())
	assert.True(t, w.Undo())
	assert.Equal(t, plain, w.Entered)
}
