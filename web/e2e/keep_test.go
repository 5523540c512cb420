package e2e

import (
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
)

// own is a flag that means nothing to a browser, so that a test of what is kept has a
// browser of its own until it ends, whose tabs share one store.
func own(t testing.TB) string { return "own-" + t.Name() }

// keptBoats are the texts of the boats as they are kept.
const keptBoats = `Object.keys(localStorage).filter(k => k.startsWith('barkwright.boat.')).sort().map(k => localStorage.getItem(k))`

// keeps tells whether one of the boats that are kept has these values, inches.
func keeps(values string) string {
	return fmt.Sprintf(keptBoats+`.map(t => JSON.parse(t).designs[0].values).some(v => Object.entries(%s).every(([k,
		x]) => Math.abs(v[k] / 0.0254 - x) < 1e-6))`, values)
}

// again opens the page once more as it was left.
func (p *tab) again() {
	p.Helper()
	p.do(chromedp.Reload())
	p.ready()
}

func (p *tab) fieldOf(id string) string {
	p.Helper()
	return eval[string](p, `document.getElementById(%q).value`, id)
}

// notices are the texts at the top of the page that can be seen.
func (p *tab) notices() []string {
	p.Helper()
	return eval[[]string](p, `[...document.querySelectorAll('#notices p')].filter(e => e.checkVisibility()).map(e => e.textContent)`)
}

// noticed waits for a notice with a text in it.
func (p *tab) noticed(text string) {
	p.Helper()
	p.wait(`document.getElementById('notices').textContent.includes(%q)`, text)
}

// within waits for an expression, a second at most: what is entered is kept within
// that of the last key or motion. Half a second more is the machine's.
func (p *tab) within(expression string) {
	p.Helper()
	_, err := chromedp.Run(p.ctx, chromedp.Poll[bool](expression, chromedp.WithPollingTimeout(1500*time.Millisecond),
		chromedp.WithPollingInterval(20*time.Millisecond)))
	require.NoError(p, err, "kept within a second: %s", expression)
}

// Whatever is entered is kept within a second, with the control still in hand, and is
// there when the page is opened again.
func TestKeptWithinASecond(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	has := func(text string) string { return fmt.Sprintf(keptBoats+`.some(t => t.includes(%q))`, text) }
	// The button +: a value between two steps goes to the next.
	p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)))
	p.within(keeps(`{beam: 33.25}`))
	// Name, notes and a field being typed in, none of them left.
	for id, text := range map[string]string{"name": "Not left", "notes": "Nor these notes", "record-text": "length overall 15"} {
		p.unfold(id)
		eval[bool](p, `(f => { f.focus(); f.value = ''; return true; })(document.getElementById(%q))`, id)
		p.do(chromedp.KeyEvent(text))
		p.within(has(text))
	}
	eval[bool](p, `(f => { f.closest('details')?.setAttribute('open', ''); f.focus(); f.select(); return true;
		})(document.querySelector('[data-typed="length"]'))`)
	p.do(chromedp.KeyEvent("17 banan"))
	p.within(has("17 banan"))
	// A side of a sheet on hand.
	p.press("#add-sheet")
	eval[bool](p, `(f => { f.closest('details')?.setAttribute('open', ''); f.focus(); f.select(); return true;
		})(document.querySelector('#onhand tbody:not([hidden]) input'))`)
	p.do(chromedp.KeyEvent("40 plum"))
	p.within(has("40 plum"))
	// A row of the record that is half entered.
	p.unfold("record-list")
	p.press(`[data-measured="add"]`)
	eval[bool](p, `(f => { f.focus(); return true; })(document.querySelector('#record-list [data-field="2"]'))`)
	p.do(chromedp.KeyEvent("16' 3"))
	p.within(has("16' 3"))
	// Units.
	p.change("#units", "2")
	p.within(`localStorage.getItem('barkwright.units') === 'mm'`)

	p.again()
	assert.Equal(t, "Not left", p.fieldOf("name"))
	assert.Equal(t, "Nor these notes", p.fieldOf("notes"))
	assert.Equal(t, "length overall 15", p.fieldOf("record-text"))
	assert.Equal(t, "17 banan", eval[string](p, `document.querySelector('[data-typed="length"]').value`))
	assert.Contains(t, p.fault("length"), "banan")
	assert.Equal(t, "40 plum", eval[string](p, `document.querySelector('#onhand tbody:not([hidden]) input').value`))
	assert.Contains(t, eval[string](p, `document.querySelector('#onhand tbody:not([hidden]) .fault').textContent`), "plum")
	p.wait(`document.querySelectorAll('#record-list li').length === 1`)
	assert.Equal(t, "16' 3", eval[string](p, `document.querySelector('#record-list [data-field="2"]').value`))
	assert.Contains(t, eval[string](p, `document.querySelector('#record-list .fault').textContent`), "not taken yet")
	assert.Equal(t, "2", p.fieldOf("units"))
	assert.Contains(t, eval[string](p, `document.querySelector('[data-typed="beam"]').value`), "845")
	// Enter takes what was half entered.
	p.unfold("record-list")
	eval[bool](p, `(f => { f.focus(); return true; })(document.querySelector('#record-list [data-field="2"]'))`)
	p.do(chromedp.KeyEvent(kb.Enter))
	p.wait(`document.getElementById('record-said').textContent.startsWith('1 measurement')`)
}

