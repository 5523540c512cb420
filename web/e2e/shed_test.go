package e2e

import (
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
	"barkwright/wasm/find"
)

// What the page says first stands under the stick at every width until it is closed, which
// the browser keeps; the shed shows it again.
func TestFirstMinute(t *testing.T) {
	const shows = `document.getElementById('first-minute').checkVisibility()`
	for _, s := range []screen{desktop, phone, {name: "narrow", width: 320, height: 640, density: 1}} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s.at("choose"))
			require.True(t, eval[bool](p, shows))
			said := eval[string](p, `[...document.querySelectorAll('#first-minute > p')].find(e => e.checkVisibility()).innerText`)
			for _, of := range []string{"made", "before", "stick", "number", "purple mark"} {
				assert.Contains(t, said, of)
			}
			assert.True(t, eval[bool](p,
				`document.getElementById('first-minute').offsetTop < document.getElementById('sight').offsetTop + 1`))
			if s.width < 500 {
				assert.LessOrEqual(t, eval[float64](p, `[...document.querySelectorAll('#first-minute > p')]
					.find(e => e.checkVisibility()).offsetHeight`), 96.0)
			}
			assert.Equal(t, "static", eval[string](p, `getComputedStyle(document.getElementById('first-minute')).position`))
			p.press(`#first-minute [data-minute]`)
			p.wait(`!(%s)`, shows)
			eval[bool](p, `document.querySelector('#notches [data-at=shed]').click(), true`)
			p.press(`#words [data-minute]`)
			p.wait(shows)
		})
	}
	t.Run("kept", func(t *testing.T) {
		p := openStored(t, map[string]string{}, "")
		p.ready()
		p.press(`#first-minute [data-minute]`)
		p.wait(`!(%s)`, shows)
		p.again()
		assert.False(t, eval[bool](p, shows), "closed for good")
	})
}

// By keys alone: a slash opens the box, lines are pointed at with the arrows, Enter goes
// where the line leads and Escape goes back.
func TestFindByKeys(t *testing.T) {
	for _, s := range []screen{desktop, {name: "narrow", width: 320, height: 640, density: 1}} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s.at("choose"))
			const pointed = `document.getElementById(document.getElementById('find-field').getAttribute('aria-activedescendant'))`
			ask := func(question, goes string) {
				p.keys("/")
				p.wait(`document.activeElement.id === 'find-field'`)
				p.keys(question)
				p.wait(`document.querySelectorAll('#found [role=option]').length > 0`)
				n := eval[int](p, `[...document.querySelectorAll('#found [role=option]')].findIndex(e => e.dataset.found === %q)`, goes)
				require.GreaterOrEqual(t, n, 0, "%s for %s", goes, question)
				assert.LessOrEqual(t, eval[int](p, `document.querySelectorAll('#found [role=option]').length`), find.MostLines)
				for range n {
					p.keys(kb.ArrowDown)
				}
				assert.Equal(t, goes, eval[string](p, pointed+`.dataset.found`))
				assert.Equal(t, 1, eval[int](p, `document.querySelectorAll('#found [aria-selected=true]').length`))
				p.keys(kb.Enter)
				p.settle()
				assert.False(t, eval[bool](p, `document.getElementById('find').checkVisibility()`))
			}
			ask("how much root", "number:root.total")
			assert.Equal(t, "gather", eval[string](p, `document.documentElement.dataset.at`))
			assert.True(t, eval[bool](p, `document.activeElement.closest('[data-number="root.total"]').open`))
			ask("rib", "set:ribs")
			assert.Equal(t, "gunwales ribs",
				eval[string](p, `document.documentElement.dataset.at + ' ' + document.activeElement.dataset.typed`))
			eval[bool](p, `document.activeElement.blur(), true`)
			ask("post", "table:posts")
			assert.True(t, eval[bool](p, `document.activeElement.closest('[data-fold=posts]').open`))
			ask("tippy", "check:afloat.steady")
			assert.Equal(t, "pitch", eval[string](p, `document.documentElement.dataset.at`))
			ask("gore", "word:Gore")
			assert.Equal(t, "Gore", eval[string](p, `document.activeElement.textContent`))
			ask("leak", "step:keep.find")
			assert.Equal(t, "keep.find", eval[string](p, `document.activeElement.dataset.tick`))

			p.keys("/")
			p.wait(`document.activeElement.id === 'find-field'`)
			p.keys(kb.Escape)
			assert.Equal(t, "keep.find", eval[string](p, `document.activeElement.dataset.tick`), "the focus goes back")

			assert.True(t, eval[bool](p, `(r => r.width >= 44 && r.height >= 44 && r.left >= 0 &&
				r.right <= innerWidth)(document.getElementById('find-open').getBoundingClientRect())`))
			assert.True(t, eval[bool](p, `(e => e.scrollWidth <= e.clientWidth)(
				document.querySelector('#notches [aria-current=true]'))`), "the stage's name is whole")
			assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth - innerWidth`), 0)
		})
	}
}

// A number's working leads to what moves it and to its table; a verdict to its check.
func TestNumbersAndVerdictsLeadOn(t *testing.T) {
	p := open(t, desktop.at("lace"))
	eval[bool](p, `document.querySelector('.cells:not([hidden]) [data-why="post.middle"]').click(), true`)
	p.wait(`document.querySelectorAll('[data-number="post.middle"] [data-hold]').length > 0`)
	eval[bool](p, `document.querySelector('[data-number="post.middle"] [data-hold=depth]').click(), true`)
	assert.Equal(t, "Depth amidships lace", eval[string](p,
		`document.getElementById('held-name').textContent + ' ' + document.documentElement.dataset.at`))
	eval[bool](p, `document.querySelector('[data-number="post.middle"] [data-table]').click(), true`)
	assert.True(t, eval[bool](p, `document.activeElement.closest('[data-fold=posts]').open`))
	p.notch(stage.Choose)
	eval[bool](p, `document.querySelector('#head-checks [data-check="ribs.verdict"]').click(), true`)
	assert.Equal(t, "rib ribs.verdict",
		eval[string](p, `document.documentElement.dataset.at + ' ' + document.activeElement.dataset.warning`))
}
