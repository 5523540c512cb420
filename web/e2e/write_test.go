package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// With all on one page the stages out of the window wait while steps follow one another: nothing moves by it, a stage that
// is scrolled to stands there at once, and none waits after the last step.
func TestStagesOutOfSightWait(t *testing.T) {
	const stages = `[...document.querySelectorAll('.step')]`
	waiting := func(p *tab) int { return eval[int](p, stages+`.filter(e => e.style.contentVisibility !== '').length`) }
	for _, s := range []screen{desktop, phone} {
		p := open(t, s)
		p.wait(`document.documentElement.dataset.skin === ''`)
		// A step on and one back leave the page as it was.
		ran, err := chromedp.Run(p.ctx, chromedp.Evaluate[struct {
			Waiting, Seen, Moved int
			Found                bool
		}](`(async slider => {
			const stages = `+stages+`;
			const lie = () => [...stages.map(e => Math.round(e.getBoundingClientRect().top + scrollY)),
				document.documentElement.scrollHeight];
			const step = async by => {
				await new Promise(requestAnimationFrame);
				slider.value = +slider.value + by * +slider.step;
				slider.dispatchEvent(new Event('input', {bubbles: true}));
			};
			await step(1);
			const before = lie();
			for (const by of [1, -1]) await step(by);
			const waits = stages.filter(e => e.style.contentVisibility !== '');
			const after = lie();
			const last = stages.at(-1).querySelector('h2');
			last.scrollIntoView({block: 'center', behavior: 'instant'});
			for (const by of [1, -1]) await step(by);
			const at = last.getBoundingClientRect();
			return {
				waiting: waits.length,
				seen: waits.filter(e => e.getBoundingClientRect().top + scrollY < innerHeight).length,
				moved: after.filter((y, i) => Math.abs(y - before[i]) > 1).length,
				found: last.contains(document.elementFromPoint(at.left + 20, at.top + at.height / 2)),
			};
		})(document.querySelector('input[name=length]'))`, chromedp.EvalAwaitPromise))
		require.NoError(t, err)
		assert.Greater(t, ran.Waiting, 5, s.name)
		assert.Zero(t, ran.Seen, "in the window, %s", s.name)
		assert.Zero(t, ran.Moved, s.name)
		assert.True(t, ran.Found, s.name)
		p.wait(stages + `.every(e => e.style.contentVisibility === '')`)
		p.settle()

		eval[bool](p, `document.querySelector('[data-hand="1"]').click(), true`)
		assert.Zero(t, waiting(p), "a step by itself, %s", s.name)
		// What comes after the steps finds all laid out.
		p.slide("beam", "2400")
		p.wait(`document.documentElement.dataset.skin === ''`)
		assert.Zero(t, waiting(p), "numbers that come one after another, %s", s.name)
		p.notch("rib")
		for range 3 {
			eval[bool](p, `document.querySelector('[data-hand="1"]').click(), true`)
		}
		assert.Zero(t, waiting(p), "at a stage, %s", s.name)
	}
}
