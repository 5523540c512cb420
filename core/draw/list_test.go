package draw_test

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
)

func square(x, y, side float64) []draw.Point {
	return []draw.Point{{X: x, Y: y}, {X: x + side, Y: y}, {X: x + side, Y: y + side}, {X: x, Y: y + side}}
}

// sample holds every kind of operation once.
func sample() draw.List {
	l := draw.List{Width: 120, Height: 80, Title: `Two <ribs> & a "thwart"`, Description: "A test picture."}
	l.Add(
		draw.Text{Role: draw.Ink, Text: "a < b & c", At: draw.Point{X: 20, Y: 30}, Anchor: draw.Middle, Size: 12,
			Angle: math.Pi / 2, Bold: true, Halo: draw.Paper},
		draw.Fill{Role: draw.Bark, Points: square(10, 10, 20)},
		draw.Hatch{Role: draw.Warn, Points: square(10, 10, 20), Spacing: 5, Width: 1, Angle: 0},
		draw.Stroke{Role: draw.Ink, Points: square(10, 10, 20), Width: 1.5, Dash: []float64{4, 3}, Closed: true},
	)
	l.Touch("rib.1", true, square(10, 10, 20)...)
	l.Touch("rib.2", true, square(25, 10, 20)...)
	l.Touch("keel", false, draw.Point{X: 0, Y: 60}, draw.Point{X: 100, Y: 60})
	return l
}

func TestHit(t *testing.T) {
	l := sample()
	for _, c := range []struct {
		name string
		at   draw.Point
		want string
	}{
		{"inside one", draw.Point{X: 15, Y: 15}, "rib.1"},
		{"inside two, the later wins", draw.Point{X: 27, Y: 15}, "rib.2"},
		{"near a line", draw.Point{X: 50, Y: 65}, "keel"},
		{"just outside an outline", draw.Point{X: 6, Y: 15}, "rib.1"},
		{"past the end of a line", draw.Point{X: 104, Y: 60}, "keel"},
		{"too far from everything", draw.Point{X: 60, Y: 45}, ""},
	} {
		got, ok := l.Hit(c.at, 8)
		assert.Equal(t, c.want, got, c.name)
		assert.Equal(t, c.want != "", ok, c.name)
	}
	_, ok := draw.List{}.Hit(draw.Point{}, 8)
	assert.False(t, ok, "an empty picture")
}

// A square of side 20 hatched every 5 has lines 20 long; turned 45 degrees the
// lines together keep area over spacing, 400/5, to within one line's length.
func TestHatchLines(t *testing.T) {
	level := draw.Hatch{Points: square(1, 1, 20), Spacing: 5}.Lines()
	require.Len(t, level, 4)
	for i, line := range level {
		assert.InDelta(t, 20, line[1].X-line[0].X, 1e-9)
		assert.InDelta(t, float64(5*(i+1)), line[0].Y, 1e-9)
	}
	total := 0.0
	for _, line := range (draw.Hatch{Points: square(1, 1, 20), Spacing: 1, Angle: math.Pi / 4}).Lines() {
		total += math.Hypot(line[1].X-line[0].X, line[1].Y-line[0].Y)
	}
	// The lines' lengths over where they lie are a roof of slope 2. The trapezoidal rule is off by an
	// eighth of the change of slope at each of its corners at most: 2, 4 and 2.
	assert.InDelta(t, 400, total, 1)
	hollow := []draw.Point{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 5, Y: 2}, {X: 0, Y: 10}}
	assert.Len(t, draw.Hatch{Points: hollow, Spacing: 6}.Lines(), 2+1,
		"a line through both horns is two, one below them is one")
	assert.Empty(t, draw.Hatch{Points: hollow}.Lines(), "no spacing, no lines")
}

func TestDump(t *testing.T) {
	var b strings.Builder
	require.NoError(t, sample().Dump(&b))
	assert.Equal(t, `list 120 80 "Two <ribs> & a \"thwart\""
text ink 12 middle 1.57 20,30 "a < b & c"
fill bark 10,10 30,10 30,30 10,30
hatch warn 1 every 5 at 0.00 10,10 30,10 30,30 10,30
stroke ink 1.5 dash 4 3 closed 10,10 30,10 30,30 10,30
part rib.1 10,10 30,10 30,30 10,30
part rib.2 25,10 45,10 45,30 25,30
part keel 0,60 100,60
`, b.String())

	b.Reset()
	near := draw.List{Width: -0.01}
	near.Add(draw.Stroke{Role: draw.Ink, Points: []draw.Point{{X: 1.9999999, Y: -1e-12}}, Width: 2})
	require.NoError(t, near.Dump(&b))
	assert.Equal(t, "list 0 0 \"\"\nstroke ink 2 2,0\n", b.String(), "last bits do not show, nor a minus before nought")
}

