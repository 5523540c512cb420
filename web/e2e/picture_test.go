package e2e

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// One button shows the next of the drawings, another letters them with measures, names or
// neither; what found no room in the picture stands beside it with its number.
func TestPictureChooser(t *testing.T) {
	p := openAfter(t, "window.stay = 'barkwright.place'", phone)
	label := func() string { return eval[string](p, `document.getElementById('hit').getAttribute('aria-label')`) }
	press := func(id string) string {
		eval[bool](p, `document.getElementById('%s').click(), true`, id)
		p.settle()
		return eval[string](p, `document.getElementById('%s').textContent`, id)
	}
	eval[bool](p, `document.querySelector('[data-view=finished]').click(), true`)
	p.settle()
	assert.Contains(t, label(), "Top view and side view, finished")
	for _, c := range [][2]string{{"Top", "Top view"}, {"Side", "Side view"}, {"Sections", "Sections"}, {"Body plan", "Body plan"},
		{"Top and side", "Top view and side view"}} {
		assert.Equal(t, c[0], press("only"))
		assert.Contains(t, label(), c[1]+", finished")
	}
	assert.Equal(t, "Names", press("layer"))
	key := eval[string](p, `document.getElementById('picture-key').textContent`)
	assert.Contains(t, key, "Key: 1 ", "a phone's picture has no room for every name")
	assert.Contains(t, label(), key[len("Key: "):])
	p.shot("names phone")
	eval[bool](p, `document.querySelector('[data-view=flat]').click(), true`)
	p.settle()
	assert.False(t, eval[bool](p, `document.getElementById('only').checkVisibility()`), "the bark is one drawing")
}
