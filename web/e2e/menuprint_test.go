package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Printed from the browser's own menu a place stands whole on paper: the picture where it has
// one, and every table and chart, no lettering cut off at an edge or by what scrolls on the
// screen.
func TestPagePrintsWhole(t *testing.T) {
	p := open(t, desktop)
	for _, at := range []string{"rib", "season", "compare", "lessons"} {
		eval[bool](p, `document.querySelector('#notches [data-at=%s]').click(), true`, at)
		p.settle()
		p.wait(`!document.querySelector('#season:not([hidden]) #season-chart:empty, #compare:not([hidden]) #inches:empty')`)
		res, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: papers[0].width,
			PaperHeight: papers[0].height})
		require.NoError(t, err)
		pages := readPDF(t, res.Data)
		lines := 0
		for i, s := range pages {
			s.insideMargin(t, fmt.Sprintf("%s, page %d", at, i+1))
			lines += len(s.wholeLines(t, fmt.Sprintf("%s, page %d", at, i+1)))
		}
		assert.Greater(t, lines, 30, at)
	}
}
