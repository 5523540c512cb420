package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/tracing"
	"barkwright/wasm/work"
)

// traced is a desk with a picture of 1000 by 500 pixels in its window, shown pixel for pixel.
func traced(t *testing.T) (*desk.Desk, *work.Work, func(x, y float64)) {
	d, w := open(&memory.Store{})
	d.Trace("open")
	_, _, err := d.Decoded("image/png", 1000, 500)
	require.NoError(t, err)
	d.Tracing().Room(w, draw.Size{Width: 1000 / 0.96, Height: 500 / 0.96})
	corner := geom.Vec2{X: 0.02 / 0.96 * 1000, Y: 0.02 / 0.96 * 500}
	return d, w, func(x, y float64) {
		p := tracing.Pointer{At: geom.Vec2{X: x, Y: y}.Add(corner)}
		d.Tracing().Down(w, p)
		d.Tracing().Up(w, p)
	}
}

// The window asks for what it needs, sends the user to what is to be typed, says at its field
// what cannot be read, and shows each point with its row and the fitted boat's difference.
func TestTracingWindow(t *testing.T) {
	d, w, click := traced(t)
	shown := d.TracingWindow(draw.Screen(), false)
	assert.Contains(t, shown.Slots["tracing-ask"], "Base line")
	for _, at := range [][2]float64{{100, 400}, {900, 400}, {500, 300}, {100, 400}, {900, 400}} {
		click(at[0], at[1])
	}
	shown = d.TracingWindow(draw.Screen(), false)
	assert.Equal(t, "tracing-length", shown.Focus)
	assert.Empty(t, d.TracingWindow(draw.Screen(), false).Focus, "once")
	assert.False(t, shown.Hidden["tracing-length-control"])
	r := d.TypeTraced(tracing.Length, "long")
	assert.False(t, r.Changed)
	assert.True(t, r.Invalid["tracing-length"])
	assert.Contains(t, said(r, "tracing-fault"), "long")
	r = d.TypeTraced(tracing.Length, "16 ft")
	assert.True(t, r.Changed)
	assert.False(t, r.Invalid["tracing-length"])

	d.Trace("task:" + record.EndHeight.ID())
	click(880, 280)
	require.Len(t, w.Measurements(work.Recorded), 1)
	d.Tracing().Fit(w)
	shown = d.TracingWindow(draw.Screen(), false)
	assert.Contains(t, shown.Slots["tracing-marks"], "2&#39; 4 13/16&#34;")
	assert.Contains(t, shown.Slots["tracing-marks"], "the fitted boat </span>")
	assert.Contains(t, shown.Slots["easel-over"], "stroke-dasharray")
	d.Trace("over:false")
	assert.NotContains(t, d.TracingWindow(draw.Screen(), false).Slots["easel-over"], "stroke-dasharray")
	d.Trace("undo")
	assert.Empty(t, w.Measurements(work.Recorded))
	d.Trace("close")
	assert.False(t, d.TracingWindow(draw.Screen(), true).Open)
}

// A picture is kept with the boat only where its user asks, no larger than it may be, and a
// file without ticks and notes goes without it.
func TestPictureIsKeptWhenAsked(t *testing.T) {
	d, _, click := traced(t)
	click(100, 400)
	const picture = "data:image/jpeg;base64,AAAA"
	saved := func(what string) string { return d.Keep(what, 0, "").Save.Text }
	assert.NotContains(t, saved("save-file"), "data:image")
	assert.Contains(t, saved("save-file"), `"tracing"`)
	assert.False(t, d.KeepPicture("data:image/jpeg;base64,"+strings.Repeat("A", record.MostPicture), 1600, 800).Changed)
	assert.True(t, d.KeepPicture(picture, 800, 400).Changed)
	assert.Contains(t, d.Tracing().Said, "800 by 400")
	assert.Contains(t, saved("save-file"), picture)
	assert.NotContains(t, saved("save-bare"), "data:image")
	assert.Contains(t, saved("save-file"), picture, "the boat in hand keeps it")
	d.Trace("forget")
	assert.NotContains(t, saved("save-file"), "data:image")
}

// What is no picture is named, and the one that is shown stays.
func TestNoPicture(t *testing.T) {
	d, w, _ := traced(t)
	_, r, ok := d.PictureKind([]byte("a text"))
	assert.False(t, ok)
	assert.Equal(t, tracing.ErrKind.Error(), said(r, "tracing-said"))
	_, _, err := d.Decoded("image/png", 0, 0)
	assert.ErrorIs(t, err, tracing.ErrEmpty)
	assert.Equal(t, "1000px", d.TracingWindow(draw.Screen(), true).Width)
	assert.Nil(t, w.Notebook.Tracing)
}
