package pipeline

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

const inch = units.Inch

// finish works out all that is left.
func finish(b *Boat) {
	for {
		if _, _, worked := b.Next(); !worked {
			return
		}
	}
}

// with is the default boat with some parameters set, each key before its value in SI.
func with(t *testing.T, pairs ...any) core.Canoe {
	t.Helper()
	d := design.Default()
	for i := 0; i < len(pairs); i += 2 {
		p, ok := design.Lookup(pairs[i].(string))
		require.True(t, ok, pairs[i])
		d = p.Set(d, pairs[i+1].(float64))
	}
	c, faults := core.Try(d)
	require.Empty(t, faults)
	return c
}

// until works on until a piece is finished.
func until(t *testing.T, b *Boat, want Piece) {
	t.Helper()
	for {
		p, finished, worked := b.Next()
		require.True(t, worked, "%v never came", want)
		if finished && p == want {
			return
		}
	}
}

func TestOrder(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Want(true)
	b.Measure(&record.Notebook{Record: record.Record{Data: []record.Datum{{Kind: record.LengthOverall,
		Value: 190 * inch}}}}, units.Imperial16)
	var order []Piece
	slices := map[Piece]int{}
	for {
		p, finished, worked := b.Next()
		if !worked {
			break
		}
		slices[p]++
		if finished {
			order = append(order, p)
		}
	}
	assert.Equal(t, []Piece{Drawing, Figures, Water, Beside, Curve}, order)
	assert.Greater(t, slices[Figures], 10, "in slices")
	for _, p := range order {
		assert.True(t, b.Known(p), "%v", p)
	}
	assert.False(t, b.Known(Makes), "there is no sheet on hand")
	assert.True(t, b.Canoe().Skin != nil)
	assert.True(t, b.Drawing() != nil)
	rows, ok := b.Rows()
	assert.True(t, ok)
	assert.Len(t, rows, 1)
}

// A step that moves only the crew leaves the bark as it lies, and what is known of it.
func TestCrewLeavesTheBark(t *testing.T) {
	b := New(with(t), units.Imperial16)
	finish(b)
	flat := b.Canoe().Skin.Flat.Length
	b.Take(with(t, "paddlers", 3.0))
	assert.Equal(t, 3, b.Canoe().Design.Paddlers)
	assert.True(t, b.Known(Figures))
	assert.True(t, b.Known(Curve))
	assert.False(t, b.Known(Water))
	assert.Equal(t, flat, b.Canoe().Skin.Flat.Length)
	assert.NotEmpty(t, b.Canoe().Skin.Curve)
}

// Nothing of an older design can be read, at any slice of a step into the next.
func TestNothingOldShows(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Want(true)
	finish(b)
	for i, c := range []core.Canoe{with(t, "beam", 34*inch), with(t, "depth", 13*inch), with(t, "beam", 32*inch)} {
		b.Take(c)
		for _, p := range []Piece{Drawing, Figures, Curve} {
			assert.False(t, b.Known(p), "%v", p)
		}
		assert.True(t, b.Canoe().Skin == nil)
		assert.True(t, b.Drawing() == nil)
		for range 5 + 20*i {
			b.Next()
		}
		if b.Known(Figures) {
			// That there are figures at all: bark lies 6 to 8 in over the default's length on the bed
			// (core/bark's tests). Known says whose they are.
			assert.InDelta(t, c.Design.Length, b.Canoe().Skin.Flat.Length, 9*inch)
		}
	}
	b.Take(with(t))
	_, known := b.Water()
	assert.True(t, known, "the boat of three steps ago is remembered on the water")
}

// A step in the middle of a piece cuts it off; what follows is that of the new boat.
func TestStepCutsOff(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Next()
	require.NotNil(t, b.task)
	b.Take(with(t, "beam", 34*inch))
	assert.Nil(t, b.task)
	until(t, b, Figures)
	fresh := New(with(t, "beam", 34*inch), units.Imperial16)
	until(t, fresh, Figures)
	assert.InDelta(t, fresh.Canoe().Skin.Flat.P95, b.Canoe().Skin.Flat.P95, 1e-12)
}

// Crew moved while the bark is being laid flat: the work goes on.
func TestStepThatChangesNothingOfAPieceLetsItGoOn(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Next()
	was := b.task
	require.NotNil(t, was)
	b.Take(with(t, "paddlers", 1.0))
	assert.Same(t, was, b.task)
	until(t, b, Figures)
	assert.Equal(t, 1, b.Canoe().Design.Paddlers)
	assert.True(t, b.Canoe().Skin != nil)
}

