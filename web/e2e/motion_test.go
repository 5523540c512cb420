package e2e

import (
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The raising plays by a press, and a key or a press holds it. Who asks for no motion gets one
// still picture a press, and no other is drawn.
func TestRaisingPlaysAndHonoursReducedMotion(t *testing.T) {
	p := open(t, desktop)
	p.skinLaid()
	p.look("up")
	p.do(chromedp.Click(chromedp.CSS("#play")))
	p.wait(`+document.getElementById('up').value > 2`)
	assert.Equal(t, "Pause", eval[string](p, `document.getElementById('play').textContent`))
	p.do(chromedp.KeyEvent(kb.Escape))
	assert.Equal(t, "Play", eval[string](p, `document.getElementById('play').textContent`))

	_, err := chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}}})
	require.NoError(t, err)
	p.look("round")
	assert.Equal(t, "Turn a step", eval[string](p, `document.getElementById('turn').textContent`))
	first := p.shot("in the round")
	drawn := p.drawn()
	p.do(chromedp.Click(chromedp.CSS("#turn")))
	p.wait(`+document.documentElement.dataset.drawn > %d`, drawn)
	assert.NotEqual(t, first, p.shot("turned a step"))
	p.look("up")
	at := eval[string](p, `document.getElementById('up').value`)
	p.do(chromedp.Click(chromedp.CSS("#play")))
	p.settle()
	assert.NotEqual(t, at, eval[string](p, `document.getElementById('up').value`))
	assert.Contains(t, eval[string](p, `document.getElementById('moment').textContent`), "Slits cut")
	drawn = p.drawn()
	p.do(chromedp.Sleep(300 * time.Millisecond))
	assert.Equal(t, drawn, p.drawn(), "nothing is drawn any more")
}
