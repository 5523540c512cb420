package pattern_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/internal/check"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// Every page of every pattern of three boats: nothing outside it, no lettering over
// lettering, both bars whole and clear of everything else; as many as were announced.
// Breadths of lettering are those of a broad face.
func TestPagesInOrder(t *testing.T) {
	for name, d := range check.Extremes(t) {
		var all []pattern.Pattern
		c := evaluated(d)
		for _, k := range pattern.Kinds() {
			all = append(all, pattern.Make(c, k.Key, pattern.Options{System: units.Imperial16})...)
		}
		pages := pattern.Pages(all, head)
		assert.Len(t, pages, pattern.Count(all))
		for i, p := range pages {
			where := fmt.Sprintf("%s, page %d, %s", name, i+1, p.Title)
			inOrder(t, where, p)
			assert.Contains(t, lettering(p), fmt.Sprintf("page %d of %d", i+1, len(pages)), where)
		}
	}
}

func lettering(p draw.List) string {
	var b strings.Builder
	for _, op := range p.Ops {
		if text, ok := op.(draw.Text); ok {
			b.WriteString(text.Text + " ")
		}
	}
	return b.String()
}

func inOrder(t *testing.T, where string, p draw.List) {
	t.Helper()
	width, height := pattern.Paper.Page()
	page := draw.Box{Right: width, Bottom: height}
	drawn := draw.Box{Right: pattern.Paper.Width, Bottom: pattern.Paper.Height}
	const rounding = 1e-9
	within := func(b, o draw.Box) bool {
		return b.Left >= o.Left-rounding && b.Top >= o.Top-rounding && b.Right <= o.Right+rounding && b.Bottom <= o.Bottom+rounding
	}
	var texts []draw.Text
	bars := 0
	for _, op := range p.Ops {
		switch op := op.(type) {
		case draw.Text:
			assert.True(t, within(op.Bounds(), page), "%s: %q", where, op.Text)
			for _, o := range texts {
				assert.False(t, op.Bounds().Meets(o.Bounds()), "%s: %q over %q", where, op.Text, o.Text)
			}
			texts = append(texts, op)
		case draw.Stroke:
			assert.True(t, within(draw.BoxOf(op.Points), drawn), "%s: a line in the strip of the bars", where)
		case draw.Fill:
			b := draw.BoxOf(op.Points)
			assert.True(t, within(b, page), where)
			if long := max(b.Width(), b.Height()); math.Abs(long-150) < rounding || math.Abs(long-152.4) < rounding {
				bars++
				assert.False(t, b.Meets(drawn), "%s: a bar over the drawing", where)
				for _, text := range texts {
					assert.False(t, b.Meets(text.Bounds()), "%s: a bar over %q", where, text.Text)
				}
			}
		}
	}
	assert.Equal(t, 4, bars, where)
}

// Every label of every pattern stands whole on one of its pages, and there where no other
// page comes to lie on it.
func TestLabelsAreWhole(t *testing.T) {
	all := 0
	for name, d := range check.Extremes(t) {
		c := evaluated(d)
		for _, k := range pattern.Kinds() {
			for _, p := range pattern.Make(c, k.Key, pattern.Options{System: units.Imperial16}) {
				found := map[string]int{}
				tiles := p.Tiles(pattern.Paper)
				for _, x := range tiles {
					for _, l := range x.Labels {
						found[l.Text]++
						b := draw.Text{Text: l.Text, Size: max(l.Size, 12*25.4/72), At: draw.Point(l.At)}.Bounds()
						right, low := pattern.Paper.Width, pattern.Paper.Height
						if x.Col < x.Cols-1 {
							right -= pattern.Paper.Overlap
						}
						if x.Row < x.Rows-1 {
							low -= pattern.Paper.Overlap
						}
						if l.End {
							b.Left, b.Right = b.Left-b.Width(), b.Left
						}
						assert.True(t, b.Left >= 0 && b.Right <= right && l.At.Y-4 >= 0 && l.At.Y <= low,
							"%s, %s, %s: %q at %v", name, p.Name, x.ID(), l.Text, l.At)
					}
				}
				for _, l := range p.Labels {
					all++
					assert.Positive(t, found[l.Text], "%s, %s: %q", name, p.Name, l.Text)
				}
			}
		}
	}
	assert.Greater(t, all, 300)
}

// Small patterns stand together, each once, whole and at its size; the same note once.
func TestPacking(t *testing.T) {
	square := func(name string, size float64) pattern.Pattern {
		return pattern.Pattern{Key: name, Name: name, Note: "Cut it out.", Size: geom.Vec2{X: size, Y: size},
			Lines: []pattern.Line{{Points: []geom.Vec2{{}, {X: size}, {X: size, Y: size}, {Y: size}, {}}}}}
	}
	five := []pattern.Pattern{square("one", 40), square("two", 41), square("three", 42), square("four", 43), square("five", 44)}
	pages := pattern.Pages(five, head)
	require.Len(t, pages, 2, "the proof of scale, and one page for the five")
	inOrder(t, "five squares", pages[1])
	assert.Equal(t, 1, strings.Count(lettering(pages[1]), "Cut it out."))
	var sizes []float64
	for _, op := range pages[1].Ops {
		if s, ok := op.(draw.Stroke); ok {
			sizes = append(sizes, draw.BoxOf(s.Points).Width())
		}
	}
	assert.InDeltaSlice(t, []float64{40, 41, 42, 43, 44}, sizes, 1e-9)
	for _, name := range []string{"one", "two", "three", "four", "five"} {
		assert.Contains(t, lettering(pages[0]), name+": page 2")
	}
	assert.Empty(t, pattern.Pages(nil, head))
	// One broader than a page has two, and a map of them.
	assert.Len(t, pattern.Pages(append(five, square("six", 200)), head), 2+1+2)
}

// A page is left out where all that it has stands on its neighbours too, and a pattern is
// laid so that it takes as few as can be.
func TestPagesAreFew(t *testing.T) {
	line := func(to float64) pattern.Pattern {
		return pattern.Pattern{Lines: []pattern.Line{{Points: []geom.Vec2{{}, {X: to}}}}, Size: geom.Vec2{X: 300}}
	}
	assert.Len(t, line(300).Tiles(pattern.Paper), 2)
	assert.Len(t, line(100).Tiles(pattern.Paper), 1)
	// Begun at 12 mm this line would end on the second page's strip alone, 172 to 182 mm.
	assert.Len(t, line(165).Tiles(pattern.Paper), 1)
}
