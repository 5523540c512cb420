package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// row is a row begun and entered: its kind, where and value.
func row(t *testing.T, w *work.Work, m *work.Rows, kind record.Kind, where, value string) int {
	t.Helper()
	require.True(t, m.Add(w))
	i := len(m.Entries) - 1
	m.Enter(w, i, work.What, kind.ID())
	if where != "" {
		m.Enter(w, i, work.Where, where)
	}
	assert.True(t, m.Enter(w, i, work.Value, value))
	return i
}

// noted is what a page reads off the fields of a row that shows what it holds.
func noted(w *work.Work, m *work.Rows, i int) (texts [work.Fields]string) {
	for f := range work.Fields {
		texts[f] = m.Entries[i].Shows(f, w.System)
	}
	return texts
}

func TestRowsGoIntoTheNotebook(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	m := work.NewRows(work.Recorded, "list")
	assert.True(t, m.Show(w))
	assert.False(t, m.Show(w), "nothing has changed")
	row(t, w, m, record.LengthOverall, "", "16'")
	row(t, w, m, record.BeamInside, "", "32")
	assert.Len(t, w.Measurements(work.Recorded), 2)
	assert.False(t, m.Show(w), "the rows are the notebook's")
	assert.True(t, m.Add(w))
	assert.True(t, m.Add(w), "one is begun at a time")
	assert.Len(t, m.Entries, 3)
	w.Undo()
	assert.True(t, m.Show(w))
	assert.Len(t, m.Entries, 1)
	assert.Equal(t, `16' 0"`, m.Entries[0].Shows(work.Value, w.System))
	w.Redo()
	m.Show(w)
	m.Drop(w, 0)
	assert.Len(t, w.Measurements(work.Recorded), 1)
	assert.Equal(t, record.BeamInside, m.Entries[0].Kind)
	assert.Equal(t, "Measurement 1", m.Entries[0].Name(0))
}

// What cannot be read stays in its field with the reason; the notebook keeps what stood.
func TestBadFieldStays(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	m := work.NewRows(work.Recorded, "list")
	m.Show(w)
	i := row(t, w, m, record.LengthOverall, "", "16'")
	assert.False(t, m.Enter(w, i, work.Value, "long"))
	r := m.Entries[i]
	assert.Equal(t, "long", r.Shows(work.Value, w.System))
	assert.Equal(t, r.Bad[work.Value]+" It is far off.", r.Says("It is far off."))
	assert.InDelta(t, 192*inch, w.Measurements(work.Recorded)[0].Value, 1e-9)
	m.Enter(w, i, work.Value, "15'")
	assert.Empty(t, r.Says(""))
}

// What stands half typed when the page is left is back when it is opened, and says that
// it counts for nothing yet; struck out, nothing of it is left.
func TestHalfTypedRowsComeBack(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	m := work.NewRows(work.Recorded, "list")
	m.Show(w)
	row(t, w, m, record.LengthOverall, "", "16'")
	m.Note(w, 0, noted(w, m, 0))
	assert.Empty(t, w.Typed, "the row says what the notebook does")
	texts := noted(w, m, 0)
	texts[work.Value] = "15'"
	m.Note(w, 0, texts)
	require.True(t, m.Add(w))
	m.Enter(w, 1, work.What, record.BeamInside.ID())
	texts = noted(w, m, 1)
	texts[work.Value] = "thirty"
	m.Note(w, 1, texts)

	again := work.NewRows(work.Recorded, "list")
	again.Show(w)
	require.Len(t, again.Entries, 2)
	assert.Equal(t, "15'", again.Entries[0].Shows(work.Value, w.System))
	assert.Equal(t, work.HalfTyped, again.Entries[0].Says(""))
	assert.Equal(t, record.BeamInside, again.Entries[1].Kind)
	assert.Equal(t, "thirty", again.Entries[1].Shows(work.Value, w.System))
	assert.InDelta(t, 192*inch, w.Measurements(work.Recorded)[0].Value, 1e-9, "it counts for nothing yet")
	again.Drop(w, 1)
	again.Drop(w, 0)
	assert.Empty(t, again.Entries)
	last := work.NewRows(work.Recorded, "list")
	last.Show(w)
	assert.Empty(t, last.Entries)
	assert.Equal(t, work.HalfTyped, work.WhyHalf(nil))
}

func TestRowsAreFull(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	m := work.NewRows(work.Recorded, "list")
	list := make([]record.Datum, record.MostData)
	for i := range list {
		list[i] = record.Datum{Kind: record.LengthOverall, Value: 5}
	}
	w.SetRecord("", list)
	m.Show(w)
	assert.False(t, m.Add(w))
	assert.Len(t, m.Entries, record.MostData)
}

// Another boat's rows are its own.
func TestRowsOfAnotherBoat(t *testing.T) {
	w, v := work.New(design.Default(), units.Imperial16), work.New(design.Default(), units.Metric)
	m := work.NewRows(work.AsBuilt, "list")
	m.Show(w)
	row(t, w, m, record.BeamInside, "", "33")
	m.Add(w)
	assert.True(t, m.Show(v))
	assert.Empty(t, m.Entries)
	m.Show(w)
	assert.Len(t, m.Entries, 1)
}
