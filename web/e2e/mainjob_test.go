package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
)

// The main job: a boat of 15 ft with 40 ribs, its marks read off the table and taken to the
// bench, the first ticked there, a note, and the stage printed.
const marksRead = `document.querySelector('[data-table="marks"]').checkVisibility() && document.querySelector('[data-table="marks"]').textContent.includes('rib 20')`

// By touch, at a phone's size, with real touches.
func TestMainJobByTouch(t *testing.T) {
	p := open(t, phone.at("choose"))
	eval[bool](p, `window.asked = 0, window.print = () => asked++, true`)
	presses := 0
	tap := func(selector string) {
		t.Helper()
		x, y := p.beside(selector, 0.5, 0.5)
		p.down(x, y).up()
		p.settle()
		presses++
	}
	enter := func(key, text string) {
		t.Helper()
		tap(`[data-typed="` + key + `"]`)
		require.Equal(t, key, eval[string](p, `document.activeElement.dataset.typed`))
		p.keys("a", chromedp.KeyModifiers(chromedp.ModifierCtrl))
		p.keys(text + kb.Enter)
		p.settle()
	}
	enter("length", "15 ft")
	eval[bool](p, `document.activeElement.blur(), true`)
	tap(`[data-turn="1"]`)
	tap(`[data-turn="1"]`)
	require.Equal(t, string(stage.Gunwales), eval[string](p, `document.documentElement.dataset.at`))
	enter("ribs", "40")
	eval[bool](p, `document.activeElement.blur(), true`)
	p.wait(marksRead)
	fmt.Printf("marks of a 15 ft boat with 40 ribs by touch: %d presses\n", presses)
	tap(`[data-jump="[data-bench]"]`)
	p.wait(`document.getElementById('bench').open`)
	tap(`#bench-done`)
	assert.Contains(t, p.counted(), "1 done")
	tap(`[data-bench=close]`)
	tap(`[data-print="gunwales"]`)
	p.wait(`asked === 1`)
}
