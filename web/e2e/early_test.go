package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// openAsleep opens the page for a new user, and holds the program back until letGo.
func openAsleep(t *testing.T, s screen) *tab {
	t.Helper()
	p := openFile(t, pageFile(t), `window.name = 'hold';`+asleep, s, own(t))
	p.wait(`!!window.letGo`)
	return p
}

func (p *tab) letGo() {
	p.Helper()
	eval[any](p, `(window.name = '', letGo(), true)`)
	p.ready()
	p.settle()
}

// What is entered and pressed before the program is awake is not lost.
func TestEnteredBeforeTheProgram(t *testing.T) {
	p := openAsleep(t, desktop.at(asKept))
	require.Equal(t, "The boat stands; the controls wake in a moment.",
		eval[string](p, `document.getElementById('readout').textContent`))
	p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)),
		chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)),
		chromedp.Focus(chromedp.CSS(`[data-typed="length"]`)))
	eval[any](p, `document.activeElement.select()`)
	p.do(chromedp.KeyEvent("15 ft\t"), chromedp.Click(chromedp.CSS(`#notches [data-at="bark"]`)))
	// A box that is ticked off, and keys that are the browser's own.
	eval[any](p, `document.getElementById('letters').click()`)
	p.keys("f", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	p.letGo()
	assert.Equal(t, "", eval[string](p, `document.documentElement.dataset.fold ?? ''`))
	assert.False(t, eval[bool](p, `document.getElementById('letters').checked`))
	assert.Equal(t, "false", eval[string](p, `localStorage.getItem('barkwright.letters')`))
	p.wait(`document.documentElement.dataset.at === 'bark'`)
	assert.Equal(t, "180", eval[string](p, `document.querySelector('input[name="length"]').value`))
	beam := eval[float64](p, `+document.querySelector('input[name="beam"]').value`)
	step := eval[float64](p, `+document.querySelector('input[name="beam"]').step`)
	assert.InDelta(t, 33+2*step, beam, 1e-9)
}

// What is pressed as the program wakes, when it hears already and is told soon, counts once.
func TestPressedAsTheProgramWakes(t *testing.T) {
	p := openAfter(t, `let stood = false; new MutationObserver((_, o) => {
		const stands = !!document.getElementById('first');
		if (stood && !stands) { o.disconnect(); document.querySelector('[data-turns-sun]').click(); }
		stood = stands;
	}).observe(document, {subtree: true, childList: true})`, desktop)
	p.settle()
	assert.Equal(t, "true", eval[string](p, `document.documentElement.dataset.sun ?? ''`))
}

// A check pressed before the program is awake, and before the bark is laid flat that it may be of, is gone to
// once it is: the opening boat's, and that of a boat that is kept.
func TestCheckPressedBeforeTheProgram(t *testing.T) {
	p := openAsleep(t, desktop.at("choose"))
	for _, what := range []string{"a new user", "a boat that is kept"} {
		p.do(chromedp.Click(chromedp.CSS(`#head-checks [data-check="stem.verdict"]`)))
		p.letGo()
		p.wait(`document.documentElement.dataset.at === 'ends'`)
		p.notch(stage.Choose)
		p.enter("beam", "34 in")
		p.wait(`JSON.parse(localStorage.getItem('barkwright.first'))?.of.at === 'choose'`)
		if what == "a new user" {
			eval[any](p, `window.name = 'hold'`)
			p.do(chromedp.Navigate("about:blank"), chromedp.Navigate(p.address))
			p.wait(`!!window.letGo`)
		}
	}
}

// What a field holds that is typed in while the program wakes is what was typed, with the caret where it was.
func TestTypedAsTheProgramWakes(t *testing.T) {
	for _, field := range []string{`#name`, `[data-typed="length"]`} {
		p := openAsleep(t, desktop.at("all"))
		p.unfold("name")
		eval[bool](p, `(f => { f.focus(); f.select(); return true; })(document.querySelector(%q))`, field)
		p.do(chromedp.KeyEvent("15 ft 4"), chromedp.KeyEvent(kb.ArrowLeft), chromedp.KeyEvent(kb.ArrowLeft))
		p.do(chromedp.KeyEvent("0"))
		eval[any](p, `new MutationObserver((_, o) => {
			if (document.getElementById('first')) return;
			o.disconnect();
			// The editing command alone fires no beforeinput, as a key does.
			document.activeElement.dispatchEvent(new InputEvent('beforeinput', {bubbles: true}));
			document.execCommand('insertText', false, '.');
		}).observe(document, {subtree: true, childList: true})`)
		p.letGo()
		p.do(chromedp.KeyEvent("5"))
		assert.Equal(t, "15 ft0.5 4", eval[string](p, `document.querySelector(%q).value`, field))
	}
}

