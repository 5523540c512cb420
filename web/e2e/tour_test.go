package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
)

// The keys of the tour, as WebDriver writes them: W3C, WebDriver, 17.4.2.
const (
	keyTab   = "\uE004"
	keyRight = "\uE014"
)

// visitor is a browser of any make with one page open in it.
type visitor interface {
	goTo(address string)
	// eval is an expression's value as JSON.
	eval(expression string) string
	press(keys ...string)
	// widen gives the page a width in CSS pixels, which may open it anew.
	widen(width int, address string)
	// print is the page as PDF, nil where the driver cannot print.
	print() []byte
	// complaints are what the page has logged as errors, as far as the driver tells.
	complaints() []string
}

// tour takes a browser through what the page is for. The long one, of make browsers, goes
// through every stage and room at every width and prints.
func tour(t *testing.T, v visitor) {
	address := fileAddress(pageFile(t))
	long := os.Getenv("BARKWRIGHT_TOUR") != ""
	says := func(expression string, args ...any) (out string) {
		t.Helper()
		text := v.eval(fmt.Sprintf(expression, args...))
		if json.Unmarshal([]byte(text), &out) != nil {
			return text
		}
		return out
	}
	wait := func(expression string, args ...any) {
		t.Helper()
		for end := time.Now().Add(30 * time.Second); says(expression, args...) != "true"; time.Sleep(100 * time.Millisecond) {
			require.True(t, time.Now().Before(end), "waiting for %s", fmt.Sprintf(expression, args...))
		}
	}
	ready := func() {
		t.Helper()
		wait(`document.documentElement?.dataset.ready === 'true'`)
	}
	focus := func(selector string) {
		t.Helper()
		require.Equal(t, "true", says(`(e => { e.closest('details')?.setAttribute('open', ''); e.focus(); e.select?.();
			return document.activeElement === e; })(document.querySelector(%q))`, selector), selector)
	}
	goTo := func(k stage.Key) {
		t.Helper()
		says(`document.querySelector('#notches [data-at="%s"]').click()`, k)
		wait(`document.documentElement.dataset.at === %q`, string(k))
	}
	typed := func(key string) string {
		t.Helper()
		return says(`document.querySelector('[data-typed="%s"]').value`, key)
	}

	v.goTo(address)
	ready()
	goTo(stage.Choose)
	before := typed("length")
	focus("#length")
	v.press(keyRight, keyRight)
	wait(`document.querySelector('[data-typed="length"]').value !== %q`, before)
	longer := typed("length")
	focus(`[data-typed="beam"]`)
	v.press(append(strings.Split("34 1/2", ""), keyTab)...)
	wait(`document.querySelector('#beam-echo').textContent.includes('10 1/2 in')`)
	if says(`document.hasFocus()`) != "true" {
		// A window without a screen may never have the focus, and then leaving a field ends no entry.
		t.Log("this window has no focus: the entry is ended by script")
		says(`document.querySelector('[data-typed="beam"]').dispatchEvent(new Event('change', {bubbles: true}))`)
	}
	wait(`Math.abs(+document.getElementById('beam').value - 34.5) < 1e-6`)
	entered := typed("beam")

	keys := stage.Keys()
	for _, k := range keys {
		goTo(k)
		assert.Equal(t, "true", says(`[...document.querySelectorAll('.cells [data-result]')]
			.some(e => e.checkVisibility() && /\d/.test(e.textContent))`), "a number at %s", k)
	}
	goTo(stage.Choose)
	time.Sleep(1200 * time.Millisecond) // whatever is entered is kept within a second
	v.goTo(address)
	ready()
	assert.Equal(t, longer, typed("length"), "kept")
	assert.Equal(t, entered, typed("beam"), "kept")

	goTo("shed") // where files and paper are
	says(`(() => { window.handOver = (name, kind, text) => { window.handed = text; }; return true; })()`)
	// Pressed by script: a window without a screen may not have the focus that keys ask for.
	says(`document.querySelector('[data-keep="save-file"]').click()`)
	wait(`(window.handed ?? '').includes('"designs"')`)
	assert.Equal(t, "876.3", says(`(JSON.parse(handed).designs[0].values.beam * 1000).toFixed(1)`), "saved, mm")

	if long {
		says(`(() => { window.print = () => {}; return true; })()`)
		says(`document.querySelector('[data-paper="print"]').click()`)
		if pdf := v.print(); pdf != nil {
			assert.True(t, strings.HasPrefix(string(pdf), "%PDF-"))
			assert.Greater(t, len(pdf), 20_000)
		} else {
			t.Log("this driver cannot print")
		}
	}
	widths, unfolded := []int{320, 768}, 0
	if long {
		unfolded = 390
		widths = []int{320, 360, 390, 447, 600, 768, 1024, 1280}
	}
	for _, width := range widths {
		v.widen(width, address)
		ready()
		require.Equal(t, fmt.Sprint(width), says(`innerWidth`))
		at := []stage.Key{stage.Choose, stage.Bark}
		if long {
			at = append(keys, "season", "compare", "lessons", "shed", "all")
		}
		look := func(what string) {
			t.Helper()
			assert.Equal(t, "0", says(sideways), "sideways at %s, %d px: %s", what, width, says(tooWide))
		}
		for _, k := range at {
			goTo(k)
			look(string(k))
			if width > unfolded || k == "all" { // there what is unfolded would stand a second time
				continue
			}
			for range 2 { // a fold may stand in a fold
				says(`[...document.querySelectorAll('details:not([open])')].filter(e => e.checkVisibility())
					.forEach(e => { e.open = true; })`)
				time.Sleep(100 * time.Millisecond) // what it holds is written once it is open
			}
			look(string(k) + ", unfolded")
		}
		if !long {
			continue
		}
		goTo("shed")
		says(`document.querySelector('[data-paper="show"]').click()`)
		wait(`document.querySelectorAll('#paper-pages svg').length > 0`)
		look("the pages shown")
		goTo(stage.Choose)
		says(`document.querySelector('[data-trace="open"]').click()`)
		wait(`document.getElementById('tracing').open`)
		look("the picture that is read")
		says(`document.querySelector('[data-trace="close"]').click()`)
		for _, k := range []stage.Key{stage.Gunwales, stage.Gather} {
			goTo(k)
			says(`document.querySelector('#at-%s [data-bench]').click()`, k)
			wait(`document.getElementById('bench').open`)
			look("the bench of " + string(k))
			says(`document.querySelector('[data-bench="close"]').click()`)
			wait(`!document.getElementById('bench').open`)
		}
	}
	assert.Empty(t, v.complaints())
}

