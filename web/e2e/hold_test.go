package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// One press holds: the change of every number is from then on against what is held, and the boat held
// is drawn over the present one. What it costs lists the most first; letting go ends it.
func TestHold(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s.at("choose"))
			button := `#hold`
			if s.width > 500 {
				button = `#hold-wide`
			}
			p.press(button)
			p.wait(`document.querySelector('%s').textContent === 'Let go'`, button)
			p.enter("depth", `14 1/2"`)
			p.enter("beam", `2' 10"`)
			change := func(key string) string {
				return eval[string](p, `document.querySelector('.cell [data-change="%s"]').textContent`, key)
			}
			p.settle()
			assert.NotEmpty(t, change("afloat.freeboard"))
			p.press(`#against-costs`)
			p.wait(`document.querySelector('#costs [data-cost="post.end"]') !== null`)
			assert.Equal(t, "compare", eval[string](p, `document.documentElement.dataset.at`))
			assert.Contains(t, eval[string](p, `document.getElementById('costs').textContent`), "depth amidships")
			p.wait(`document.querySelectorAll('#inches [data-hold]').length > 10`)
			assert.True(t, eval[bool](p, `document.documentElement.scrollWidth <= innerWidth`), "no wider than the window")
			p.press(button)
			p.wait(`document.getElementById('costs').textContent.includes('No boat is held')`)
		})
	}
}

// The strips of the control in hand are drawn once they are unfolded; a press in one sets the control.
func TestStrips(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		t.Run(s.name, func(t *testing.T) {
			p := open(t, s.at("choose"))
			p.enter("beam", `2' 10"`)
			eval[bool](p, `document.getElementById('whatif').open = true`)
			p.wait(`document.querySelector('[data-strip="afloat.gm"]') !== null && document.querySelectorAll('#strips svg').length >= 4`)
			before, _ := p.value("beam")
			x, y := p.beside(`[data-strip="afloat.gm"]`, 0.75, 0.5)
			if s.touch {
				p.down(x, y).up()
			} else {
				p.do(chromedp.MouseClickXY(x, y))
			}
			p.settle()
			after, _ := p.value("beam")
			assert.Greater(t, after, before+2)
			p.wait(`document.getElementById('strips').getAttribute('aria-busy') === null`)

			// By keys too, at once and again while they are drawn anew; the strip stays the one set.
			eval[any](p, `document.querySelector('[data-strip="afloat.gm"]').focus()`)
			p.keys(kb.ArrowLeft + kb.ArrowLeft)
			p.settle()
			p.wait(`document.getElementById('strips').getAttribute('aria-busy') === null`)
			keyed, _ := p.value("beam")
			assert.InDelta(t, after-2*0.25, keyed, 1e-9)
			assert.Equal(t, "afloat.gm", eval[string](p, `document.activeElement.dataset.strip`))
			assert.Contains(t, eval[string](p, `document.activeElement.getAttribute('aria-valuetext')`), ": ")
			p.keys(kb.Home)
			p.settle()
			least, _ := p.value("beam")
			assert.Less(t, least, keyed-2)
		})
	}
}

// A lesson is opened, its step set, the answer shown when asked for, and the boat is left as it was.
func TestLessons(t *testing.T) {
	p := open(t, desktop.at("lessons"))
	p.wait(`document.querySelectorAll('[data-lesson^="open:"]').length === 10`)
	depth, _ := p.value("depth")
	p.press(`[data-lesson="open:depth"]`)
	p.wait(`document.querySelector('[data-watch="ribs.longest"]') !== null`)
	p.press(`[data-lesson="next"]`)
	p.press(`[data-lesson="do:1"]`)
	p.wait(`document.querySelector('[data-watch="ribs.longest"]').textContent.includes('+3')`)
	p.press(`[data-lesson="big"]`)
	p.keys(" ")
	p.wait(`document.querySelector('.claims') !== null`)
	letters := eval[float64](p, `parseFloat(getComputedStyle(document.querySelector('#lesson h3')).fontSize) / innerHeight`)
	// A browser may count letters in 64ths of a pixel.
	assert.GreaterOrEqual(t, letters, 1.0/28-1.0/64/900)
	// The hold is let go and taken again by its key as everywhere.
	p.keys("h")
	p.wait(`document.getElementById('against-name').textContent.includes('Nothing is held')`)
	p.keys("\x1b")
	p.wait(`document.documentElement.dataset.teach === undefined`)
	// Another place, and the picture over all of the window, end the wall.
	p.press(`[data-lesson="big"]`)
	p.notch("bed")
	p.wait(`document.documentElement.dataset.teach === undefined`)
	p.notch("lessons")
	p.press(`[data-lesson="close"]`)
	p.wait(`document.querySelectorAll('[data-lesson^="open:"]').length === 10`)
	back, _ := p.value("depth")
	require.InDelta(t, depth, back, 1e-9)
}