// Before the program is awake too, a finger on a slider moves it by its way sideways and no other way.
func TestFingerBeforeTheProgram(t *testing.T) {
	p := openAsleep(t, phone.at("choose"))
	pixel := eval[float64](p, `(s => (s.max - s.min) / s.clientWidth)(document.querySelector('input[name="depth"]'))`)
	before := eval[float64](p, `+document.querySelector('input[name="depth"]').value`)
	for _, key := range []string{"beam", "length"} {
		x, y := p.beside(`input[name="`+key+`"]`, 0.9, 0.5)
		if key == "beam" {
			p.down(x, y).by(3, -160).up()
		} else {
			p.down(x, y).up()
		}
	}
	x, y := p.beside(`input[name="depth"]`, 0.3, 0.5)
	p.down(x, y).by(50, 0).up()
	// One that is still down goes on.
	x, y = p.beside(`input[name="endHeight"]`, 0.3, 0.5)
	height := eval[float64](p, `+document.querySelector('input[name="endHeight"]').value`)
	f := p.down(x, y).by(30, 0)
	p.letGo()
	f.by(20, 0).up()
	at := func(key string) float64 { v, _ := p.value(key); return v }
	assert.Equal(t, 33.0, at("beam"), "a finger that scrolls")
	assert.Equal(t, 192.0, at("length"), "a tap")
	// The finger's way counts from eight pixels on: half a step, and a pixel of the finger's place.
	step := eval[float64](p, `+document.querySelector('input[name="depth"]').step`)
	assert.InDelta(t, before+42*pixel, at("depth"), step/2+pixel)
	assert.Greater(t, at("endHeight"), height)
	assert.True(t, eval[bool](p, `!document.getElementById('undo').disabled`))
}

// A handle dragged in the picture before the program is awake has moved its control once it is, as far as if it had
// been: by a mouse, and by a finger that is still down.
func TestHandleBeforeTheProgram(t *testing.T) {
	p := openAsleep(t, desktop.at("choose"))
	x, y, h := p.handle("beam", scene.Finished)
	p.do(chromedp.MouseEvent(chromedp.MouseMoved, x, y), chromedp.MouseEvent(chromedp.MousePressed, x, y, chromedp.ButtonLeft))
	for i := range 9 {
		p.do(chromedp.MouseEvent(chromedp.MouseMoved, x, y+float64(2*i+2), chromedp.ButtonLeft))
	}
	p.do(chromedp.MouseEvent(chromedp.MouseReleased, x, y+18, chromedp.ButtonLeft))
	p.letGo()
	param, _ := design.Lookup("beam")
	at, changed := p.value("beam")
	// Half a step, and half the last decimal of a slider's attribute.
	assert.InDelta(t, (design.Default().Beam-18*h.PerPixel)/units.Inch, at, param.Step(units.Imperial16)/units.Inch/2+5e-7)
	assert.True(t, changed)

	p = openAsleep(t, phone.at("choose"))
	x, y, h = p.handle("heelLength", scene.Finished)
	before, _ := p.value("heelLength")
	f := p.down(x, y).by(20*h.Axis.X, 0)
	p.letGo()
	woke, _ := p.value("heelLength")
	assert.Greater(t, woke, before)
	f.by(20*h.Axis.X, 0).up()
	at, _ = p.value("heelLength")
	assert.Greater(t, at, woke)
	p.do(chromedp.Evaluate[chromedp.Void](`document.getElementById('undo').click()`))
	at, changed = p.value("heelLength")
	assert.Equal(t, before, at, "one step of undo")
	assert.False(t, changed)
}
