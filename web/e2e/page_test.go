package e2e

import (
	"bytes"
	"image/png"
	"testing"
	"time"

	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const gunwale = `document.querySelector('[data-result="gunwale.length"]').dataset.value`

// A slider moved by its own keys changes the number and the picture.
func TestSliderChangesNumberAndPicture(t *testing.T) {
	p := open(t, desktop)
	before, drawn := eval[string](p, gunwale), p.drawn()
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.ArrowRight+kb.ArrowRight+kb.ArrowRight))
	p.wait(`%s !== %q`, gunwale, before)
	p.wait(`+document.documentElement.dataset.drawn > %d`, drawn)
	p.do(chromedp.KeyEvent(kb.ArrowLeft + kb.ArrowLeft + kb.ArrowLeft))
	p.wait(`%s === %q`, gunwale, before)
	p.do(chromedp.Click(chromedp.CSS(`[data-control="length"] [data-step="1"]`)))
	p.wait(`%s !== %q`, gunwale, before)
}

// At each size: nothing runs off sideways, the boat and its numbers are in the
// window without a touch, every target can be hit, and ink is on the picture.
func TestFirstScreen(t *testing.T) {
	for _, s := range []screen{desktop, phone, projector} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s.at("choose"))
			p.settle()
			assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(s.width), "no sideways scroll")
			for _, id := range []string{"stick", "view", "hand", "cells"} {
				assert.True(t, eval[bool](p, `(({top, bottom, left, right}) => top >= 0 && left >= 0 && bottom <= innerHeight &&
					right <= innerWidth && bottom > top)(document.getElementById(%q).getBoundingClientRect())`, id),
					"%s is in the window", id)
			}
			// 44 CSS pixels is the house rule, WCAG 2.2 success criterion 2.5.5.
			small := eval[[]string](p, `[...document.querySelectorAll('button, select, summary, input')]
				.filter(e => e.getClientRects().length)
				.filter(e => { const r = e.getBoundingClientRect(); return r.width < 44 || r.height < 44; })
				.map(e => e.outerHTML.slice(0, 90))`)
			assert.Empty(t, small, "targets under 44 pixels")
			named := eval[[]string](p, `[...document.querySelectorAll('button, select, input, textarea')]
				.filter(e => !(e.labels && e.labels.length) && !e.getAttribute('aria-label') && !e.textContent.trim())
				.map(e => e.outerHTML.slice(0, 90))`)
			assert.Empty(t, named, "controls without a name")
			assert.Greater(t, inkOn(p, p.shot(s.name)), 500, "dark pixels on the picture")
		})
	}
}

// inkOn counts the dark pixels of a screenshot inside the view.
func inkOn(p *tab, screenshot []byte) int {
	p.Helper()
	picture, err := png.Decode(bytes.NewReader(screenshot))
	require.NoError(p, err)
	box := eval[[]float64](p, `(r => [r.left, r.top, r.right, r.bottom]
		.map(v => v * devicePixelRatio))(document.getElementById('view').getBoundingClientRect())`)
	dark := 0
	for y := int(box[1]) + 2; y < int(box[3])-2; y++ {
		for x := int(box[0]) + 2; x < int(box[2])-2; x++ {
			if r, g, b, _ := picture.At(x, y).RGBA(); r+g+b < 3*0x6000 {
				dark++
			}
		}
	}
	return dark
}

// The page may ask for nothing, and what it holds may not be made to run text.
func TestContentPolicyBlocks(t *testing.T) {
	p := open(t, desktop)
	// The protocol's own evaluation is let past the rule unless told otherwise.
	strict := func(e *runtime.EvaluateParams) { e.AllowUnsafeEvalBlockedByCSP = new(false) }
	made, err := chromedp.Run(p.ctx, chromedp.Evaluate[string](`(() => { try { return String(Function('return 1')());
		} catch { return 'refused'; } })()`, strict))
	require.NoError(t, err)
	assert.Equal(t, "refused", made)
	outcome, err := chromedp.Run(p.ctx, chromedp.Evaluate[string](
		`fetch('http://127.0.0.1:9/').then(() => 'answered', () => 'refused')`, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	assert.Equal(t, "refused", outcome)
	p.settle()
	faults := p.take()
	require.NotEmpty(t, faults)
	for _, f := range faults {
		assert.Contains(t, f, "Content Security Policy", "refused by the page's own rule, not for want of a server")
	}
}

// Only the page's own two scripts run: markup put in by hand, as a hole in what is
// escaped would let it in, runs nothing.
func TestInjectedScriptDoesNotRun(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `(() => {
		const box = document.body.appendChild(document.createElement('div'));
		box.innerHTML = '<button id="inline" onclick="window.ran = true">x</button><img src="data:," onerror="window.ran = true">' +
			'<svg onload="window.ran = true"></svg><a id="link" href="javascript:window.ran = true">x</a>';
		document.body.appendChild(document.createElement('script')).textContent = 'window.ran = true';
		document.getElementById('inline').click();
		document.getElementById('link').click();
		return true;
	})()`)
	p.settle()
	p.settle()
	assert.False(t, eval[bool](p, `window.ran === true`))
	faults := p.take()
	assert.GreaterOrEqual(t, len(faults), 4)
	for _, f := range faults {
		assert.Contains(t, f, "Content Security Policy")
	}
}

// Nothing is drawn while nothing changes.
func TestIdleDrawsNothing(t *testing.T) {
	p := openAfter(t, `window.waits = window.polls = 0;
		Navigator.prototype.getGamepads = () => { polls++; return []; };
		for (const how of ['setTimeout', 'setInterval', 'requestAnimationFrame',
		'requestIdleCallback']) {
		const real = window[how];
		window[how] = (...all) => { waits++; return real.apply(window, all); };
	}`, desktop)
	p.wait(`document.documentElement.dataset.skin === ''`)
	// The plan of the work is searched for some seconds more, and what the page is to show at its
	// next opening is kept once it has stood still.
	waits, before, drawn := 0, -1, 0
	for range 20 {
		if before, waits, drawn = waits, eval[int](p, `waits`), p.drawn(); waits == before {
			break
		}
		time.Sleep(1500 * time.Millisecond)
	}
	assert.Equal(t, before, waits, "no timer and no frame is asked for")
	assert.Zero(t, eval[int](p, `polls`), "nor a gamepad, which the browser would look for from then on")
	assert.Equal(t, drawn, p.drawn())
}
