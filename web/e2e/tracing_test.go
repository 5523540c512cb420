package e2e

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/png"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/tracing"
)

// sheet is a drawing of a known boat from the side, by the page's own means: 2000 by 800
// pixels, amidships at (1000, 600).
type sheet struct {
	*hull.Hull
	scale float64 // pixels to a metre
}

func newSheet() sheet {
	h := hull.New(design.Default())
	return sheet{h, 1800 / h.Design.Length}
}

func (s sheet) at(x, y float64) draw.Point {
	return draw.Point{X: 1000 + s.scale*x, Y: 600 - s.scale*y}
}

func (s sheet) svg() string {
	l := draw.List{Width: 2000, Height: 800, Title: "A boat of our own invention"}
	line := func(points ...draw.Point) { l.Add(draw.Stroke{Role: draw.Ink, Points: points, Width: 2}) }
	line(s.at(-s.Design.Length/2, 0), s.at(s.Design.Length/2, 0))
	line(s.at(0, -0.1), s.at(0, 0.6))
	for _, outline := range tracing.Outlines(s.Hull, record.FromSide, nil) {
		var points []draw.Point
		for _, p := range outline {
			points = append(points, s.at(p.X, p.Y))
		}
		line(points...)
	}
	var b strings.Builder
	if err := (draw.SVG{Palette: draw.Print(), ID: "sheet"}).Write(&b, l); err != nil {
		panic(err)
	}
	return b.String()
}

// give opens a picture in its window as the picker would.
func (p *tab) give(name string, data []byte) {
	p.Helper()
	eval[bool](p, `(i => { const t = new DataTransfer(); t.items.add(new File([Uint8Array.from(atob(%q),
		c => c.charCodeAt(0))], %q)); i.files = t.files; i.dispatchEvent(new Event('change', {bubbles: true}));
			return true; })(document.getElementById('tracing-file'))`,
		base64.StdEncoding.EncodeToString(data), name)
}

// onPicture is where a pixel of the picture lies in the window.
func (p *tab) onPicture(at draw.Point) (x, y float64) {
	p.Helper()
	c := eval[[]float64](p, `(i => { const e = document.getElementById('easel').getBoundingClientRect();
		const q = new DOMMatrix(getComputedStyle(i).transform).transformPoint({x: %g, y: %g}); return [q.x + e.left + 0,
			q.y + e.top + 1]; })(document.getElementById('easel-picture'))`, at.X, at.Y)
	return c[0], c[1]
}

func (p *tab) mouse(kind input.DispatchMouseEventType, x, y float64) {
	p.Helper()
	_, err := chromedp.Call(p.ctx, input.DispatchMouseEvent, input.DispatchMouseEventParams{Type: kind, X: x, Y: y,
		Button: input.MouseButtonLeft, ClickCount: 1})
	require.NoError(p, err)
}

// clickPicture presses a pixel of the picture with the mouse.
func (p *tab) clickPicture(at draw.Point) {
	p.Helper()
	x, y := p.onPicture(at)
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.settle()
}

// chooseOne chooses from a list.
func (p *tab) chooseOne(id, value string) {
	p.Helper()
	p.change("#"+id, value)
	p.settle()
}

// traced are the values of the record's rows of a kind as they show.
func (p *tab) traced(kind string) []string {
	p.Helper()
	return eval[[]string](p, `[...document.querySelectorAll('#record-list li')]
		.filter(l => l.querySelector('select').value === %q).map(l => l.querySelector('[data-field="2"]').value)`, kind)
}

func (p *tab) openSheet(s sheet) {
	p.Helper()
	p.unfold("record-list")
	p.press(`[data-trace="open"]`)
	p.wait(`document.getElementById('tracing').open`)
	p.give("boat.svg", []byte(s.svg()))
	p.wait(`!document.getElementById('easel-picture').hidden`)
	p.settle()
}

