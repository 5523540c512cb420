package e2e

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Every field by which a boat, its season, what was done, a repair or a comparison is set has a line of help at it,
// also those that the page writes later, in every kind of damage.
func TestEveryFieldHasHelpAtIt(t *testing.T) {
	p := open(t, desktop)
	p.wait(`document.documentElement.dataset.skin === ''`)
	p.press(`[data-keep="copy"]`) // boats to stand side by side
	p.wait(`document.querySelectorAll('#beside-choice input').length === 2`)
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll(':is(#form, #crew, #season, #mend, #compare) :is(input, select, textarea)')]
		.filter(e => {
			const own = e.closest('[data-control]')?.querySelector('.help');
			const said = (e.getAttribute('aria-describedby') || '').split(' ').map(id => document.getElementById(id));
			return ![own, ...said].some(h => h?.matches('.help') && h.textContent.trim());
		}).map(e => e.outerHTML.slice(0, 90))`))
}
