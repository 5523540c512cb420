package e2e

import (
	"bytes"
	"fmt"
	"image/png"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// wakes stands in for the browser's lock on the screen, and writes down what is asked of it.
const wakes = `window.asked = []; Object.defineProperty(navigator, 'wakeLock', {configurable: true, value: {request: async kind => {
	asked.push(kind);
	const lock = new EventTarget();
	lock.release = async () => { asked.push('released'); lock.dispatchEvent(new Event('release')); };
	window.lock = lock;
	return lock;
}}})`

// benchLines are the lines of a stage's first list of the boat that the page opens with.
func benchLines(t testing.TB, k stage.Key) []lines.Line {
	st, _, ok := stage.Lookup(k)
	require.True(t, ok)
	return lines.Lists(core.Evaluate(design.Default()), st, units.Imperial16)[0].Lines
}

func (p *tab) what() string {
	return eval[string](p, `document.querySelector('#bench-line h2').textContent`)
}

func (p *tab) counted() string {
	return eval[string](p, `document.getElementById('bench-at').textContent`)
}

// clickOn presses a button of the bench as a finger or a mouse does.
func (p *tab) clickOn(selector string) {
	p.Helper()
	c := eval[[]float64](p, `(e => { e.scrollIntoView({block: 'nearest'}); const r = e.getBoundingClientRect();
		return [r.left + r.width / 2, r.top + r.height / 2]; })(document.querySelector(%q))`, selector)
	p.do(chromedp.MouseClickXY(c[0], c[1]))
	p.settle()
}

// A thumb ticks and goes on, a finger's way to the side steps without a tick, and one that
// is short or steep does nothing; the page opens again on the same line.
func TestBenchByThumb(t *testing.T) {
	p := openAfter(t, wakes, phone.at("rib"))
	tap := func(selector string) {
		p.Helper()
		at := eval[[]float64](p, `(r => [r.left + r.width / 2, r.top + r.height / 2])(document.querySelector(%q)
			.getBoundingClientRect())`, selector)
		p.down(at[0], at[1]).up()
	}
	p.beside(`#at-rib [data-bench]`, 0.5, 0.5)
	tap(`#at-rib [data-bench]`)
	want := benchLines(t, stage.Rib)
	assert.Equal(t, want[0].What, p.what())
	assert.Equal(t, []string{"screen"}, eval[[]string](p, `asked`))
	tap(`#bench-done`)
	assert.Equal(t, want[1].What, p.what())
	assert.Equal(t, fmt.Sprintf("2 of %d, 1 done", len(want)), p.counted())
	for _, way := range []struct {
		dx, dy float64
		line   int
	}{{-60, 20, 2}, {-40, 0, 2}, {-60, 50, 2}, {-60, -20, 3}, {60, 0, 2}} {
		x, y := p.beside(`#bench-line h2`, 0.5, 0.5)
		p.down(x, y).by(way.dx, way.dy).up()
		assert.Equal(t, want[way.line].What, p.what(), "%v", way)
	}
	assert.Equal(t, fmt.Sprintf("3 of %d, 1 done", len(want)), p.counted())
	tap(`[data-bench="step:-1"]`)
	tap(`[data-bench="step:-1"]`)
	assert.Contains(t, eval[string](p, `document.getElementById('bench-line').textContent`), "■ done "+p.today())
	tap(`[data-bench=close]`)
	assert.Equal(t, []string{"screen", "released"}, eval[[]string](p, `asked`))
	assert.False(t, eval[bool](p, `document.getElementById('bench').open`))
}

// By keys: W opens, Space and Enter tick once however long they are held, arrows, Home and
// End step; Undo takes the tick back; Escape closes.
func TestBenchByKeys(t *testing.T) {
	p := openAfter(t, wakes, desktop.at("rib"))
	want := benchLines(t, stage.Rib)
	last := len(want) - 1
	p.keys("w")
	assert.Equal(t, want[0].What, p.what())
	p.keys(" ")
	p.keys(kb.Enter)
	assert.Equal(t, fmt.Sprintf("3 of %d, 2 done", len(want)), p.counted())
	eval[bool](p, `document.activeElement.dispatchEvent(new KeyboardEvent('keydown', {key: ' ', repeat: true,
		bubbles: true, cancelable: true}))`)
	p.settle()
	assert.Equal(t, fmt.Sprintf("3 of %d, 2 done", len(want)), p.counted(), "a held key counts once")
	p.keys(kb.End)
	assert.Equal(t, want[last].What, p.what())
	p.keys(kb.ArrowRight)
	assert.Equal(t, want[last].What, p.what())
	p.keys(kb.ArrowLeft)
	assert.Equal(t, want[last-1].What, p.what())
	p.keys(kb.Home)
	assert.Equal(t, fmt.Sprintf("1 of %d, 2 done", len(want)), p.counted())
	p.keys("z", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.settle()
	assert.Equal(t, fmt.Sprintf("1 of %d, 1 done", len(want)), p.counted())
	p.keys(kb.Escape)
	p.settle()
	assert.False(t, eval[bool](p, `document.getElementById('bench').open`))
	assert.Equal(t, "1 of "+fmt.Sprint(len(want)),
		eval[string](p, `document.querySelector('[data-stands="rib.drive"]').textContent`))
	p.keys("w")
	assert.Equal(t, want[1].What, p.what(), "it opens at the first that is not done")
}

// Ticks and the line in hand outlast the page.
func TestBenchIsKept(t *testing.T) {
	p := openAfter(t, wakes, phone.at(asKept), own(t))
	p.notch(stage.Lace)
	want := benchLines(t, stage.Lace)
	p.keys("w")
	p.clickOn(`#bench-done`)
	p.clickOn(`#bench-done`)
	p.again()
	p.wait(`document.getElementById('bench').open`)
	assert.Equal(t, want[2].What, p.what())
	assert.Equal(t, fmt.Sprintf("3 of %d, 2 done", len(want)), p.counted())
	assert.Equal(t, []string{"screen"}, eval[[]string](p, `asked`))
	// The lock that a browser lets go while the page is out of sight is asked for again.
	eval[bool](p, `lock.dispatchEvent(new Event('release')), document.dispatchEvent(new Event('visibilitychange')), true`)
	p.wait(`asked.length === 2`)
}

// Where there is no lock on the screen, or it is refused, one line says so.
func TestScreenMaySleep(t *testing.T) {
	for name, prelude := range map[string]string{
		"missing": `Object.defineProperty(navigator, 'wakeLock', {value: undefined})`,
		"refused": `Object.defineProperty(navigator, 'wakeLock', {value: {request: async () => { throw new Error('no'); }}})`,
	} {
		p := openAfter(t, prelude, phone.at("rib"))
		p.keys("w")
		p.wait(`document.getElementById('bench-sleeps').checkVisibility()`)
		assert.Equal(t, "", eval[string](p, `document.getElementById('bench-sleeps').hidden ? 'hidden' : ''`), name)
	}
}

// The figure is 48 px and more wherever it is shown, breaks between feet, inches and
// fraction only, and is never cut; targets are 48 px and more.
func TestBenchIsReadFromTwoPaces(t *testing.T) {
	for _, size := range [][2]int64{{390, 844}, {320, 640}, {844, 390}, {768, 1024}, {1366, 768}, {1920, 1080}} {
		name := fmt.Sprintf("bench %dx%d", size[0], size[1])
		p := openAfter(t, wakes, screen{name: name, width: size[0], height: size[1], density: 1, place: "rib"})
		for _, k := range []stage.Key{stage.Rib, stage.Lace, stage.Gather, stage.Gunwales} {
			p.keys(kb.Escape)
			p.settle()
			p.notch(k)
			p.keys("w")
			for range 3 {
				p.keys(kb.ArrowRight)
			}
			figure := eval[[]float64](p,
				`[...document.querySelectorAll('.size > *')].map(e => parseFloat(getComputedStyle(e).fontSize))`)
			require.NotEmpty(t, figure)
			for _, px := range figure {
				assert.GreaterOrEqual(t, px, 48.0, "%s at %s", name, k)
			}
			assert.True(t, eval[bool](p, `[...document.querySelectorAll('.size > *')].every(e => {
				const r = e.getBoundingClientRect(), m = document.getElementById('bench-middle').getBoundingClientRect();
				return r.left >= m.left && r.right <= m.right && r.top >= m.top && r.bottom <= m.bottom &&
					e.getClientRects().length === 1; })`), "%s at %s: the figure is in sight, none of it cut", name, k)
			assert.LessOrEqual(t, eval[int](p, `document.getElementById('bench').scrollWidth`), int(size[0]), name)
			assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll('#bench :is(button, select)')]
				.filter(e => e.checkVisibility()).filter(e => { const r = e.getBoundingClientRect();
				return r.width < 48 || r.height < 48 || r.right > innerWidth || r.bottom > innerHeight;
					}).map(e => e.textContent)`), "%s: buttons of 48 px and more, in the window", name)
			p.shot(name + " " + string(k))
		}
	}
}

// In sunlight every text of the bench and of the page stands 7:1 and more on what is behind
// it, by the formula of WCAG 2.2, and no letter is thinner than 500. It is kept, and follows
// a device that asks for more contrast until it is set.
func TestSunlight(t *testing.T) {
	const texts = `(() => {
		const part = v => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
		const rgb = c => c.match(/[\d.]+/g).map(Number);
		const light = c => 0.2126 * part(c[0]) + 0.7152 * part(c[1]) + 0.0722 * part(c[2]);
		const behind = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor);
			if (c.length < 4 || c[3] > 0) return c; } return [255, 255, 255]; };
		const bad = [];
		let seen = 0;
		const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		while (walk.nextNode()) {
			const e = walk.currentNode.parentElement;
			if (!walk.currentNode.textContent.trim() || !e.checkVisibility()) continue;
			if (e.closest('svg, script, style, option, noscript')) continue;
			seen++;
			const s = getComputedStyle(e), a = light(rgb(s.color)), b = light(behind(e));
			const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
			if (ratio < 7 || s.fontWeight < 500)
				bad.push(ratio.toFixed(2) + ' ' + s.fontWeight + ' ' + e.tagName + ' ' + e.textContent.trim().slice(0, 40));
		}
		return [seen + ' texts', ...new Set(bad)];
	})()`
	p := openAfter(t, wakes, phone.at("rib"))
	p.keys("w")
	p.clickOn(`#bench [data-turns-sun]`)
	check := func(where string) {
		found := eval[[]string](p, texts)
		require.NotEqual(t, "0 texts", found[0])
		assert.Empty(t, found[1:], where)
	}
	p.clickOn(`#bench-tapes`)
	check("bench")
	p.shot("sun bench")
	p.clickOn(`[data-bench=all]`)
	check("all lines")
	p.keys(kb.Escape)
	p.settle()
	for _, k := range []string{"rib", "gather", "pitch", "shed"} {
		p.notch(stage.Key(k))
		check(k)
	}
	p.shot("sun page")
	// The picture's ground is white too: one in bark's colour would stand out from the page.
	picture, err := png.Decode(bytes.NewReader(p.shot("sun picture")))
	require.NoError(t, err)
	at := eval[[]float64](p, `(r => [(r.left + 4) * devicePixelRatio,
		(r.top + 4) * devicePixelRatio])(document.getElementById('view').getBoundingClientRect())`)
	r, g, b, _ := picture.At(int(at[0]), int(at[1])).RGBA()
	assert.Equal(t, [3]uint32{0xffff, 0xffff, 0xffff}, [3]uint32{r, g, b})

	q := openAfter(t, `const real = matchMedia;
		window.matchMedia = text => text.includes('contrast') ? {matches: true, addEventListener() {}} : real(text)`, desktop.at("rib"))
	assert.Equal(t, "true", eval[string](q, `document.documentElement.dataset.sun`))
	q.keys("w")
	q.clickOn(`#bench [data-turns-sun]`)
	assert.True(t, eval[bool](q, `document.documentElement.dataset.sun === undefined`))
}