// sideways is how far the page, the pane beside it or what covers it scrolls to the side, CSS
// pixels.
const sideways = `Math.max(...[document.documentElement,
	...document.querySelectorAll('#controls, dialog[open], dialog[open] [tabindex]')]
	.filter(e => e.id !== 'easel').map(e => e.scrollWidth - e.clientWidth))`

// tooWide names what reaches past the page's right edge.
const tooWide = `[...document.querySelectorAll('body *')].filter(e => e.checkVisibility() &&
	e.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5 && !e.closest('.scroll'))
		.map(e => e.tagName + '#' + e.id + '.' + e.className + ' ' + e.getBoundingClientRect().right).slice(0, 8).join('; ')`

// chromium is the browser of all other tests, visited as the others are.
type chromium struct{ *tab }

func (c chromium) goTo(address string) { c.tab.goTo(address) }

func (c chromium) eval(expression string) string {
	v, err := chromedp.Run(c.ctx, chromedp.Evaluate[string](stringified(expression)))
	if err != nil {
		return "" // between two pages
	}
	return v
}

// stringified is an expression whose value is its JSON, null where it has none.
func stringified(expression string) string { return "JSON.stringify((" + expression + ") ?? null)" }

func (c chromium) press(keys ...string) {
	named := strings.NewReplacer(keyTab, kb.Tab, keyRight, kb.ArrowRight)
	for _, k := range keys {
		c.do(chromedp.KeyEvent(named.Replace(k)))
	}
}

func (c chromium) widen(width int, _ string) {
	c.do(screen{width: int64(width), height: 800, density: 1}.emulate())
	c.settle()
}

func (c chromium) print() []byte {
	res, err := chromedp.Call(c.ctx, page.PrintToPDF, page.PrintToPDFParams{})
	require.NoError(c, err)
	return res.Data
}

func (c chromium) complaints() []string { return c.take() }

func TestTourChromium(t *testing.T) {
	if os.Getenv("BARKWRIGHT_TOUR") == "" {
		t.Skip("the other tests look at Chromium closer; make browsers takes the tour in it")
	}
	tour(t, chromium{openFile(t, pageFile(t), "", desktop, own(t))})
}
