package e2e

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
)

// go to a stage by its notch.
func (p *tab) notch(k stage.Key) {
	p.Helper()
	eval[bool](p, `document.querySelector('#notches [data-at="%s"]').click(), true`, k)
	p.settle()
}

// seen are the places of which something can be seen.
const seen = `[...new Set([...document.querySelectorAll('[data-place]')].filter(e => e.checkVisibility())
	.map(e => e.dataset.place))].sort()`

// At a stage stands what is at home there and nothing else; Back goes back through stages.
func TestOneStageAtATime(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		p := open(t, s.at("choose"))
		assert.Equal(t, "choose", eval[string](p, `document.documentElement.dataset.at`))
		for _, k := range stage.Keys()[1:] {
			p.notch(k)
			for _, place := range eval[[]string](p, seen) {
				assert.Contains(t, place, string(k), "%s, %s", s.name, k)
			}
			assert.True(t, eval[bool](p, `(e => e.scrollHeight <= e.clientHeight)(document.getElementById('picture-key'))`),
				"%s, %s: the picture's key stands whole", s.name, k)
			st, _, _ := stage.Lookup(k)
			assert.Equal(t, st.InSight, append([]string(nil), eval[[]string](p,
				`[...document.querySelectorAll('#form [data-control]')].filter(e => e.checkVisibility())
					.map(e => e.dataset.control).filter(k => !/^(name|notes|paddler)/.test(k))`)...), "%s, %s", s.name, k)
			for _, key := range st.Large {
				assert.True(t, eval[bool](p, `(e => e.checkVisibility() &&
					e.textContent !== '')(document.querySelector('.cells:not([hidden]) [data-result=%q]'))`, key), key)
			}
			assert.Equal(t, string(st.Look.State),
				eval[string](p, `document.querySelector('[data-view][aria-pressed=true]').dataset.view`))
			assert.Equal(t, len(st.Look.Near) > 0, eval[bool](p, `document.getElementById('view').dataset.near !== undefined`),
				"near its parts at %s", k)
			assert.Contains(t, eval[string](p, `document.getElementById('status').textContent`), st.Name)
			assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(s.width), "no sideways scroll at %s", k)
		}
		eval[bool](p, `history.back(), true`)
		p.wait(`document.documentElement.dataset.at === 'pitch'`)
		eval[bool](p, `history.back(), true`)
		p.wait(`document.documentElement.dataset.at === 'rib'`)
		p.shot("stage " + s.name)
	}
}

// The page opens again at the stage where it was left, and at the one of its address.
func TestStageIsKept(t *testing.T) {
	file := pageFile(t)
	served := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { http.ServeFile(w, r, file) }))
	defer served.Close()
	p := openAddress(t, served.URL+"/", "", desktop.at(asKept), own(t))
	p.ready()
	p.notch(stage.Ends)
	p.enter("stemLaminations", "9")
	p.wait(`location.hash.endsWith('&at=ends')`)
	p.do(chromedp.Navigate("about:blank"), chromedp.Navigate(served.URL+"/"))
	p.take() // the request for the page itself
	p.ready()
	p.wait(`document.documentElement.dataset.at === 'ends'`)
	q := openAddress(t, served.URL+"/#&at=lace", "", desktop, own(t))
	q.ready()
	q.wait(`document.documentElement.dataset.at === 'lace'`)
}

// What does not scroll takes at most 45 % of the height, in every window, with letters at
// 200 % and with the spacing of WCAG 2.2 success criterion 1.4.12 too.
func TestRoom(t *testing.T) {
	letterings := map[string]string{"plain": "", "200 %": `html { font-size: 200% !important; }`,
		"spaced": `* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important; } p {
			margin-bottom: 2em !important; }`}
	for _, size := range [][2]int64{{390, 844}, {768, 1024}, {1024, 768}, {1280, 720}, {1366, 768}, {1920, 1080}, {320, 640}} {
		p := open(t, screen{name: "room", width: size[0], height: size[1], density: 1}.at("choose"))
		for name, css := range letterings {
			eval[bool](p, `(document.getElementById('lettering') ??
				document.head.appendChild(Object.assign(document.createElement('style'), {id: 'lettering'}))).textContent = %q, true`, css)
			p.settle()
			stages := stage.Keys()
			if name != "plain" { // letters change the room alike at every stage
				stages = []stage.Key{stage.Choose, stage.Gather, stage.Rib}
			}
			for _, k := range stages {
				p.notch(k)
				share := eval[[]float64](p, `['sticky', 'fixed'].map(how => ['stick', 'sight', 'hand', 'cells']
					.map(id => document.getElementById(id))
					.filter(e => getComputedStyle(e).position === how).reduce((sum, e) => sum + e.offsetHeight, 0) / innerHeight)`)
				assert.LessOrEqual(t, share[0], 0.45, "%v, %s, %s", size, name, k)
				assert.LessOrEqual(t, share[1], 0.45, "%v, %s, %s: the pane", size, name, k)
				assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), int(size[0]),
					"%v, %s, %s: no sideways scroll", size, name, k)
			}
		}
	}
}