// Worked out from the boat before or from nothing, it comes to the same: to a micrometre, since
// either search ends with a move of less than 1e-6 of the sheet (geom.DefaultFlattenTolerance).
func TestWarmIsCold(t *testing.T) {
	warm, cold := New(with(t), units.Imperial16), New(with(t, "beam", 33.5*inch), units.Imperial16)
	finish(warm)
	warm.Take(with(t, "beam", 33.5*inch))
	finish(warm)
	finish(cold)
	a, b := warm.Canoe().Skin, cold.Canoe().Skin
	assert.InDelta(t, b.Flat.P95, a.Flat.P95, 1e-6)
	assert.InDelta(t, b.Flat.Length, a.Flat.Length, 1e-6)
	for i := range b.Flat.Gores {
		assert.InDelta(t, b.Flat.Gores[i].Width, a.Flat.Gores[i].Width, 1e-6)
	}
	assert.Equal(t, b.Curve, a.Curve)
}

// The comparison is dressed with the bark where it is that of the boat in hand.
func TestComparisonHasTheBark(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Take(with(t, "paddlers", 3.0))
	assert.True(t, b.Before().Skin == nil)
	until(t, b, Figures)
	assert.True(t, b.Before().Skin != nil)
	assert.Equal(t, 2, b.Before().Design.Paddlers)
	b.Compare(with(t, "beam", 30*inch))
	assert.True(t, b.Before().Skin == nil)
}

// A piece that panics is left out, the panic is seen, and the rest goes on.
func TestFaultInTheMiddle(t *testing.T) {
	b := New(with(t), units.Imperial16)
	c := b.canoe
	c.Afloat.Body = nil
	b.Take(c)
	until(t, b, Figures)
	assert.Panics(t, func() {
		for range 1000 {
			b.Next()
		}
	})
	assert.False(t, b.Known(Water))
	finish(b)
	assert.True(t, b.Known(Curve))
	b.Take(with(t, "depth", 13*inch))
	finish(b)
	assert.True(t, b.Known(Water), "another boat is tried again")
}

// What cannot wait is worked out at once, to the same.
func TestNeed(t *testing.T) {
	a, b := New(with(t), units.Imperial16), New(with(t), units.Imperial16)
	a.Next()
	a.Need(Figures)
	require.True(t, a.Known(Figures))
	finish(b)
	assert.Equal(t, b.Canoe().Skin.Flat.Length, a.Canoe().Skin.Flat.Length)
	a.Need(Water)
	assert.True(t, a.Known(Water))
}

// turns works on to the end, by a clock that stands still.
func turns(t *testing.T, b *Boat) (became, followed []Piece) {
	t.Helper()
	for range 100 {
		turn := b.Turn(func() float64 { return 0 })
		became = append(became, turn.Became...)
		if turn.Follow {
			followed = append(followed, became...)
		}
		if len(turn.Became) > 0 && turn.Became[0] == Drawing {
			assert.Equal(t, RestDelay, turn.Wait, "the picture first")
		}
		if turn.Done {
			return became, followed
		}
	}
	require.Fail(t, "it never ends")
	return nil, nil
}

// What stands further down the page follows once, as soon as the water is known; where
// time is short a turn ends early.
func TestTurns(t *testing.T) {
	b := New(with(t), units.Imperial16)
	became, followed := turns(t, b)
	assert.Equal(t, []Piece{Figures, Water, Curve}, became)
	assert.Equal(t, []Piece{Figures, Water}, followed)
	assert.True(t, b.Turn(func() float64 { return 0 }).Done)

	slow, ms := New(with(t), units.Imperial16), 0.0
	for range 5 {
		turn := slow.Turn(func() float64 { ms += turnLength / 2.; return ms })
		assert.Equal(t, Turn{}, turn, "a slice at a time, and the browser has its turn")
	}
	assert.False(t, slow.Known(Figures))

	assert.Equal(t, RestDelay, b.Stepped())
	assert.Equal(t, Turn{Follow: true}, b.Turn(func() float64 { return 0 }), "nothing is worked out anew")
	b.Take(with(t, "beam", 34*inch))
	b.Want(true)
	assert.Zero(t, b.Stepped(), "the picture is not put off")
}

// What sheets on hand make is worked out in slices. Cut off by a step that is taken back, it leaves what was known.
func TestSheetsCutOffLeaveWhatWasKnown(t *testing.T) {
	boat := func(width float64) core.Canoe {
		d := design.Default()
		d.OnHand = d.OnHand.Put(0, design.Sheet{Width: width * units.Inch, Length: 100 * units.Inch})
		return core.Evaluate(d)
	}
	b := New(boat(38), units.Imperial16)
	b.Need(Figures)
	b.Need(Makes)
	known := b.makes.Skin.Makes.Length
	b.Take(boat(60))
	for range 10_000 {
		if p, _, worked := b.Next(); !worked || b.Known(Makes) {
			require.Fail(t, "done in one slice", "%v", p)
		}
		if b.task != nil && b.task.piece == Makes {
			break
		}
	}
	require.NotNil(t, b.task)
	require.Equal(t, Makes, b.task.piece)
	b.Take(boat(38))
	require.True(t, b.Known(Makes))
	require.InDelta(t, known, b.makes.Skin.Makes.Length, 0)
}
