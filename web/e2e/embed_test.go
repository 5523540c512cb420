package e2e

import (
	"testing"
	"time"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What these hold is not Ebitengine's way: boot.js and paint make it so, by
// leaning on its insides. They are what an upgrade of it must pass.

const sharp = `(c => c.width === Math.round(document.getElementById('view').clientWidth * devicePixelRatio) &&
	c.height === Math.round(document.getElementById('view').clientHeight * devicePixelRatio))(document.querySelector('#view canvas'))`

func TestCanvasIsSharpAtAnyDensity(t *testing.T) {
	p := open(t, phone)
	p.wait(sharp)
	p = open(t, desktop)
	p.wait(sharp)
	drawn := p.drawn()
	p.do(chromedp.EmulateViewport(desktop.width, desktop.height, chromedp.EmulateScale(2)))
	// A headless window takes up a new density with its next presented frame.
	p.shot("twice the density")
	p.wait(`devicePixelRatio === 2`)
	p.wait(sharp)
	p.wait(`+document.documentElement.dataset.drawn > %d`, drawn)
	p.do(chromedp.EmulateViewport(900, 700, chromedp.EmulateScale(2)))
	p.wait(`innerWidth === 900`)
	p.wait(sharp)
	p.settle()
	assert.Greater(t, inkOn(p, p.shot("narrow at twice the density")), 500)
}

// middle of the picture, window's CSS pixels.
func (p *tab) middle() (x, y float64) {
	c := eval[[]float64](p, `(r => [r.left + r.width / 2, r.top + r.height / 2])(document.getElementById('hit').getBoundingClientRect())`)
	return c[0], c[1]
}

// makeTall gives the page something to scroll, however little it holds.
func (p *tab) makeTall() {
	eval[bool](p, `document.querySelector('footer').style.minHeight = '3000px', true`)
}

func TestClickOnPictureTakesNoFocus(t *testing.T) {
	p := open(t, desktop)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)))
	x, y := p.middle()
	p.do(chromedp.MouseClickXY(x, y))
	p.settle()
	assert.NotEqual(t, "CANVAS", eval[string](p, `document.activeElement.tagName`))
}

func TestWheelOverPictureScrollsThePage(t *testing.T) {
	p := open(t, desktop)
	p.makeTall()
	x, y := p.middle()
	_, err := chromedp.Call(p.ctx, input.SynthesizeScrollGesture, input.SynthesizeScrollGestureParams{
		X: x, Y: y, YDistance: -240, GestureSourceType: input.GestureSourceTypeMouse})
	require.NoError(t, err)
	p.wait(`scrollY >= 200`)
}

func TestSwipeOverPictureScrollsThePage(t *testing.T) {
	p := open(t, phone)
	p.makeTall()
	x, y := p.middle()
	touch := func(kind input.DispatchTouchEventType, points ...*input.TouchPoint) {
		_, err := chromedp.Call(p.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
		require.NoError(t, err)
	}
	touch(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	for range 10 {
		y -= 15
		touch(input.DispatchTouchEventTypeTouchMove, &input.TouchPoint{X: x, Y: y})
	}
	touch(input.DispatchTouchEventTypeTouchEnd)
	p.wait(`scrollY >= 100`)
}

// WCAG 2.2 success criterion 2.1.2: Tab goes on through every control and comes
// round again, never into the canvas; Shift+Tab the same way back.
func TestTabVisitsEveryControlAndReturns(t *testing.T) {
	p := open(t, desktop)
	// What comes late is written anew, and would be other elements than the ones visited.
	p.skinLaid()
	p.wait(`!!document.querySelector('[aria-label="One inch more of each control"]')`)
	eval[bool](p, `document.getElementById('season').scrollIntoView(), true`) // the plan waits for sight
	require.Eventually(t, func() bool {
		return eval[bool](p, `!!document.querySelector('#season-tables [data-plan="plan.ways"] summary')`)
	}, time.Minute, 100*time.Millisecond, "the plan, which is searched for until the page rests")
	const reachable = `[...document.querySelectorAll('button, input, select, textarea, summary, a[href], [tabindex="0"]')]
		.filter(e => e.checkVisibility() && !e.disabled && e.tabIndex >= 0)`
	count := eval[int](p, reachable+`.length`)
	require.Positive(t, count)
	eval[bool](p, `window.visited = [], addEventListener('focusin', e => visited.push(e.target)), true`)
	for _, shift := range []bool{false, true} {
		eval[bool](p, `visited.length = 0, true`)
		var options []chromedp.KeyOption
		if shift {
			options = append(options, chromedp.KeyModifiers(chromedp.ModifierShift))
		}
		for range max(60, 2*count+4) {
			p.do(chromedp.KeyEvent(kb.Tab, options...))
		}
		missed := eval[[]string](p, reachable+`.filter(e => !visited.includes(e)).map(e => e.outerHTML.slice(0, 90))`)
		assert.Empty(t, missed, "never reached, shift %v", shift)
		assert.True(t, eval[bool](p, `visited.filter(e => e === visited[0]).length >= 2`), "comes round again, shift %v", shift)
		assert.False(t, eval[bool](p, `visited.some(e => e.tagName === 'CANVAS')`), "shift %v", shift)
	}
}

// The part under the pointer is read out.
func TestPictureAnswersThePointer(t *testing.T) {
	p := open(t, desktop)
	before := eval[string](p, `document.getElementById('readout').textContent`)
	x, _ := p.middle()
	top := eval[float64](p, `(r => r.top + r.height * 0.32)(document.getElementById('hit').getBoundingClientRect())`)
	p.do(chromedp.MouseEvent(chromedp.MouseMoved, x, top))
	p.wait(`document.getElementById('readout').textContent !== %q`, before)
}

// WCAG 2.2 success criterion 2.4.11: the boat stays in sight while the page is
// read, and may not stand over the control that has the focus.
func TestFocusIsNotUnderThePicture(t *testing.T) {
	p := open(t, phone)
	p.makeTall()
	covered := eval[[]string](p, `[...document.querySelectorAll('#form button, #form input, #form summary')]
		.filter(e => e.checkVisibility())
		.filter(e => { document.activeElement.blur(); scrollTo(0, e.getBoundingClientRect().top + scrollY - 40); e.focus();
			return e.getBoundingClientRect().top < document.getElementById('sight').getBoundingClientRect().bottom - 1; })
		.map(e => e.outerHTML.slice(0, 90))`)
	assert.Empty(t, covered)
}
