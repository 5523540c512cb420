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

// Where Choose shows, sheets are printed without the plan: nothing of the page itself is on that paper. The page
// of what the boat asks is printed once its plan is known, and says so until then.
func TestPlanHoldsNoPrintUp(t *testing.T) {
	p := open(t, desktop.at("choose"))
	eval[bool](p, `window.printed = [], window.print = () => {
		dispatchEvent(new Event('beforeprint'));
		printed.push(document.getElementById('print').textContent);
		dispatchEvent(new Event('afterprint'));
	}, true`)
	eval[bool](p, `document.querySelector('[data-print="choose"]').click(), true`)
	p.wait(`printed.length === 1`)
	assert.Empty(t, eval[string](p, `document.getElementById('asks-table').textContent`))
	says := eval[string](p, `document.querySelector('[data-season=asks]').click(), document.getElementById('asks-says').textContent`)
	assert.Contains(t, says, "printed as soon as it stands")
	p.wait(`printed.length === 2 && printed[1].includes('likely ')`)
	assert.Empty(t, eval[string](p, `document.getElementById('asks-says').textContent`))
	// The browser's own menu waits for it a moment at the most.
	eval[bool](p, `window.print(), true`)
	assert.Contains(t, eval[string](p, `document.getElementById('asks-table').textContent`), "likely ")
}
