package e2e

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
)

// write puts text in a field as typing would.
func (p *tab) write(id, text string) {
	p.Helper()
	eval[bool](p, `(f => { f.closest('details').open = true; f.value = %q; return true; })(document.getElementById(%q))`, text, id)
}

// A published record, boat M1 of testdata/published/measured-canoes.csv, gives a
// boat of its length, beam and depth, beside the one that was there; a row that
// cannot be read is named and the others stand.
func TestRecordFindsTheBoat(t *testing.T) {
	p := open(t, desktop)
	p.write("record-text", "Boat: M1\nlength overall\t200\nlength over gunwales\t174\nbeam inside the gunwales\t27.5\ngreatest beam\t34.75\ndepth to inwale\t10 5/8\n"+
		"first thwart, from middle\t32\nend thwart, from middle\t58\nfirst thwart clear\t21.9\nend thwart clear\t9.3\nrail height at first thwart\t11.8\nrail height at end thwart\t13.4\nend height\t18.4\ndepth of water\tmany\n")
	p.press(`[data-measured="fit"]`)
	p.wait(`document.querySelectorAll('#record-rows [data-table="measured"] tbody tr').length >= 12`)
	assert.Contains(t, eval[string](p, `document.getElementById('record-says').textContent`), "depth of water")
	assert.Equal(t, 2, eval[int](p, `document.getElementById('shelf').options.length`))
	assert.InDelta(t, 10.625*units.Inch, p.shown("sheer.amidships"), units.Inch/16)
	const difference = `+[...document.querySelectorAll('[data-table="measured"] tbody tr')].find(r => /beam inside/i.test(r.textContent)).querySelector('[data-column="difference"]').dataset.value`
	assert.InDelta(t, 0, eval[float64](p, difference), units.Inch/16)
	p.enter("beam", "28 1/2 in")
	p.wait(`Math.abs(%s - 0.0254) < 0.001`, difference)
	p.press(`[data-measured="each"]`)
	p.wait(`document.querySelectorAll('[data-table="predicted"] tbody tr').length > 3`)
}

// A tape reading at a thwart moves the ribs near it, and one undo takes it back.
func TestAsBuiltMovesTheRibs(t *testing.T) {
	p := open(t, phone)
	before := p.shown("ribs.longest")
	p.write("built-text", "first thwart clear\t2' 2 3/4\"\n")
	p.press(`[data-measured="built"]`)
	p.wait(`document.querySelectorAll('[data-table="ribsmoved"] tbody tr').length > 3`)
	assert.Positive(t, eval[int](p, `document.querySelectorAll('[data-table="moved"] tbody tr').length`))
	p.press("#undo")
	assert.InDelta(t, before, p.shown("ribs.longest"), 1e-12)
}
