package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The main job: a boat of 15 ft with 40 ribs, its marks read off the table and taken to the
// bench, the first ticked there, a note, and the stage printed.
const marksRead = `document.querySelector('[data-table="marks"]').checkVisibility() &&
	document.querySelector('[data-table="marks"]').textContent.includes('rib 20')`

// By the keyboard alone, the stops of Tab counted to each thing that is wanted.
func TestMainJobByKeyboard(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		p := open(t, s.at("choose"))
		eval[bool](p, `window.asked = 0, window.print = () => asked++, document.documentElement.dataset.met = 'true', true`)
		var told []string
		to := func(what, selector string) {
			t.Helper()
			const most = 100
			for n := 1; n <= most; n++ {
				p.keys(kb.Tab)
				if eval[bool](p, `document.activeElement.matches(%q)`, selector) {
					assert.True(t, eval[bool](p, stopShows), "the focus shows on %s", what)
					told = append(told, fmt.Sprintf("%s %d", what, n))
					return
				}
			}
			require.Fail(t, "never reached", selector)
		}
		enter := func(text string) {
			p.keys("a", chromedp.KeyModifiers(chromedp.ModifierCtrl))
			p.keys(text + kb.Enter)
			p.settle()
		}
		to("length", `[data-typed="length"]`)
		enter("15 ft")
		eval[bool](p, `document.querySelector('.skip').focus(), true`)
		to("stages", `#notches [data-at]`)
		p.keys("]]")
		p.settle()
		require.Equal(t, "gunwales", eval[string](p, `document.documentElement.dataset.at`))
		to("first number", ".cell")
		to("steps and tables", `#jumps button`)
		to("ribs", `[data-typed="ribs"]`)
		enter("40")
		p.wait(marksRead)
		p.keys(kb.Tab)
		p.keys("w")
		p.wait(`document.getElementById('bench').open`)
		first := p.what()
		p.keys(" ")
		p.settle()
		assert.NotEqual(t, first, p.what(), "the next line")
		assert.Contains(t, p.counted(), "1 done")
		p.keys(kb.Escape)
		p.wait(`!document.getElementById('bench').open`)
		eval[bool](p, `document.querySelector('[data-steps="gunwales"]').open = true`)
		to("note", `[data-note="gunwales"]`)
		p.keys("split on a knot" + kb.Enter)
		p.wait(`document.querySelector('[data-noted="gunwales"]').textContent.includes('split on a knot')`)
		to("print", `[data-print="gunwales"]`)
		p.keys(kb.Enter)
		p.wait(`asked === 1`)
		fmt.Printf("stops of the main job, %s: %s\n", s.name, strings.Join(told, ", "))
	}
}

// By touch, at a phone's size, with real touches.
func TestMainJobByTouch(t *testing.T) {
	p := open(t, phone.at("choose"))
	eval[bool](p, `window.asked = 0, window.print = () => asked++, true`)
	h := &hand{tab: p}
	h.marks()
	h.tap(`[data-jump="[data-bench]"]`)
	p.wait(`document.getElementById('bench').open`)
	h.tap(`#bench-done`)
	assert.Contains(t, p.counted(), "1 done")
	h.tap(`[data-bench=close]`)
	h.tap(`[data-print="gunwales"]`)
	p.wait(`asked === 1`)
}
