package e2e

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// listen keeps every text that #status has had since, for said.
const listen = `(s => {
	window.heard = [];
	new MutationObserver(() => heard.push(s.textContent)).observe(s, {childList: true, characterData: true, subtree: true});
	return true;
})(document.getElementById('status'))`

func (p *tab) said() []string {
	p.settle()
	p.settle()
	return eval[[]string](p, `heard.splice(0)`)
}

// slide puts a parameter's slider at a value of its own and lets go of it.
func (p *tab) slide(key, value string) {
	p.Helper()
	eval[bool](p, `(f => {
		f.closest('details')?.setAttribute('open', '');
		f.dispatchEvent(new PointerEvent('pointerdown', {bubbles: true}));
		f.value = %[2]q;
		for (const e of ['input', 'change']) f.dispatchEvent(new Event(e, {bubbles: true}));
		return true;
	})(document.querySelector('input[name=%[1]q]'))`, key, value)
	p.settle()
}

// A verdict that becomes another is said once, before the numbers; results as such
// are not spoken as they change.
func TestChangedVerdictIsSaidFirst(t *testing.T) {
	p := open(t, desktop)
	verdicts := func() map[string]string {
		return eval[map[string]string](p, `Object.fromEntries([...document.querySelectorAll('#head-checks [data-warning]')]
			.map(v => [v.dataset.warning, v.textContent]))`)
	}
	eval[bool](p, listen)
	before := verdicts()
	p.slide("depth", "99")
	p.wait(`heard.length > 0`)
	said := p.said()
	last := said[len(said)-1]
	numbers := strings.Index(last, "Freeboard ")
	require.Positive(t, numbers, last)
	var changed []string
	for key, verdict := range verdicts() {
		if verdict == before[key] {
			assert.NotContains(t, last, verdict, "it is as it was")
			continue
		}
		changed = append(changed, key)
		assert.Equal(t, 1, strings.Count(strings.Join(said, " | "), verdict), "once: %s", last)
		assert.Less(t, strings.Index(last, verdict), numbers, "first: %s", last)
	}
	require.NotEmpty(t, changed)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="depth"]`)), chromedp.KeyEvent(kb.ArrowLeft))
	p.wait(`heard.length > 0`)
	again := strings.Join(p.said(), " | ")
	for _, key := range changed {
		assert.NotContains(t, again, verdicts()[key], "not again where it stays")
	}
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	p.wait(`heard.some(s => s.includes(%q))`, before[changed[0]])

	assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll('output')].filter(o => o.ariaLive !== 'off')
		.map(o => o.outerHTML.slice(0, 90))`), "results that speak of themselves")
	assert.Greater(t, eval[int](p, `document.querySelectorAll('output[aria-live=off]').length`), 200)
}

// A bad entry marks the field it was typed in, which names its fault, and is said;
// the same one again is said again.
func TestBadEntryMarksItsFieldAndIsSaid(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, listen)
	marked := func() []string {
		return eval[[]string](p, `[...document.querySelectorAll('[aria-invalid=true]')].map(e => e.dataset.typed ?? e.name)`)
	}
	for _, entry := range []string{"17 banana", "18 banana"} {
		p.enter("length", entry)
		assert.Equal(t, []string{"length"}, marked())
		assert.True(t, eval[bool](p, `document.querySelector('[data-typed="length"]').getAttribute('aria-describedby')
			.split(' ').includes('length-fault')`))
		said := p.said()
		require.NotEmpty(t, said)
		assert.True(t, strings.HasPrefix(said[len(said)-1], "Length overall: "), said)
		assert.Contains(t, said[len(said)-1], strings.TrimSpace(p.fault("length")))
	}
	p.enter("length", "17 ft")
	assert.Empty(t, marked())
	p.enter("length", "90 ft")
	p.wait(`heard.some(s => s.startsWith('Not changed: Length overall: '))`)
	assert.Equal(t, []string{"length"}, marked(), "one that is read and cannot be, too")
	p.enter("length", "16 ft")
	assert.Empty(t, marked())

	p.press("#add-sheet")
	p.change("#onhand input", "wide")
	assert.Equal(t, 1, eval[int](p, `document.querySelectorAll('#onhand input[aria-invalid=true]').length`))
	said := p.said()
	assert.Contains(t, said[len(said)-1], "Sheet 1, width: ")
}

// What is read out of a part is of the boat that is shown and in its units: whatever
// changes either.
func TestReadoutFollowsTheBoat(t *testing.T) {
	p := open(t, desktop)
	read := func() string { return eval[string](p, `document.getElementById('readout').textContent`) }
	// cut is the length in the table's row, which the read-out must name.
	agrees := func(what string) string {
		t.Helper()
		p.settle()
		cut := eval[string](p, `(row => row.cells[[...row.closest('table').querySelectorAll('thead th')]
			.findIndex(h => h.textContent.startsWith('Finished length'))].textContent)(
				document.querySelector('[data-table="ribs"] tr[data-part="rib.13"]'))`)
		assert.Contains(t, read(), "Rib 13 ", what)
		assert.Contains(t, read(), cut, what)
		return cut
	}
	p.do(chromedp.Click(chromedp.CSS(`[data-table="ribs"] tr[data-part="rib.13"] td`)))
	first := agrees("touched")
	assert.Equal(t, "polite", eval[string](p, `document.getElementById('readout').ariaLive`))
	p.slide("length", "240")
	assert.NotEqual(t, first, agrees("slider"))
	assert.Equal(t, "off", eval[string](p, `document.getElementById('readout').ariaLive`), "not spoken at every step")
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	assert.Equal(t, first, agrees("undo"))
	p.change("#units", "2")
	assert.Contains(t, agrees("units"), "mm")
	eval[bool](p, `(s => { s.selectedIndex = s.options.length - 1; s.dispatchEvent(new Event('change',
		{bubbles: true})); return true; })(document.getElementById('starting'))`)
	agrees("starting boat")
	p.enter("beam", "900 mm")
	agrees("typed")
	// So is what a measured print is worth, which is told of the longest part.
	eval[bool](p, `document.getElementById('measured').value = '149', true`)
	p.press(`[data-paper="check"]`)
	worth := eval[string](p, `document.getElementById('measured-says').textContent`)
	p.slide("length", "2800")
	p.wait(`document.getElementById('measured-says').textContent !== %q`, worth)

	p.enter("ribs", "20")
	assert.NotContains(t, read(), "Rib 13", "there is none any more")
}
