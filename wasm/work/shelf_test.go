package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

func names(s *work.Shelf) []string {
	var out []string
	for _, w := range s.All {
		out = append(out, w.Entered.Name)
	}
	return out
}

func named(name string) design.Design {
	d := design.Default()
	d.Name = name
	return d
}

// Designs stand side by side, each with its own undo, in the units last chosen.
func TestShelf(t *testing.T) {
	s := work.NewShelf(named("one"), units.Imperial16)
	s.InHand().Set("beam", 34*inch)
	s.Add(named("two"))
	s.InHand().System = units.Metric
	s.InHand().Set("beam", 35*inch)
	s.Take(0)
	assert.Equal(t, units.Metric, s.InHand().System)
	assert.True(t, s.InHand().Undo())
	assert.InDelta(t, 33, beam(s.InHand()), 1e-9)
	s.Take(1)
	assert.InDelta(t, 35, beam(s.InHand()), 1e-9)
	s.Take(7)
	assert.Equal(t, 1, s.Current)

	s.Remove()
	assert.Equal(t, []string{"one"}, names(s))
	s.Remove()
	assert.Equal(t, []string{"one"}, names(s), "the last one stays")
	s.BringBack()
	assert.Equal(t, []string{"one", "two"}, names(s))
	assert.InDelta(t, 35, beam(s.InHand()), 1e-9)
}

// A file's designs come in beside those that are there, or in their place.
func TestShelfAndFile(t *testing.T) {
	s := work.NewShelf(named("one"), units.Imperial16)
	f := file.File{Boats: []file.Boat{{Design: named("a")}, {Design: named("b")}}, Current: 0}
	s.Put(f)
	assert.Equal(t, []string{"one", "a", "b"}, names(s))
	assert.Equal(t, "a", s.InHand().Entered.Name)
	assert.Equal(t, 1, s.File().Current)
	s.Refill(f)
	assert.Equal(t, []string{"a", "b"}, names(s))
	assert.Equal(t, f, s.File())
	s.Refill(file.File{})
	assert.Equal(t, []string{"a", "b"}, names(s), "an empty file changes nothing")
}

// The boat of an address is the kept one with all that is kept beside it, or one more.
func TestShelfTakesALine(t *testing.T) {
	s := work.NewShelf(named("one"), units.Imperial16)
	s.Add(named("two"))
	s.InHand().SetRecord("theirs", small)
	s.Take(0)
	line := func(d design.Design) string {
		text, err := design.Line(d)
		assert.NoError(t, err)
		return text
	}
	s.TakeLine(line(named("two")), named("two"))
	assert.Equal(t, 1, s.Current)
	assert.Len(t, s.InHand().Measurements(work.Recorded), len(small))
	s.TakeLine(line(named("three")), named("three"))
	assert.Equal(t, []string{"one", "two", "three"}, names(s))
	assert.Equal(t, 2, s.Current)
}

// A design with faults is shown with them, and there is a canoe to look at.
func TestShelfTakesFaultyDesigns(t *testing.T) {
	s := work.NewShelf(named("one"), units.Imperial16)
	d := named("deep")
	d.Depth = 9
	s.Add(d)
	assert.NotEmpty(t, s.InHand().Faults)
	assert.Equal(t, d, s.InHand().Entered)
	assert.InDelta(t, 12.5, s.InHand().Canoe.Design.Depth/inch, 1e-9)
}
