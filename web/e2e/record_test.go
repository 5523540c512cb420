package e2e

import (
	"fmt"
	"os"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/record"
	"barkwright/core/units"
)

// unfold opens every fold that an element stands in.
func (p *tab) unfold(id string) {
	p.Helper()
	eval[bool](p, `(f => { for (let d = f.closest('details'); d; d = d.parentElement.closest('details')) d.open = true;
		return true; })(document.getElementById(%q))`, id)
}

// write puts text in a field as typing would.
func (p *tab) write(id, text string) {
	p.Helper()
	p.unfold(id)
	eval[bool](p, `(f => { f.value = %q; return true; })(document.getElementById(%q))`, text, id)
}

// differs is a measurement's difference from the boat, in metres.
const differs = `+[...document.querySelectorAll('[data-table="measured"] tbody tr')]
	.find(r => r.textContent.toLowerCase().includes(%q)).querySelector('[data-column="difference"]').dataset.value`

// A published record, boat M1 of testdata/published/measured-canoes.csv, is pasted,
// looked over in the rows and gives a boat of its lengths, beam and depth, beside the
// one that was there; a row that cannot be read is named and the others stand.
func TestRecordFindsTheBoat(t *testing.T) {
	p := open(t, desktop)
	p.write("record-text", "Boat: M1\nlength overall\t200\nlength over gunwales\t174\nbeam inside the gunwales\t27.5\n"+
		"greatest beam\t34.75\ndepth to inwale\t10 5/8\n"+
		"first thwart, from middle\t32\nend thwart, from middle\t58\nfirst thwart clear\t21.9\nend thwart clear\t9.3\n"+
		"rail height at first thwart\t11.8\nrail height at end thwart\t13.4\nend height\t18.4\ndepth of water\tmany\n")
	p.press(`[data-measured="paste"]`)
	p.wait(`document.querySelectorAll('#record-list li').length === 12`)
	assert.Contains(t, eval[string](p, `document.getElementById('record-says').textContent`), "depth of water")
	assert.Equal(t, "M1", eval[string](p, `document.getElementById('record-name').value`))
	assert.Equal(t, 1, eval[int](p, `document.getElementById('shelf').options.length`), "nothing is fitted before it is asked for")
	p.press(`[data-measured="fit"]`)
	p.wait(`document.querySelectorAll('#record-rows [data-table="measured"] tbody tr').length === 12`)
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	assert.Equal(t, "M1", eval[string](p, `document.getElementById('name').value`))
	assert.Regexp(t, `^Found: 1[0-2] of 12 inside tolerance; kept as a new design`, eval[string](p,
		`document.getElementById('record-said').textContent`))
	// It is fitted together with the sheer read at the thwarts: within a step of what is shown.
	assert.InDelta(t, 10.625*units.Inch, p.shown("sheer.amidships"), units.Inch/16)
	for _, what := range []string{"length overall", "length over the gunwales", "beam inside", "depth to the inwale"} {
		assert.InDelta(t, 0, eval[float64](p, differs, what), 1e-9, what)
	}
	p.enter("beam", "28 1/2 in")
	p.wait(`Math.abs(`+differs+` - 0.0254) < 0.001`, "beam inside")
	p.press(`[data-measured="each"]`)
	p.wait(`document.querySelectorAll('[data-table="predicted"] tbody tr').length > 3`)
}

// A half breadth at a height is read off a line, stands in its row with height and place,
// and with a half girth frees bilge and corner: neither is listed as held.
func TestHalfBreadthIsRecorded(t *testing.T) {
	p := open(t, desktop)
	p.write("record-text", "length overall: 16 ft\nbeam inside the gunwales: 33\ndepth to inwale: 12 1/2\n"+
		"Half breadth 4 in up amidships: 15 3/4\nHalf girth amidships: 25 1/2\n")
	p.press(`[data-measured="paste"]`)
	p.wait(`document.querySelectorAll('#record-list li').length === 5`)
	row := func(field int) string {
		return eval[string](p, `document.querySelector('#record-list li:nth-child(4) [data-field="%d"]').value`, field)
	}
	assert.Equal(t, "halfBreadth", row(0))
	assert.Equal(t, `4" up, amidships`, row(1))
	p.press(`[data-measured="fit"]`)
	p.wait(`document.querySelectorAll('#record-rows [data-table="measured"] tbody tr').length === 5`)
	// How well a size lettered on a drawing is known: record's usual tolerance of its kind.
	assert.InDelta(t, 0, eval[float64](p, differs, "half breadth"), record.HalfBreadth.UsualTolerance())
	held := eval[string](p, `document.querySelector('[data-table="held"]').textContent.toLowerCase()`)
	assert.NotContains(t, held, "bilge")
	assert.Contains(t, held, "rocker")
}