// inches is a length as a row shows it, read back.
func inches(t testing.TB, text string) float64 {
	t.Helper()
	v, _, err := units.Length.Parse(text, units.Imperial16)
	require.NoError(t, err)
	return v / units.Inch
}

// A drawing of a known boat is read with the mouse: what it needs is asked for in turn, a
// sheer traced by points is in the record within a pixel, the fitted boat is drawn over it with
// what it differs by, and the picture is kept with the boat only when that is asked for.
func TestReadOffADrawingByMouse(t *testing.T) {
	p, s := open(t, desktop), newSheet()
	half, pixel := s.Design.Length/2, 1/s.scale/units.Inch
	p.openSheet(s)
	for _, at := range []draw.Point{s.at(-half, 0), s.at(half, 0), s.at(0, 0.5), s.at(-half, 0), s.at(half, 0)} {
		p.clickPicture(at)
	}
	p.wait(`document.activeElement.id === 'tracing-length'`)
	p.do(chromedp.KeyEvent(units.Length.Format(s.Design.Length, units.Imperial16) + kb.Tab))
	p.settle()
	assert.Contains(t, eval[string](p, `document.getElementById('tracing-scale').textContent`), "A pixel is")

	p.chooseOne("tracing-task", record.LengthOverall.ID())
	p.clickPicture(s.at(-half, 0.1))
	p.clickPicture(s.at(half, 0.1))
	p.chooseOne("tracing-task", "sheerCurve")
	var want []float64
	for i := range 6 {
		x := s.GunwaleX * 0.95 * float64(i) / 5
		p.clickPicture(s.at(x, s.Sheer(x)))
		want = append(want, s.Sheer(x)/units.Inch)
	}
	heights := p.traced(record.SheerHeight.ID())
	require.Len(t, heights, 6)
	for i, text := range heights {
		// A press lands up to a CSS pixel off, 2 of the picture's; a row shows sixteenths.
		assert.InDelta(t, want[i], inches(t, text), 2*pixel+1.0/32, "point %d", i)
	}
	assert.Contains(t, eval[string](p, `document.querySelector('#record-list li:last-child [data-field="5"]').value`),
		"read off a drawing")
	p.wait(`document.querySelectorAll('#tracing-marks button small').length >= 6`)
	assert.Greater(t, eval[int](p, `document.querySelectorAll('#easel-over path[stroke-dasharray]').length`),
		3, "the fitted boat is drawn")
	p.shot("tracing-desktop")

	// A point is moved with the mouse, its row follows, and undo takes it back.
	p.chooseOne("tracing-task", "")
	x, y := p.onPicture(s.at(s.GunwaleX*0.95, s.Sheer(s.GunwaleX*0.95)))
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	for range 10 {
		y += 2
		p.mouse(input.DispatchMouseEventTypeMouseMoved, x, y)
	}
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.settle()
	moved := inches(t, p.traced(record.SheerHeight.ID())[5])
	assert.Less(t, moved, want[5]-5*pixel)
	p.press("#tracing-undo")
	assert.Equal(t, heights[5], p.traced(record.SheerHeight.ID())[5])

	assert.NotContains(t, eval[string](p, `Object.values(localStorage).join('')`), "data:image")
	p.press("#tracing-keep")
	p.wait(`document.getElementById('tracing-kept').textContent.includes('kB')`)
	p.press(`[data-trace="close"]`)
	p.wait(`!document.getElementById('tracing').open`)
	p.wait(`Object.values(localStorage).join('').includes('data:image/jpeg')`)
}

