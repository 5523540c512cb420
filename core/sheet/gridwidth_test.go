package sheet

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Columns are never broader together than the table, each has its widest word, and however
// they share what is left, the way taken makes the table as low as any.
func TestColumnsShareTheBreadth(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	f := &flow{fit: fits[0], width: pageWidth}
	for range 100 {
		g := grid{}
		columns := 1 + r.IntN(6)
		for range columns {
			g.head = append(g.head, strings.Repeat("head ", 1+r.IntN(4)))
		}
		for range 1 + r.IntN(12) {
			var row []square
			for range columns {
				row = append(row, square{text: strings.Repeat("word ", r.IntN(14)), words: true})
			}
			g.rows = append(g.rows, row)
		}
		size, widths := f.gridWidths(g)
		needs := gridNeeds(g, size)
		all := 0.0
		for i, w := range widths {
			all += w
			assert.GreaterOrEqual(t, w, needs[i].least-1e-9)
		}
		assert.InDelta(t, pageWidth, all, rounding)
		for _, way := range ways {
			assert.LessOrEqual(t, f.gridHeight(g, widths, size), f.gridHeight(g, shared(needs, f.width, way), size)+1e-9)
		}
	}
}

// A short word in every row is not broken for a long one in a few.
func TestShortWordsAreNotBroken(t *testing.T) {
	g := grid{head: []string{"Day", "Task", "Beware"}}
	for i := range 20 {
		row := []square{{text: "day 16", words: true}, {text: "Carry the cedar out", words: true}, {words: true}}
		if i == 3 {
			row[2].text = strings.Repeat("easiest over frozen ground; ", 12)
		}
		g.rows = append(g.rows, row)
	}
	f := &flow{fit: fits[0], width: pageWidth}
	size, widths := f.gridWidths(g)
	one := f.gridRow(g.rows[0][:1], widths[:1], size).high
	for i, r := range g.rows {
		if i != 3 {
			assert.InDelta(t, one, f.gridRow(r, widths, size).high, 1e-9, "row %d", i)
		}
	}
}
