package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A row is filled in field by field, in any order, and is whole once it says what,
// where and how much.
func TestEntryIsFilledIn(t *testing.T) {
	s := units.Imperial16
	e := work.NextEntry(work.Recorded, nil)
	assert.Equal(t, record.LengthOverall, e.Kind)
	assert.False(t, e.Whole())
	e.Enter(work.Value, "16' 4", s)
	assert.True(t, e.Whole())
	assert.Equal(t, `16' 4"`, e.Text(work.Value, s))
	assert.Equal(t, `1/4"`, e.Text(work.Tolerance, s), "the usual one")

	e.Enter(work.What, record.RailHeight.ID(), s)
	assert.True(t, e.Whole(), "amidships goes without saying once there was a value")
	e.Enter(work.Where, "nowhere", s)
	assert.Contains(t, e.Bad[work.Where], `"nowhere"`)
	assert.False(t, e.Whole())
	e.Enter(work.Where, "at thwart 2, aft", s)
	e.Enter(work.Tolerance, "0", s)
	assert.NotEmpty(t, e.Bad[work.Tolerance])
	assert.True(t, e.Whole(), "the rest stands without the tolerance")
	e.Enter(work.Tolerance, "1/2", s)
	e.Enter(work.Locked, "yes", s)
	e.Enter(work.Note, " lettered ", s)
	assert.InDelta(t, 196*inch, e.Datum.Value, 1e-12)
	e.Datum.Value = 196 * inch
	assert.Equal(t, record.Datum{Kind: record.RailHeight, Number: 2, At: record.Place{Side: record.Aft},
		Value: 196 * inch, Tolerance: inch / 2, Locked: true, Note: "lettered"}, e.Datum)

	e.Enter(work.What, record.RibCount.ID(), s)
	assert.False(t, e.Whole(), "a length is no number of ribs")
	assert.Empty(t, e.Text(work.Value, s))
	assert.Empty(t, e.Text(work.Where, s))
	e.Enter(work.Value, "44", s)
	assert.True(t, e.Whole())
	e.Enter(work.Value, "", s)
	assert.Contains(t, e.Bad[work.Value], "no value")
	assert.InDelta(t, 44, e.Datum.Value, 0, "what was read stays")
}

// A row that becomes a half breadth asks for its height, and one that was loses it.
func TestEntryAtAHeight(t *testing.T) {
	s := units.Imperial16
	e := work.OfDatum(record.Datum{Kind: record.HalfGirth, Number: 1, Value: 20 * inch})
	e.Enter(work.What, record.HalfBreadth.ID(), s)
	assert.False(t, e.Whole())
	e.Enter(work.Where, "at thwart 1", s)
	assert.Contains(t, e.Bad[work.Where], "at what height")
	e.Enter(work.Where, "4 up, at thwart 1", s)
	assert.True(t, e.Whole())
	assert.Equal(t, `4" up, at thwart 1`, e.Text(work.Where, s))
	e.Enter(work.What, record.HalfGirth.ID(), s)
	assert.Zero(t, e.At.Height)
	assert.True(t, e.Whole())
}

// Every field shows what it reads back as.
func TestEntryShowsWhatItReads(t *testing.T) {
	for _, k := range record.Kinds() {
		d := record.Datum{Kind: k, Value: 40, Tolerance: 2, Locked: true, Note: "n"}
		if !k.Counted() {
			d.Value, d.Tolerance = 21.5*inch, 0.75*inch
		}
		if k.Numbered() {
			d.Number = 2
		}
		if k.AtHeight() {
			d.At.Height = 4 * inch
		}
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			e := work.OfDatum(record.Datum{Kind: k})
			for f := range work.Fields {
				e.Enter(f, work.OfDatum(d).Text(f, s), s)
				assert.Empty(t, e.Bad[f], "%v %d", k, f)
			}
			// What is typed back is what was shown, to half of its last step.
			assert.InDelta(t, d.Value, e.Datum.Value, s.Step()/2, k)
			assert.InDelta(t, d.Tolerance, e.Datum.Tolerance, s.Step()/2, k)
			assert.InDelta(t, d.At.Height, e.At.Height, s.Step()/2, k)
			e.Datum.Value, e.Datum.Tolerance, e.At.Height = d.Value, d.Tolerance, d.At.Height
			assert.Equal(t, d, e.Datum, k)
		}
	}
}

// A field left as it was shown changes nothing, though what it shows is rounded; an
// emptied tolerance is the usual one again.
func TestWhatIsShownChangesNothing(t *testing.T) {
	d := record.Datum{Kind: record.RailHeight, At: record.Place{Distance: 0.5001}, Value: 0.3333, Tolerance: 0.0131}
	e := work.OfDatum(d)
	for f := range work.Fields {
		e.Enter(f, e.Text(f, units.Imperial8), units.Imperial8)
	}
	assert.Equal(t, d, e.Datum)
	e.Enter(work.Tolerance, "", units.Imperial8)
	assert.Zero(t, e.Datum.Tolerance)
	assert.Equal(t, `1/2"`, e.Text(work.Tolerance, units.Imperial8))
}

// A row begun as a length and made one of a place asks for it.
func TestBegunRowAsksForItsPlace(t *testing.T) {
	e := work.NextEntry(work.Recorded, nil)
	e.Enter(work.What, record.RailHeight.ID(), units.Imperial16)
	assert.Empty(t, e.Text(work.Where, units.Imperial16))
	e.Enter(work.Value, "13", units.Imperial16)
	assert.False(t, e.Whole())
	e.Enter(work.Where, "amidships", units.Imperial16)
	assert.True(t, e.Whole())
}

func TestNextEntry(t *testing.T) {
	next := func(l work.List, k record.Kind) record.Kind {
		return work.NextEntry(l, []record.Datum{{Kind: k}}).Kind
	}
	assert.Equal(t, record.LengthOverGunwales, next(work.Recorded, record.LengthOverall))
	assert.Equal(t, record.RailHeight, next(work.Recorded, record.RailHeight))
	last := record.Kinds()[len(record.Kinds())-1]
	assert.Equal(t, last, next(work.Recorded, last), "there is none after the last")
	assert.Equal(t, record.ClearWidth, next(work.AsBuilt, record.ClearWidth))
	assert.NotContains(t, work.KindsOf(work.AsBuilt), record.RibCount)
	assert.False(t, work.NextEntry(work.AsBuilt, nil).Whole())
}
