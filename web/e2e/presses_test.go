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

// hand is a hand on a phone: its presses and the swipes by half a window that bring what it
// presses, or reads, into sight are counted. What is typed is not.
type hand struct {
	*tab
	presses, swipes int
}

// seen swipes until the middle of an element lies where nothing covers it. The selector
// names one that shows; of a row it is the first cell, for wide tables scroll sideways.
func (h *hand) seen(selector string) (x, y float64) {
	h.Helper()
	const most = 20
	for range most {
		at := eval[[]float64](h.tab, `(e => { if (!e) return []; const r = e.getBoundingClientRect();
			const x = r.left + r.width / 2, y = r.top + r.height / 2;
			return [x, y, e.contains(document.elementFromPoint(x, y)) ? 0 : Math.max(-innerHeight / 2,
				Math.min(innerHeight / 2, y - innerHeight * 0.7)) || 1]; })([...document.querySelectorAll(%q)]
					.find(e => e.checkVisibility()))`, selector)
		require.Len(h, at, 3, "%s does not show", selector)
		if at[2] == 0 {
			return at[0], at[1]
		}
		before := eval[float64](h.tab, `scrollY`)
		eval[bool](h.tab, `scrollBy({top: %g, behavior: 'instant'}), true`, at[2])
		h.settle()
		require.NotEqual(h, before, eval[float64](h.tab, `scrollY`), "%s stays out of sight", selector)
		h.swipes++
	}
	require.Fail(h, "never in sight", selector)
	return
}

func (h *hand) tap(selector string) {
	h.Helper()
	h.down(h.seen(selector)).up()
	h.settle()
	h.presses++
}

// enter types in a control's field and leaves it.
func (h *hand) enter(key, text string) {
	h.Helper()
	h.tap(`[data-typed="` + key + `"]`)
	require.Equal(h, key, eval[string](h.tab, `document.activeElement.dataset.typed`))
	h.keys("a", chromedp.KeyModifiers(chromedp.ModifierCtrl))
	h.keys(text + kb.Enter)
	eval[bool](h.tab, `document.activeElement.blur(), true`)
	h.settle()
}

// to goes to a stage by the stick, which shows one stage until it is pressed.
func (h *hand) to(k stage.Key) {
	h.Helper()
	h.tap(`#notches [data-at]`)
	h.tap(`#notches [data-at="` + string(k) + `"]`)
	require.Equal(h, string(k), eval[string](h.tab, `document.documentElement.dataset.at`))
}

// marks goes to the rib marks of a boat of 15 ft with 40 ribs.
func (h *hand) marks() {
	h.Helper()
	h.enter("length", "15 ft")
	h.tap(`[data-turn="1"]`)
	h.tap(`[data-turn="1"]`)
	h.enter("ribs", "40")
	h.wait(marksRead)
}

// unbent opens the page for a new user on a boat whose stem is not split at all.
func (h *hand) unbent() {
	h.Helper()
	h.notch(stage.Ends)
	h.tab.enter("stemLaminations", "1")
	h.notch(stage.Choose)
	h.wait(`document.querySelector('.cells:not([hidden]) [data-verdict="*"]').dataset.state === 'tight'`)
}

// What each of five errands takes of a new user with a phone in the hand, the first minute
// still in sight: presses, and swipes by half a window.
func TestPressesOfANewUser(t *testing.T) {
	for _, errand := range []struct {
		name       string
		most       int // presses
		do, before func(h *hand)
	}{
		{"rib marks of a 15 ft boat with 40 ribs", 4, func(h *hand) {
			h.marks()
			h.seen(`[data-table="marks"] tbody tr > :first-child`)
		}, nil},
		{"post heights", 2, func(h *hand) {
			h.to(stage.Lace)
			h.seen(`.cells:not([hidden]) [data-why="post.middle"]`)
			h.seen(`[data-table="posts"] tbody tr > :first-child`)
		}, nil},
		{"the next rib to fit", 3, func(h *hand) {
			h.to(stage.Rib)
			h.tap(`[data-jump="[data-bench]"]`)
			h.wait(`document.getElementById('bench').open`)
			assert.Equal(h, benchLines(h, stage.Rib)[0].What, h.what())
		}, nil},
		{"what to gather", 2, func(h *hand) {
			h.to(stage.Gather)
			for _, key := range []string{"tree.girth", "logs.bolts", "root.dug"} {
				h.seen(`.cells:not([hidden]) [data-why="` + key + `"]`)
			}
		}, nil},
		{"a wrong stem and its cure", 3, func(h *hand) {
			h.tap(`.cells:not([hidden]) [data-check="*"]`)
			h.tap(`#head-checks [data-check="stem.verdict"]`)
			h.tap(`#at-ends [data-cure^="stemLaminations="]`)
			h.wait(`document.querySelector('.cells:not([hidden]) [data-verdict="stem.verdict"]').dataset.state === 'within'`)
		}, (*hand).unbent},
	} {
		h := &hand{tab: open(t, phone.at(asKept))}
		if errand.before != nil {
			errand.before(h)
		}
		require.Equal(t, "choose", eval[string](h.tab, `document.documentElement.dataset.at`))
		errand.do(h)
		fmt.Printf("presses, %s: %d, swipes %d\n", errand.name, h.presses, h.swipes)
		assert.LessOrEqual(t, h.presses, errand.most, errand.name)
	}
}
