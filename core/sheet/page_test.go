package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/core/internal/check"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// page is what fits A4 and Letter alike inside margins of 9 mm.
var page = draw.Box{Right: 190, Bottom: 259}

// Every page of every build sheet of three boats: nothing outside the page, no lettering
// over lettering, no line through it, and on the last page of several something worth a
// page. Breadths are those of a broad face.
func TestPagesInOrder(t *testing.T) {
	atEveryStage(t, func(where string, j sheet.Job, key stage.Key) {
		j.Sheets = []stage.Key{key}
		pages := sheet.BuildSheets(j)
		for i, p := range pages {
			where := where + ", " + p.Title
			inOrder(t, where, p)
			if len(pages) > 1 {
				assert.Greater(t, lowest(p), 0.25*page.Bottom, where)
			}
			assert.Contains(t, p.Title, fmt.Sprintf("page %d of %d", i+1, len(pages)))
		}
	})
}

// atEveryStage tries three boats of long names in both systems.
func atEveryStage(t *testing.T, try func(where string, j sheet.Job, key stage.Key)) {
	t.Helper()
	for name, d := range check.Extremes(t) {
		j := everything()
		j.Canoe = evaluated(d)
		j.Head.Boat = "Invented " + name +
			" canoe with a name that is longer than most of those that builders give to their boats, and more"
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			j.System = s
			for _, key := range stage.Keys() {
				try(fmt.Sprintf("%s, %s", name, key), j, key)
			}
		}
	}
}

func inOrder(t *testing.T, where string, p draw.List) {
	t.Helper()
	assert.Equal(t, page, draw.Box{Right: p.Width, Bottom: p.Height})
	var texts []draw.Text
	for _, op := range p.Ops {
		switch op := op.(type) {
		case draw.Text:
			assert.True(t, op.Bounds().Within(page), "%s: %q", where, op.Text)
			for _, o := range texts {
				assert.False(t, op.Bounds().Meets(o.Bounds()), "%s: %q over %q", where, op.Text, o.Text)
			}
			texts = append(texts, op)
		case draw.Stroke:
			b := draw.BoxOf(op.Points)
			assert.True(t, b.Within(page), "%s: line %v", where, b)
		}
	}
	for _, op := range p.Ops {
		line, ok := op.(draw.Stroke)
		for i := 1; ok && i < len(line.Points); i++ {
			b := draw.BoxOf(line.Points[i-1 : i+1])
			for _, text := range texts {
				assert.False(t, text.Bounds().Meets(b), "%s: a line through %q", where, text.Text)
			}
		}
	}
}

// lowest is how far down the page anything stands.
func lowest(p draw.List) float64 {
	low := 0.0
	for _, op := range p.Ops {
		switch op := op.(type) {
		case draw.Text:
			low = max(low, op.Bounds().Bottom)
		case draw.Stroke:
			low = max(low, draw.BoxOf(op.Points).Bottom)
		}
	}
	return low
}

// A drawing stands on its stage's sheet, no broader than it, with its caption and its key.
func TestFiguresStandOnTheirSheets(t *testing.T) {
	drawing := draw.List{Width: 718, Height: 100, Title: "A square", Key: []draw.KeyEntry{{Number: 1, Text: "corner"}}}
	drawing.Add(draw.Stroke{Role: draw.Seam, Width: 1, Points: []draw.Point{{X: 0, Y: 0}, {X: 718, Y: 100}}})
	j := everything()
	j.Figures = func(k stage.Key, _ float64) []sheet.Figure {
		if k == stage.Bed {
			return []sheet.Figure{{Caption: "A caption.", Drawing: drawing}}
		}
		return nil
	}
	assert.NotContains(t, words(j, stage.Bark), "A caption")
	assert.Contains(t, words(j, stage.Bed), "A caption. Key: 1 corner.")
	j.Sheets = []stage.Key{stage.Bed}
	found := 0
	for _, op := range sheet.BuildSheets(j)[0].Ops {
		if s, ok := op.(draw.Stroke); ok && s.Role == draw.Seam {
			found++
			b := draw.BoxOf(s.Points)
			// 96 CSS pixels are 25.4 mm.
			assert.InDelta(t, 718*25.4/96, b.Width(), 1e-9)
			assert.True(t, b.Within(page))
		}
	}
	assert.Equal(t, 1, found)
}

// Notes of any length go on over as many pages as they need, whole.
func TestLongNotesGoOn(t *testing.T) {
	j := everything()
	j.Canoe.Design.Notes = strings.Repeat("A long note about nothing much. ", 500) + "The end."
	j.Sheets = []stage.Key{stage.Choose}
	pages := sheet.BuildSheets(j)
	assert.Equal(t, 500, strings.Count(lettering(pages), "nothing"))
	for _, p := range pages {
		inOrder(t, p.Title, p)
	}
}
