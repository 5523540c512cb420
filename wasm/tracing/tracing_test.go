package tracing_test

import (
	"math"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/tracing"
	"barkwright/wasm/work"
)

// desk is a picture of 1000 by 600 pixels in a place of 500 by 400.
type desk struct {
	*testing.T
	*tracing.Tracing
	w *work.Work
}

func begin(t *testing.T) desk {
	d := desk{t, new(tracing.Tracing), work.New(design.Default(), units.Imperial16)}
	*d.Tracing = tracing.New()
	d.Open(d.w)
	d.Room(d.w, draw.Size{Width: 500, Height: 400})
	d.Show(d.w, 1000, 600)
	return d
}

// onPage is how far off a place read by the page's matrix may be, CSS pixels: it has six decimals,
// and half of the last one a thousand pixels along and six hundred down, and in the shift, is
// 0.0008. A pixel is an eighth of an inch at most where lengths are read.
const onPage = 1e-3

// on is where a pixel of the picture is shown, by the matrix that the page shows it with.
func (d desk) on(x, y float64) geom.Vec2 {
	var m [6]float64
	for i, n := range regexp.MustCompile(`-?[0-9.]+`).FindAllString(d.Window(d.w, true).Matrix, -1) {
		var err error
		m[i], err = strconv.ParseFloat(n, 64)
		require.NoError(d, err)
	}
	return geom.Vec2{X: m[0]*x + m[2]*y + m[4], Y: m[1]*x + m[3]*y + m[5]}
}

func (d desk) click(x, y float64) {
	p := tracing.Pointer{ID: 1, At: d.on(x, y)}
	d.Down(d.w, p)
	d.Up(d.w, p)
}

// scale presses what the view needs: a base line at y = 500, the middle at x = 500 and 8 ft
// over 800 pixels.
func (d desk) scale() {
	for _, at := range [][2]float64{{100, 500}, {900, 500}, {500, 300}, {100, 500}, {900, 500}} {
		d.click(at[0], at[1])
	}
	require.NoError(d, d.Type(d.w, tracing.Length, "8 ft"))
}

// points are those of the marks of what.
func (d desk) points(what string) []geom.Vec2 {
	var list []geom.Vec2
	if tr := d.w.Notebook.Tracing; tr != nil {
		for _, m := range tr.Marks {
			if m.What == what {
				for _, p := range m.Points {
					list = append(list, p.At)
				}
			}
		}
	}
	return list
}

func (d desk) near(want, got geom.Vec2) {
	d.Helper()
	assert.InDelta(d, 0, got.Sub(want).Len(), onPage, "%v", got)
}

// What a view needs is asked for in turn, and a height that is pressed is in the record; its
// row follows the point, and undo takes one step after another back.
func TestPressAndMove(t *testing.T) {
	d := begin(t)
	assert.Equal(t, record.BaseLine, d.Task)
	d.scale()
	assert.Empty(t, d.Task, "nothing is asked for any more")
	d.Choose(record.EndHeight.ID())
	d.click(880, 300)
	data := d.w.Measurements(work.Recorded)
	require.Len(t, data, 1)
	assert.InDelta(t, 24*units.Inch, data[0].Value, onPage*units.Inch)
	assert.NotZero(t, d.Held())

	at := d.on(880, 300)
	d.Down(d.w, tracing.Pointer{ID: 1, At: at.Add(geom.Vec2{X: 4})})
	for y := 300.0; y >= 250; y -= 10 {
		d.Move(d.w, tracing.Pointer{ID: 1, At: d.on(880, y).Add(geom.Vec2{X: 4})})
	}
	d.Up(d.w, tracing.Pointer{ID: 1, At: d.on(880, 250).Add(geom.Vec2{X: 4})})
	assert.InDelta(t, 30*units.Inch, d.w.Measurements(work.Recorded)[0].Value, onPage*units.Inch)
	d.Undo(d.w)
	assert.InDelta(t, 24*units.Inch, d.w.Measurements(work.Recorded)[0].Value, onPage*units.Inch, "the whole drag is one step")
	d.Undo(d.w)
	assert.Empty(t, d.w.Measurements(work.Recorded))
	assert.Empty(t, d.points(record.EndHeight.ID()))

	// A typed value is no more the picture's.
	d.Choose(record.EndHeight.ID())
	d.click(880, 300)
	typed := d.w.Measurements(work.Recorded)[0]
	typed.Value = 0.7
	d.w.PutMeasurement(work.Recorded, 0, typed)
	assert.Zero(t, d.w.Measurements(work.Recorded)[0].Mark)
	d.Key(d.w, "ArrowUp", true)
	assert.InDelta(t, 0.7, d.w.Measurements(work.Recorded)[0].Value, 0)
}