// A slider that is held down is kept too.
func TestSliderHeldIsKept(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	box := eval[[]float64](p, `(r => [r.left, r.top + r.height / 2, r.width])((s => {
		s.closest('details')?.setAttribute('open', ''); s.scrollIntoView({block: 'center'});
			return s.getBoundingClientRect(); })(document.querySelector('input[name="beam"]')))`)
	p.do(chromedp.MouseEvent(chromedp.MousePressed, box[0]+box[2]/2, box[1], chromedp.ButtonLeft),
		chromedp.MouseEvent(chromedp.MouseMoved, box[0]+0.7*box[2], box[1], chromedp.ButtonLeft))
	p.within(keptBoats + `.length === 1`)
	held := p.shown("gunwale.length")
	beam := eval[float64](p, `+document.querySelector('input[name="beam"]').value`)
	p.within(keeps(fmt.Sprintf(`{beam: %v}`, beam)))
	p.again()
	assert.Equal(t, beam, eval[float64](p, `+document.querySelector('input[name="beam"]').value`))
	assert.InDelta(t, held, p.shown("gunwale.length"), 1e-9)
}

// Two tabs on two boats: both boats survive either.
func TestTwoTabsOnTwoBoats(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	p.enter("beam", "34 in")
	q := openAfter(t, "", desktop, own(t))
	assert.Equal(t, "34", eval[string](q, `document.querySelector('input[name="beam"]').value`))
	q.change("#starting", "2")
	q.settle()
	q.enter("length", "18 ft")
	p.wait(`document.getElementById('shelf').options.length === 2`)
	p.enter("beam", "35 in")
	q.wait(keeps(`{beam: 35}`))
	q.wait(keeps(`{length: 216}`))
	assert.Empty(t, append(p.notices(), q.notices()...))
	p.again()
	assert.Equal(t, "35", eval[string](p, `document.querySelector('input[name="beam"]').value`), "each tab has its own in hand")
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
}

// Two tabs on one boat: the later one keeps both versions, and both tabs say so.
func TestTwoTabsOnOneBoat(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	p.enter("beam", "34 in")
	p.wait(keptBoats + `.length === 1`)
	q := openAfter(t, "", desktop, own(t))
	p.enter("beam", "35 in")
	q.noticed("changed in another window")
	q.enter("depth", "13 in")
	q.noticed("Both versions are kept")
	p.noticed("Its version is kept beside this one")
	p.wait(keeps(`{beam: 35, depth: 12.5}`))
	p.wait(keeps(`{beam: 34, depth: 13}`))
	for _, one := range []*tab{p, q} {
		one.wait(`document.getElementById('shelf').options.length === 2`)
		assert.Len(t, eval[[]string](one,
			`[...new Set([...document.getElementById('shelf').options].map(o => o.textContent))]`), 2, "told apart")
	}
	// From there on each goes on with its own.
	p.enter("length", "17 ft")
	q.enter("length", "15 ft")
	p.wait(keeps(`{beam: 35, length: 204}`))
	p.wait(keeps(`{beam: 34, length: 180}`))
	assert.Len(t, eval[[]string](p, keptBoats), 2)
}

// kept is the text of a boat as it is kept.
func kept(t testing.TB, name string, change func(*design.Design)) string {
	t.Helper()
	d := design.Default()
	d.Name = name
	if change != nil {
		change(&d)
	}
	text, err := file.Kept{Boat: file.Boat{Design: d}}.Encode()
	require.NoError(t, err)
	return text
}

