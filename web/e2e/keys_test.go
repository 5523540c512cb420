package e2e

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// stopShows tells of the element with the focus whether it can be seen and is seen
// to have it: WCAG 2.2 success criteria 2.4.7 and 2.4.11. Within a date the browser's own
// parts have it, and the field shows that.
const stopShows = `(e => {
	const s = getComputedStyle(e), r = e.getBoundingClientRect();
	const x = Math.min(Math.max(r.left + r.width / 2, 1), innerWidth - 2);
	const y = Math.min(Math.max(r.top + r.height / 2, 1), innerHeight - 2);
	const over = document.elementFromPoint(x, y);
	return (e.matches(':focus-visible') || e.type === 'date') && s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 &&
		r.width > 0 && r.height > 0 && r.bottom > 0 && r.top < innerHeight && (e.contains(over) || over.contains(e) ||
			[...e.labels ?? []].some(l => l.contains(over)));
})(document.activeElement)`

// keys types keys where the focus is.
func (p *tab) keys(keys string, options ...chromedp.KeyOption) {
	p.Helper()
	p.do(chromedp.KeyEvent(keys, options...))
}

// back is Tab with Shift held.
var back = chromedp.KeyModifiers(chromedp.ModifierShift)

// tabTo presses Tab, or Tab with what is held, until an element has the focus, and
// looks at each stop on the way.
func (p *tab) tabTo(selector string, held ...chromedp.KeyOption) {
	p.Helper()
	const most = 150
	for range most {
		p.keys(kb.Tab, held...)
		p.settle()
		if !eval[bool](p, stopShows) {
			assert.Fail(p, "the focus does not show", eval[string](p, `document.activeElement.outerHTML.slice(0, 120)`))
		}
		if eval[bool](p, `document.activeElement.matches(%q)`, selector) {
			return
		}
	}
	require.Fail(p, "never reached", selector)
}

// chosenFile answers the next question for a file with one, and tells whether it was
// asked.
func (p *tab) chosenFile(file string) <-chan bool {
	p.Helper()
	asked := make(chan bool, 1)
	require.NoError(p, chromedp.Listen(p.ctx, func(event any) {
		if e, ok := event.(*page.EventFileChooserOpened); ok {
			go func() {
				_, err := chromedp.Call(p.ctx, dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: []string{file},
					BackendNodeID: e.BackendNodeID})
				asked <- err == nil
			}()
		}
	}))
	_, err := chromedp.Call(p.ctx, page.SetInterceptFileChooserDialog, page.SetInterceptFileChooserDialogParams{Enabled: true})
	require.NoError(p, err)
	return asked
}

// From the page's top to a file saved, the boat changed and the file opened again,
// with keys only.
func TestSaveAndOpenByKeyboard(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push({name, text}), true`)
	first := p.shown("gunwale.length")
	p.tabTo(`[data-keep="save-file"]`)
	p.keys(" ")
	p.wait(`saved.length === 1`)
	file := filepath.Join(t.TempDir(), eval[string](p, `saved[0].name`))
	require.NoError(t, os.WriteFile(file, []byte(eval[string](p, `saved[0].text`)), 0o644))

	p.tabTo(`input[name="length"]`)
	p.keys(kb.ArrowRight + kb.ArrowRight)
	p.settle()
	longer := p.shown("gunwale.length")
	require.Greater(t, longer, first)
	p.keys("z", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.settle()
	require.Equal(t, first, p.shown("gunwale.length"), "undone by its keys")
	p.keys("y", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.settle()
	require.Equal(t, longer, p.shown("gunwale.length"), "and done again")

	asked := p.chosenFile(file)
	p.tabTo(`[data-keep="open-file"]`, back)
	p.keys(kb.Enter)
	select {
	case given := <-asked:
		require.True(t, given)
	case <-time.After(10 * time.Second):
		require.Fail(t, "the browser was not asked for a file")
	}
	p.wait(`document.getElementById('file-says').textContent.startsWith('Opened 1')`)
	assert.Equal(t, first, p.shown("gunwale.length"))
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`), "beside the one that was there")
	assert.Equal(t, "open-file", eval[string](p, `document.activeElement.dataset.keep`), "the focus stays where it was")
}

