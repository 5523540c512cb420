package record_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/core/trace"
)

// scaled is a tracing of a view at 2 mm a pixel, whose middle lies on the base line at
// (500, 800).
func scaled(v record.View) record.Tracing {
	t := record.NewTracing(1000, 1000, 0)
	t = press(t, v, record.BaseLine, nil, 100, 800, 900, 800)
	t = press(t, v, record.MiddlePoint, nil, 500, 700)
	return press(t, v, record.LetteredSize, func(m *record.Mark) { m.Length = 1.6 }, 100, 800, 900, 800)
}

// press adds a mark with points, x and y in turn.
func press(t record.Tracing, v record.View, what string, change func(*record.Mark), at ...float64) record.Tracing {
	m := record.Mark{View: v, What: what}
	if change != nil {
		change(&m)
	}
	t = t.Put(m)
	for k := 0; k < len(at); k += 2 {
		t = t.Press(len(t.Marks)-1, k/2, geom.Vec2{X: at[k], Y: at[k+1]}, 0.5)
	}
	return t
}

// A row follows its point wherever that is moved, keeps what its user set, goes with it, and
// stays out once it was struck out.
func TestRowFollowsItsPoint(t *testing.T) {
	var n record.Notebook
	n = n.Traced(press(scaled(record.FromSide), record.FromSide, record.EndHeight.ID(), nil, 880, 500))
	require.Len(t, n.Record.Data, 1)
	d := n.Record.Data[0]
	assert.InDelta(t, 0.6, d.Value, 1e-9)
	assert.Equal(t, record.Forward, d.At.Side)
	assert.Equal(t, "read off a drawing", d.Note)
	assert.Positive(t, d.Tolerance)
	first := n

	n.Record.Data = []record.Datum{d}
	n.Record.Data[0].Locked, n.Record.Data[0].Note = true, "the head"
	n = n.Traced(n.Tracing.Move(3, 0, geom.Vec2{X: 880, Y: 450}, 0.5))
	assert.InDelta(t, 0.7, n.Record.Data[0].Value, 1e-9)
	assert.True(t, n.Record.Data[0].Locked)
	assert.Equal(t, "the head", n.Record.Data[0].Note)
	assert.Equal(t, 500.0, first.Tracing.Marks[3].Points[0].At.Y, "the tracing before is as it was")

	struck := n
	struck.Record.Data = nil
	assert.Empty(t, struck.Traced(n.Tracing.Move(3, 0, geom.Vec2{X: 880, Y: 440}, 0.5)).Record.Data)
	assert.Empty(t, n.Traced(n.Tracing.Drop(3, 0)).Record.Data)
	typed := n
	typed.Record.Data = []record.Datum{{Kind: record.EndHeight, Value: 0.66}}
	assert.Equal(t, typed.Record.Data, typed.Traced(n.Tracing.Drop(3, 0)).Record.Data, "what was typed stays")
}

// What is pressed before there is a scale comes into the record once there is one; until then
// it is refused by name, and rows that are there stay.
func TestScaleComesLast(t *testing.T) {
	v := record.FromSide
	tr := press(record.NewTracing(1000, 1000, 0), v, record.EndHeight.ID(), nil, 880, 500)
	var n record.Notebook
	for _, want := range []trace.Refusal{trace.NoBase, trace.NoMiddle, trace.NoSize} {
		n = n.Traced(tr)
		assert.Empty(t, n.Record.Data)
		_, err := n.Tracing.Read().Data(0)
		require.ErrorIs(t, err, want)
		switch want {
		case trace.NoBase:
			tr = press(*n.Tracing, v, record.BaseLine, nil, 100, 800, 900, 800)
		case trace.NoMiddle:
			tr = press(*n.Tracing, v, record.MiddlePoint, nil, 500, 700)
		case trace.NoSize:
			tr = press(*n.Tracing, v, record.LetteredSize, func(m *record.Mark) { m.Length = 1.6 }, 100, 800, 900, 800)
		}
	}
	n = n.Traced(tr)
	require.Len(t, n.Record.Data, 1)
	without := n.Traced(n.Tracing.Drop(3, -1))
	assert.Equal(t, n.Record.Data, without.Record.Data, "with its scale gone a row stays as it was read")
	square := *n.Tracing
	square.Sort = record.SetSquare
	_, err := square.Read().Data(0)
	assert.ErrorIs(t, err, trace.NoCorners)
}

// Points of a curve each have a row; one taken out takes its own row alone.
func TestPointsOfACurve(t *testing.T) {
	n := record.Notebook{}.Traced(press(scaled(record.FromSide), record.FromSide, "sheerCurve", nil, 500, 640, 600, 630,
		700, 610, 800, 560))
	require.Len(t, n.Record.Data, 4)
	assert.Equal(t, record.SheerHeight, n.Record.Data[2].Kind)
	assert.InDelta(t, 0.4, n.Record.Data[2].At.Distance, 1e-9)
	assert.InDelta(t, 0.38, n.Record.Data[2].Value, 1e-9)
	assert.Zero(t, n.Record.Data[0].At, "amidships")
	n = n.Traced(n.Tracing.Drop(3, 1))
	require.Len(t, n.Record.Data, 3)
	assert.InDelta(t, 0.38, n.Record.Data[1].Value, 1e-9)
	n = n.Traced(n.Tracing.Press(3, 1, geom.Vec2{X: 620, Y: 628}, 0.5))
	require.Len(t, n.Record.Data, 4)
	assert.InDelta(t, 0.24, n.Record.Data[3].At.Distance, 1e-9)
}