// openStored is openFile of the page with these texts in the store of the test's own
// browser, and nothing else.
func openStored(t testing.TB, texts map[string]string, prelude string) *tab {
	t.Helper()
	address := fileAddress(pageFile(t))
	blank := filepath.Join(t.TempDir(), "blank.html")
	require.NoError(t, os.WriteFile(blank, []byte("<!doctype html><title>Blank</title>"), 0o644))
	// All files share one store. It is filled in a file that is open already: what a script
	// writes while its document opens can be lost for good, because Chromium drops it where
	// its main process has not heard of the document yet.
	p := openFile(t, blank, prelude, desktop, own(t))
	list, err := json.Marshal(texts)
	require.NoError(t, err)
	eval[bool](p, `localStorage.clear(), Object.entries(%s).forEach(([key, text]) => localStorage.setItem(key, text)), true`, list)
	p.goTo(address)
	return p
}

// What this page cannot read stays under its key, whatever is done; it is named at the
// top and offered as a file. What was kept under one key is taken over and left.
func TestWhatCannotBeReadStays(t *testing.T) {
	good := kept(t, "A torn one", nil)
	old, err := file.File{Boats: []file.Boat{{Design: design.Default()}, {Design: design.Starting()[1]}}, Current: 1}.Encode()
	require.NoError(t, err)
	texts := map[string]string{
		"barkwright.boat.a": good[:len(good)/2],
		"barkwright.boat.b": `{"format":"barkwright designs","version":99,"name":"A newer one"}`,
		"barkwright.boat.c": strings.Replace(strings.Replace(kept(t, "One with a keel", nil), `"table":"`, `"table":"x`,
			1), `"rocker":`, `"keel":1,"rocker":`, 1),
		"barkwright.boat.d": `something else`,
		"barkwright.boat.e": kept(t, "A good one", nil),
		// What the page before this one kept.
		"barkwright.designs": string(old),
	}
	p := openStored(t, texts, "")
	p.ready()
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push(text), true`)
	said := strings.Join(p.notices(), "\n")
	for _, name := range []string{"A torn one", "A newer one", "One with a keel", "barkwright.boat.d"} {
		assert.Contains(t, said, "“"+name+"” is kept and was not opened.")
	}
	assert.NotContains(t, said, "A good one")
	assert.Equal(t, []string{"A good one", design.Default().Name, design.Starting()[1].Name},
		eval[[]string](p, `[...document.getElementById('shelf').options].map(o => o.textContent)`))
	assert.Equal(t, design.Starting()[1].Name, p.fieldOf("name"), "in hand as it was before")
	eval[bool](p, `[...document.querySelectorAll('#notices button')].filter(b => b.textContent.startsWith('Save'))
		.forEach(b => b.click()), true`)
	saved := eval[[]string](p, `saved`)
	assert.Len(t, saved, 4)
	p.enter("beam", "35 in")
	p.press(`[data-keep="copy"]`)
	p.press("#remove")
	p.settle()
	p.again()
	for key, text := range texts {
		if key != "barkwright.boat.e" {
			assert.Equal(t, text, eval[string](p, `localStorage.getItem(%q)`, key), key)
			if key != "barkwright.designs" {
				assert.Contains(t, saved, text)
			}
		}
	}
	assert.True(t, eval[bool](p, `Object.keys(localStorage).some(k => k.startsWith('barkwright.torn.'))`),
		"a torn one is copied aside")
	assert.Equal(t, 3, eval[int](p, `document.getElementById('shelf').options.length`), "taken over once")
}

// The old key torn, or of a newer page: it stays, and is offered.
func TestOldKeyThatCannotBeRead(t *testing.T) {
	for _, text := range []string{`{"format":"barkwright designs","version":99,"designs":[]}`,
		`{"format": "barkwright designs", "version": 1, "cur`} {
		p := openStored(t, map[string]string{"barkwright.designs": text}, "")
		p.ready()
		assert.Contains(t, strings.Join(p.notices(), "\n"), "barkwright.designs")
		p.enter("beam", "35 in")
		p.wait(keptBoats + `.length === 1`)
		assert.Equal(t, text, eval[string](p, `localStorage.getItem('barkwright.designs')`))
	}
}