// From the page's top to a build sheet in the printer, with keys only: by way of
// the shed.
func TestPrintByKeyboard(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `window.asked = 0, window.print = () => asked++, true`)
	p.tabTo(`#notches [aria-current=true]`)
	p.keys(kb.ArrowLeft + kb.Enter)
	p.tabTo(`[data-paper="none"]`)
	p.keys(kb.Enter)
	p.tabTo(`input[value="sections"]`, back)
	p.keys(" ")
	p.tabTo(`#section-ribs`)
	p.keys("3, 5")
	p.tabTo(`[data-paper="print"]`)
	p.keys(" ")
	p.wait(`asked === 1`)
	on := papers[0]
	res, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: on.width, PaperHeight: on.height})
	require.NoError(t, err)
	assertSections(t, readPDF(t, res.Data), 3, 5)
	eval[bool](p, `dispatchEvent(new Event('afterprint'))`)
	assert.Equal(t, "print", eval[string](p, `document.activeElement.dataset.paper`), "the focus stays where it was")
}

// assertSections looks for the sections of ribs in a job of nothing else: behind the
// proof of scale and the page of their maps every rib's pages as the core cuts them, each
// corner of their lines in its place to a CSS pixel.
func assertSections(t *testing.T, pages []sheetOfPaper, ribs ...int) {
	t.Helper()
	const pixel = 25.4 / 96
	next := 1
	for _, p := range pattern.Make(core.Evaluate(design.Default()), "sections",
		pattern.Options{System: units.Imperial16, Ribs: ribs}) {
		tiles := p.Tiles(pattern.Paper)
		require.Greater(t, len(tiles), 1, "and so has a map")
		for _, tile := range tiles {
			next++
			require.Greater(t, len(pages), next)
			assert.Equal(t, 1, pages[next].blocks(150, 1, 0.1), "the bar of 150 mm")
			drawn := pages[next].corners()
			for _, l := range tile.Lines() {
				if l.Style != pattern.Cut {
					continue // a dash may leave a corner out
				}
				for _, q := range l.Points {
					off := math.Inf(1)
					for _, r := range drawn {
						off = min(off, math.Hypot(q.X-r.x, q.Y-r.y))
					}
					require.LessOrEqual(t, off, pixel, "%s of %s", tile.ID(), p.Name)
				}
			}
		}
	}
	assert.Len(t, pages, next+1, "and no more")
}