// One side of a half plan stands for both, and one end drawn for both ends; a whole one is
// pressed on both sides and has its ends apart.
func TestHalfPlan(t *testing.T) {
	whole := press(scaled(record.FromAbove), record.FromAbove, record.ClearWidth.ID(), nil, 300, 900, 300, 690)
	d := record.Notebook{}.Traced(whole).Record.Data[0]
	assert.InDelta(t, 0.42, d.Value, 1e-9)
	assert.InDelta(t, 0.4, d.At.Distance, 1e-9)
	assert.Equal(t, record.Aft, d.At.Side)
	half := scaled(record.FromAbove)
	half.Half[record.FromAbove] = true
	d = record.Notebook{}.Traced(press(half, record.FromAbove, record.ClearWidth.ID(), nil, 300, 690)).Record.Data[0]
	assert.InDelta(t, 0.44, d.Value, 1e-9)
	assert.InDelta(t, 0.4, d.At.Distance, 1e-9)
	assert.Equal(t, record.BothEnds, d.At.Side)
}

// A section traced round a quarter of a circle has its closed form's girth less what the bark
// turns through, and its half breadths where it stands steeper than 45 degrees. It is scaled
// by the sizes of the rest of the sheet.
func TestSectionIsTraced(t *testing.T) {
	tr := press(scaled(record.FromSide), record.InSection, record.BaseLine, nil, 200, 700, 800, 700)
	tr = press(tr, record.InSection, record.MiddlePoint, nil, 500, 300)
	const radius = 200.0
	var points []float64
	for i := range 13 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(i) / 12)
		points = append(points, 500-radius*sin, 700-radius*(1-cos))
	}
	tr = press(tr, record.InSection, "sectionCurve", func(m *record.Mark) { m.Number = 1 }, points...)
	data := record.Notebook{}.Traced(tr).Record.Data
	girth := data[len(data)-1]
	require.Equal(t, record.HalfGirth, girth.Kind)
	assert.Equal(t, 1, girth.Number)
	// The cubic leaves its two ends along their chords, so that it turns 3.3 degrees less at each
	// than the circle: 0.41 mm with bark so thick. Its length is short by 0.05 mm.
	assert.InDelta(t, math.Pi/2*(0.002*radius-design.Default().BarkThickness), girth.Value, 0.0004)
	require.Len(t, data, 7, "five of the points lean in, past the sixth, and the girth")
	for _, d := range data[:6] {
		require.Equal(t, record.HalfBreadth, d.Kind)
		up := 0.002*radius - d.At.Height
		assert.InDelta(t, math.Sqrt(0.16-up*up), d.Value, 1e-9)
	}
}

// Looked at upside down or turned over, a picture reads as it is looked at.
func TestLookedAt(t *testing.T) {
	tr := press(scaled(record.FromSide), record.FromSide, record.EndHeight.ID(), nil, 880, 500)
	tr.Turn = math.Pi
	data := record.Notebook{}.Traced(tr).Record.Data
	assert.InDelta(t, -0.6, data[0].Value, 1e-9)
	tr.Turn, tr.Mirrored = 0.3, true
	assert.InDelta(t, 0.6, record.Notebook{}.Traced(tr).Record.Data[0].Value, 1e-9)
	tr.Turn = math.Pi / 2
	_, err := tr.Read().Data(3)
	assert.ErrorIs(t, err, trace.NoUp)
}

// Everything that can be pressed is named once, and asks for something in every view.
func TestPresses(t *testing.T) {
	seen := map[string]bool{}
	for v := range record.Views {
		for _, p := range record.Presses(v, record.SetSquare) {
			seen[p.ID] = true
			q, ok := record.LookupPress(p.ID)
			require.True(t, ok)
			assert.Equal(t, p.Name, q.Name)
			assert.NotEmpty(t, p.Ask(v, true))
			assert.NotEmpty(t, p.Ask(v, false))
			assert.Equal(t, p.Curve, p.Points(false) == 0, p.ID)
		}
		assert.Len(t, record.Presses(v, record.Drawn), len(record.Presses(v, record.SetSquare))-1)
	}
	for _, k := range []record.Kind{record.HalfGirth, record.Bay, record.RibCount, record.StemLaminations} {
		assert.False(t, seen[k.ID()], "%v is traced, follows from others or is counted", k)
	}
}

// A height on a curve that rises is off by where it was taken too, and a point of the end by
// the larger of both ways.
func TestToleranceKnowsThePlace(t *testing.T) {
	within := func(what string, at ...float64) float64 {
		n := record.Notebook{}.Traced(press(scaled(record.FromSide), record.FromSide, what, nil, at...))
		return n.Record.Data[len(at)/4].Tolerance
	}
	flat := within("sheerCurve", 540, 790, 590, 790, 640, 790)
	steep := within("sheerCurve", 540, 840, 590, 790, 640, 740)
	// Near the middle and low, the paper counts for little. At 45 degrees the point's own place
	// and the middle's come in: 1 + 1/2 + 1 + 1 squares of a pixel in place of 1 + 1/2, where
	// the base line's two ends share in the half. The paper's 1 % of ten pixels adds 0.01 to either:
	// under half of a percent.
	assert.InEpsilon(t, math.Sqrt(3.5/1.5), steep/flat, 0.005)
	out := within(record.HeadboardPosition.ID(), 890, 790)
	assert.InDelta(t, out, within(record.EndPoint.ID(), 890, 790), 1e-9, "its place is known less well than its height")
}
