package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/weigh"
)

// What a change costs goes on one page however much differs: the largest first, each once, the
// least left out and counted.
func TestCostsOnOnePage(t *testing.T) {
	j := everything()
	for _, n := range []int{0, 1, 5, 20, 60} {
		drawing := draw.List{Width: 718, Height: 210, Title: "Two boats"}
		c := sheet.Costs{
			Against: "the boat as opened",
			From:    func(weigh.Row) string { return strings.Repeat("1/2\" longer from length; ", 3) },
			Boats:   sheet.Figure{Caption: "Dashed: the boat held.", Drawing: drawing},
		}
		keys := stage.Keys()
		for i := range n {
			c.Rows = append(c.Rows, weigh.Row{
				Key: fmt.Sprint(i), Name: fmt.Sprintf("invented %d of them, long", i), Home: keys[i%len(keys)],
				Held: "1' 2\"", Now: "1' 3\"", Change: "1\" longer", Score: float64(2 + n - i),
			})
			if i < 5 {
				c.Most = append(c.Most, i)
				label := fmt.Sprintf("control %d", i)
				c.Controls = append(c.Controls, weigh.Control{Label: label, Held: "1\"", Now: "2\"", Change: "+1\""})
			}
		}
		pages := sheet.CostsSheet(j, c)
		assert.Len(t, pages, 1)
		inOrder(t, fmt.Sprint(n), pages[0])
		said := pages[0].Description
		shown := 0
		for i := range n {
			times := strings.Count(said, fmt.Sprintf("invented %d of", i))
			assert.LessOrEqual(t, times, 1)
			if times == 1 {
				assert.Equal(t, i, shown, "the larger ones stand")
				shown++
			}
		}
		if shown < n {
			assert.Contains(t, said, fmt.Sprintf("%d more changed less", n-shown))
			assert.Greater(t, lowest(pages[0]), 0.85*page.Bottom, "of as many as there is room for")
		}
		assert.GreaterOrEqual(t, shown, min(n, 12))
	}
}