// A page opened again goes on with the lesson that was in hand, and the boat comes back after it.
func TestLessonOutlastsAReload(t *testing.T) {
	p := openAfter(t, "", desktop.at(asKept), own(t))
	p.notch("lessons")
	depth, _ := p.value("depth")
	p.press(`[data-lesson="open:depth"]`)
	p.wait(`document.querySelector('[data-watch]') !== null`)
	p.press(`[data-lesson="next"]`)
	p.press(`[data-lesson="do:1"]`)
	p.again()
	p.wait(`document.querySelector('[data-lesson="do:1"]')?.textContent === 'Set'`)
	p.press(`[data-lesson="close"]`)
	p.wait(`document.querySelectorAll('[data-lesson^="open:"]').length === 10`)
	back, _ := p.value("depth")
	assert.InDelta(t, depth, back, 1e-9)
	assert.Contains(t, eval[string](p, `document.getElementById('lesson-list').textContent`), "in hand last")
}

// On a wall of 1920 by 1080 the picture stands beside the question and each part of a lesson, and nothing
// is scrolled for: from the lesson with the most steps to the one with the longest names.
func TestLessonsOnTheWall(t *testing.T) {
	p := open(t, screen{name: "wall", width: 1920, height: 1080, density: 1}.at("lessons"))
	p.press(`[data-lesson="open:frame"]`)
	p.wait(`document.querySelector('[data-view=bed]').ariaPressed === 'true'`)
	p.press(`[data-lesson="big"]`)
	for range 3 {
		for part := range 4 {
			p.wait(`document.querySelectorAll('#lesson .told').length === %d && document.querySelector('[data-watch]') !== null`, part+1)
			assert.True(t, eval[bool](p, `(e => e.scrollHeight <= e.clientHeight && e.scrollWidth <= e.clientWidth)(
				document.getElementById('lessons'))`),
				"%s, part %d", eval[string](p, `document.getElementById('lesson-title').textContent`), part)
			assert.True(t, eval[bool](p, `[...document.querySelectorAll('.watch td')].every(e => {
				const words = document.createRange();
				words.selectNodeContents(e);
				return new Set([...words.getClientRects()].map(r => r.top)).size < 2;
			})`), "no length is broken between its feet and its inches")
			// 66 hundredths of the window, within the CSS pixel that layout rounds to.
			assert.InDelta(t, 0.66*1920, eval[float64](p, `document.getElementById('view').getBoundingClientRect().width`), 1)
			p.keys(" ")
		}
		p.keys(kb.ArrowRight)
	}
}

// A lesson and what a change costs are printed in place of the page, inside the margin: a page for the
// class and one with what was found, and one page of costs.
func TestLessonAndCostsPrint(t *testing.T) {
	p := open(t, desktop.at("lessons"))
	p.press(`[data-lesson="open:frame"]`)
	p.wait(`document.querySelector('[data-watch]') !== null`)
	for _, on := range papers {
		pages := readPDF(t, p.printed(`[data-lesson="print"]`, on, false))
		assert.Equal(t, 2, len(pages), on.name)
		for i, s := range pages {
			s.insideMargin(t, fmt.Sprintf("page %d on %s", i+1, on.name))
		}
		text := eval[string](p, `window.handed`)
		for _, word := range []string{"My guess", "Mark what you read", "What we found"} {
			assert.Contains(t, text, word)
		}
	}
	p.press(`[data-lesson="close"]`)
	p.notch("choose")
	p.press(`#hold-wide`)
	p.enter("depth", `14 1/2"`)
	p.press(`#against-costs`)
	p.wait(`document.querySelector('#costs [data-cost="post.end"]') !== null`)
	pages := readPDF(t, p.printed(`[data-held="print"]`, papers[0], false))
	assert.Equal(t, 1, len(pages))
	assert.Contains(t, eval[string](p, `window.handed`), "What it costs")
	pages[0].insideMargin(t, "costs")
}

// Where all stands on one page, the lessons are listed and what an inch costs is worked out too.
func TestAllOfItHasLessonsAndInches(t *testing.T) {
	p := open(t, desktop)
	p.wait(`document.querySelectorAll('[data-lesson^="open:"]').length === 10`)
	p.wait(`document.querySelectorAll('#inches [data-hold]').length > 10`)
	assert.NotEmpty(t, eval[string](p, `document.getElementById('beside').textContent`))
}

// Boats side by side are drawn at one scale, whatever they are called: their drawings are of one size.
func TestBoatsSideBySideAtOneScale(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		p := open(t, s.at("compare"))
		for i := 1; i <= 3; i++ {
			eval[bool](p, `(s => { s.selectedIndex = %d; s.dispatchEvent(new Event('change', {bubbles: true})); return true; })(
				document.getElementById('starting'))`, i)
			p.settle()
		}
		for i := range 4 {
			eval[bool](p, `(e => { if (!e.checked) e.click(); return true; })(document.querySelector('[data-beside="%d"]'))`, i)
			p.settle()
		}
		wide := eval[[]float64](p, `[...document.querySelectorAll('.beside svg')].map(e => e.getBoundingClientRect().width)`)
		require.Len(t, wide, 4, s.name)
		for _, w := range wide {
			assert.InDelta(t, wide[0], w, 0.5, "half a CSS pixel, as layout rounds: %s", s.name)
		}
	}
}
