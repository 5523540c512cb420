package pipeline

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/units"
)

// What nobody asks for is not worked out; what is asked for is of the boat in hand, a step makes it
// stale, and another control, lesson or boat of the lesson too.
func TestAsked(t *testing.T) {
	b := New(with(t), units.Imperial16)
	finish(b)
	assert.Nil(t, b.Strips())
	assert.Nil(t, b.Spreads())
	assert.Nil(t, b.Inches())
	assert.Nil(t, b.Taught())

	b.Ask(Asked{Control: "depth", Spreads: true, Inches: true, Lesson: "rocker", On: with(t).Design})
	finish(b)
	require.NotNil(t, b.Strips())
	assert.Equal(t, "depth", b.Strips().Param.Key)
	require.NotNil(t, b.Spreads())
	require.NotNil(t, b.Inches())
	require.NotNil(t, b.Taught())
	assert.Len(t, b.Taught().Canoes, len(b.Taught().Lesson.Steps)+1)

	b.Ask(Asked{Control: "beam", Lesson: "stem", On: with(t).Design})
	assert.Nil(t, b.Strips())
	assert.Nil(t, b.Taught())
	finish(b)
	assert.Equal(t, "beam", b.Strips().Param.Key)
	assert.Equal(t, "stem", b.Taught().Lesson.Key)

	b.Take(with(t, "depth", 13*inch))
	assert.Nil(t, b.Strips())
	assert.NotNil(t, b.Taught(), "it is of the boat asked for")
	b.Ask(Asked{Control: "beam", Lesson: "stem", On: with(t, "depth", 13*inch).Design})
	assert.Nil(t, b.Taught())
	finish(b)
	assert.InDelta(t, 13*inch, b.Taught().Canoes[0].Design.Depth, 1e-9)
	b.Ask(Asked{Control: "name"})
	finish(b)
	assert.Nil(t, b.Strips())
}

// A step cuts the strips off; they follow anew for the next boat.
func TestStepCutsStripsOff(t *testing.T) {
	b := New(with(t), units.Imperial16)
	finish(b)
	b.Ask(Asked{Control: "depth"})
	for range 5 {
		b.Next()
	}
	require.NotNil(t, b.task)
	assert.Equal(t, Strips, b.task.piece)
	b.Take(with(t, "beam", 34*inch))
	assert.Nil(t, b.task)
	finish(b)
	assert.InDelta(t, with(t, "beam", 34*inch).Design.Depth, b.Strips().Present(), 1e-9)
}

// Strips stand on the steps of the reader's units, and say their values in them.
func TestStripsFollowUnits(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Ask(Asked{Control: "depth"})
	finish(b)
	b.Measure(b.notebook, units.Metric)
	assert.False(t, b.Known(Strips))
	finish(b)
	require.NotNil(t, b.Strips())
	assert.Equal(t, units.Metric, b.Strips().System)
}

// A lesson is worked out on the boat that it is asked for, whatever is set or let go meanwhile; and the
// held boat's bark is laid flat, so that its numbers stand beside those of the boat in hand.
func TestHeldAndTaught(t *testing.T) {
	b := New(with(t), units.Imperial16)
	b.Hold(with(t, "depth", 14*inch))
	b.Ask(Asked{Lesson: "rocker", On: with(t, "depth", 14*inch).Design})
	finish(b)
	held, ok := b.HeldBoat()
	require.True(t, ok)
	assert.NotNil(t, held.Skin)
	assert.InDelta(t, 14*inch, b.Against().Design.Depth, 1e-9)
	assert.InDelta(t, 14*inch, b.Taught().Canoes[0].Design.Depth, 1e-9)
	b.Take(with(t, "beam", 34*inch))
	assert.NotNil(t, b.Taught())
	assert.NotNil(t, b.Against().Skin)
	assert.NotZero(t, b.WaterAgainst())
	b.LetGo()
	assert.NotNil(t, b.Taught())
	assert.Equal(t, with(t).Design, b.Against().Design)
}