// A survey's table asks which of its boats to read, and the one chosen is read.
func TestSurveyAsksWhichBoat(t *testing.T) {
	p := open(t, desktop)
	survey, err := os.ReadFile("../../testdata/published/measured-canoes.csv")
	require.NoError(t, err)
	p.write("record-text", string(survey))
	p.press(`[data-measured="paste"]`)
	p.wait(`document.querySelectorAll('#record-boat option').length === 8`)
	assert.Equal(t, 0, eval[int](p, `document.querySelectorAll('#record-list li').length`))
	eval[bool](p, `(s => { s.value = [...s.options].find(o => o.text === 'T1').value;
		s.dispatchEvent(new Event('change', {bubbles: true})); return true; })(document.getElementById('record-boat'))`)
	p.wait(`document.getElementById('record-name').value === 'T1'`)
	assert.Equal(t, `9' 8"`, eval[string](p, `document.querySelector('#record-list li [data-field="2"]').value`))
	assert.Contains(t, eval[string](p, `document.getElementById('record-says').textContent`), "inside or outside")
}

// A record is entered row by row with the keyboard alone; a cell that cannot be read
// says so at its row, keeps what was typed and changes nothing; the record is there
// when the page is opened again.
func TestRecordByKeyboard(t *testing.T) {
	p := openAfter(t, "", desktop, own(t))
	p.unfold("record-list")
	eval[bool](p, `(b => { b.focus(); return true; })(document.querySelector('[data-measured="add"]'))`)
	keys := func(text string) { p.do(chromedp.KeyEvent(text)); p.settle() }
	type row struct{ what, where, value string }
	keys(kb.Enter)
	for i, r := range []row{
		{what: "lengthOverall", value: "15' 6"},
		{what: "lengthOverGunwales", value: "170"},
		{what: "beamInside", value: "2' 8 1/2"},
		{what: "depthInwale", value: "12 1/4"},
		{what: "thwartPosition", where: "thwart 1, from the middle", value: "34"},
		{what: "clearWidth", where: "at thwart 1", value: "27"},
		{what: "railHeight", where: "aft 60 from the middle", value: "17"},
	} {
		if i > 0 {
			keys(kb.Enter)
		}
		for range 30 {
			if eval[string](p, `document.activeElement.value`) == r.what {
				break
			}
			keys(kb.ArrowDown)
		}
		keys(kb.Tab)
		if r.where != "" {
			keys(r.where + kb.Tab)
		}
		keys(r.value + kb.Tab)
		// Back to the value, for Enter to begin the next row.
		eval[bool](p, `(l => { l.lastElementChild.querySelector('[data-field="2"]').focus(); return true;
			})(document.getElementById('record-list'))`)
	}
	assert.Equal(t, 7, eval[int](p, `document.querySelectorAll('#record-list li').length`))
	assert.Equal(t, `5' 0" from the middle, aft`, eval[string](p,
		`document.querySelector('#record-list li:last-child [data-field="1"]').value`))
	assert.Equal(t, "7 measurements.", eval[string](p, `document.getElementById('record-said').textContent`))

	eval[bool](p, `(f => { f.select(); return true; })(document.activeElement)`)
	keys("many" + kb.Tab)
	assert.Equal(t, "many", eval[string](p, `document.querySelector('#record-list li:last-child [data-field="2"]').value`))
	assert.Contains(t, eval[string](p, `document.querySelector('#record-list li:last-child .fault').textContent`), "many")
	assert.True(t, eval[bool](p,
		`document.querySelector('#record-list li:last-child [data-field="2"]').matches('[aria-invalid=true]')`))
	eval[bool](p, `(f => { f.focus(); f.select(); return true; })(document.querySelector('#record-list li:last-child [data-field="2"]'))`)
	keys("16 1/2" + kb.Tab)
	assert.Empty(t, eval[string](p, `document.querySelector('#record-list li:last-child .fault').textContent`))

	// Kept as recorded, whatever is fitted.
	eval[bool](p, `(f => { f.focus(); return true; })(document.querySelector('#record-list li:last-child [data-field="4"]'))`)
	keys(" ")
	eval[bool](p, `(b => { b.focus(); return true; })(document.querySelector('[data-measured="fit"]'))`)
	keys(kb.Enter)
	p.wait(`document.querySelectorAll('#record-rows tbody tr').length === 7`)
	for _, what := range []string{"length overall", "cap top height"} {
		assert.InDelta(t, 0, eval[float64](p, differs, what), 1e-9, what)
	}
	assert.Contains(t, eval[string](p, `document.getElementById('record-rows').textContent`), "kept as recorded")

	eval[bool](p, `document.getElementById('record-list').scrollIntoView(), true`)
	p.settle()
	p.shot("record-desktop")
	p.do(chromedp.Reload())
	p.ready()
	p.wait(`document.querySelectorAll('#record-list li').length === 7`)
	p.wait(`document.querySelectorAll('#record-rows tbody tr').length === 7`)
	assert.True(t, eval[bool](p, `document.querySelector('#record-list li:last-child [data-field="4"]').checked`))
}