// A reading is set by wheels. One of a kind that a record has is kept among those of the
// boat as built; farther off than half an inch it says what would change, and changes
// nothing until it is asked to. Any other is noted.
func TestTape(t *testing.T) {
	p := openAfter(t, wakes, phone.at("lace"))
	p.keys("w")
	eval[bool](p, `(s => { s.value = 'Sheer heights'; s.dispatchEvent(new Event('change')); return true;
		})(document.getElementById('bench-list'))`)
	p.settle()
	assert.Equal(t, "Middle thwart", p.what())
	before := eval[string](p, `document.querySelector('.size').textContent`)
	p.clickOn(`#bench-tapes`)
	p.clickOn(`[data-bench="turn:16"]`)
	p.clickOn(`[data-bench=save]`)
	assert.Contains(t, eval[string](p, `document.getElementById('bench-said').textContent`), "Bring the boat to it?")
	assert.Contains(t, eval[string](p, `document.getElementById('bench-said').textContent`), "Ribs to fit: ")
	assert.Equal(t, before, eval[string](p, `document.querySelector('.size').textContent`), "nothing changes unasked")
	p.shot("tape offers")
	p.clickOn(`[data-bench=bring]`)
	assert.NotEqual(t, before, eval[string](p, `document.querySelector('.size').textContent`))
	p.clickOn(`#bench-undo`)
	assert.Equal(t, before, eval[string](p, `document.querySelector('.size').textContent`))

	eval[bool](p, `(s => { s.value = 'Posts to set'; s.dispatchEvent(new Event('change')); return true;
		})(document.getElementById('bench-list'))`)
	p.settle()
	p.clickOn(`#bench-tapes`)
	p.shot("tape")
	p.clickOn(`[data-bench="turn:-1"]`)
	p.clickOn(`[data-bench=save]`)
	assert.Contains(t, eval[string](p, `document.getElementById('bench-said').textContent`), "It is noted.")
	p.keys(kb.Escape)
	p.settle()
	assert.Contains(t, eval[string](p, `document.querySelector('[data-noted=lace]').textContent`), "the tape reads")
}