// The same on a phone with a finger: a loupe shows what is under it, a second finger sizes the
// picture and sets nothing, a point is dragged and its row follows.
func TestReadOffADrawingByTouch(t *testing.T) {
	p, s := open(t, phone), newSheet()
	half := s.Design.Length / 2
	p.openSheet(s)
	tap := func(at draw.Point) {
		f := p.down(p.onPicture(at))
		p.wait(`!document.getElementById('loupe').hidden`)
		f.up()
		p.wait(`document.getElementById('loupe').hidden`)
	}
	for _, at := range []draw.Point{s.at(-half, 0), s.at(half, 0), s.at(0, 0.5), s.at(-half, 0), s.at(half, 0)} {
		tap(at)
	}
	p.wait(`document.activeElement.id === 'tracing-length'`)
	p.do(chromedp.KeyEvent(units.Length.Format(s.Design.Length, units.Imperial16) + kb.Enter))
	p.settle()
	p.chooseOne("tracing-task", record.EndHeight.ID())
	tap(s.at(s.HeadX, s.Design.EndHeight))
	rows := p.traced(record.EndHeight.ID())
	require.Len(t, rows, 1)
	// A finger lands on a whole CSS pixel, 5 of the picture's.
	assert.InDelta(t, s.Design.EndHeight/units.Inch, inches(t, rows[0]), 6/s.scale/units.Inch)
	p.shot("tracing-phone")

	f := p.down(p.onPicture(s.at(s.HeadX, s.Design.EndHeight)))
	f.by(0, 20)
	f.up()
	assert.Less(t, inches(t, p.traced(record.EndHeight.ID())[0]), inches(t, rows[0])-5)

	small := eval[[]string](p, `[...document.querySelectorAll('#tracing :is(button, select, input:not([type=checkbox]))')]
		.filter(e => e.offsetParent).filter(e => { const r = e.getBoundingClientRect(); return r.width < 44 ||
			r.height < 44; }).map(e => e.outerHTML.slice(0, 80))`)
	assert.Empty(t, small, "targets under 44 pixels")
	assert.LessOrEqual(t, eval[int](p, `document.getElementById('tracing').scrollWidth`), 390)
	assert.Greater(t, eval[float64](p, `document.getElementById('easel').getBoundingClientRect().height`), 300.0)
}

// And with keys alone, from the button in the record to a row in it.
func TestReadOffADrawingByKeys(t *testing.T) {
	p, s := open(t, desktop), newSheet()
	half := s.Design.Length / 2
	p.openSheet(s)
	eval[bool](p, `document.getElementById('easel').focus(), true`)
	at := eval[[]float64](p, `(e => [e.left + e.width / 2, e.top + e.height / 2])(
		document.getElementById('easel').getBoundingClientRect())`)
	// press moves the cross from where it is to a place, presses there and lets go.
	press := func(to draw.Point) {
		x, y := p.onPicture(to)
		for axis, by := range []float64{x - at[0], y - at[1]} {
			key := [][2]string{{kb.ArrowLeft, kb.ArrowRight}, {kb.ArrowUp, kb.ArrowDown}}[axis]
			way := key[0]
			if by > 0 {
				way = key[1]
			}
			far := int(math.Round(math.Abs(by)))
			p.keys(strings.Repeat(way, far/10))
			p.keys(strings.Repeat(way, far%10), chromedp.KeyModifiers(chromedp.ModifierShift))
			at[axis] += math.Copysign(float64(far), by)
		}
		p.keys(kb.Enter)
		p.keys(kb.Enter)
	}
	for _, to := range []draw.Point{s.at(-half, 0), s.at(half, 0), s.at(0, 0.5), s.at(-half, 0), s.at(half, 0)} {
		press(to)
	}
	// The focus has come to the field for what it measures.
	p.wait(`document.activeElement.id === 'tracing-length'`)
	p.keys(units.Length.Format(s.Design.Length, units.Imperial16) + kb.Tab)
	p.chooseOne("tracing-task", record.EndHeight.ID())
	press(s.at(s.HeadX, s.Design.EndHeight))
	p.settle()
	require.Len(t, p.traced(record.EndHeight.ID()), 1)
	read := inches(t, p.traced(record.EndHeight.ID())[0])
	// The cross goes by CSS pixels, 2 of the picture's; half a sixteenth is less than one more.
	assert.InDelta(t, s.Design.EndHeight/units.Inch, read, 3/s.scale/units.Inch)
	eval[bool](p, `[...document.querySelectorAll('[data-trace^="hold:"]')].at(-1).focus(), true`)
	p.keys(kb.Enter)
	p.keys(strings.Repeat(kb.ArrowUp, 5))
	p.settle()
	// Either row is shown to a sixteenth.
	assert.InDelta(t, read+5/s.scale/units.Inch, inches(t, p.traced(record.EndHeight.ID())[0]), 1.0/16, "by a pixel for each key")
	p.keys(kb.Escape)
	p.keys(kb.Escape)
	p.wait(`!document.getElementById('tracing').open`)
}

