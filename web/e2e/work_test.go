package e2e

import (
	"math"
	"strconv"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// shown is a result's SI value as the page carries it.
func (p *tab) shown(key string) float64 {
	p.Helper()
	v, err := strconv.ParseFloat(eval[string](p, `document.querySelector('[data-result="'+%q+'"]').dataset.value`, key), 64)
	require.NoError(p, err, key)
	return v
}

// enter types text into a parameter's field and leaves it.
func (p *tab) enter(key, text string) {
	p.Helper()
	eval[bool](p, `(f => { f.closest('details')?.setAttribute('open', ''); f.focus(); f.select(); return true;
		})(document.querySelector('[data-typed="'+%q+'"]'))`, key)
	p.do(chromedp.KeyEvent(text + kb.Tab))
	p.settle()
}

func (p *tab) fault(key string) string {
	return eval[string](p, `document.getElementById(%q).textContent`, key+"-fault")
}

// agree compares every result of the page with the core's, run natively: the last
// bits of exp and pow differ between the targets, and the searches for the flat bark and for
// the trim stop a little elsewhere for it.
func (p *tab) agree(d design.Design) {
	p.Helper()
	p.wait(`document.documentElement.dataset.skin === ''`)
	c := core.Evaluate(d)
	var curve []bark.CurvePoint
	for n := range core.MostCurved + 1 {
		curve = append(curve, bark.StretchAt(c.Hull, c.Bark, n, bark.ForFigures, &geom.FlattenWorkspace{}))
	}
	c = c.WithFlat(core.LayFlat(c, bark.ForFigures, nil, nil)).WithCurve(curve).WithMakes(nil)
	for _, n := range answer.All(c) {
		if n.Absent {
			continue
		}
		got := p.shown(n.Key)
		assert.InDelta(p, n.Value, got, 1e-7*max(1, math.Abs(n.Value)), n.Key)
	}
}

// Every key the page promises is there with a value and a basis, and every control.
func TestKeysThatMustExist(t *testing.T) {
	p := open(t, desktop)
	p.skinLaid()
	for _, key := range []string{
		"sheer.amidships", "sheer.end", "stem.height", "gunwale.length", "lacing.groups", "lacing.pegs",
		"ribs.count", "ribs.spacing", "ribs.longest", "ribs.minRadius", "ribs.verdict",
		"seams.total", "seams.gores", "seams.panels", "seams.ends", "seams.joints",
		"root.gunwales", "root.seams", "root.total", "root.dug",
		"stem.minRadius", "stem.laminationThickness", "stem.strain", "stem.ratio", "stem.verdict", "stem.splitsNeeded",
		"bark.width", "bark.treeDiameter", "bark.area", "bark.stretch", "weight.total",
		"afloat.draught", "afloat.freeboard", "afloat.displacement", "afloat.gm", "afloat.loadAtSixInches",
	} {
		p.shown(key)
		assert.Contains(t, []string{"computed from your shape", "from a published rule", "common practice", "estimate"},
			eval[string](p, `document.querySelector('[data-result="'+%q+'"]').dataset.basis`, key), key)
	}
	for _, param := range design.Params() {
		assert.True(t, eval[bool](p, `!!document.querySelector('[name="'+%q+'"]')`, param.Key), param.Key)
	}
	assert.Positive(t, eval[int](p, `document.querySelectorAll('[data-warning][data-state]').length`))
}

// The page's numbers are the core's, for the boat it opens with and another.
func TestPageAgreesWithTheCore(t *testing.T) {
	p := open(t, desktop)
	d := design.Default()
	p.agree(d)
	for _, entry := range []struct{ key, text string }{{"length", "15 ft"}, {"beam", "2' 10 1/2\""},
		{"ribs", "40"}, {"rocker", "50 mm"}} {
		param, _ := design.Lookup(entry.key)
		v, _, err := param.Kind.Parse(entry.text, units.Imperial16)
		require.NoError(t, err)
		d = param.Set(d, v)
		p.enter(entry.key, entry.text)
	}
	require.Empty(t, core.Validate(d))
	p.agree(d)
}

// A wrong entry is named at its control with something to try, and loses nothing.
func TestBadEntryKeepsTheCanoe(t *testing.T) {
	p := open(t, desktop)
	before := p.shown("gunwale.length")
	p.enter("length", "15' 14\"")
	assert.Contains(t, p.fault("length"), `16' 2"`)
	assert.Equal(t, before, p.shown("gunwale.length"))
	p.enter("length", "90 ft")
	assert.NotEmpty(t, p.fault("length"))
	assert.Equal(t, before, p.shown("gunwale.length"))
	p.enter("length", "17 ft")
	assert.Empty(t, p.fault("length"))
	assert.Greater(t, p.shown("gunwale.length"), before)
	p.enter("length", "abc")
	assert.Contains(t, eval[string](p, `document.getElementById('not-built').textContent`), "Not read")
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	p.settle()
	assert.Equal(t, `90' 0"`, eval[string](p, `document.querySelector('[data-typed="length"]').value`),
		"undo lets go of what could not be read")
	assert.Contains(t, eval[string](p, `document.getElementById('not-built').textContent`), "Not built")
	p.enter("length", "15")
	assert.Contains(t, p.fault("length"), "15 ft")
}

// Buttons, keys and typing reach the same boat; undo brings every step back.
func TestEveryWayOfSetting(t *testing.T) {
	p := open(t, desktop)
	start := p.shown("ribs.longest")
	p.do(chromedp.Click(chromedp.CSS(`[data-control="beam"] [data-step="1"]`)))
	p.settle()
	byButton := p.shown("ribs.longest")
	assert.NotEqual(t, start, byButton)
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	p.settle()
	assert.Equal(t, start, p.shown("ribs.longest"))
	p.do(chromedp.Focus(chromedp.CSS(`input[name="beam"]`)), chromedp.KeyEvent(kb.ArrowRight))
	p.settle()
	assert.InDelta(t, byButton, p.shown("ribs.longest"), 1e-9)
	p.do(chromedp.Click(chromedp.CSS(`[data-reset="beam"]`)))
	p.settle()
	assert.InDelta(t, start, p.shown("ribs.longest"), 1e-12)
	p.enter("beam", `33 1/4"`)
	assert.InDelta(t, byButton, p.shown("ribs.longest"), 1e-9)
	assert.NotEmpty(t, eval[string](p, `document.querySelector('[data-change="ribs.longest"]').textContent`), "the change shows")
	p.do(chromedp.Click(chromedp.CSS(`[data-do="reset"]`)))
	p.settle()
	assert.InDelta(t, start, p.shown("ribs.longest"), 1e-12)
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	p.settle()
	assert.InDelta(t, byButton, p.shown("ribs.longest"), 1e-9, "reset is undone")
}

// Units change what is shown and nothing else.
func TestUnits(t *testing.T) {
	p := open(t, desktop)
	before := p.shown("gunwale.length")
	p.change("#units", "2")
	p.settle()
	assert.Equal(t, before, p.shown("gunwale.length"))
	assert.Contains(t, eval[string](p, `document.querySelector('[data-result="gunwale.length"]').textContent`), "mm")
	assert.Equal(t, "4877 mm", eval[string](p, `document.querySelector('[data-typed="length"]').value`))
}

// A number opens its working: the rule with the user's numbers, basis and source.
func TestNumberOpensItsWorking(t *testing.T) {
	p := open(t, desktop)
	p.do(chromedp.Click(chromedp.CSS(`[data-number="lacing.group"] summary`)))
	p.wait(`document.querySelector('[data-number="lacing.group"] .working').textContent.includes('4 holes')`)
	text := eval[string](p, `document.querySelector('[data-number="lacing.group"] .working').textContent`)
	assert.Contains(t, text, "common practice")
	assert.Contains(t, text, "Source")
}

// A row of the table and the part of the picture answer each other.
func TestRowMarksThePart(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `document.querySelector('tr[data-part="rib.3"]').scrollIntoView({block: 'center'}), true`)
	p.do(chromedp.Click(chromedp.CSS(`[data-table="ribs"] tr[data-part="rib.3"] td`)))
	p.wait(`document.getElementById('readout').textContent.includes('Rib 3')`)
	assert.True(t, eval[bool](p, `document.querySelector('tr[data-part="rib.3"]').getAttribute('aria-selected') === 'true'`))
}

