package e2e

import (
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// One button shows the next of the drawings, another letters them with measures, names or
// neither; what found no room in the picture stands beside it with its number.
func TestPictureChooser(t *testing.T) {
	p := openAfter(t, "window.stay = 'barkwright.place'", phone)
	label := func() string { return eval[string](p, `document.getElementById('hit').getAttribute('aria-label')`) }
	press := func(id string) string {
		eval[bool](p, `document.getElementById('%s').click(), true`, id)
		p.settle()
		return eval[string](p, `document.getElementById('%s').textContent`, id)
	}
	eval[bool](p, `document.querySelector('[data-view=finished]').click(), true`)
	p.settle()
	assert.Contains(t, label(), "Top view and side view, finished")
	for _, c := range [][2]string{{"Top", "Top view"}, {"Side", "Side view"}, {"Sections", "Sections"}, {"Body plan", "Body plan"},
		{"Details", "Gunwale and end at large scale"}, {"Ribs, straight", "Ribs as straight blanks"},
		{"Top and side", "Top view and side view"}} {
		assert.Equal(t, c[0], press("only"))
		assert.Contains(t, label(), c[1]+", finished")
	}
	assert.Equal(t, "Names", press("layer"))
	key := eval[string](p, `document.getElementById('picture-key').textContent`)
	assert.Contains(t, key, "Key: 1 ", "a phone's picture has no room for every name")
	assert.Contains(t, label(), key[len("Key: "):])
	p.shot("names phone")
	eval[bool](p, `document.querySelector('[data-view=flat]').click(), true`)
	p.settle()
	assert.Equal(t, "As it lies", eval[string](p, `document.getElementById('only').textContent`))
	assert.Equal(t, "By the sheet", press("only"))
	p.wait(`document.getElementById('hit').getAttribute('aria-label').includes('sheet by sheet')`)
}

// Two fingers zoom the picture and not the page, and then one moves it both ways; the wheel zooms
// it with Ctrl, and by itself scrolls the page.
func TestPinchAndWheel(t *testing.T) {
	p := open(t, phone)
	x, y := p.beside("#hit", 0.4, 0.5)
	first, second := 1.0, 2.0
	at := func(gap float64) []*input.TouchPoint {
		return []*input.TouchPoint{{X: x - gap, Y: y, ID: &first}, {X: x + gap, Y: y, ID: &second}}
	}
	f := &finger{p, x, y}
	near := func() bool { return eval[bool](p, `document.getElementById('view').hasAttribute('data-near')`) }
	assert.False(t, near())
	scrolled := eval[float64](p, `scrollY`)
	f.send(input.DispatchTouchEventTypeTouchStart, at(30)[:1]...)
	f.send(input.DispatchTouchEventTypeTouchStart, at(30)...)
	for gap := 35.0; gap <= 90; gap += 5 {
		f.send(input.DispatchTouchEventTypeTouchMove, at(gap)...)
	}
	f.settle()
	f.send(input.DispatchTouchEventTypeTouchEnd)
	p.wait(`document.getElementById('view').hasAttribute('data-near')`)
	_, changed := p.value("beam")
	assert.False(t, changed, "the boat is left alone")
	assert.Equal(t, 1.0, eval[float64](p, `visualViewport.scale`))
	p.shot("pinched phone")
	p.down(x, y).by(20, -60).up()
	assert.Equal(t, scrolled, eval[float64](p, `scrollY`), "the finger moves the picture")
	_, changed = p.value("beam")
	assert.False(t, changed)

	wheel := func(ctrl bool, delta float64) {
		eval[bool](p, `document.getElementById('hit').dispatchEvent(new WheelEvent('wheel', {deltaY: %g, ctrlKey: %t,
			bubbles: true, cancelable: true})), true`, delta, ctrl)
		p.settle()
	}
	for range 12 {
		wheel(true, 120)
	}
	assert.False(t, near(), "back to the whole")
	wheel(false, -120)
	assert.False(t, near(), "the bare wheel is the page's")
	wheel(true, -120)
	assert.True(t, near())
}

// The canvas is without alpha, so it is black whenever its size changes: it is drawn on before the browser paints,
// and is not seen before its first drawing.
func TestPictureIsNeverBlack(t *testing.T) {
	p := openAfter(t, `{
		window.sizes = 0;
		window.black = [];
		const look = canvas => {
			const sheet = document.createElement('canvas').getContext('2d');
			sheet.drawImage(canvas, 0, 0, 1, 1, 0, 0, 1, 1);
			if (sheet.getImageData(0, 0, 1, 1).data[0] < 100) black.push(canvas.width + ' by ' + canvas.height);
		};
		new MutationObserver((_, o) => {
			const canvas = document.querySelector('#view canvas');
			if (!canvas) return;
			o.disconnect();
			// The frame's last observer, since it was made last: what it finds is what is painted.
			// It tells of the size that it finds first, when nothing is drawn.
			setTimeout(() => new ResizeObserver(() => { if (sizes++) look(canvas); }).observe(canvas), 1000);
		}).observe(document, {subtree: true, childList: true});
	}`, desktop)
	p.wait(`sizes > 0`)
	for i, place := range []string{"rib", "bark", "choose"} {
		p.do(chromedp.Click(chromedp.CSS("#notches [data-at=" + place + "]")))
		p.do(chromedp.EmulateViewport(int64(1300-100*i), 800))
		p.settle()
	}
	assert.GreaterOrEqual(t, eval[int](p, `sizes`), 4)
	assert.Empty(t, eval[[]string](p, `black`))
	assert.Equal(t, "hidden", eval[string](p, `(delete document.documentElement.dataset.drawn,
		getComputedStyle(document.querySelector('#view canvas')).visibility)`))
}
