package e2e

import (
	"strconv"
	"testing"
	"time"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// finger is a finger on the screen, window's CSS pixels.
type finger struct {
	*tab
	x, y float64
}

func (f *finger) send(kind input.DispatchTouchEventType, points ...*input.TouchPoint) {
	f.Helper()
	_, err := chromedp.Call(f.ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
	require.NoError(f, err)
}

// down puts a finger on the screen.
func (p *tab) down(x, y float64) *finger {
	f := &finger{p, x, y}
	f.send(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	return f
}

// by moves it in ten steps.
func (f *finger) by(dx, dy float64) *finger {
	for range 10 {
		f.x, f.y = f.x+dx/10, f.y+dy/10
		f.send(input.DispatchTouchEventTypeTouchMove, &input.TouchPoint{X: f.x, Y: f.y})
		time.Sleep(5 * time.Millisecond)
	}
	// The browser hands moves over with its frames.
	f.settle()
	return f
}

func (f *finger) up() {
	f.send(input.DispatchTouchEventTypeTouchEnd)
	f.settle()
}

func (f *finger) cancel() {
	f.send(input.DispatchTouchEventTypeTouchCancel)
	f.settle()
}

// value is where a parameter's slider stands, and whether the boat has changed at all.
func (p *tab) value(key string) (at float64, changed bool) {
	return eval[float64](p, `document.querySelector('input[name=%q]').valueAsNumber`, key),
		eval[bool](p, `!document.getElementById('undo').disabled`)
}

// beside brings an element to the middle of the window and returns a place on it, as
// shares of its breadth and height.
func (p *tab) beside(selector string, along, down float64) (x, y float64) {
	p.Helper()
	c := eval[[]float64](p, `(e => { e.scrollIntoView({block: 'center'}); const r = e.getBoundingClientRect();
		return [r.left + r.width * %g, r.top + r.height * %g]; })(document.querySelector(%q))`, along, down, selector)
	return c[0], c[1]
}

// A finger that scrolls the page by way of a slider leaves it as it was, wherever on it
// the finger comes down; so does a tap.
func TestScrollOverASliderChangesNothing(t *testing.T) {
	p := open(t, phone)
	const beam = `input[name="beam"]`
	for _, along := range []float64{0.1, 0.5, 0.9} {
		x, y := p.beside(beam, along, 0.5)
		before := eval[float64](p, `scrollY`)
		p.down(x, y).by(3, -160).up()
		p.wait(`Math.abs(scrollY - %g) > 80`, before)
		at, changed := p.value("beam")
		assert.Equal(t, 33.0, at)
		assert.False(t, changed)
		x, y = p.beside(beam, along, 0.5)
		p.down(x, y).up()
		time.Sleep(50 * time.Millisecond)
		at, changed = p.value("beam")
		assert.Equal(t, 33.0, at, "a tap")
		assert.False(t, changed)
	}
}

// Sideways, the slider goes as far as the finger does, wherever it was taken; what was
// done is one step of undo, and none where the browser takes the finger away.
func TestSliderFollowsAFingerSideways(t *testing.T) {
	p := open(t, phone)
	const beam = `input[name="beam"]`
	pixel := eval[float64](p, `(s => (s.max - s.min) / s.clientWidth)(document.querySelector(%q))`, beam)
	assert.LessOrEqual(t, pixel, 0.25, "inches of beam a pixel")
	step := eval[float64](p, `+document.querySelector(%q).step`, beam)
	for _, along := range []float64{0.2, 0.8} {
		x, y := p.beside(beam, along, 0.5)
		sign := 1.0
		if along > 0.5 {
			sign = -1
		}
		before := eval[float64](p, `scrollY`)
		f := p.down(x, y).by(sign*50, 0)
		at, _ := p.value("beam")
		// The finger's way counts from eight pixels on. Half a step, and a pixel that the
		// browser may round the finger's place to.
		assert.InDelta(t, 33+sign*42*pixel, at, step/2+pixel, "inches")
		f.by(0, 60)
		steady, _ := p.value("beam")
		assert.Equal(t, at, steady, "held to its way")
		f.up()
		assert.Equal(t, before, eval[float64](p, `scrollY`))
		at, changed := p.value("beam")
		assert.Equal(t, steady, at)
		require.True(t, changed)
		p.do(chromedp.Evaluate[chromedp.Void](`document.getElementById('undo').click()`))
		p.settle()
		at, changed = p.value("beam")
		assert.Equal(t, 33.0, at)
		assert.False(t, changed, "one step of undo")
	}
	x, y := p.beside(beam, 0.3, 0.5)
	f := p.down(x, y).by(50, 0)
	at, _ := p.value("beam")
	require.Greater(t, at, 35.0)
	f.cancel()
	at, changed := p.value("beam")
	assert.Equal(t, 33.0, at, "put back")
	assert.False(t, changed)
}

// handle is where a handle of the boat the page opens with stands in the window, and
// what a pixel of a mouse's way changes there.
func (p *tab) handle(key string, state scene.State) (x, y float64, h view.Handle) {
	p.Helper()
	box := eval[[]float64](p, `(v => { const r = v.getBoundingClientRect(); return [r.left + v.clientLeft,
		r.top + v.clientTop, v.clientWidth, v.clientHeight,
			parseFloat(getComputedStyle(document.documentElement).fontSize)]; })(document.getElementById('view'))`)
	size := draw.Size{Width: box[2], Height: box[3], Letter: box[4]}
	for _, h := range view.Handles(core.Evaluate(design.Default()), scene.View{State: state, Zoom: 1}, size) {
		if h.Key == key {
			return box[0] + h.At.X, box[1] + h.At.Y, h
		}
	}
	require.Fail(p, "no handle "+key)
	return
}

// A finger that scrolls the page from a handle leaves the boat as it was. A handle it
// has tapped before it drags, a quarter inch a pixel at most, and puts the value back
// where the browser takes the finger away.
func TestFingerOnAHandle(t *testing.T) {
	p := open(t, phone)
	p.do(chromedp.Evaluate[chromedp.Void](`document.querySelector('[data-view="finished"]').click()`))
	p.makeTall()
	for _, key := range []string{"depth", "beam", "endHeight"} {
		eval[bool](p, `scrollTo(0, 0), true`)
		p.settle()
		x, y, _ := p.handle(key, scene.Finished)
		before, _ := p.value(key)
		p.down(x, y).by(2, -60).up()
		p.wait(`scrollY > 20`)
		after, changed := p.value(key)
		assert.Equal(t, before, after, key)
		assert.False(t, changed, key)
	}
	eval[bool](p, `scrollTo(0, 0), true`)
	p.settle()
	x, y, _ := p.handle("beam", scene.Finished)
	p.down(x, y).up()
	p.wait(`!document.getElementById('grip').hidden`)
	readout := func() string { return eval[string](p, `document.getElementById('readout').textContent`) }
	assert.Contains(t, readout(), `Beam inside the gunwales: 2' 9"`)
	f := p.down(x, y).by(0, -10)
	at, _ := p.value("beam")
	assert.Equal(t, 35.5, at, "ten pixels")
	assert.Contains(t, readout(), `2' 11 1/2"`)
	f.cancel()
	at, changed := p.value("beam")
	assert.Equal(t, 33.0, at, "put back")
	assert.False(t, changed)
	p.down(x, y).by(0, -10).up()
	at, changed = p.value("beam")
	assert.Equal(t, 35.5, at)
	assert.True(t, changed)
	assert.Less(t, eval[float64](p, `scrollY`), 5.0, "the page stood")
	// Elsewhere a finger lets go of it and scrolls.
	p.down(x+60, y+40).by(0, -60).up()
	p.wait(`scrollY > 20 && document.getElementById('grip').hidden`)
	at, _ = p.value("beam")
	assert.Equal(t, 35.5, at)
}

// A handle follows the mouse at every step, while verdicts change over the picture.
func TestHandleFollowsTheMouseAsVerdictsCome(t *testing.T) {
	p := open(t, desktop)
	p.do(chromedp.Evaluate[chromedp.Void](`document.querySelector('[data-view="finished"]').click()`))
	p.settle()
	x, y, h := p.handle("beam", scene.Finished)
	param, _ := design.Lookup("beam")
	start := design.Default().Beam
	verdicts := map[string]bool{}
	p.do(chromedp.MouseEvent(chromedp.MouseMoved, x, y), chromedp.MouseEvent(chromedp.MousePressed, x, y, chromedp.Button("left")))
	for i := 1; i <= 9; i++ {
		p.do(chromedp.MouseEvent(chromedp.MouseMoved, x, y+float64(2*i), chromedp.Button("left")))
		p.settle()
		at, _ := p.value("beam")
		// Half a step, and half the last decimal of a slider's attribute.
		assert.InDelta(t, (start-h.PerPixel*float64(2*i))/units.Inch, at,
			param.Step(units.Imperial16)/units.Inch/2+5e-7, "%d pixels", 2*i)
		verdicts[eval[string](p, `document.getElementById('head-checks').textContent`)] = true
	}
	p.do(chromedp.MouseEvent(chromedp.MouseReleased, x, y+18, chromedp.Button("left")))
	assert.Greater(t, len(verdicts), 1, "a verdict changed on the way")
}

// The picture and all over it stand still whatever a slider does, and where the boat
// entered cannot be built.
func TestPictureStandsStill(t *testing.T) {
	for _, s := range []screen{desktop, phone, projector, {name: "tablet", width: 1024, height: 768, density: 1}} {
		p := open(t, s.at("choose"))
		p.settle()
		const places = `JSON.stringify([...document.querySelectorAll('#view, .cells:not([hidden]) .cell, #hand, #held, #readout, #sight')]
			.map(e => { const r = e.getBoundingClientRect(); return [r.left, r.top, r.width, r.height]; }))`
		first := eval[string](p, places)
		for _, key := range []string{"beam", "depth"} {
			for share := 0; share <= 10; share += 2 {
				eval[bool](p, `(f => { f.valueAsNumber = +f.min + (f.max - f.min) * %s; f.dispatchEvent(new Event('input',
					{bubbles: true})); return true; })(document.querySelector('input[name=%q]'))`,
					strconv.FormatFloat(float64(share)/10, 'f', 1, 64), key)
				require.Equal(t, first, eval[string](p, places), "%s: %s at %d tenths", s.name, key, share)
			}
			p.do(chromedp.Evaluate[chromedp.Void](
				`while (!document.getElementById('undo').disabled) document.getElementById('undo').click()`))
		}
		p.enter("length", "90 ft")
		eval[bool](p, `document.activeElement.blur(), scrollTo(0, 0), true`)
		p.settle()
		assert.False(t, eval[bool](p, `document.getElementById('not-built').hidden`))
		assert.Equal(t, first, eval[string](p, places), s.name)
		p.shot("still " + s.name)
	}
}
