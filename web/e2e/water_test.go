package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
)

const speed = `document.querySelector('[data-result="afloat.speed"]')`

// What needs the curves follows once the slider rests, the rest at once; charts
// stand in letters of 12 pixels or more, inside the window, with their numbers.
func TestCurvesFollowTheRest(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s)
			p.wait(`+%s.dataset.value > 0`, speed)
			before := eval[string](p, speed+`.dataset.value`)
			p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.PageUp))
			p.wait(`%s.dataset.value !== %q && !document.querySelector('#water-numbers').hasAttribute('aria-busy')`, speed, before)
			// The water of a boat undone is known already.
			p.do(chromedp.Evaluate[chromedp.Void](`document.getElementById('undo').click()`))
			p.wait(`%s.dataset.value === %q`, speed, before)

			eval[bool](p, `document.querySelectorAll('[data-curve], .twin').forEach(d => d.open = true), true`)
			p.wait(`document.querySelectorAll('[data-curve] figure svg').length === 4 &&
				document.querySelectorAll('[data-curve] table').length === 3`)
			small := eval[[]string](p, `[...document.querySelectorAll('[data-curve]:not([data-curve=heeled])')].filter(c => {
				const svg = c.querySelector('figure svg'), shown = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
				return [...svg.querySelectorAll('text')].some(t => +t.getAttribute('font-size') * shown < 12);
			}).map(c => c.dataset.curve)`)
			assert.Empty(t, small, "lettering under 12 pixels")
			unnamed := eval[int](p, `[...document.querySelectorAll('[data-curve] figure svg')].filter(c =>
				c.getAttribute('role') !== 'img' || !c.querySelector('title').textContent || !c.querySelector('desc').textContent).length`)
			assert.Zero(t, unnamed, "charts without a text alternative")
			assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(s.width), "no sideways scroll")

			heeled := eval[string](p, `document.querySelector('[data-curve=heeled] desc').textContent`)
			p.do(chromedp.Focus(chromedp.CSS(`#heel`)), chromedp.KeyEvent(kb.ArrowRight+kb.ArrowRight))
			p.wait(`document.querySelector('[data-curve=heeled] desc').textContent !== %q`, heeled)
		})
	}
}

// A paddler moved in the form trims the boat, one more has a fold, and both are
// taken back.
func TestCrewInTheForm(t *testing.T) {
	p := open(t, desktop)
	const trim = `+document.querySelector('[data-result="afloat.trim"]').dataset.value`
	const folds = `document.querySelectorAll('[data-paddler]:not([hidden])').length`
	p.wait(`Math.abs(%s) < 1e-6`, trim)
	eval[bool](p, `document.querySelectorAll('details.fold, .paddler').forEach(d => d.open = true), true`)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="paddler2Place"]`)), chromedp.KeyEvent(kb.ArrowRight))
	p.wait(`%s > 1e-4`, trim)
	assert.Equal(t, 2, eval[int](p, folds))
	p.do(chromedp.Focus(chromedp.CSS(`input[name="paddlers"]`)), chromedp.KeyEvent(kb.ArrowRight))
	p.wait(`%s === 3`, folds)
	p.do(chromedp.Click(chromedp.CSS(`#undo`)))
	p.wait(`%s === 2`, folds)
	p.do(chromedp.Click(chromedp.CSS(`#undo`)))
	p.wait(`Math.abs(%s) < 1e-6`, trim)
}

// Too much cargo is named, at its number and in the charts, and leaves no number.
func TestOverloadedIsNamed(t *testing.T) {
	p := open(t, desktop)
	p.wait(`+%s.dataset.value > 0`, speed)
	eval[bool](p, `document.querySelectorAll('details.fold').forEach(d => d.open = true), true`)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="cargo"]`)), chromedp.KeyEvent(kb.End))
	p.wait(`document.querySelector('[data-warning="afloat.state"]').textContent.includes('overloaded')`)
	p.wait(`%s.textContent === 'overloaded' && %s.dataset.value === ''`, speed, speed)
	p.wait(`document.querySelector('[data-curve=righting] figure').textContent.includes('overloaded')`)
}
