package e2e

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// followsTheSlider holds for a page without Ebitengine: the line that says so,
// and number and drawing that follow the slider and the window.
func followsTheSlider(p *tab) {
	p.Helper()
	assert.Contains(p, eval[string](p, `document.getElementById('picture-note').textContent`), "SVG")
	assert.Positive(p, eval[int](p, `document.querySelectorAll('#twin svg path').length`))
	assert.Zero(p, eval[int](p, `document.querySelectorAll('canvas').length`))
	before, picture := eval[string](p, gunwale), eval[string](p, `document.querySelector('#twin').innerHTML`)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.PageUp))
	p.wait(`%s !== %q`, gunwale, before)
	assert.NotEqual(p, picture, eval[string](p, `document.querySelector('#twin').innerHTML`))
	p.do(chromedp.EmulateViewport(700, 900))
	p.wait(`innerWidth === 700`)
	p.wait(`+document.querySelector('#twin svg').getAttribute('viewBox').split(' ')[2] === document.getElementById('view').clientWidth`)
	assert.Greater(p, inkOn(p, p.shot(p.Name())), 500)
}

func TestWithoutWebGL(t *testing.T) {
	p := open(t, desktop, "disable-3d-apis")
	followsTheSlider(p)
	// The browser itself logs that WebGL is off; nothing else may be amiss.
	for _, f := range p.take() {
		assert.Contains(t, f, "WebGL")
	}
}

// A lost context may not reload the page, which would lose the boat.
func TestLostContextKeepsTheBoat(t *testing.T) {
	p := open(t, desktop)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.End))
	p.settle()
	longest := eval[string](p, gunwale)
	eval[bool](p, `window.sameVisit = true`)
	eval[bool](p, `(c => { window.lose = c.getContext('webgl2').getExtension('WEBGL_lose_context'); lose.loseContext();
		return true; })(document.querySelector('#view canvas'))`)
	p.wait(`document.documentElement.dataset.picture === 'svg'`)
	assert.True(t, eval[bool](p, `window.sameVisit === true`), "no reload")
	assert.Equal(t, longest, eval[string](p, gunwale))
	p.do(chromedp.KeyEvent(kb.PageDown))
	p.wait(`%s !== %q`, gunwale, longest)
	eval[bool](p, `lose.restoreContext(), true`)
	p.settle()
	followsTheSlider(p)
	for _, f := range p.take() {
		assert.Contains(t, f, "CONTEXT_LOST")
	}
}

// Nor may one that is lost while the program is still unpacked keep it from starting.
func TestContextLostBeforeTheProgram(t *testing.T) {
	p := openAfter(t, `{
		const real = HTMLCanvasElement.prototype.getContext;
		HTMLCanvasElement.prototype.getContext = function(kind, ...all) {
			const context = real.call(this, kind, ...all);
			if (kind === 'webgl2' && !window.lose) {
				window.lose = context.getExtension('WEBGL_lose_context');
				lose.loseContext();
			}
			return context;
		};
	}`, desktop)
	assert.Equal(t, "svg", eval[string](p, `document.documentElement.dataset.picture`))
	followsTheSlider(p)
	for _, f := range p.take() {
		assert.Contains(t, f, "CONTEXT_LOST")
	}
}

// Nor one that is lost while Ebitengine asks the graphics what they can and makes its first objects: that
// stops the program, so the page is opened again without them, and the boat is not taken for what stopped it.
func TestContextLostInTheFirstPicture(t *testing.T) {
	texts := map[string]string{"barkwright.boat.a": kept(t, "Mine", nil), "barkwright.in-hand": "a"}
	for _, call := range []int{1, 45} {
		p := openStored(t, texts, fmt.Sprintf(`if (!sessionStorage.getItem('tried')) {
			let calls = 0;
			const all = WebGL2RenderingContext.prototype;
			for (const [name, {value}] of Object.entries(Object.getOwnPropertyDescriptors(all))) {
				if (typeof value !== 'function' || ['isContextLost', 'getExtension'].includes(name)) continue;
				all[name] = function (...given) {
					if (++calls === %d) {
						sessionStorage.setItem('tried', 'true');
						this.getExtension('WEBGL_lose_context').loseContext();
					}
					return value.apply(this, given);
				};
			}
		}`, call))
		p.ready()
		assert.Equal(t, "true", eval[string](p, `sessionStorage.getItem('tried')`))
		assert.Equal(t, "svg", eval[string](p, `document.documentElement.dataset.picture`))
		assert.Equal(t, "Mine", p.fieldOf("name"))
		assert.Empty(t, p.notices())
		assert.True(t, eval[bool](p, `sessionStorage.getItem('barkwright.without-webgl') === null`), "asked for at the next opening")
		p.take() // of the program that was stopped
	}
}

