package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/record"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

func TestInventedRecordFindsItsBoat(t *testing.T) {
	d, w := open(&memory.Store{})
	assert.Contains(t, said(d.Record("fit", ""), "record-said"), "no measurement to go by")
	lines := d.Record("example", "").Fields["record-text"]
	assert.Equal(t, lines, w.Typed["record-text"])
	r := d.Record("paste", lines)
	assert.True(t, r.Changed)
	assert.Equal(t, "15 read into the record above.", r.Markup["record-says"])
	assert.True(t, r.Hidden["record-boats"])
	assert.Equal(t, "15 read, in place of the 15 there were: undo brings those back.", d.Record("paste",
		lines).Markup["record-says"])
	_, text, _ := d.Said()
	assert.Equal(t, "15 measurements.", text)
	require.True(t, d.Record("fit", "").TookUp)
	w = d.Show()
	_, text, _ = d.Said()
	assert.True(t, strings.HasPrefix(text, "Found: "), text)
	w.Known().Need(pipeline.Beside)
	slots, another := d.RecordSlots()
	assert.True(t, another)
	assert.Contains(t, slots["record-rows"], "<table")
	_, another = d.RecordSlots()
	assert.False(t, another)
	w.Set("depth", 15*inch)
	_, text, _ = d.Said()
	assert.Equal(t, "15 measurements.", text, "it was said of another boat")
	w.Set("beam", -inch)
	_, text, _ = d.Said()
	assert.Contains(t, text, "Nothing is compared with them")
}

func TestPasteSaysWhatCannotBeRead(t *testing.T) {
	d, w := open(&memory.Store{})
	r := d.Record("paste", "Beam <inside> nothing\nwhat")
	assert.False(t, r.Changed)
	assert.Contains(t, r.Markup["record-says"], "0 read. The record stays as it was.<br>Row 1, ")
	assert.NotContains(t, r.Markup["record-says"], "<inside>")
	assert.Empty(t, w.Measurements(work.Recorded))
}

func TestTableOfManyBoatsIsAskedOf(t *testing.T) {
	d, _ := open(&memory.Store{})
	r := d.Record("paste", "Boat\tLength overall\tBeam inside the gunwales\nOne\t16'\t32\"\nTwo\t15'\t30\"\n")
	assert.False(t, r.Changed)
	assert.False(t, r.Hidden["record-boats"])
	assert.Contains(t, r.Markup["record-boat"], `<option value="1">Two</option>`)
	assert.Equal(t, "record-boat", r.Focus)
}

// What was left out and predicted shows until the record is another.
func TestPredictions(t *testing.T) {
	d, w := open(&memory.Store{})
	_, more := d.Predict().Next()
	assert.False(t, more)
	d.Record("paste", desk.Invented)
	p, turns := d.Predict(), 0
	for {
		r, more := p.Next()
		if !more {
			assert.Contains(t, r.Markup["record-each"], "<table")
			break
		}
		turns++
		assert.Contains(t, said(r, "record-said"), "of 15.")
	}
	assert.Positive(t, turns)
	slots, _ := d.RecordSlots()
	assert.NotEmpty(t, slots["record-each"])
	p = d.Predict()
	w.DropMeasurement(work.Recorded, 0)
	_, more = p.Next()
	assert.False(t, more, "the record is another")
	slots, _ = d.RecordSlots()
	assert.Empty(t, slots["record-each"])
}

// What moved is told of the boat as it was brought, and of no other.
func TestBringToReadings(t *testing.T) {
	d, w := open(&memory.Store{})
	assert.Contains(t, d.Record("built", "").Markup["built-notes"], "no reading")
	w.PutMeasurement(work.AsBuilt, 0, record.Datum{Kind: record.BeamInside, Value: 33.5 * inch})
	r := d.Record("built", "")
	assert.True(t, r.Changed)
	assert.Contains(t, r.Markup["built-moved"], "<table")
	slots, _ := d.RecordSlots()
	assert.Equal(t, r.Markup["built-moved"], slots["built-moved"])
	w.Set("depth", 13*inch)
	slots, _ = d.RecordSlots()
	assert.Empty(t, slots["built-moved"])
	assert.True(t, d.Record("uncorrect", "").Changed)
}

func TestFullList(t *testing.T) {
	assert.Contains(t, said(desk.Full(), "record-said"), "The list is full")
}
