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
	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll(
		':is(#form, #crew, #season, #mend, #compare) :is(input, select, textarea)')]
		.filter(e => {
			const own = e.closest('[data-control]')?.querySelector('.help');
			const said = (e.getAttribute('aria-describedby') || '').split(' ').map(id => document.getElementById(id));
			return ![own, ...said].some(h => h?.matches('.help') && h.textContent.trim());
		}).map(e => e.outerHTML.slice(0, 90))`))
}

// On a phone held sideways the picture may fill the window too: the stage is named then in the hand, where nothing lies
// on it, and its name goes with the place.
func TestBigSidewaysNamesTheStage(t *testing.T) {
	p := open(t, screen{name: "sideways", width: 844, height: 390, density: 2, touch: true}.at("rib"))
	const name = `document.getElementById('hand-place')`
	assert.False(t, eval[bool](p, name+`.checkVisibility()`))
	eval[bool](p, `document.querySelector('[data-picture=big]').click(), true`)
	for _, stage := range [][2]string{{"rib", "8 Rib"}, {"ends", "7 Ends"}} {
		eval[bool](p, `document.querySelector('#notches [data-at=%s]').click(), true`, stage[0])
		p.settle()
		assert.Equal(t, stage[1], eval[string](p, name+`.textContent`))
		assert.Equal(t, "hand-place", eval[string](p, `(r =>
			document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2).id)(%s.getBoundingClientRect())`, name))
		assert.LessOrEqual(t, eval[int](p, name+`.scrollWidth`), eval[int](p, name+`.clientWidth`), "whole")
	}
}
