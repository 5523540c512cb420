package bench_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/bench"
	"barkwright/wasm/work"
)

const day = "2026-06-14"

func opened(t testing.TB, w *work.Work, k stage.Key) bench.Bench {
	b, ok := bench.Open(w, work.AtStage(k))
	require.True(t, ok)
	return b
}

func what(t testing.TB, b bench.Bench, w *work.Work) string {
	v, ok := b.View(w)
	require.True(t, ok)
	return v.Line.What
}

// Done ticks and goes to the next that is not done, round to those passed over; on a line
// that is ticked it takes the tick back and stays.
func TestDoneAndNext(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	b := opened(t, w, stage.Lace)
	b.Choose(w, "Posts to set")
	v, _ := b.View(w)
	require.Len(t, v.Rows, 4)
	assert.Equal(t, "Middle thwart", v.Line.What)
	assert.Empty(t, v.Before)
	assert.True(t, strings.HasPrefix(v.Then, "First thwart "))
	b.Step(w, 1)
	for range 3 {
		b.Done(w, day)
	}
	assert.Equal(t, "Middle thwart", what(t, b, w), "the one passed over")
	b.Done(w, day)
	v, _ = b.View(w)
	assert.Equal(t, "1 of 4, 4 done", v.At)
	assert.Equal(t, "14 June 2026", v.Line.Day)
	b.Done(w, day)
	v, _ = b.View(w)
	assert.Equal(t, "1 of 4, 3 done", v.At)
	w.Undo()
	v, _ = b.View(w)
	assert.Equal(t, "1 of 4, 4 done", v.At)
	for _, s := range w.Steps(stage.Lace) {
		assert.Equal(t, s.Key == "lace.posts", s.Done, s.Key)
	}
}

// It opens at the first list that is not done, at its first line that is not; stepping
// stops at either end and ticks nothing.
func TestWhereItOpens(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	b := opened(t, w, stage.Ends)
	for range 7 {
		b.Done(w, day)
	}
	b = opened(t, w, stage.Ends)
	v, _ := b.View(w)
	assert.Equal(t, "Headboards", v.List)
	b.Choose(w, "Stem splits")
	b.Step(w, -1)
	assert.Equal(t, "Split 1 of the stem", what(t, b, w))
	b.Last(w)
	b.Step(w, 1)
	assert.Equal(t, "Split 7 of the stem", what(t, b, w))
	b.First(w)
	assert.Equal(t, "Split 1 of the stem", what(t, b, w))
	assert.Len(t, w.Notebook.Log, 7)
	for _, none := range []work.Place{work.AtStage(stage.Choose), work.Shed, work.All} {
		_, ok := bench.Open(w, none)
		assert.False(t, ok, none)
	}
}

// The place is written and read again; what is no place of this boat is none.
func TestResume(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	b := opened(t, w, stage.Rib)
	b.Step(w, 5)
	again, ok := bench.Resume(w, b.Place())
	require.True(t, ok)
	assert.Equal(t, what(t, b, w), what(t, again, w))
	for _, none := range []string{"", "rib", "rib|Ribs", "rib|None|rib.1", "none|Ribs to fit|rib.1/aft"} {
		_, ok := bench.Resume(w, none)
		assert.False(t, ok, none)
	}
	lost, ok := bench.Resume(w, "rib|Ribs to fit|rib.99/aft")
	require.True(t, ok)
	assert.Equal(t, "Rib 22, forward", what(t, lost, w))
}

// A figure is never broken inside feet, inches or a fraction; a fraction stands smaller.
func TestParts(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	b := opened(t, w, stage.Rib)
	v, _ := b.View(w)
	var all []string
	for _, p := range v.Parts {
		assert.NotContains(t, p.Text, " ")
		assert.Equal(t, strings.Contains(p.Text, "/"), p.Small, p.Text)
		all = append(all, p.Text)
	}
	assert.Equal(t, v.Line.Figure, strings.Join(all, " "))
	w.System = units.Metric
	v, _ = b.View(w)
	assert.Equal(t, bench.Part{Text: "mm", Small: true}, v.Parts[len(v.Parts)-1])
}

// A swipe is 48 px and more and within 30 degrees of level.
func TestSwiped(t *testing.T) {
	steep := math.Tan(30 * math.Pi / 180)
	for _, c := range []struct {
		dx, dy float64
		n      int
	}{
		{-48, 0, 1}, {48, 0, -1}, {-47.9, 0, 0}, {47.9, 0, 0},
		{-100, 100*steep - 1, 1}, {-100, 100*steep + 1, 0}, {100, 1 - 100*steep, -1}, {100, -1 - 100*steep, 0}, {0, 200, 0},
	} {
		assert.Equal(t, c.n, bench.Swiped(c.dx, c.dy), "%v", c)
	}
}

// The wheels turn by feet, inches and parts, or by tens and ones, and carry over.
func TestWheels(t *testing.T) {
	for _, s := range []units.System{units.Imperial16, units.Imperial8, units.Metric} {
		w := work.New(design.Default(), s)
		b := opened(t, w, stage.Gunwales)
		b.Choose(w, "Thwarts")
		b.SetTape(w)
		v, _ := b.View(w)
		assert.Equal(t, v.Line.Figure, units.Length.Format(b.Tape.Value(), s))
		start := b.Tape.Value()
		for _, wheel := range b.Tape.Wheels() {
			b.Tape.Turn(wheel.Turn)
		}
		want := map[units.System]float64{
			units.Imperial16: 13*units.Inch + units.Inch/16, units.Imperial8: 13*units.Inch + units.Inch/8, units.Metric: 0.011}
		assert.InDelta(t, want[s], b.Tape.Value()-start, 1e-9)
		b.Tape.Turn(-1 << 20)
		assert.Zero(t, b.Tape.Value())
		b.Tape.Reset()
		assert.InDelta(t, start, b.Tape.Value(), 1e-12)
	}
}

// A reading of a kind that a record has stands among those of the boat as built, and one
// more than half an inch off offers to bring the boat to it. Nothing changes unasked, and
// a line that was ticked is not among what changes.
func TestReadings(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	b := opened(t, w, stage.Lace)
	b.Choose(w, "Sheer heights")
	boat := w.Entered
	read := func(steps int) bench.Said {
		b.SetTape(w)
		b.Tape.Turn(steps)
		b.Save(w, day)
		v, _ := b.View(w)
		return v.Said
	}
	assert.Equal(t, "The tape reads 1' 0 1/2\", as the line says. It is kept among the readings.", read(0).Text)
	assert.False(t, read(8).Offers, "half an inch is not more than half an inch")
	far := read(9)
	assert.True(t, far.Offers)
	assert.Len(t, w.Measurements(work.AsBuilt), 1, "the same place read again")
	assert.Equal(t, boat, w.Entered)
	ribs := func(s bench.Said) int {
		for _, l := range s.Lists {
			if strings.HasPrefix(l.Text, "Ribs to fit: ") {
				return len(l.Each)
			}
		}
		return 0
	}
	all := ribs(far)
	require.Positive(t, all)
	w.Tick("rib.drive", "rib.1/aft", day, true)
	assert.Equal(t, all-1, ribs(read(9)))
	w.Undo()
	w.Undo()
	assert.Len(t, w.Notebook.Log, 0)

	b.Choose(w, "Posts to set")
	assert.Equal(t, "The tape reads 10 1/2\", +1/16\" off the line. It is noted.", read(1).Text)
	notes := w.Noted(stage.Lace)
	require.Len(t, notes, 1)
	assert.Equal(t, "Middle thwart: the tape reads 10 1/2\", the line says 10 7/16\"", notes[0].Note)
}
