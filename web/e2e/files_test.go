package e2e

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
)

// press works a button by keyboard alone.
func (p *tab) press(selector string) {
	p.Helper()
	eval[bool](p, `(e => { const d = e.closest('details'); if (d) d.open = true; e.focus();
		return document.activeElement === e; })(document.querySelector(%q))`, selector)
	p.do(chromedp.KeyEvent(kb.Enter))
	p.settle()
}

// change puts a value into a field or a list, as leaving it does.
func (p *tab) change(selector, value string) {
	p.Helper()
	eval[bool](p, `(e => { e.value = %q; return e.dispatchEvent(new Event('change', {bubbles: true})); })(
		document.querySelector(%q))`, value, selector)
}

func (p *tab) says() string {
	return eval[string](p, `document.getElementById('file-says').textContent`)
}

func (p *tab) giveFile(name, text string) {
	p.Helper()
	path := filepath.Join(p.TempDir(), name)
	require.NoError(p, os.WriteFile(path, []byte(text), 0o644))
	p.do(chromedp.SetUploadFiles(chromedp.CSS("#open-file"), []string{path}))
}

// Save, lose everything, open: the same boats, by keyboard.
func TestSaveAndOpen(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push({name, kind, text}), true`)
	p.enter("beam", `34 1/2"`)
	longest := p.shown("ribs.longest")
	p.press(`[data-keep="save-file"]`)
	p.wait(`saved.length === 1`)
	assert.Equal(t, "Heron-Cove-first-canoe.json", eval[string](p, `saved[0].name`))
	text := eval[string](p, `saved[0].text`)
	f, err := file.Decode([]byte(text))
	require.NoError(t, err)
	require.Len(t, f.Boats, 1)
	assert.InDelta(t, 34.5*0.0254, f.Boats[0].Design.Beam, 1e-12)

	q := open(t, desktop)
	assert.NotEqual(t, longest, q.shown("ribs.longest"))
	q.giveFile("boats.json", text)
	q.wait(`document.getElementById('file-says').textContent.startsWith('Opened 1')`)
	assert.Equal(t, longest, q.shown("ribs.longest"))
	assert.Equal(t, 2, eval[int](q, `document.getElementById('shelf').options.length`))
}

// A file that is newer, damaged, foreign or empty says so in a line and changes nothing.
func TestFilesThatCannotBeOpened(t *testing.T) {
	p := open(t, desktop)
	before := p.shown("ribs.longest")
	for name, text := range map[string]string{
		"newer.json":   `{"format":"barkwright designs","version":99,"current":0,"designs":[]}`,
		"damaged.json": `{"format":"barkwright designs","version":1,"current":0,"designs":[`,
		"foreign.json": `{"some":"thing"}`,
		"empty.json":   ``,
	} {
		eval[bool](p, `document.getElementById('file-says').textContent = '', true`)
		p.giveFile(name, text)
		p.wait(`document.getElementById('file-says').textContent !== ''`)
		assert.Contains(t, p.says(), "Nothing is changed", name)
		assert.Equal(t, before, p.shown("ribs.longest"))
		assert.Equal(t, 1, eval[int](p, `document.getElementById('shelf').options.length`))
	}
}

// The boat as one line is read back as the same boat; a bad line changes nothing.
func TestBoatAsOneLine(t *testing.T) {
	p := open(t, desktop)
	p.enter("beam", `34 1/2"`)
	longest := p.shown("ribs.longest")
	p.press(`[data-keep="show-line"]`)
	line := eval[string](p, `document.getElementById('line').value`)
	assert.NotEmpty(t, line)
	assert.LessOrEqual(t, len(line), 500)
	p.do(chromedp.Click(chromedp.CSS(`[data-do="reset"]`)))
	p.settle()
	assert.NotEqual(t, longest, p.shown("ribs.longest"))
	p.press(`[data-keep="open-line"]`)
	assert.Equal(t, longest, p.shown("ribs.longest"))
	eval[bool](p, `document.getElementById('line').value = 'nothing of the kind', true`)
	p.press(`[data-keep="open-line"]`)
	assert.Contains(t, p.says(), "Nothing is changed")
	assert.Equal(t, longest, p.shown("ribs.longest"))
}