// What is no picture, is damaged, empty, or brings a script along is named and does nothing;
// the picture that was there stays.
func TestHostilePictures(t *testing.T) {
	p, s := open(t, desktop), newSheet()
	p.openSheet(s)
	before := eval[string](p, `document.getElementById('easel-picture').src`)
	var good bytes.Buffer
	require.NoError(t, png.Encode(&good, image.NewGray(image.Rect(0, 0, 60, 40))))
	wide := bytes.Clone(good.Bytes())
	wide[16], wide[20] = 0x7f, 0x7f
	binary.BigEndian.PutUint32(wide[29:], crc32.ChecksumIEEE(wide[12:29]))
	spoilt := bytes.Clone(good.Bytes())
	for i := 45; i < len(spoilt)-16; i++ {
		spoilt[i] ^= 0x5a
	}
	for name, c := range map[string]struct {
		data []byte
		says string
	}{
		"text.png":     {[]byte("length overall 16 ft"), "not a picture"},
		"cut.png":      {good.Bytes()[:good.Len()-20], "damaged"},
		"wide.png":     {wide, "million pixels"},
		"spoilt.png":   {spoilt, "damaged"},
		"cut.svg":      {[]byte(`<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><path d="M`), "damaged"},
		"nothing.webp": {nil, "not a picture"},
	} {
		eval[bool](p, `document.getElementById('tracing-said').textContent = '', true`)
		p.give(name, c.data)
		p.wait(`document.getElementById('tracing-said').textContent.includes(%q)`, c.says)
		assert.Equal(t, before, eval[string](p, `document.getElementById('easel-picture').src`), name)
	}
	// A picture is dropped on the window, and pasted.
	event := func(at, kind string, data []byte) {
		eval[bool](p, `(e => { const t = new DataTransfer(); t.items.add(new File([Uint8Array.from(atob(%q),
			c => c.charCodeAt(0))], 'a')); e.dispatchEvent(%s); return true; })(%s)`,
			base64.StdEncoding.EncodeToString(data), kind, at)
	}
	event(`document.getElementById('easel')`, `new DragEvent('drop', {dataTransfer: t, bubbles: true,
		cancelable: true})`, []byte(`<svg xmlns="http://www.w3.org/2000/svg" width="200" height="100" onload="parent.scriptRan = 1">`+
		`<script>window.scriptRan = top.scriptRan = 1; fetch('https://example.com/')</script>`+
		`<image href="https://example.com/a.png" width="9" height="9"/><a href="https://example.com/">`+
		`<rect width="50" height="50" onclick="top.scriptRan = 1"/></a><style>@import url(https://example.com/a.css);</style></svg>`))
	p.wait(`document.getElementById('easel-picture').src !== %q`, before)
	before = eval[string](p, `document.getElementById('easel-picture').src`)
	event(`document`, `new ClipboardEvent('paste', {clipboardData: t, bubbles: true, cancelable: true})`, good.Bytes())
	p.wait(`document.getElementById('easel-picture').src !== %q && document.getElementById('easel-picture').naturalWidth === 60`, before)
	p.settle()
	assert.False(t, eval[bool](p, `'scriptRan' in window`))
	// Requests and errors fail the test when it ends.
}
