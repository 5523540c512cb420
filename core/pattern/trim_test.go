package pattern_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

var (
	svgPath = regexp.MustCompile(`<path d="(M[^"Zhv]*)"[^>]*stroke-width="([0-9.]+)"`)
	svgSize = regexp.MustCompile(`width="([0-9.]+)mm" height="([0-9.]+)mm" viewBox="0 0 ([0-9.]+) ([0-9.]+)"`)
)

// cutLine reads a drawing back: the points of its first whole line, in mm, after the
// drawing's own word that a unit of it is a millimetre.
func cutLine(t *testing.T, svg string) []geom.Vec2 {
	t.Helper()
	size := svgSize.FindStringSubmatch(svg)
	require.NotNil(t, size)
	require.Equal(t, size[1:3], size[3:5], "true millimetres")
	for _, path := range svgPath.FindAllStringSubmatch(svg, -1) {
		if path[2] != "0.5" {
			continue
		}
		var points []geom.Vec2
		for _, pair := range strings.FieldsFunc(path[1], func(r rune) bool { return r == 'M' || r == 'L' }) {
			x, y, _ := strings.Cut(pair, " ")
			points = append(points, geom.Vec2{X: number(t, x), Y: number(t, y)})
		}
		if len(points) > 100 {
			return points
		}
	}
	require.Fail(t, "no whole line")
	return nil
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}

// The trim line as written, read back off the drawing and laid with its heel on the
// heel, lies within 0.01 mm of the end's own curve all along, and the curve nowhere
// farther from it: the drawing's thousandths and its 240 straight pieces leave that much.
func TestTrimPatternIsTheEndsCurve(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		c := evaluated(d)
		patterns := pattern.Make(c, "trim", pattern.Options{System: units.Metric})
		require.Len(t, patterns, 1)
		var b strings.Builder
		require.NoError(t, patterns[0].SVG(&b, pattern.Head{Boat: "Heron Cove, first canoe"}))
		points := cutLine(t, b.String())
		h := c.Hull
		heel := geom.Vec2{X: h.HeelX, Y: h.Design.Rocker}
		var curve []geom.Vec2
		for i := range 20001 {
			q := h.End.At(float64(i) / 20000).Sub(heel)
			curve = append(curve, geom.Vec2{X: q.X * 1000, Y: -q.Y * 1000}.Add(points[0]))
		}
		worst := 0.0
		for i := 0; i < len(points); i += 5 {
			worst = max(worst, nearest(points[i], pattern.Line{Points: curve}))
		}
		for i := 0; i < len(curve); i += 67 {
			worst = max(worst, nearest(curve[i], pattern.Line{Points: points}))
		}
		assert.LessOrEqual(t, worst, 0.01, d.Name)
	}
}

// One cross a stitch, each its own distance inside the line, and three lashings.
func TestTrimPatternMarks(t *testing.T) {
	c := evaluated(design.Default())
	p := pattern.Make(c, "trim", pattern.Options{System: units.Imperial16})[0]
	k := c.Frame.Closing
	arms := 0
	for _, l := range p.Lines[4:] {
		middle := l.Points[0].Lerp(l.Points[1], 0.5)
		if l.Points[1].Sub(l.Points[0]).Len() < 5 {
			arms++
			assert.InDelta(t, k.HoleIn*1000, nearest(middle, p.Lines[0]), 0.02, "chords of 4 mm in arcs of 100 mm and more")
		}
	}
	assert.Equal(t, 2*k.Stitches(), arms)
	assert.Len(t, p.Lines[4:], arms+len(k.Lashings))
	for _, q := range p.Lines[1].Points {
		assert.InDelta(t, k.Leave*1000, nearest(q, p.Lines[0]), 0.02, "chords of 4 mm in arcs of 100 mm and more")
	}
	assert.Empty(t, pattern.Make(c, "no such", pattern.Options{}))
}
