package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
)

// asleep takes down what stands when the program is about to be compiled, and holds that
// back while the page's name says so.
const asleep = `window.standing = () => {
	const out = {};
	for (const e of document.querySelectorAll(['#cells [data-result]', '#cells [data-verdict]', '#headline [data-result]',
		'#head-checks b', '[data-chip]', '#held-name', '#held-value', '[data-typed]', '#form [name]'])) {
		if (e.closest('[hidden]')) continue;
		const {result, verdict, chip, typed} = e.dataset;
		out[result ?? verdict ?? chip ?? typed ?? (e.id || e.name || e.textContent)] = e.value || e.textContent;
	}
	for (const id of ['view', 'hand', 'cells', 'controls', 'head']) {
		const {x, y, width, height} = document.getElementById(id).getBoundingClientRect();
		out['#' + id] = [x, y, width, height].map(Math.round).join();
	}
	return out;
};
window.compile = WebAssembly.instantiate;
WebAssembly.instantiate = async (...all) => {
	window.before = standing();
	window.pictures = [...document.querySelectorAll('#first > *')].filter(e => e.getClientRects().length).length;
	if (window.name === 'hold') await new Promise(done => { window.letGo = done; });
	return compile.apply(WebAssembly, all);
};`

// opensAsItWakes looks that nothing of what stood before the program was awake is other now.
func opensAsItWakes(p *tab, what string) {
	p.Helper()
	p.ready()
	p.wait(`document.documentElement.dataset.skin === ''`)
	before, now := eval[map[string]string](p, `before`), eval[map[string]string](p, `standing()`)
	assert.Greater(p, len(now), 20, what)
	assert.Equal(p, before, now, what)
	assert.Equal(p, 1, eval[int](p, `pictures`), "%s: one picture stood", what)
}

// The opening boat's numbers, checks, picture and form stand before the program is awake,
// as the program then shows them: native and wasm lay the same text. So do those of a
// boat that is kept, where it was looked at last; but not for any other.
func TestBoatStandsBeforeTheProgram(t *testing.T) {
	pageFile(t)
	for _, s := range []screen{desktop, phone} {
		t.Run(s.name, func(t *testing.T) {
			p := openFile(t, pageFile(t), asleep, s.at(asKept), own(t))
			opensAsItWakes(p, "a new user")
			if s.name != desktop.name {
				return
			}
			p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)))
			p.wait(`localStorage.getItem('barkwright.first') !== null`)
			again := func() { p.do(chromedp.Navigate("about:blank"), chromedp.Navigate(p.address)) }
			again()
			opensAsItWakes(p, "a boat that is kept")

			// Where the picture is come to near its parts too.
			p.notch(stage.Ends)
			require.True(t, eval[bool](p, `document.getElementById('view').dataset.near !== undefined`))
			p.wait(`JSON.parse(localStorage.getItem('barkwright.first')).of.at === 'ends'`)
			again()
			opensAsItWakes(p, "near its parts")

			// The key goes with its picture: in a smaller window there may be one where there is none here.
			require.Empty(t, eval[string](p, `document.getElementById('picture-key').textContent`))
			eval[any](p, `(() => {
				const first = JSON.parse(localStorage.getItem('barkwright.first'));
				first.texts['picture-key'] = 'Key: 1 bow';
				localStorage.setItem('barkwright.first', JSON.stringify(first));
			})()`)
			again()
			opensAsItWakes(p, "from a smaller window")
			assert.Empty(t, eval[string](p, `document.getElementById('picture-key').textContent`))

			// And where a place is come back to and looked at otherwise.
			p.notch(stage.Gunwales)
			p.notch(stage.Ends)
			p.notch(stage.Gunwales)
			eval[bool](p, `document.querySelector('[data-look="out"]').click(), true`)
			p.wait(`JSON.parse(localStorage.getItem('barkwright.first')).of.at === 'gunwales'`)
			again()
			opensAsItWakes(p, "come back to")

			// Another page from disk may write what it likes: it stays an image and a text.
			eval[any](p, `(() => {
				const first = JSON.parse(localStorage.getItem('barkwright.first'));
				first.picture = '<svg xmlns="http://www.w3.org/2000/svg"><script>window.top.bad = 1</script></svg>';
				first.texts['held-name'] = first.checks[0][0] = '<img src=x onerror="window.bad = 1">';
				first.lacking = ['length', 'thwart4'];
				localStorage.setItem('barkwright.first', JSON.stringify(first));
				window.name = 'hold';
			})()`)
			again()
			p.wait(`!!window.letGo`)
			assert.Contains(t, eval[string](p, `document.getElementById('held-name').textContent`), "<img")
			assert.Equal(t, "IMG", eval[string](p, `document.querySelector('#first > *').tagName`))
			assert.Equal(t, 0, eval[int](p, `document.querySelectorAll('#held img, #head-checks img').length`))
			assert.False(t, eval[bool](p, `'bad' in window`))
			hidden := eval[[]string](p, `[...document.querySelectorAll('#form [data-control]')]
				.filter(e => e.hidden).map(e => e.dataset.control)`)
			assert.Equal(t, []string{"thwart4"}, hidden, "only what the program shows again may be hidden")

			// For a boat kept otherwise than it was shown nothing stands.
			eval[any](p, `(() => {
				const key = Object.keys(localStorage).find(k => k.startsWith('barkwright.boat.'));
				const boat = JSON.parse(localStorage.getItem(key));
				boat.kept.stamp = 'another';
				localStorage.setItem(key, JSON.stringify(boat));
			})()`)
			again()
			p.wait(`!!window.letGo`)
			assert.Equal(t, 0, eval[int](p, `pictures`))
			assert.Equal(t, "", eval[string](p, `document.querySelector('#cells').textContent.match(/[0-9]+/g)?.join() ?? ''`))
			eval[any](p, `(window.name = '', letGo(), true)`)
			p.ready()
		})
	}
}