// Arrow keys move the point in hand by a pixel of the picture, the way they point as it is
// looked at; with Shift by ten.
func TestKeysMoveByAPixel(t *testing.T) {
	for _, c := range []struct {
		turns  int
		mirror bool
		right  geom.Vec2
	}{{0, false, geom.Vec2{X: 1}}, {1, false, geom.Vec2{Y: -1}}, {2, false, geom.Vec2{X: -1}}, {0, true, geom.Vec2{X: -1}}} {
		d := begin(t)
		if c.mirror {
			d.Mirror(d.w)
		}
		d.Turn(d.w, float64(c.turns)*math.Pi/2)
		d.click(400, 300)
		d.Key(d.w, "ArrowRight", false)
		d.Rest(d.w)
		d.near(geom.Vec2{X: 400, Y: 300}.Add(c.right), d.points(record.BaseLine)[0])
		d.Key(d.w, "ArrowLeft", true)
		d.near(geom.Vec2{X: 400, Y: 300}.Sub(c.right.Scale(9)), d.points(record.BaseLine)[0])
	}
}

// By keys alone: the cross goes to a place, Enter presses there, arrows move the point, Enter
// lets it go, Delete takes it off and Escape ends the task before it closes anything.
func TestKeysAlone(t *testing.T) {
	d := begin(t)
	for range 10 {
		took, _ := d.Key(d.w, "ArrowLeft", false)
		assert.True(t, took)
	}
	_, changed := d.Key(d.w, "Enter", false)
	assert.True(t, changed)
	// A hundred CSS pixels left of the middle.
	d.near(geom.Vec2{X: 500 - 100/0.48, Y: 300}, d.points(record.BaseLine)[0])
	assert.True(t, d.Window(d.w, true).Loupe.On)
	d.Key(d.w, "Enter", false)
	assert.Zero(t, d.Held())
	for range 20 {
		d.Key(d.w, "ArrowRight", false)
	}
	d.Key(d.w, "Enter", false)
	require.Len(t, d.points(record.BaseLine), 2)
	d.near(geom.Vec2{X: 500 + 100/0.48, Y: 300}, d.points(record.BaseLine)[1])
	d.Key(d.w, "Delete", false)
	assert.Empty(t, d.points(record.BaseLine))
	took, _ := d.Key(d.w, "Escape", false)
	assert.True(t, took)
	took, _ = d.Key(d.w, "Escape", false)
	assert.False(t, took, "the window closes on the next")
}

// Two fingers size the picture about what is under them and set nothing; a finger that is
// taken away by the browser leaves the point it dragged where it was.
func TestFingers(t *testing.T) {
	d := begin(t)
	a, b := d.on(400, 300), d.on(600, 300)
	finger := func(id int, at geom.Vec2) tracing.Pointer { return tracing.Pointer{ID: id, At: at, Finger: true} }
	d.Down(d.w, finger(1, a))
	d.Down(d.w, finger(2, b))
	d.Move(d.w, finger(2, b.Add(b.Sub(a))))
	d.near(a, d.on(400, 300))
	d.near(b.Add(b.Sub(a)), d.on(600, 300))
	d.Up(d.w, finger(2, b))
	d.Up(d.w, finger(1, a))
	assert.Empty(t, d.points(record.BaseLine))

	d.Whole(d.w)
	d.Down(d.w, finger(1, d.on(300, 300)))
	assert.True(t, d.Window(d.w, true).Loupe.On)
	d.Up(d.w, finger(1, d.on(300, 300)))
	assert.False(t, d.Window(d.w, true).Loupe.On)
	assert.InDelta(t, 1.5/0.48, d.w.Notebook.Tracing.Marks[0].Points[0].Held, 1e-9)
	d.Down(d.w, finger(1, d.on(300, 300)))
	d.Move(d.w, finger(1, d.on(350, 350)))
	d.near(geom.Vec2{X: 350, Y: 350}, d.points(record.BaseLine)[0])
	d.Cancel(d.w, finger(1, d.on(350, 350)))
	d.near(geom.Vec2{X: 300, Y: 300}, d.points(record.BaseLine)[0])
}

// With nothing to press the picture is moved, and the wheel brings it nearer where it points.
func TestLookedAt(t *testing.T) {
	d := begin(t)
	d.Choose("")
	was := d.on(500, 300)
	d.Down(d.w, tracing.Pointer{ID: 1, At: geom.Vec2{X: 10, Y: 10}})
	d.Move(d.w, tracing.Pointer{ID: 1, At: geom.Vec2{X: 40, Y: 20}})
	d.Up(d.w, tracing.Pointer{ID: 1, At: geom.Vec2{X: 40, Y: 20}})
	d.near(was.Add(geom.Vec2{X: 30, Y: 10}), d.on(500, 300))
	at := d.on(700, 200)
	d.Wheel(d.w, at, -100)
	d.near(at, d.on(700, 200))
	assert.Greater(t, d.on(701, 200).Sub(at).Len(), 0.5)
	assert.Nil(t, d.w.Notebook.Tracing, "to look at a picture changes nothing")
}