// A fault while the picture is drawn is named in the console and stops nothing: the
// picture goes on as SVG.
func TestFaultInThePictureKeepsTheBoat(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `CanvasRenderingContext2D.prototype.fillText = () => { throw new Error('on purpose'); }, true`)
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.End))
	p.wait(`document.documentElement.dataset.picture === 'svg'`)
	assert.Contains(t, eval[string](p, `document.getElementById('picture-note').textContent`), "a fault of its own")
	require.Len(t, p.take(), 1)
	p.do(chromedp.KeyEvent(kb.Home))
	followsTheSlider(p)
	assert.False(t, eval[bool](p, `'stopped' in document.documentElement.dataset`))
}

// The printer gets the whole drawing, sharp, in its own colours and without handles,
// whatever part of it the window shows.
func TestPrintUsesTheTwin(t *testing.T) {
	for _, flags := range [][]string{nil, {"disable-3d-apis"}} {
		p := open(t, desktop, flags...)
		p.press(`[data-view="finished"]`)
		p.press(`[data-look="in"]`)
		eval[bool](p, `addEventListener('beforeprint', () => { dispatchEvent(new Event('resize'));
			window.atPrinting = document.getElementById('twin').innerHTML; }), true`)
		res, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{})
		require.NoError(t, err)
		assert.NotContains(t, string(res.Data), "/Subtype /Image", "no raster on the paper")
		printed := eval[string](p, `window.atPrinting`)
		assert.Contains(t, printed, "<path")
		colours := map[string]bool{}
		for _, c := range draw.Print() {
			colours[c.Hex()] = true
		}
		for _, c := range regexp.MustCompile(`#[0-9a-f]{6}`).FindAllString(printed, -1) {
			assert.True(t, colours[c], c)
		}
		// A handle would add its parts: the same picture, drawn here, has none.
		var b strings.Builder
		c := core.Evaluate(design.Default())
		f := c.Afloat.Floated.Upright.Waterplane
		v := scene.View{State: scene.Finished, Zoom: 1, Load: &scene.Load{Height: f.Height, Slope: f.Slope}}
		require.NoError(t, draw.SVG{Palette: draw.Print(), ID: "x"}.Write(&b,
			view.Draw(c, v, draw.Size{Width: 718, Height: 330, Letter: 16})))
		assert.Equal(t, strings.Count(b.String(), "<path"), strings.Count(printed, "<path"))

		_, err = chromedp.Call(p.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
		require.NoError(t, err)
		assert.True(t, eval[bool](p,
			`[...document.querySelectorAll('#view canvas')].every(c => getComputedStyle(c).display === 'none')`))
		if flags == nil {
			box := eval[[]float64](p, `(([svg, view]) => [svg.width / svg.height, svg.right - view.right,
				svg.bottom - view.bottom])(['#twin svg', '#view'].map(s => document.querySelector(s).getBoundingClientRect()))`)
			// Either side may be a CSS pixel off; the paper is 718 broad.
			assert.InDelta(t, 718.0/330, box[0], 718.0/330*(1.0/718+1.0/330), "not squeezed")
			assert.LessOrEqual(t, box[1], 1.0, "not cut at the right")
			assert.LessOrEqual(t, box[2], 1.0, "nor below")
		}
		p.take()
	}
}

// graphicsTake is a device whose textures have at most so many pixels a side.
const graphicsTake = `
const asked = WebGL2RenderingContext.prototype.getParameter;
WebGL2RenderingContext.prototype.getParameter = function (name) {
  return name === this.MAX_TEXTURE_SIZE ? %d : asked.call(this, name);
};`

// A picture larger than the graphics take is drawn as SVG: from the start, or once the
// window or its density grows. Ebitengine stopped the program there.
func TestPictureLargerThanTheGraphicsTake(t *testing.T) {
	p := openAfter(t, fmt.Sprintf(graphicsTake, 512), desktop)
	assert.Contains(t, eval[string](p, `document.getElementById('picture-note').textContent`),
		"larger than this device's graphics take")
	followsTheSlider(p)

	p = openAfter(t, fmt.Sprintf(graphicsTake, 2048), desktop)
	assert.NotEqual(t, "svg", eval[string](p, `document.documentElement.dataset.picture ?? ''`))
	p.do(chromedp.EmulateViewport(1440, 900, chromedp.EmulateScale(6)))
	p.do(chromedp.Focus(chromedp.CSS(`input[name="length"]`)), chromedp.KeyEvent(kb.PageUp))
	p.wait(`document.documentElement.dataset.picture === 'svg'`)
	p.do(chromedp.EmulateViewport(1440, 900, chromedp.EmulateScale(1)))
	p.settle()
	followsTheSlider(p)
	assert.Equal(t, "", eval[string](p, `document.documentElement.dataset.stopped ?? ''`))
}