// A table wider than a phone scrolls in its own box and keeps its first column, which leaves
// half of the box and more for the others.
func TestWideTablesKeepTheirFirstColumn(t *testing.T) {
	p := open(t, screen{name: "narrow", width: 320, height: 640, density: 1}.at("choose"))
	wide := 0
	for _, k := range []stage.Key{stage.Gather, stage.Gunwales, stage.Ends, stage.Pitch, "compare"} {
		p.notch(k)
		eval[bool](p, `document.querySelectorAll('details.sheet').forEach(d => { d.open ||= d.checkVisibility(); }), true`)
		p.settle()
		for name, of := range eval[map[string][]float64](p, `Object.fromEntries([...document.querySelectorAll('.scroll')]
			.filter(e => e.checkVisibility() && e.scrollWidth > e.clientWidth + 1 && e.querySelector('tbody th')).map(e => {
				const cell = e.querySelector('tbody th'), before = cell.getBoundingClientRect().left;
				e.scrollLeft = e.scrollWidth;
				return [e.getAttribute('aria-label'), [cell.getBoundingClientRect().left - before, cell.offsetWidth / e.clientWidth]];
			}))`) {
			wide++
			assert.InDelta(t, 0, of[0], 1, "%s at %s: its first column stays", name, k)
			assert.LessOrEqual(t, of[1], 0.5, "%s at %s: the share that its first column takes", name, k)
		}
	}
	assert.Greater(t, wide, 5)
}

// By keyboard the first number is reached within eight stops, the first control within
// twelve and Undo within seven, once the first minute is closed.
func TestStopsToTheFirstNumber(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		p := open(t, s.at("choose"))
		eval[bool](p, `document.querySelector('[data-hand="1"]').click(), document.documentElement.dataset.met = 'true', true`)
		for _, k := range stage.Keys() {
			p.notch(k)
			eval[bool](p, `scrollTo(0, 0), true`)
			eval[bool](p, `document.querySelector('.skip').focus(), true`)
			stops := map[string]int{}
			for n := 2; n <= 12 && stops["[data-control] *"] == 0; n++ {
				p.keys(kb.Tab)
				for _, what := range []string{"#undo, #held, [data-hand]", ".cell", "[data-control] *"} {
					if stops[what] == 0 && eval[bool](p, `document.activeElement.matches(%q)`, what) {
						stops[what] = n
					}
				}
			}
			fmt.Printf("stops %s %s: hand %d, number %d, control %d\n", s.name, k, stops["#undo, #held, [data-hand]"],
				stops[".cell"], stops["[data-control] *"])
			assert.LessOrEqual(t, stops["#undo, #held, [data-hand]"], 7, k)
			assert.True(t, stops[".cell"] > 0 && stops[".cell"] <= 8, "%s: %v", k, stops)
			if k != stage.Keep {
				assert.True(t, stops["[data-control] *"] > 0 && stops["[data-control] *"] <= 12, "%s: %v", k, stops)
			}
		}
	}
}

// A number leads to how it was worked out, a check to what it found, a chip into the hand.
func TestCellsLead(t *testing.T) {
	p := open(t, desktop.at("rib"))
	p.press(`.cells:not([hidden]) [data-why="hull.halfGirth"]`)
	assert.True(t, eval[bool](p, `(e => e.open && e.checkVisibility() &&
		e.contains(document.activeElement))(document.querySelector('[data-number="hull.halfGirth"]'))`))
	p.press(`.cells:not([hidden]) [data-check="ribs.verdict"]`)
	assert.Equal(t, "ribs.verdict", eval[string](p, `document.activeElement.dataset.warning`))
	p.notch(stage.Keep)
	p.press(`.cells:not([hidden]) [data-why="weight.total"]`)
	p.wait(`document.documentElement.dataset.at === 'choose'`)
	eval[bool](p, `history.back(), true`)
	p.wait(`document.documentElement.dataset.at === 'keep'`)

	p.notch(stage.Bed)
	eval[bool](p, `document.querySelector('.group:not([hidden]) [data-hold="beam"]').click(), true`)
	assert.Equal(t, "Beam inside the gunwales", eval[string](p, `document.getElementById('held-name').textContent`))
	p.press(`[data-hand="1"]`)
	assert.Equal(t, `2' 9 1/4"`, eval[string](p, `document.getElementById('held-value').textContent`))
	assert.Equal(t, `was 2' 9"`, eval[string](p, `document.getElementById('held-was').textContent`))
	assert.Equal(t, "bed", eval[string](p, `document.documentElement.dataset.at`), "without leaving")
	p.press("#held")
	p.wait(`document.documentElement.dataset.at === 'choose'`)
	assert.Equal(t, "beam", eval[string](p, `document.activeElement.dataset.typed`))
}