// A picture turned askew is brought level by its base line.
func TestLevel(t *testing.T) {
	d := begin(t)
	assert.False(t, d.Level(d.w))
	d.click(100, 300)
	d.click(900, 400)
	require.True(t, d.Level(d.w))
	assert.InDelta(t, d.on(100, 300).Y, d.on(900, 400).Y, onPage)
}

// Points stay over a picture of the same size, and those of another are let go with the first
// point on it; what was read stays.
func TestAnotherPicture(t *testing.T) {
	d := begin(t)
	d.scale()
	d.Choose(record.EndHeight.ID())
	d.click(880, 300)
	d.Show(d.w, 1000, 600)
	assert.Contains(t, d.Said, "lie over it again")
	assert.Len(t, d.points(record.BaseLine), 2)
	d.Show(d.w, 800, 600)
	assert.Contains(t, d.Said, "another size")
	assert.Len(t, d.points(record.BaseLine), 2)
	assert.Empty(t, d.Window(d.w, false).Marks)
	d.click(300, 300)
	assert.Len(t, d.points(record.BaseLine), 1)
	require.Len(t, d.w.Measurements(work.Recorded), 1)
	assert.Greater(t, d.w.Notebook.Tracing.Last, d.w.Measurements(work.Recorded)[0].Mark)
	d.Undo(d.w)
	assert.Len(t, d.points(record.BaseLine), 2)
}

// Fields say what they cannot read and change nothing then; where a section was taken goes
// into its rows.
func TestFields(t *testing.T) {
	d := begin(t)
	d.scale()
	for field, text := range map[tracing.Field]string{tracing.Length: "0", tracing.Line: "-1", tracing.High: "wide"} {
		was := d.w.Notebook
		assert.Error(t, d.Type(d.w, field, text), field)
		assert.Same(t, was, d.w.Notebook)
	}
	d.Choose(record.ThwartPosition.ID())
	d.click(700, 400)
	assert.Empty(t, d.w.Measurements(work.Recorded))
	assert.True(t, d.Window(d.w, false).Marks[3].Wrong, "a thwart has a number")
	assert.Error(t, d.Type(d.w, tracing.Place, "the next one"))
	require.NoError(t, d.Type(d.w, tracing.Place, "thwart 2"))
	require.Len(t, d.w.Measurements(work.Recorded), 1)
	assert.Equal(t, 2, d.w.Measurements(work.Recorded)[0].Number)

	d.ChooseView(d.w, record.InSection)
	d.click(300, 500)
	d.click(700, 500)
	d.click(500, 400)
	d.Choose(record.HalfBreadth.ID())
	require.NoError(t, d.Type(d.w, tracing.Place, "40 from the middle"))
	d.click(600, 400)
	data := d.w.Measurements(work.Recorded)
	require.Len(t, data, 2)
	assert.InDelta(t, 40*units.Inch, data[1].At.Distance, 1e-9)
	assert.InDelta(t, 12*units.Inch, data[1].At.Height, onPage*units.Inch)
}

// The lines drawn over a picture are the boat's own.
func TestOutlines(t *testing.T) {
	h := hull.New(design.Default())
	side := tracing.Outlines(h, record.FromSide, nil)
	for _, line := range side[:2] {
		for _, p := range line {
			assert.InDelta(t, h.TopEdge(math.Abs(p.X)), p.Y, 1e-12)
		}
	}
	far := 0.0
	for _, line := range side {
		for _, p := range line {
			far = max(far, p.X)
		}
	}
	assert.InDelta(t, h.Design.Length/2, far, units.Millimetre, "forty chords, to the foremost point")
	section := tracing.Outlines(h, record.InSection, []float64{0, 0.5})
	require.Len(t, section, 4)
	assert.InDelta(t, h.Design.Depth, section[0][len(section[0])-1].Y, 1e-9)
	for _, p := range tracing.Outlines(h, record.FromAbove, nil)[0] {
		assert.InDelta(t, h.HalfBeam(p.X), p.Y, 1e-12)
	}
}

// Another boat's points lie on its own picture: with one of another size shown, the window says
// so and shows none of them.
func TestAnotherBoat(t *testing.T) {
	d := begin(t)
	d.scale()
	assert.True(t, d.Lies(d.w))
	other := work.New(design.Default(), units.Imperial16)
	tr := record.NewTracing(800, 600, 0)
	other.Trace(tr.Put(record.Mark{View: record.FromSide, What: record.BaseLine}), false)
	d.Close()
	d.Open(other)
	assert.False(t, d.Lies(other))
	assert.Contains(t, d.Said, "another picture")
	assert.Empty(t, d.Window(other, false).Marks)
	d.Open(work.New(design.Default(), units.Imperial16))
	assert.Equal(t, record.BaseLine, d.Task)
}