// Sections are drawn at the ribs that are typed, on paper and as a file; a wrong
// one is named at the field and the last good ones stay.
func TestSectionsAtChosenRibs(t *testing.T) {
	p := open(t, phone)
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push({name, text}),
		document.getElementById('drawing').value = 'sections', true`)
	text := func(id string) string { return eval[string](p, `document.getElementById(%q).textContent`, id) }
	ask := func(ribs string) {
		eval[bool](p, `(f => { f.focus(); f.select(); return true; })(document.getElementById('section-ribs'))`)
		p.keys(kb.Backspace + ribs + kb.Tab)
		p.settle()
	}
	drawn := func() []string {
		p.press(`[data-paper="svg"]`)
		return eval[[]string](p, `[...saved.at(-1).text.matchAll(/>rib (\w+), centre line</g)].map(m => m[1])`)
	}
	usual := drawn()
	assert.Len(t, usual, 4)
	assert.Equal(t, "Drawn: "+strings.Join(usual, ", ")+".", text("section-ribs-echo"))
	ask("12, 5-7")
	assert.Equal(t, []string{"5", "6", "7", "12"}, drawn())
	assert.Equal(t, "Heron-Cove-first-canoe-sections.svg", eval[string](p, `saved.at(-1).name`))
	for wrong, says := range map[string]string{"5, 40": "There is no rib 40. This boat's ribs are 1 to 22.",
		"5-": `"5-" is not read as ribs`} {
		ask(wrong)
		assert.Contains(t, text("section-ribs-fault"), says)
		assert.Equal(t, "Drawn: 5, 6, 7, 12.", text("section-ribs-echo"))
		assert.Equal(t, []string{"5", "6", "7", "12"}, drawn())
		assert.Equal(t, wrong, eval[string](p, `document.getElementById('section-ribs').value`))
	}
	// A boat with fewer ribs: what is typed is read again.
	ask("7, 21")
	p.enter("ribs", "30")
	p.wait(`document.getElementById('section-ribs-fault').textContent.includes("no rib 21. This boat's ribs are 1 to 15")`)
	assert.Equal(t, []string{"7"}, drawn())
	p.enter("ribs", "44")
	p.wait(`document.getElementById('section-ribs-fault').textContent === ''`)
	assert.Equal(t, []string{"7", "21"}, drawn())
	ask("")
	assert.Equal(t, usual, drawn())
}

// Keys of one letter do nothing once they are turned off (WCAG 2.2, 2.1.4), and nothing to
// the page while something covers it; Escape still closes what fills the window.
func TestKeysOfOneLetter(t *testing.T) {
	p := openAfter(t, "", desktop.at("choose"), own(t))
	big := func() bool { return eval[bool](p, `!!document.documentElement.dataset.big`) }
	p.keys("h")
	assert.Equal(t, "true", eval[string](p, `document.getElementById('hold').getAttribute('aria-pressed')`))
	p.press(`[data-trace="open"]`)
	p.wait(`document.getElementById('tracing').open`)
	p.keys("]b")
	assert.Equal(t, "choose", eval[string](p, `document.documentElement.dataset.at`))
	assert.False(t, big(), "the picture that is read covers the page")
	p.press(`[data-trace="close"]`)
	p.keys("b")
	assert.True(t, big())
	p.keys("?")
	p.wait(`document.activeElement.id === 'letters'`)
	p.keys(" ")
	p.keys(kb.Escape)
	p.wait(`!document.documentElement.dataset.big`)
	p.keys("b")
	assert.False(t, big())
	p.again()
	assert.False(t, eval[bool](p, `document.getElementById('letters').checked`))
	p.keys("b")
	assert.False(t, big())
}

// A table whose rows stand for parts of the picture is one stop of Tab; arrows move
// between its rows and mark the part, as touching them does.
func TestRowsByKeyboard(t *testing.T) {
	p := open(t, desktop)
	p.tabTo(`#notches [aria-current=true]`)
	for range 7 { // from all of it back over the shed, lessons, comparing and the season to the ribs
		p.keys(kb.ArrowLeft)
	}
	p.keys(kb.Enter)
	p.tabTo(`[data-fold="ribs"] > summary`)
	p.tabTo(`[data-table="ribs"] tr`)
	marked := func() []string {
		p.settle()
		assert.True(t, eval[bool](p, stopShows), "the focus shows")
		return eval[[]string](p, `[document.activeElement.dataset.part,
			document.activeElement.getAttribute('aria-selected'), document.getElementById('readout').textContent.match(/^\w+ \w+/)?.[0]]`)
	}
	assert.Equal(t, []string{"rib.1", "true", "Rib 1"}, marked())
	before := p.drawn()
	p.keys(kb.ArrowDown + kb.ArrowDown)
	assert.Equal(t, []string{"rib.3", "true", "Rib 3"}, marked())
	assert.Greater(t, p.drawn(), before, "and in the picture")
	p.keys(kb.End + kb.ArrowDown)
	assert.Equal(t, []string{"rib.22", "true", "Rib 22"}, marked())
	p.keys(kb.Home + kb.ArrowUp)
	assert.Equal(t, []string{"rib.1", "true", "Rib 1"}, marked())
	p.keys(kb.ArrowDown)
	p.keys(kb.Tab)
	assert.False(t, eval[bool](p, `!!document.activeElement.closest('[data-table="ribs"]')`), "one stop a table")
	p.keys(kb.Tab, back)
	assert.Equal(t, []string{"rib.2", "true", "Rib 2"}, marked(), "and back to the row left")
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll('#results .scroll')]
		.filter(s => s.querySelector('tr')).filter(s => [s, ...s.querySelectorAll('*')]
			.filter(e => e.tabIndex === 0).length !== 1).map(s => s.getAttribute('aria-label'))`), "every table has one stop")
	// A table written anew keeps the focus on its row.
	eval[bool](p, `(f => { f.value = '40'; f.dispatchEvent(new Event('input', {bubbles: true})); return true;
		})(document.querySelector('input[name="ribs"]'))`)
	p.wait(`document.querySelectorAll('[data-table="ribs"] tbody tr').length === 20`)
	assert.Equal(t, "rib.2", marked()[0])
}