// The picture folds to a strip and fills the window, by keys and by touch, and comes back.
func TestFoldedAndBig(t *testing.T) {
	for _, s := range []screen{desktop, phone} {
		p := open(t, s.at("choose"))
		height := func() float64 { return eval[float64](p, `document.getElementById('view').offsetHeight`) }
		usual := height()
		p.keys("f")
		assert.Zero(t, height())
		p.keys("f")
		assert.Equal(t, usual, height())
		p.keys("b")
		p.settle()
		assert.Greater(t, height(), 0.7*float64(s.height))
		for _, seen := range []string{"#picture-key", "#tools button", "#view"} {
			assert.True(t, eval[bool](p, `(q => {
				const e = document.querySelector(q), b = e.getBoundingClientRect();
				const at = document.elementFromPoint(b.left + 20, (b.top + b.bottom) / 2);
				return e.contains(at) && b.height > 20 && b.bottom <= innerHeight;
			})(%q)`, seen), "%s: %s is seen with the big picture", s.name, seen)
		}
		p.shot("big " + s.name)
		p.keys(kb.Escape)
		assert.Equal(t, usual, height())
		if s.touch {
			p.do(chromedp.Click(chromedp.CSS("#look")))
			p.do(chromedp.Click(chromedp.CSS(`[data-picture="big"]`)))
			assert.Greater(t, height(), 0.7*float64(s.height))
			p.do(chromedp.Click(chromedp.CSS(`[data-picture="big"]`)))
			assert.Equal(t, usual, height())
		}
	}
}

// Each button of the picture can be pressed where they come out, nearer too, and so can the one that
// puts them away again; upright the picture stays in sight. While a length is typed the cells close up.
func TestToolsInReach(t *testing.T) {
	for _, s := range []screen{phone, {name: "sideways", width: 844, height: 390, density: 1, touch: true}} {
		p := open(t, s.at("gunwales"))
		p.do(chromedp.Click(chromedp.CSS("#look")))
		assert.Empty(t, eval[[]string](p, `[...document.querySelectorAll('#tools button, #look')].filter(e => e.checkVisibility())
			.filter(e => { const r = e.getBoundingClientRect();
				return !e.contains(document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2)); })
			.map(e => e.textContent)`), s.name)
		if s.height > s.width {
			p.do(chromedp.Click(chromedp.CSS("#layer")))
			assert.True(t, eval[bool](p, `document.getElementById('tools').getBoundingClientRect().top >=
				document.getElementById('hand').getBoundingClientRect().bottom - 1`), "the picture is seen")
			p.do(chromedp.Click(chromedp.CSS("#look")), chromedp.Click(chromedp.CSS(`[data-typed="ribs"]`)))
			assert.InDelta(t, 0, eval[float64](p, `document.getElementById('cells').getBoundingClientRect().top -
				document.getElementById('hand').getBoundingClientRect().bottom`), 1)
		}
	}
}

// Rib marks of a 15 ft boat with 40 ribs stand open four presses from the start.
func TestMarksInFourPresses(t *testing.T) {
	p := open(t, phone.at("choose"))
	p.enter("length", "15 ft")
	p.notch(stage.Gunwales)
	p.enter("ribs", "40")
	require.True(t, eval[bool](p, `document.querySelector('[data-fold="marks"]').open`))
	assert.True(t, eval[bool](p, `document.querySelector('[data-table="marks"]').checkVisibility()`))
	assert.Contains(t, eval[string](p, `document.querySelector('[data-table="marks"]').textContent`), "rib 20")
}

// today is the day as the reader's browser writes it: in English of the United States, which
// is not as the page's own words would have it.
func (p *tab) today() string {
	return eval[string](p, `new Date().toLocaleDateString(undefined, {day: 'numeric', month: 'long', year: 'numeric'})`)
}