// A handle dragged on the picture moves its slider, and is one step of undo.
func TestHandleMovesItsSlider(t *testing.T) {
	p := open(t, desktop)
	p.settle()
	before := p.shown("sheer.amidships")
	// The depth's handle stands over amidships in the side view: look for it down
	// the middle by the effect of a drag.
	found := eval[bool](p, `(() => {
		const hit = document.getElementById('hit'), r = hit.getBoundingClientRect();
		const send = (type, x, y) => hit.dispatchEvent(new PointerEvent(type, {bubbles: true, pointerId: 1,
			pointerType: 'mouse', clientX: x, clientY: y}));
		hit.setPointerCapture = () => {};
		const value = () => document.querySelector('[data-typed="depth"]').value;
		const start = value();
		for (let y = r.top + r.height / 2; y < r.bottom; y += 6)
			for (let x = r.left + r.width * 0.2; x < r.left + r.width * 0.6; x += 12) {
				send('pointerdown', x, y); send('pointermove', x, y - 12); send('pointerup', x, y - 12);
				if (value() !== start) return true;
				while (!document.getElementById('undo').disabled) document.getElementById('undo').click();
			}
		return false;
	})()`)
	require.True(t, found, "a handle for the depth")
	assert.Greater(t, p.shown("sheer.amidships"), before)
	p.do(chromedp.Click(chromedp.CSS("#undo")))
	p.settle()
	assert.Equal(t, before, p.shown("sheer.amidships"))
}

// A fault in a folded group is unfolded, named beside the picture, and gone to.
func TestFaultInAFold(t *testing.T) {
	p := open(t, phone)
	assert.True(t, eval[bool](p, `document.getElementById('not-built').hidden`))
	p.enter("depth", "25 in")
	p.enter("gunwaleEndHeight", "12 in")
	eval[bool](p, `document.querySelectorAll('details.fold').forEach(d => d.open = false), true`)
	p.enter("gunwaleEndHeight", "11 in")
	assert.Contains(t, eval[string](p, `document.getElementById('not-built').textContent`), "The boat shown is the last one")
	assert.True(t, eval[bool](p, `document.getElementById('gunwaleEndHeight-fault').checkVisibility()`))
	p.do(chromedp.Click(chromedp.CSS(`#not-built button`)))
	assert.Equal(t, "gunwaleEndHeight", eval[string](p, `document.activeElement.dataset.typed`))
}