func TestSVG(t *testing.T) {
	var b strings.Builder
	require.NoError(t, draw.SVG{Palette: draw.Screen(), ID: "top", MillimetresPerUnit: 0.5}.Write(&b, sample()))
	text := b.String()

	decoder := xml.NewDecoder(strings.NewReader(text))
	var order []string
	attributes := map[string]string{}
	for {
		token, err := decoder.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err, "well-formed XML")
		if start, ok := token.(xml.StartElement); ok {
			order = append(order, start.Name.Local)
			for _, a := range start.Attr {
				attributes[start.Name.Local+"."+a.Name.Local] = a.Value
			}
		}
	}
	assert.Equal(t, []string{"svg", "title", "desc", "path", "path", "path", "text"}, order, "labels lie on top")
	assert.Equal(t, "img", attributes["svg.role"])
	assert.Equal(t, "top-title top-desc", attributes["svg.aria-labelledby"])
	assert.Equal(t, "0 0 120 80", attributes["svg.viewBox"])
	assert.Equal(t, "60mm", attributes["svg.width"])
	assert.Equal(t, "40mm", attributes["svg.height"])
	assert.Equal(t, "rotate(90 20 30)", attributes["text.transform"])
	assert.Equal(t, "M10 10L30 10L30 30L10 30Z", attributes["path.d"], "the dashed outline, last of the paths")
	assert.Equal(t, "4 3", attributes["path.stroke-dasharray"])
	assert.Contains(t, text, "<title id=\"top-title\">Two &lt;ribs&gt; &amp; a &#34;thwart&#34;</title>")

	assert.ErrorIs(t, draw.SVG{Palette: draw.Screen()}.Write(full{}, sample()), errFull)
}

// On a screen a polygon and its outline are one element, as are runs that look the same, but
// for filled ones whose boxes meet; what is seen keeps its order. In millimetres each stays.
func TestSVGPathsJoined(t *testing.T) {
	ring := func(x float64, fill bool) []draw.Op {
		line := draw.Stroke{Role: draw.Ink, Points: square(x, 0, 10), Width: 2, Closed: true}
		if !fill {
			return []draw.Op{line}
		}
		return []draw.Op{draw.Fill{Role: draw.Bark, Points: square(x, 0, 10)}, line}
	}
	var l draw.List
	l.Add(ring(0, true)...)
	l.Add(ring(12.5, true)...) // half a pixel from the line before
	l.Add(ring(24, true)...)   // the lines meet
	l.Add(ring(0, false)...)
	l.Add(ring(5, false)...)
	l.Add(draw.Fill{Role: draw.Ink, Points: square(0, 20, 10)}, draw.Fill{Role: draw.Ink, Points: square(20, 20, 10)},
		draw.Fill{Role: draw.Ink, Points: square(25, 20, 10)})
	l.Add(draw.Stroke{Role: draw.Ink, Points: square(25, 20, 10), Width: 2})
	moves := func(s draw.SVG) (starts []int) {
		var b strings.Builder
		require.NoError(t, s.Write(&b, l))
		for _, element := range strings.Split(b.String(), "<path")[1:] {
			starts = append(starts, strings.Count(element, "M"))
		}
		return starts
	}
	assert.Equal(t, []int{2, 1, 2, 2, 1, 1}, moves(draw.SVG{Palette: draw.Screen()}), "an open line is no outline")
	assert.Len(t, moves(draw.SVG{Palette: draw.Screen(), MillimetresPerUnit: 1}), len(l.Ops))
}

var errFull = errors.New("disk full")

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

// A surface is touched only where no part on it is within reach.
func TestHitOnASurface(t *testing.T) {
	square := []draw.Point{{X: 0, Y: 0}, {X: 100, Y: 0}, {X: 100, Y: 100}, {X: 0, Y: 100}}
	l := draw.List{Parts: []draw.Part{
		{Name: "line", Points: []draw.Point{{X: 50, Y: 0}, {X: 50, Y: 100}}},
		{Name: "surface", Points: square, Closed: true, Under: true},
	}}
	for x, want := range map[float64]string{20: "surface", 45: "line", 105: ""} {
		name, ok := l.Hit(draw.Point{X: x, Y: 40}, 6)
		assert.Equal(t, want, name)
		assert.Equal(t, want != "", ok)
	}
}

// Of what lies under a surface that hides it nothing is touched there, a line on the surface is.
func TestHitOnASurfaceThatHides(t *testing.T) {
	square := []draw.Point{{X: 0, Y: 0}, {X: 100, Y: 0}, {X: 100, Y: 100}, {X: 0, Y: 100}}
	l := draw.List{Parts: []draw.Part{
		{Name: "under", Points: []draw.Point{{X: 20, Y: 20}, {X: 140, Y: 20}, {X: 140, Y: 60}, {X: 20, Y: 60}}, Closed: true},
		{Name: "surface", Points: square, Closed: true, Under: true, Hides: true},
		{Name: "line", Points: []draw.Point{{X: 50, Y: 0}, {X: 50, Y: 100}}},
	}}
	for x, want := range map[float64]string{30: "surface", 45: "line", 120: "under", 200: ""} {
		name, ok := l.Hit(draw.Point{X: x, Y: 40}, 6)
		assert.Equal(t, want, name)
		assert.Equal(t, want != "", ok)
	}
}