// Ticks and notes are kept with the boat, shown on the stick, undone, and go into its file
// unless it is saved without them.
func TestStepsAreTicked(t *testing.T) {
	p := openAfter(t, "", phone.at(asKept), own(t))
	p.notch(stage.Lace)
	eval[bool](p, `document.querySelector('[data-steps="lace"]').open = true`)
	eval[bool](p, `document.querySelector('[data-tick="lace.flush"]').click(), true`)
	eval[bool](p, `document.querySelector('[data-tick="lace.posts"]').click(), true`)
	assert.Equal(t, "2 of 11 done", eval[string](p, `document.querySelector('[data-progress="lace"]').textContent`))
	assert.Equal(t, "done "+p.today(), eval[string](p, `document.querySelector('[data-stands="lace.flush"]').textContent`))
	eval[bool](p, `document.querySelector('[data-note="lace"]').focus(), true`)
	p.keys("rain all day" + kb.Enter)
	assert.Contains(t, eval[string](p, `document.querySelector('[data-noted="lace"]').textContent`), "rain all day")
	eval[bool](p, `document.querySelector('[data-tick="lace.posts"]').click(), true`)
	assert.Equal(t, "1 of 11 done", eval[string](p, `document.querySelector('[data-progress="lace"]').textContent`))
	p.press("#undo")
	p.settle()
	assert.Equal(t, "2 of 11 done", eval[string](p, `document.querySelector('[data-progress="lace"]').textContent`))
	eval[bool](p, `document.querySelector('[data-note="lace"]').focus(), true`)
	p.keys("half a no")
	p.within(`Object.keys(localStorage).some(k => (localStorage.getItem(k) || '').includes('half a no'))`)
	p.again()
	p.ready()
	p.wait(`document.querySelector('[data-note="lace"]')?.value === 'half a no'`)
	assert.True(t, eval[bool](p, `document.querySelector('[data-note="lace"]').checkVisibility()`))
	p.wait(`document.querySelector('[data-progress="lace"]').textContent === '2 of 11 done'`)
	assert.True(t, eval[bool](p, `document.querySelector('[data-tick="lace.flush"]').checked`))

	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push(text), true`)
	p.notch("shed")
	p.press(`[data-keep="save-file"]`)
	p.press(`[data-keep="save-bare"]`)
	p.wait(`saved.length === 2`)
	assert.Equal(t, []bool{true, false}, eval[[]bool](p, `saved.map(t => t.includes('rain all day'))`))
}

// A stem that is too thick to bend is said at its stage and cured by one press; Undo takes
// that back.
func TestStemIsCured(t *testing.T) {
	p := open(t, phone.at("ends"))
	p.enter("stemLaminations", "1")
	p.wait(`document.querySelector('.cells:not([hidden]) [data-verdict="stem.verdict"]').dataset.state === 'tight'`)
	p.do(chromedp.Click(chromedp.CSS(`.cells:not([hidden]) [data-check="stem.verdict"]`)))
	p.settle()
	p.do(chromedp.Click(chromedp.CSS(`#at-ends [data-cure^="stemLaminations="]`)))
	p.wait(`document.querySelector('.cells:not([hidden]) [data-verdict="stem.verdict"]').dataset.state === 'within'`)
	p.press("#undo")
	p.wait(`document.querySelector('.cells:not([hidden]) [data-verdict="stem.verdict"]').dataset.state === 'tight'`)
}

// The steps, the tables and the bench of a stage are one press from its numbers.
func TestJumps(t *testing.T) {
	p := open(t, phone.at("gunwales"))
	p.do(chromedp.Click(chromedp.CSS(`[data-jump="[data-fold]"]`)))
	p.settle()
	assert.True(t, eval[bool](p, `(r => r.top >= document.getElementById('cells').getBoundingClientRect().bottom - 1 &&
		r.bottom <= innerHeight)(document.querySelector('[data-fold="marks"] summary').getBoundingClientRect())`))
	eval[bool](p, `scrollTo(0, 0), true`)
	p.do(chromedp.Click(chromedp.CSS(`[data-jump="[data-steps]"]`)))
	p.settle()
	assert.True(t, eval[bool](p, `document.querySelector('[data-steps="gunwales"]').open &&
		document.activeElement.closest('[data-steps]') !== null`))
	eval[bool](p, `scrollTo(0, 0), true`)
	p.do(chromedp.Click(chromedp.CSS(`[data-jump="[data-bench]"]`)))
	p.wait(`document.getElementById('bench').checkVisibility()`)
}

// A stage's picture follows the window's size as long as it is looked at as the stage was come to, and
// is found again as it was left.
func TestPictureIsFoundAsLeft(t *testing.T) {
	p := open(t, desktop.at("ends"))
	const near = `document.getElementById('view').dataset.near !== undefined`
	const drawing = `document.getElementById('only').textContent`
	p.wait(near)
	p.do(projector.emulate())
	p.settle()
	assert.True(t, eval[bool](p, near), "near in another window")
	assert.Equal(t, "Side", eval[string](p, drawing))
	p.press(`[data-look="fit"]`)
	p.press(`#only`)
	left := eval[string](p, drawing)
	require.NotEqual(t, "Side", left)
	p.notch(stage.Lace)
	p.notch(stage.Ends)
	assert.Equal(t, left, eval[string](p, drawing))
	assert.False(t, eval[bool](p, near), "whole, as it was left")
	p.notch(stage.Gunwales)
	assert.True(t, eval[bool](p, near), "a stage not yet seen is come to near its parts")
}
