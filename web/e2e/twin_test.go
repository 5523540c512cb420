package e2e

import (
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// followsTheSlider holds for a page without Ebitengine: the line that says so,
// and number and drawing that follow the slider and the window.
func followsTheSlider(p *tab) {
	p.Helper()
	assert.Contains(p, eval[string](p, `document.getElementById('picture-note').textContent`), "SVG")
	assert.Positive(p, eval[int](p, `document.querySelectorAll('#twin svg path').length`))
	assert.Zero(p, eval[int](p, `document.querySelectorAll('canvas').length`))
	before, picture := eval[string](p, gunwale), eval[string](p, `document.querySelector('#twin').innerHTML`)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.PageUp))
	p.wait(`%s !== %q`, gunwale, before)
	assert.NotEqual(p, picture, eval[string](p, `document.querySelector('#twin').innerHTML`))
	p.do(chromedp.EmulateViewport(700, 900))
	p.wait(`innerWidth === 700`)
	p.wait(`+document.querySelector('#twin svg').getAttribute('viewBox').split(' ')[2] === document.getElementById('view').clientWidth`)
	assert.Greater(p, inkOn(p, p.shot(p.Name())), 500)
}

func TestWithoutWebGL(t *testing.T) {
	p := open(t, desktop, "disable-3d-apis")
	followsTheSlider(p)
	// The browser itself logs that WebGL is off; nothing else may be amiss.
	for _, f := range p.take() {
		assert.Contains(t, f, "WebGL")
	}
}

// A lost context may not reload the page, which would lose the boat.
func TestLostContextKeepsTheBoat(t *testing.T) {
	p := open(t, desktop)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.End))
	p.settle()
	longest := eval[string](p, gunwale)
	eval[bool](p, `window.sameVisit = true`)
	eval[bool](p, `(c => { window.lose = c.getContext('webgl2').getExtension('WEBGL_lose_context'); lose.loseContext(); return true; })(document.querySelector('#view canvas'))`)
	p.wait(`document.documentElement.dataset.picture === 'svg'`)
	assert.True(t, eval[bool](p, `window.sameVisit === true`), "no reload")
	assert.Equal(t, longest, eval[string](p, gunwale))
	p.do(chromedp.KeyEvent(kb.PageDown))
	p.wait(`%s !== %q`, gunwale, longest)
	eval[bool](p, `lose.restoreContext(), true`)
	p.settle()
	followsTheSlider(p)
	for _, f := range p.take() {
		assert.Contains(t, f, "CONTEXT_LOST")
	}
}

// The printer gets the SVG, which is sharp, and not the canvas.
func TestPrintUsesTheTwin(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `addEventListener('beforeprint', () => { window.atPrinting = document.querySelectorAll('#twin svg path').length; }), true`)
	res, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{})
	require.NoError(t, err)
	assert.NotEmpty(t, res.Data)
	assert.Positive(t, eval[int](p, `window.atPrinting || 0`), "written before printing")
	assert.Equal(t, "none", eval[string](p, `getComputedStyle(document.getElementById('twin')).display`), "and not shown on the screen")
}