// What was done is there when the page is opened again, and the page says where it is kept.
func TestKeptByTheBrowser(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	p.enter("beam", `34 1/2"`)
	longest := p.shown("ribs.longest")
	assert.Contains(t, eval[string](p, `document.getElementById('kept').textContent`), "Kept in this browser")
	p.do(chromedp.Reload())
	p.ready()
	assert.Equal(t, longest, p.shown("ribs.longest"))
	r := openAfter(t, `Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no'); }})`, desktop, own(t))
	assert.NotEqual(t, longest, r.shown("ribs.longest"))
	r.enter("beam", `34 1/2"`)
	assert.Contains(t, eval[string](r, `document.getElementById('kept').textContent`), "keeps nothing")
	assert.Equal(t, longest, r.shown("ribs.longest"))
}

// A page that is served has the boat in hand in its address; opened again there, it is
// the kept one with its record, and the others beside it. An address alone is one boat.
func TestServedPageKeepsItsRecords(t *testing.T) {
	file := pageFile(t)
	served := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		http.ServeFile(w, r, file)
	}))
	defer served.Close()
	p := openAddress(t, served.URL+"/", "", desktop, own(t))
	p.ready()
	p.write("record-text", "length overall\t180\nbeam inside the gunwales\t31\n")
	p.press(`[data-measured="paste"]`)
	p.press(`[data-measured="fit"]`)
	p.wait(`location.hash.startsWith('#d=')`)
	p.do(chromedp.Reload())
	p.ready()
	p.wait(`document.querySelectorAll('#record-list li').length === 2`)
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))

	hash := eval[string](p, `location.hash`)
	eval[bool](p, `localStorage.clear(), true`)
	q := openAddress(t, served.URL+"/", fmt.Sprintf(`if (!location.hash) location.hash = %q`, hash), desktop.at(asKept), own(t))
	q.ready()
	assert.Equal(t, 1, eval[int](q, `document.getElementById('shelf').options.length`))
	assert.InDelta(t, 31*0.0254, eval[float64](q, `+document.querySelector('[name="beam"]').value`)*0.0254, 1e-9)
}

// Starting boats stand beside the one in hand; one taken off can be brought back.
func TestDesignsSideBySide(t *testing.T) {
	p := open(t, desktop)
	first := p.shown("gunwale.length")
	p.chooseOne("starting", "2")
	assert.Greater(t, p.shown("gunwale.length"), first)
	p.chooseOne("shelf", "0")
	assert.Equal(t, first, p.shown("gunwale.length"))
	p.chooseOne("shelf", "1")
	p.press("#remove")
	assert.Equal(t, first, p.shown("gunwale.length"))
	p.press("#bring-back")
	assert.Greater(t, p.shown("gunwale.length"), first)
}

// A name is text, whatever is written in it.
func TestNamesAreText(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `(n => { n.focus(); n.select(); return true; })(document.getElementById('name'))`)
	p.do(chromedp.KeyEvent(`<img onerror=alert(1)>` + kb.Tab))
	p.settle()
	assert.Zero(t, eval[int](p, `document.querySelectorAll('[onerror]').length`))
	assert.Contains(t, eval[string](p, `document.getElementById('shelf').textContent`), "<img")
}

// A file is named after its boat, in any script, with nothing that a file system or
// a shell would read something into; what is in a table or a drawing stands behind.
func TestFilesAreNamedAfterTheBoat(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `window.saved = [], window.handOver = name => saved.push(name), true`)
	for _, row := range []struct{ boat, file string }{
		{`../a\b: "c" <d>|e?*`, "a-b-c-d-e"},
		{"زورق 🛶", "زورق"},
		{"🛶", "canoe"},
		{strings.Repeat("long ", 60), strings.TrimSuffix(strings.Repeat("long-", 30), "-")},
	} {
		eval[bool](p, `((n, text) => { n.value = text; for (const e of ['input', 'change']) n.dispatchEvent(new Event(e,
			{bubbles: true})); saved.length = 0; return true; })(document.getElementById('name'), %q)`, row.boat)
		p.press(`[data-keep="save-file"]`)
		assert.Equal(t, []string{row.file + ".json"}, eval[[]string](p, `saved`))
		if len(row.boat) > design.MaxName {
			continue // no boat is built by that name: tables and drawings keep the last
		}
		p.press(`[data-paper="csv"]`)
		p.press(`[data-paper="svg"]`)
		assert.Equal(t, []string{row.file + "-frame.csv", row.file + "-stem.svg"}, eval[[]string](p, `saved.slice(1)`))
	}
}