// What contradicts itself is named at its row before anything is fitted; a row struck
// out comes back with undo.
func TestContradictionStandsAtItsRow(t *testing.T) {
	p := open(t, phone)
	p.write("record-text", "beam inside the gunwales\t30\nfirst thwart clear\t36\nlength overall\t180\n"+
		"length over gunwales\t164\nfirst thwart, from middle\t33\n")
	p.press(`[data-measured="paste"]`)
	p.wait(`document.querySelectorAll('#record-list li').length === 5`)
	assert.Contains(t, eval[string](p, `document.querySelector('#record-list li:nth-child(2) .fault').textContent`),
		"longer than the beam")
	assert.Contains(t, eval[string](p, `document.getElementById('record-said').textContent`), "5 measurements, 1 left out")
	p.press(`#record-list li:nth-child(2) button`)
	assert.Equal(t, "4 measurements.", eval[string](p, `document.getElementById('record-said').textContent`))
	p.press("#undo")
	p.wait(`document.querySelectorAll('#record-list li').length === 5`)

	small := eval[[]string](p, `[...document.querySelectorAll('#measured-boat :is(button, input, select, textarea, summary)')]
		.filter(e => e.offsetParent && getComputedStyle(e).visibility === 'visible')
		.filter(e => { const r = e.getBoundingClientRect(); return r.width < 44 || r.height < 44; }).map(e => e.outerHTML.slice(0, 80))`)
	assert.Empty(t, small, "targets under 44 pixels")
	assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), 390)
	eval[bool](p, `document.getElementById('record-list').scrollIntoView(), true`)
	p.shot("record-phone")
}

// A row that is begun, and what cannot be read in one, stay while other things of the
// record change; another boat has rows of its own.
func TestWhatIsBegunStays(t *testing.T) {
	p := open(t, desktop)
	p.write("record-text", "beam inside the gunwales\t33\nlength overall\t180\n")
	p.press(`[data-measured="paste"]`)
	p.wait(`document.querySelectorAll('#record-list li').length === 2`)
	put := func(row int, field int, text string) {
		p.change(fmt.Sprintf(`#record-list li:nth-child(%d) [data-field="%d"]`, row, field), text)
		p.settle()
	}
	put(1, 2, "wide")
	p.press(`[data-measured="add"]`)
	put(3, 0, "railHeight")
	put(3, 1, "by the tree")
	p.change("#record-name", "Old boat")
	p.press(`[data-measured="add-reading"]`)
	put(2, 2, "181")
	texts := func() string {
		return eval[string](p, `[...document.querySelectorAll('#record-list li')]
			.map(l => [...l.querySelectorAll('[type=text]')].map(f => f.value).join('|') +
				l.querySelector('.fault').textContent).join('\n')`)
	}
	assert.Contains(t, texts(), "wide")
	assert.Contains(t, texts(), "by the tree")
	assert.Contains(t, texts(), `15' 1"`)
	p.press(`[data-keep="copy"]`)
	p.wait(`document.querySelectorAll('#record-list li').length === 2`)
	assert.NotContains(t, texts(), "wide")
	assert.Contains(t, texts(), `2' 9"`)
}

// A tape reading at a thwart moves the ribs near it, and one undo takes it back.
func TestAsBuiltMovesTheRibs(t *testing.T) {
	p := open(t, phone)
	before := p.shown("ribs.longest")
	p.unfold("built-list")
	p.press(`[data-measured="add-reading"]`)
	p.change("#built-list select", "clearWidth")
	eval[bool](p, `(f => { f.focus(); return true; })(document.querySelector('#built-list [data-field="1"]'))`)
	p.do(chromedp.KeyEvent("at thwart 1" + kb.Tab + `2' 2 3/4"` + kb.Tab))
	p.settle()
	p.press(`[data-measured="built"]`)
	p.wait(`document.querySelectorAll('[data-table="ribsmoved"] tbody tr').length > 3`)
	assert.Positive(t, eval[int](p, `document.querySelectorAll('[data-table="moved"] tbody tr').length`))
	assert.NotEqual(t, before, p.shown("ribs.longest"))
	p.press("#undo")
	assert.InDelta(t, before, p.shown("ribs.longest"), 1e-12)
	assert.Equal(t, 1, eval[int](p, `document.querySelectorAll('#built-list li').length`), "the reading stays")
}