// That the browser refuses to keep is said at the top, once, where it is spoken.
func TestRefusalIsSaidOnce(t *testing.T) {
	p := openAfter(t, `Storage.prototype.setItem = () => { throw new DOMException('no'); }`, desktop, own(t))
	require.Len(t, p.notices(), 1)
	assert.Contains(t, p.notices()[0], "the browser refuses it")
	eval[bool](p, `window.added = 0, new MutationObserver(() => added++).observe(document.getElementById('notices'),
		{childList: true, subtree: true, characterData: true}), true`)
	for range 3 {
		p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)))
		p.settle()
	}
	time.Sleep(500 * time.Millisecond)
	assert.Len(t, p.notices(), 1)
	assert.Zero(t, eval[int](p, `added`), "and not at every step")
	assert.True(t, eval[bool](p, `document.getElementById('notices')
		.getBoundingClientRect().top < document.getElementById('sight').getBoundingClientRect().top`))

	// The same where it refuses later, and it is unsaid where it keeps again.
	q := openAfter(t, `(s => { Storage.prototype.setItem = function (...a) {
		if (window.full) throw new DOMException('full'); s.apply(this, a); }; })(Storage.prototype.setItem)`, desktop, own(t))
	assert.Empty(t, q.notices())
	assert.Contains(t, eval[string](q, `document.getElementById('kept').textContent`), "any other page opened from disk")
	eval[bool](q, `window.full = true`)
	q.enter("beam", "35 in")
	q.noticed("Nothing more is kept")
	eval[bool](q, `window.full = false, true`)
	q.enter("beam", "36 in")
	q.wait(`document.querySelectorAll('#notices p').length === 0`)
}

// An address that is edited is read, and Back goes back. One that cannot be read is
// named and stays to be gone back to.
func TestAddressEdited(t *testing.T) {
	file := pageFile(t) // Here, because only the test's own goroutine may skip it.
	served := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		http.ServeFile(w, r, file)
	}))
	defer served.Close()
	p := openAddress(t, served.URL+"/", "", desktop, own(t))
	p.ready()
	const beam = `+document.querySelector('input[name="beam"]').value`
	p.enter("beam", "34 in")
	p.wait(`location.hash.includes('B34')`)
	eval[bool](p, `location.hash = '#d=barkwright1_B30_nThirty', true`)
	p.wait(beam + ` === 30`)
	assert.Equal(t, "Thirty", p.fieldOf("name"))
	p.enter("beam", "31 in")
	p.wait(`location.hash.includes('B31')`)
	eval[bool](p, `history.back(), true`)
	p.wait(beam + ` === 34`)
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	eval[bool](p, `history.forward(), true`)
	p.wait(beam + ` === 31`)

	// A step to another stage, a change, and Back: the stage before, and the boat as it is.
	eval[bool](p, `document.querySelector('[data-at="choose"]').click(), true`)
	p.enter("beam", "32 in")
	p.wait(`location.hash.includes('B32') && location.hash.endsWith('&at=choose')`)
	eval[bool](p, `history.back(), true`)
	p.wait(`document.documentElement.dataset.at === 'all' && location.hash.includes('B32')`)
	assert.Equal(t, 32.0, eval[float64](p, beam))
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	p.press("#undo")
	assert.Equal(t, 31.0, eval[float64](p, beam))

	for _, bad := range []string{"barkwright9_B30", "barkwright1_Dp3zz", "%zz"} {
		eval[bool](p, `location.hash = %q, true`, "#d="+bad)
		p.noticed("was not opened")
		before := eval[float64](p, beam)
		p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)))
		p.wait(`location.hash.includes('#d=barkwright3_B')`)
		assert.NotEqual(t, before, eval[float64](p, beam))
		eval[bool](p, `history.back(), true`)
		p.wait(`location.hash === %q`, "#d="+bad)
		eval[bool](p, `document.querySelector('[data-notice="address"] [data-action="close"]').click(), true`)
	}
	q := openAddress(t, served.URL+"/", `if (!location.hash) location.hash = '#d=barkwright9_B30'`, desktop.at(asKept))
	q.ready()
	q.noticed("was not opened")
	assert.Equal(t, "#d=barkwright9_B30&at=choose", eval[string](q, `location.hash`))
}

// Everything taken off can be brought back, also on another day, until it is cleared.
func TestTakenOffCanBeBroughtBack(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	for _, i := range []string{"1", "2"} {
		p.change("#starting", i)
		p.settle()
	}
	p.press("#remove")
	p.press("#remove")
	assert.True(t, eval[bool](p, `document.getElementById('remove').disabled`))
	p.again()
	names := func(id string) []string {
		return eval[[]string](p, `[...document.getElementById(%q).options].map(o => o.textContent)`, id)
	}
	assert.Len(t, names("taken-off"), 2)
	p.press("#bring-back")
	p.press("#bring-back")
	assert.Len(t, names("shelf"), 3)
	assert.True(t, eval[bool](p, `document.getElementById('off').hidden`))
	p.press("#remove")
	p.press(`[data-keep="clear-off"]`)
	assert.Len(t, names("taken-off"), 1, "asked for once")
	p.press(`[data-keep="clear-off"]`)
	p.again()
	assert.Empty(t, names("taken-off"))
	assert.Len(t, names("shelf"), 2)
}

// One boat or all are saved, the file named for what it holds; opened again it adds none
// twice; one that there is no room for changes nothing.
func TestSaveOneOrAll(t *testing.T) {
	p := openAfter(t, `(s => { Storage.prototype.setItem = function (...a) {
		if (window.full) throw new DOMException('full'); s.apply(this, a); }; })(Storage.prototype.setItem)`, desktop, own(t))
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push({name, text}), true`)
	assert.True(t, eval[bool](p, `document.getElementById('save-all').hidden`))
	p.enter("beam", "34 in")
	p.press(`[data-keep="copy"]`)
	p.press(`[data-keep="save-file"]`)
	p.press(`[data-keep="save-all"]`)
	assert.Equal(t, []string{"Heron-Cove-first-canoe-copy.json", "2-canoes.json"}, eval[[]string](p, `saved.map(s => s.name)`))
	one, all := eval[string](p, `saved[0].text`), eval[string](p, `saved[1].text`)
	f, err := file.Decode([]byte(one))
	require.NoError(t, err)
	assert.Len(t, f.Boats, 1)
	for _, text := range []string{one, all} {
		eval[bool](p, `document.getElementById('file-says').textContent = '', true`)
		p.giveFile("boats.json", text)
		p.wait(`document.getElementById('file-says').textContent !== ''`)
		assert.Contains(t, p.says(), "Opened 0 from the file")
		assert.Contains(t, p.says(), "not added again")
		assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	}
	eval[bool](p, `window.full = true`)
	before := eval[[]string](p, keptBoats)
	p.giveFile("more.json", strings.ReplaceAll(all, "Heron Cove", "Other Cove"))
	p.wait(`document.getElementById('file-says').textContent.includes('no room')`)
	assert.Contains(t, p.says(), "Nothing is changed")
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	assert.Equal(t, before, eval[[]string](p, keptBoats))
	eval[bool](p, `window.full = false, true`)
}

// Reset all says what it keeps.
func TestResetSaysWhatItKeeps(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `((n, text) => { n.value = text; for (const e of ['input', 'change']) n.dispatchEvent(new Event(e,
		{bubbles: true})); return true; })(document.getElementById('name'), 'Mine')`)
	p.enter("beam", "35 in")
	p.do(chromedp.Click(chromedp.CSS(`[data-do="reset"]`)))
	p.settle()
	assert.Equal(t, "33", eval[string](p, `document.querySelector('input[name="beam"]').value`))
	assert.Equal(t, "Mine", p.fieldOf("name"))
	assert.Contains(t, eval[string](p, `document.getElementById('did').textContent`),
		"The name, the notes, the bark on hand and what was measured are kept")
}

// The boat shown beside a fault is this one as it last could be built: after a reload,
// of a copy, and none where it never could be.
func TestBoatShownIsThisOne(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	p.enter("beam", "40 in")
	longest := p.shown("ribs.longest")
	p.enter("gunwaleEndHeight", "9 in")
	said := func() string { return eval[string](p, `document.getElementById('not-built').textContent`) }
	require.Contains(t, said(), "The boat shown is the last one that could be")
	p.again()
	require.Contains(t, said(), "The boat shown is the last one that could be")
	assert.InDelta(t, longest, p.shown("ribs.longest"), 1e-9)
	p.press(`[data-keep="copy"]`)
	assert.InDelta(t, longest, p.shown("ribs.longest"), 1e-9)

	p.write("record-text", "length overall\t232\nbeam inside the gunwales\t40\nend height\t13\n")
	p.press(`[data-measured="paste"]`)
	p.press(`[data-measured="fit"]`)
	p.wait(`document.getElementById('not-built').textContent.includes('No boat is shown')`)
	p.wait(`document.getElementById('record-said').textContent.includes('Nothing is compared')`)
	assert.Contains(t, eval[string](p, `document.getElementById('record-said').textContent`), "or more fits")
	assert.Empty(t, eval[string](p, `document.querySelector('[data-result="ribs.longest"]').dataset.value`))
	assert.Empty(t, eval[string](p, `document.getElementById('record-rows').textContent`))
	assert.Empty(t, eval[string](p, `document.getElementById('head-checks').textContent`))
	assert.False(t, eval[bool](p, `document.getElementById('tables').checkVisibility({visibilityProperty: true})`))
	p.press(`[data-paper="csv"]`)
	assert.Contains(t, eval[string](p, `document.getElementById('paper-says').textContent`), "nothing of it to print")
	p.enter("endHeight", "27 in")
	p.wait(`document.querySelectorAll('#record-rows tbody tr').length === 3`)
	assert.Positive(t, p.shown("ribs.longest"))
}
